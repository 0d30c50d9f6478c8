/** A chart as plain data: what the page and the sheets both draw. Places in the chart's own units, x right, y down. */
export interface Drawing {
  readonly widthPx: number;
  readonly heightPx: number;
  readonly title: string;
  /** The chart in words, for those who cannot see it. */
  readonly description: string;
  readonly shapes: readonly Shape[];
}

/** Weight of ink: everything is drawn in one colour, and told apart by dashes, hatching and labels. */
export type Ink = "strong" | "soft" | "faint";

export type Shape =
  | {
      readonly kind: "line";
      readonly points: readonly (readonly [number, number])[];
      readonly ink: Ink;
      readonly widthPx: number;
      /** Lengths of dashes and gaps; empty: unbroken. */
      readonly dashes: readonly number[];
    }
  | { readonly kind: "area"; readonly points: readonly (readonly [number, number])[]; readonly fill: Fill }
  | {
      readonly kind: "bar";
      readonly xPx: number;
      readonly yPx: number;
      readonly widthPx: number;
      readonly heightPx: number;
      readonly fill: Fill;
    }
  | {
      readonly kind: "dot";
      readonly xPx: number;
      readonly yPx: number;
      readonly radiusPx: number;
      readonly fill: "full" | "open";
    }
  | {
      readonly kind: "text";
      readonly xPx: number;
      readonly yPx: number;
      readonly text: string;
      readonly anchor: "start" | "middle" | "end";
      readonly ink: Ink;
    };

/** tint: a veil through which one still sees; hatched: slanting lines; full: solid. */
export type Fill = "tint" | "hatched" | "full";

export const TEXT_PX = 13;
/** Room that a letter takes, on average: to know whether a label fits. */
const LETTER_PX = 6.6;

export function textWidthPx(text: string): number {
  return text.length * LETTER_PX;
}

/** Words cut to a width, with … where something is left out. */
export function fitted(text: string, widthPx: number): string {
  const most = Math.floor(widthPx / LETTER_PX);
  return text.length <= most ? text : `${text.slice(0, Math.max(1, most - 1)).trimEnd()}…`;
}

/** Words on one line, or on two about as long as each other where one has no room. */
export function linesOf(text: string, widthPx: number): readonly string[] {
  const at = text.indexOf(" ", text.length / 2);
  return textWidthPx(text) <= widthPx || at < 0 ? [text] : [text.slice(0, at), text.slice(at + 1)];
}

/** A line, unbroken unless dashes are given. */
export function lineOf(
  points: readonly (readonly [number, number])[],
  ink: Ink,
  widthPx: number,
  dashes: readonly number[] = [],
): Shape {
  return { kind: "line", points, ink, widthPx, dashes };
}

export function textAt(
  xPx: number,
  yPx: number,
  text: string,
  anchor: "start" | "middle" | "end",
  ink: Ink = "strong",
): Shape {
  return { kind: "text", xPx, yPx, text, anchor, ink };
}
