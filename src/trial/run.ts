import type { PointMm } from "../model/zone.ts";
import { HashSum } from "../num/hash.ts";
import { RandomStream } from "../num/stream.ts";
import { bx, by } from "./balls.kernel.ts";
import { LOSS_REASONS, type TrialBatch, type TrialOutcome } from "./outcome.ts";
import type { TrialPlan } from "./plan.ts";
import { Recorder } from "./recorder.ts";
import type { Recording } from "./recording.ts";
import { executed, hash, home, homeAtS, lines, restS, result, run } from "./run.kernel.ts";
import { STREAMS } from "./streams.ts";
import { lossOf } from "./verdict.ts";

const stream = new RandomStream();

/** The plan of trial `index`: with the wedge in the corner that is drawn for it, where more than one is allowed. */
export function planFor(plan: TrialPlan, seed: number, index: number): TrialPlan {
  if (plan.byCorner.length === 0) return plan;
  const drawn = stream.open(seed, index, STREAMS.corner).below(plan.byCorner.length);
  return plan.byCorner[drawn] ?? plan;
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
  const trials = to - from;
  const delivered = new Uint8Array(trials);
  const timeS = new Float64Array(trials);
  const points = new Float64Array(trials);
  const losses = new Float64Array(LOSS_REASONS.length);
  const sum = new HashSum();
  let jams = 0;
  let stalls = 0;
  const balls = whole.kinds.length;
  for (let t = 0; t < trials; t++) {
    const index = from + t;
    const plan = planFor(whole, seed, index);
    run(plan, seed, index, placementOf(plan, seed, index), null);
    let count = 0;
    let earned = 0;
    for (let i = 0; i < balls; i++) {
      const loss = lossOf(i);
      if (loss === null) {
        count++;
        earned += plan.points[i] ?? 0;
      } else {
        const at = LOSS_REASONS.indexOf(loss);
        losses[at] = (losses[at] ?? 0) + 1;
      }
    }
    delivered[t] = count;
    points[t] = earned;
    timeS[t] = result.timeS;
    jams += result.jams;
    stalls += result.stalls;
    sum.add(index, hash.low, hash.high);
  }
  return { from, to, delivered, timeS, points, losses, hashLow: sum.low, hashHigh: sum.high, jams, stalls };
}
