import { type Rate, wilson } from "../num/interval.ts";
import type { FateBatch } from "../trial/fates.ts";
import { LOSS_REASONS, type LossReason } from "../trial/outcome.ts";

/** One lost ball that stands for its kind, to be played: trial `index`, ball `ball`, from a little before `timeS` on. */
export interface LossExample {
  readonly index: number;
  readonly ball: number;
  /** null: nothing ever happened to the ball. */
  readonly timeS: number | null;
}

/** Balls lost for one reason, in one move. */
export interface LossCount {
  readonly reason: LossReason;
  /** Index of the move to blame (see trial/fates); as many as there are moves: after the last one; null: never touched. */
  readonly move: number | null;
  readonly balls: number;
  /** Share of runs that lose at least one ball so: balls of one run are often lost together, so an interval of balls would be too short. */
  readonly runs: Rate;
  /** Share of all lost balls. */
  readonly shareFrac: number;
  /** The first few of them, in the order of the trials. */
  readonly examples: readonly LossExample[];
}

/** Examples kept of each kind. */
const EXAMPLES = 5;

/** Where balls are lost: by reason and by move, most first (ties: the earlier move, the reason listed first). */
export function lossesByMove(fates: FateBatch): readonly LossCount[] {
  const found = new Map<
    string,
    {
      reason: LossReason;
      move: number | null;
      balls: number;
      runs: number;
      last: number;
      examples: LossExample[];
    }
  >();
  let lost = 0;
  for (const [at, code] of fates.loss.entries()) {
    const reason = LOSS_REASONS[code - 1];
    if (reason === undefined) continue;
    lost++;
    const moveIndex = fates.lossMove[at] ?? -1;
    const move = moveIndex < 0 ? null : moveIndex;
    const key = `${reason} ${move}`;
    const entry = found.get(key) ?? { reason, move, balls: 0, runs: 0, last: -1, examples: [] };
    entry.balls++;
    const run = Math.floor(at / fates.balls);
    if (run !== entry.last) entry.runs++;
    entry.last = run;
    if (entry.examples.length < EXAMPLES) entry.examples.push(exampleOf(fates, at));
    found.set(key, entry);
  }
  return [...found.values()]
    .sort(
      (a, b) =>
        b.balls - a.balls ||
        (a.move ?? -1) - (b.move ?? -1) ||
        LOSS_REASONS.indexOf(a.reason) - LOSS_REASONS.indexOf(b.reason),
    )
    .map(({ last: _, runs, ...entry }) => ({
      ...entry,
      runs: wilson(runs, fates.to - fates.from),
      shareFrac: entry.balls / lost,
    }));
}

function exampleOf(fates: FateBatch, at: number): LossExample {
  const timeS = fates.lossAtS[at] ?? Number.NaN;
  return {
    index: fates.from + Math.floor(at / fates.balls),
    ball: at % fates.balls,
    timeS: Number.isNaN(timeS) ? null : timeS,
  };
}
