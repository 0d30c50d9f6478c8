import type { FateBatch } from "../../src/trial/fates.ts";
import { LOSS_REASONS, type LossReason } from "../../src/trial/outcome.ts";

export interface FateRow {
  readonly x?: number;
  readonly y?: number;
  /** Left out: delivered. */
  readonly loss?: LossReason;
  readonly homeAtS?: number;
  readonly lossAtS?: number;
  readonly move?: number;
}

/** Fates written by hand: one row per ball, `balls` rows per trial. */
export function fateBatch(balls: number, rows: readonly FateRow[], from = 0): FateBatch {
  const column = (value: (row: FateRow) => number | undefined, fallback: number): Float64Array =>
    Float64Array.from(rows, (row) => value(row) ?? fallback);
  return {
    from,
    to: from + rows.length / balls,
    balls,
    startXMm: column((row) => row.x, 0),
    startYMm: column((row) => row.y, 0),
    endXMm: column(() => 0, 0),
    endYMm: column(() => 0, 0),
    homeAtS: column((row) => row.homeAtS, Number.NaN),
    loss: Uint8Array.from(rows, (row) => (row.loss ? 1 + LOSS_REASONS.indexOf(row.loss) : 0)),
    lossAtS: column((row) => row.lossAtS, Number.NaN),
    lossMove: Int16Array.from(rows, (row) => row.move ?? -1),
    lossLine: new Int16Array(rows.length).fill(-1),
  };
}
