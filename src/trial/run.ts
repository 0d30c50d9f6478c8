import type { PointMm } from "../model/zone.ts";
import { RandomStream } from "../num/stream.ts";
import { bx, by } from "./balls.kernel.ts";
import { BatchTally } from "./batchTally.ts";
import type { TrialBatch, TrialOutcome } from "./outcome.ts";
import type { TrialPlan } from "./plan.ts";
import { Recorder } from "./recorder.ts";
import type { Recording } from "./recording.ts";
import { executed, hash, home, homeAtS, lines, result } from "./result.kernel.ts";
import { restS, run } from "./run.kernel.ts";
import { STREAMS } from "./streams.ts";
import { lossOf } from "./verdict.ts";

const stream = new RandomStream();

/** Place in `byCorner` of the corner that is drawn for trial `index`; null where it is known. */
export function cornerOf({ byCorner }: TrialPlan, seed: number, index: number): number | null {
  return byCorner.length === 0 ? null : stream.open(seed, index, STREAMS.corner).below(byCorner.length);
}

/** The plan of trial `index`: with the wedge in the corner that is drawn for it, where more than one is allowed. */
export function planFor(plan: TrialPlan, seed: number, index: number): TrialPlan {
  const corner = cornerOf(plan, seed, index);
  return corner === null ? plan : (plan.byCorner[corner] ?? plan);
}

/** Placement of trial `index`: drawn, or the plan's own. */
export function placementOf(plan: TrialPlan, seed: number, index: number): readonly PointMm[] {
  return plan.placement ?? plan.placements.draw(seed, index);
}

/** Runs trial `index` of `seed`: a pure function of plan, seed and index. */
export function runTrial(whole: TrialPlan, seed: number, index: number): TrialOutcome {
  const plan = planFor(whole, seed, index);
  const placement = placementOf(plan, seed, index);
  run(plan, seed, index, placement, null);
  return outcomeOf(plan, seed, index, placement);
}

/** Runs one trial and keeps everything that happened, for playing back. */
export function recordTrial(
  whole: TrialPlan,
  seed: number,
  index: number,
): { readonly outcome: TrialOutcome; readonly recording: Recording } {
  const plan = planFor(whole, seed, index);
  const placement = placementOf(plan, seed, index);
  const recorder = new Recorder(plan.kinds.length, plan.arms?.arms.swingRateRadPerS);
  run(plan, seed, index, placement, recorder);
  return {
    outcome: outcomeOf(plan, seed, index, placement),
    recording: { ...recorder.finish(restS()), ...decided(plan, whole) },
  };
}

/** What a recording says besides of a robot that decides, and of a corner that was drawn. */
function decided(plan: TrialPlan, whole: TrialPlan): Partial<Recording> {
  return {
    ...(plan.pilot === null ? {} : { executed: [...executed], lines: [...lines] }),
    ...(plan === whole ? {} : { corner: plan.project.zone.wedge.corner }),
  };
}

function outcomeOf(
  plan: TrialPlan,
  seed: number,
  index: number,
  placement: readonly PointMm[],
): TrialOutcome {
  const each = plan.kinds.map((_, i) => i);
  return {
    seed,
    index,
    placement,
    delivered: each.map((i) => home[i] === 1),
    deliveredAtS: each.map((i) => (home[i] === 1 ? (homeAtS[i] ?? 0) : null)),
    losses: each.map(lossOf),
    endPositions: each.map((i) => ({ xMm: bx[i] ?? 0, yMm: by[i] ?? 0 })),
    timeS: result.timeS,
    jams: result.jams,
    stalls: result.stalls,
    hash: hash.hex(),
  };
}

/** Runs trials from … to − 1 and adds them up. */
export function runBatch(whole: TrialPlan, seed: number, from: number, to: number): TrialBatch {
  const tally = new BatchTally(from, to);
  for (let index = from; index < to; index++) {
    const plan = planFor(whole, seed, index);
    run(plan, seed, index, placementOf(plan, seed, index), null);
    tally.add(plan, index);
  }
  return tally.batch;
}
