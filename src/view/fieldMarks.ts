import { PLACE_STATES, type PushField } from "../plan/push/pushField.ts";

/** A mark of the map of seconds home: a square for a way home, a cross for no clean push, a block for out of reach. */
export interface FieldMark {
  readonly kind: "home" | "no-push" | "dead";
  readonly xMm: number;
  readonly yMm: number;
  readonly sideMm: number;
}

/** Side of a cross or block, and of the smallest and largest square, as shares of a cell. */
const FULL_FRAC = 0.8;
const LEAST_FRAC = 0.12;

/**
 * Marks for cells of at least a given size: each stands for all places in its cell, by the worst of them, so that no pocket falls
 * between two marks.
 *
 * @param leastCellMm side of a cell, mm, at least the field's own step
 */
export function fieldMarks(field: PushField, leastCellMm: number): readonly FieldMark[] {
  const { columns, rows, stepXMm, stepYMm, radiusMm, seconds, summary } = field;
  const acrossX = Math.max(1, Math.round(leastCellMm / stepXMm));
  const acrossY = Math.max(1, Math.round(leastCellMm / stepYMm));
  const marks: FieldMark[] = [];
  for (let row = 0; row < rows; row += acrossY) {
    for (let column = 0; column < columns; column += acrossX) {
      const [high, right] = [Math.min(rows, row + acrossY), Math.min(columns, column + acrossX)];
      let worst: FieldMark["kind"] | null = null;
      let slowest = 0;
      for (let r = row; r < high; r++) {
        for (let c = column; c < right; c++) {
          const state = PLACE_STATES[field.state[r * columns + c] ?? 255];
          if (state === "dead") worst = "dead";
          else if (state === "no-push" && worst !== "dead") worst = "no-push";
          else if (state === "home" && worst === null) worst = "home";
          if (state === "home") slowest = Math.max(slowest, seconds[r * columns + c] ?? 0);
        }
      }
      if (worst === null) continue;
      const cellMm = Math.min(acrossX * stepXMm, acrossY * stepYMm);
      const share = summary.slowestSeconds > 0 ? slowest / summary.slowestSeconds : 0;
      marks.push({
        kind: worst,
        xMm: radiusMm + (column + (right - column - 1) / 2) * stepXMm,
        yMm: radiusMm + (row + (high - row - 1) / 2) * stepYMm,
        sideMm: cellMm * (worst === "home" ? LEAST_FRAC + (FULL_FRAC - LEAST_FRAC) * share : FULL_FRAC),
      });
    }
  }
  return marks;
}

/** What the field says about the place nearest to a point. */
export function fieldAt(
  field: PushField,
  xMm: number,
  yMm: number,
): { readonly state: (typeof PLACE_STATES)[number] | null; readonly seconds: number } {
  const { columns, rows, stepXMm, stepYMm, radiusMm } = field;
  const column = Math.min(columns - 1, Math.max(0, Math.round((xMm - radiusMm) / stepXMm)));
  const row = Math.min(rows - 1, Math.max(0, Math.round((yMm - radiusMm) / stepYMm)));
  const place = row * columns + column;
  return { state: PLACE_STATES[field.state[place] ?? 255] ?? null, seconds: field.seconds[place] ?? 0 };
}
