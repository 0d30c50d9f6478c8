import { topic } from "../language.ts";

/** The poster in its leaf of Jury. */
export const picturesTexts = topic("pictures", {
  poster: "A poster",
  none: "As soon as a routine is chosen and has been run, its poster stands here.",
  saveSvg: "Save as SVG",
  savePng: "Save as PNG",
  posterIs: "The poster: zone, way and success rate",
  noPicture: (why: string) => `This browser could not make the picture: ${why}`,
  noCanvas: "there is no canvas to draw on",
  empty: "it came out empty",
});
