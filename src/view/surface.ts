// Keeps pixi from compiling code at run time, so that a strict content security policy holds.
import "pixi.js/unsafe-eval";
import "pixi.js/graphics";
import "pixi.js/text";
import { type Container, type Renderer, WebGLRenderer } from "pixi.js";
import { freeRetired } from "./layer.ts";

/** What pixi asks of a context of its own: masks and clean edges. */
const CONTEXT: WebGLContextAttributes = {
  alpha: true,
  premultipliedAlpha: true,
  antialias: true,
  stencil: true,
};

/**
 * The canvas and its renderer: WebGL, or the plain canvas where there is none. Draws on demand, at most once a frame.
 * Pixi's pointer and accessibility systems stay out: they would stop a finger on the drawing from scrolling the page
 * and put a layer of their own over it.
 */
export class Surface {
  readonly canvas: HTMLCanvasElement;
  readonly #renderer: Renderer;
  readonly #root: Container;
  #zoom = 1;
  #frame = 0;

  private constructor(renderer: Renderer, root: Container) {
    this.#renderer = renderer;
    this.#root = root;
    this.canvas = renderer.canvas as HTMLCanvasElement;
  }

  static async open(root: Container): Promise<Surface> {
    // Chosen here and not by pixi, which would bring its third renderer along, and open one context more to find out.
    const canvas = document.createElement("canvas");
    const context = canvas.getContext("webgl2", CONTEXT) ?? canvas.getContext("webgl", CONTEXT);
    const renderer = context
      ? new WebGLRenderer()
      : new (await import("./plainRenderer.ts")).CanvasRenderer();
    await renderer.init({
      canvas,
      ...(context ? { context: context as WebGL2RenderingContext } : {}),
      skipExtensionImports: true,
      width: 1,
      height: 1,
      antialias: true,
      backgroundAlpha: 0,
      resolution: globalThis.devicePixelRatio || 1,
    });
    return new Surface(renderer, root);
  }

  /** @param zoom CSS pixels to one of the scene's: how much larger everything is drawn. Sizes are CSS pixels. */
  resize(widthPx: number, heightPx: number, zoom: number): void {
    this.#zoom = zoom;
    this.#fit(Math.max(1, widthPx), Math.max(1, heightPx), globalThis.devicePixelRatio || 1);
    this.canvas.style.width = `${widthPx}px`;
    this.canvas.style.height = `${heightPx}px`;
    this.request();
  }

  #fit(widthPx: number, heightPx: number, fineness: number): void {
    this.#renderer.resize(widthPx / this.#zoom, heightPx / this.#zoom, fineness * this.#zoom);
  }

  /** Draws in the next frame; many requests, one drawing. */
  request(): void {
    if (this.#frame !== 0) return;
    this.#frame = requestAnimationFrame(() => {
      this.#frame = 0;
      this.#renderer.render(this.#root);
      freeRetired();
    });
  }

  /** Paints at once with so many dots a CSS pixel, shows `take` the picture, and goes back to what it was. */
  paint(
    widthPx: number,
    heightPx: number,
    fineness: number,
    take: (canvas: HTMLCanvasElement) => void,
  ): void {
    this.#fit(widthPx, heightPx, fineness);
    this.#renderer.render(this.#root);
    freeRetired();
    take(this.canvas);
    this.resize(widthPx, heightPx, this.#zoom);
  }

  destroy(): void {
    cancelAnimationFrame(this.#frame);
    freeRetired();
    this.#renderer.destroy({ removeView: true });
  }
}
