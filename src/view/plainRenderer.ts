/** The renderer for machines without WebGL, in a file of its own: it is fetched where it is needed only. */
export { CanvasRenderer } from "pixi.js";
