/** Every colour of the drawing, as CSS colours; the app reads them from its theme and hands them in. */
export interface Palette {
  readonly paper: string;
  readonly floor: string;
  readonly grid: string;
  readonly gridStrong: string;
  readonly wall: string;
  readonly ink: string;
  readonly inkSoft: string;
  readonly wedge: string;
  readonly wedgeLine: string;
  readonly doorway: string;
  readonly keepOut: string;
  readonly path: string;
  readonly pathNow: string;
  readonly robot: string;
  readonly robotLine: string;
  readonly track: string;
  readonly pusher: string;
  readonly delivered: string;
  readonly lost: string;
  /** Numbers in the balls. */
  readonly ballInk: string;
  /** Told apart by colour-blind people (Okabe & Ito); balls carry numbers as well. */
  readonly balls: readonly string[];
}

export const PALETTE_KEYS = [
  "paper",
  "floor",
  "grid",
  "gridStrong",
  "wall",
  "ink",
  "inkSoft",
  "wedge",
  "wedgeLine",
  "doorway",
  "keepOut",
  "path",
  "pathNow",
  "robot",
  "robotLine",
  "track",
  "pusher",
  "delivered",
  "lost",
] as const satisfies readonly Exclude<keyof Palette, "balls" | "ballInk">[];

/**
 * Okabe & Ito, Color Universal Design (2008): six of its eight colours, made for the common forms of colour
 * blindness. Black and the blue are left to lines and the robot.
 */
export const BALL_COLOURS = ["#e69f00", "#56b4e9", "#009e73", "#f0e442", "#d55e00", "#cc79a7"] as const;

/** On every one of them. */
export const BALL_INK = "#111111";

export function ballColour(palette: Palette, ball: number): string {
  return palette.balls[ball % palette.balls.length] ?? palette.ink;
}
