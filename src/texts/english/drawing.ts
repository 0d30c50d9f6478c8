import { topic } from "../language.ts";

/** What can be dragged on the drawing, and what stands in it. */
export const drawingTexts = topic("drawing", {
  handles: "Handles on the drawing",
  keys: (coarse: string, fine: string) => `Arrow keys move it by ${coarse}, with Shift by ${fine}.`,
  refused: "It cannot go there.",
  rightWall: (length: string) => `Right wall, ${length} from the left one`,
  upperWall: (length: string) => `Upper wall, ${length} from the lower one`,
  doorway: {
    left: (length: string) => `Doorway, its middle ${length} along the left wall`,
    right: (length: string) => `Doorway, its middle ${length} along the right wall`,
    bottom: (length: string) => `Doorway, its middle ${length} along the lower wall`,
    top: (length: string) => `Doorway, its middle ${length} along the upper wall`,
  },
  firstPost: (width: string) => `First post of the doorway, ${width} wide`,
  secondPost: (width: string) => `Second post of the doorway, ${width} wide`,
  wedgeAlong: {
    left: (length: string) => `Wedge along the left wall, ${length}`,
    right: (length: string) => `Wedge along the right wall, ${length}`,
    bottom: (length: string) => `Wedge along the lower wall, ${length}`,
    top: (length: string) => `Wedge along the upper wall, ${length}`,
  },
  wedge: (corner: string) => `Wedge, in the ${corner} corner`,
  keepOut: (number: number) => `Keep-out ${number}`,
  region: (number: number) => `Region ${number} without balls`,
  ball: (number: number) => `Ball ${number}`,
  at: (what: string, left: string, up: string) => `${what}, ${left} from the left, ${up} up`,
  cornerOf: (what: string, width: string, height: string) =>
    `Upper right corner of ${what}, ${width} by ${height}`,
  end: (move: number, left: string, up: string) => `End of move ${move}, ${left} from the left, ${up} up`,
  byHand: "The balls were laid by hand.",
  label: { wedge: "wedge", doorway: "doorway", keepOut: "keep-out" },
  section: (words: string, depth: string) =>
    `The wedge from the side, corner on the right: ${words}; ${depth} deep.`,
  stretched: (times: number) => `Heights are drawn ${times} times too large.`,
  profile: {
    flat: "flat mark on the floor",
    lip: (height: string) => `${height} lip, `,
    ramp: (lip: string, height: string) => `${lip}rises to ${height}`,
    shelf: (lip: string, height: string) => `${lip}rises to ${height}, then level`,
    tray: (lip: string, height: string) => `${lip}falls to ${height}`,
  },
});
