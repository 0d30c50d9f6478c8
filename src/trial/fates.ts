import { bx, by } from "./balls.kernel.ts";
import { LOSS_REASONS, type LossReason } from "./outcome.ts";
import type { TrialPlan } from "./plan.ts";
import {
  homeAtS,
  jamMove,
  jamS,
  leftMove,
  leftS,
  lines,
  result,
  touched,
  touchMove,
  touchS,
  wasHome,
} from "./result.kernel.ts";
import { run } from "./run.kernel.ts";
import { placementOf, planFor } from "./run.ts";
import { lossOf } from "./verdict.ts";

/**
 * What became of every ball of a run of trials: where it lay, when it came home, or why, when and in which move it was lost.
 * Columns of trials × balls numbers, ball after ball within a trial; cheap to send between workers.
 */
export interface FateBatch {
  /** First trial index, and one past the last. */
  readonly from: number;
  readonly to: number;
  readonly balls: number;
  /** Where the ball lay at the start and at the end, mm. */
  readonly startXMm: Float64Array;
  readonly startYMm: Float64Array;
  readonly endXMm: Float64Array;
  readonly endYMm: Float64Array;
  /** Second at which it last came onto the wedge; NaN if it never did. Of a ball that left the wedge again, too. */
  readonly homeAtS: Float64Array;
  /** 0: delivered; else 1 + the place of the reason in LOSS_REASONS. */
  readonly loss: Uint8Array;
  /**
   * Second of the loss: when it rolled out of the doorway, when it left the wedge, when it jammed, when the pusher last
   * touched it, when the time was up. NaN: delivered, or never touched.
   */
  readonly lossAtS: Float64Array;
  /**
   * Index of the move to blame: the one under way at that second; for a ball that rolled out, the one that last touched it, if
   * any. One past the last move: while everything came to rest. −1: delivered, or never touched. Of a program: the move as run.
   */
  readonly lossMove: Int16Array;
  /** Line of the program that the move belongs to; −1 where there is no program, or the run was over. */
  readonly lossLine: Int16Array;
}

/** Runs trials from … to − 1 and tells what became of every ball. A pure function of its arguments. */
export function runFates(whole: TrialPlan, seed: number, from: number, to: number): FateBatch {
  const balls = whole.kinds.length;
  const size = (to - from) * balls;
  const batch = {
    from,
    to,
    balls,
    startXMm: new Float64Array(size),
    startYMm: new Float64Array(size),
    endXMm: new Float64Array(size),
    endYMm: new Float64Array(size),
    homeAtS: new Float64Array(size).fill(Number.NaN),
    loss: new Uint8Array(size),
    lossAtS: new Float64Array(size).fill(Number.NaN),
    lossMove: new Int16Array(size).fill(-1),
    lossLine: new Int16Array(size).fill(-1),
  };
  let at = 0;
  for (let index = from; index < to; index++) {
    const plan = planFor(whole, seed, index);
    const placement = placementOf(plan, seed, index);
    run(plan, seed, index, placement, null);
    for (let i = 0; i < balls; i++, at++) {
      batch.startXMm[at] = placement[i]?.xMm ?? 0;
      batch.startYMm[at] = placement[i]?.yMm ?? 0;
      batch.endXMm[at] = bx[i] ?? 0;
      batch.endYMm[at] = by[i] ?? 0;
      if (wasHome[i] === 1) batch.homeAtS[at] = homeAtS[i] ?? 0;
      const reason = lossOf(i);
      if (reason === null) continue;
      batch.loss[at] = 1 + LOSS_REASONS.indexOf(reason);
      const moment = momentOf(i, reason);
      if (moment === null) continue;
      batch.lossAtS[at] = moment.timeS;
      batch.lossMove[at] = moment.move;
      batch.lossLine[at] = lines[moment.move] ?? -1;
    }
  }
  return batch;
}

interface Moment {
  readonly timeS: number;
  readonly move: number;
}

/** When ball i of the run just finished was lost, and in which move; null if nothing ever happened to it. */
function momentOf(i: number, reason: LossReason): Moment | null {
  switch (reason) {
    case "rolled-out":
      return {
        timeS: leftS[i] ?? 0,
        move: (touched[i] === 1 ? touchMove[i] : leftMove[i]) ?? -1,
      };
    case "left-wedge":
      return { timeS: leftS[i] ?? 0, move: leftMove[i] ?? -1 };
    case "jammed":
      return { timeS: jamS[i] ?? 0, move: jamMove[i] ?? -1 };
    case "left-pusher":
      return { timeS: touchS[i] ?? 0, move: touchMove[i] ?? -1 };
    case "out-of-time":
      return { timeS: result.timeS, move: result.lastMove };
    case "never-touched":
      return null;
    default:
      return reason satisfies never;
  }
}

/**
 * Batches put together, in the order of the trials.
 * @throws RangeError for batches that overlap, leave a gap, or are of different numbers of balls; for none at all
 */
export function joinFates(batches: readonly FateBatch[]): FateBatch {
  const ordered = [...batches].sort((a, b) => a.from - b.from);
  const [first, ...others] = ordered;
  if (!first) throw new RangeError("no batch of fates; expected at least one");
  let to = first.to;
  for (const batch of others) {
    if (batch.from !== to || batch.balls !== first.balls) {
      throw new RangeError(
        `fates of trials ${batch.from} to ${batch.to}, ${batch.balls} balls each, after trial ${to} with ${first.balls}`,
      );
    }
    to = batch.to;
  }
  const floats = (column: (batch: FateBatch) => Float64Array): Float64Array =>
    Float64Array.from(ordered.flatMap((batch) => [...column(batch)]));
  return {
    from: first.from,
    to,
    balls: first.balls,
    startXMm: floats((batch) => batch.startXMm),
    startYMm: floats((batch) => batch.startYMm),
    endXMm: floats((batch) => batch.endXMm),
    endYMm: floats((batch) => batch.endYMm),
    homeAtS: floats((batch) => batch.homeAtS),
    loss: Uint8Array.from(ordered.flatMap((batch) => [...batch.loss])),
    lossAtS: floats((batch) => batch.lossAtS),
    lossMove: Int16Array.from(ordered.flatMap((batch) => [...batch.lossMove])),
    lossLine: Int16Array.from(ordered.flatMap((batch) => [...batch.lossLine])),
  };
}
