import type { Project } from "../model/project.ts";
import type { Routine } from "../model/routine.ts";
import { type Assessment, assess } from "../practice/assess.ts";
import {
  type DriftFit,
  driftFitOf,
  driftPairs,
  likelihoodOf,
  type Outcome,
  type PairLikelihood,
  scaledDrift,
} from "../practice/driftFit.ts";
import { type Promised, successChance, worstOf } from "../practice/promise.ts";
import { HARD_TRIED, hardCountOf, type Proposed } from "../practice/proposed.ts";
import { type Placement, testPlacements } from "../practice/testPlacements.ts";
import { withPlacement } from "../search/variant.ts";
import { drawPlacement } from "../trial/placement.ts";
import type { Workers } from "./catalogue.ts";
import { inTurn } from "./inTurn.ts";
import type { JobOptions } from "./jobOptions.ts";

/** What practice says about the model. */
export interface Judgement {
  readonly assessment: Assessment;
  /** Only a contradiction asks for an explanation: null otherwise. */
  readonly fit: DriftFit | null;
}

export interface JudgeOptions extends JobOptions {
  readonly seed: number;
  readonly onProgress?: ((doneFrac: number) => void) | undefined;
}

/** Simulated runs for each practice run, and for each drift that is tried on it. */
export const PROMISE_RUNS = 300;
export const FIT_RUNS = 60;
/** Share of the work that promises are where drifts are tried afterwards. */
const PROMISES_FRAC = 0.25;

/** As practice/proposed, the runs in the workers. */
export async function proposePlacements(
  workers: Workers,
  project: Project,
  routine: Routine,
  { count, seed, signal }: JobOptions & { readonly count: number; readonly seed: number },
): Promise<Proposed> {
  const hardCount = hardCountOf(project, count);
  const even = testPlacements(project, count - hardCount, seed);
  if (hardCount === 0) return { even, hard: [] };
  const task = { kind: "stress", seed, from: 0, to: HARD_TRIED } as const;
  const { delivered } = await workers.run(project, routine, task, { signal });
  const runs = Array.from(delivered, (home, index) => ({
    placement: drawPlacement(project, seed, index),
    home,
  }));
  return { even, hard: worstOf(runs, hardCount) };
}

/**
 * Holds practice runs against the model, in the workers: the promise for each placement, the verdict, and, where the two contradict
 * each other, the drift that would explain it. Rejects when cancelled or when a trial cannot be run.
 */
export async function judgePractice(
  workers: Workers,
  project: Project,
  routine: Routine,
  outcomes: readonly Outcome[],
  options: JudgeOptions,
): Promise<Judgement> {
  const { onProgress } = options;
  const promised = await promises(workers, project, routine, outcomes, PROMISE_RUNS, {
    ...options,
    onProgress: (frac) => onProgress?.(PROMISES_FRAC * frac),
  });
  const assessment = assess(
    outcomes.map(({ placement, home, day }, i) => ({
      promised: successChance(promised[i] ?? NOTHING),
      succeeded: home === placement.length,
      ...(day === undefined ? {} : { day }),
    })),
  );
  const contradicted = assessment.verdict === "worse" || assessment.verdict === "better";
  if (!contradicted) return { assessment, fit: null };
  const fit = await fitInWorkers(workers, project, routine, outcomes, {
    ...options,
    onProgress: (frac) => onProgress?.(PROMISES_FRAC + (1 - PROMISES_FRAC) * frac),
  });
  return { assessment, fit };
}

/** As practice/driftFit, the runs in the workers. */
async function fitInWorkers(
  workers: Workers,
  project: Project,
  routine: Routine,
  outcomes: readonly Outcome[],
  options: JudgeOptions,
): Promise<DriftFit> {
  const found: PairLikelihood[] = [];
  const pairs = driftPairs();
  for (const [n, [straight, turn]] of pairs.entries()) {
    const drift = scaledDrift(project.robot.drift, straight, turn);
    const drifting = { ...project, robot: { ...project.robot, drift } };
    const promised = await promises(workers, drifting, routine, outcomes, FIT_RUNS, {
      ...options,
      onProgress: (frac) => options.onProgress?.((n + frac) / pairs.length),
    });
    found.push(likelihoodOf(promised, outcomes));
  }
  return driftFitOf(found);
}

const NOTHING: Promised = { homeCounts: [], runs: 0 };

async function promises(
  workers: Workers,
  project: Project,
  routine: Routine,
  outcomes: readonly Outcome[],
  runs: number,
  { seed, signal, gate, onProgress }: JudgeOptions,
): Promise<readonly Promised[]> {
  const found: Promised[] = [];
  let done = 0;
  await inTurn(outcomes.entries(), async ([i, { placement }]) => {
    found[i] = await promiseInWorkers(workers, project, routine, placement, { seed, runs, signal, gate });
    onProgress?.(++done / outcomes.length);
  });
  return found;
}

async function promiseInWorkers(
  workers: Workers,
  project: Project,
  routine: Routine,
  placement: Placement,
  { seed, runs, signal, gate }: JobOptions & { readonly seed: number; readonly runs: number },
): Promise<Promised> {
  const laid = withPlacement(project, placement);
  const task = { kind: "stress", seed, from: 0, to: runs } as const;
  const { delivered } = await workers.run(laid, routine, task, { signal, gate });
  const homeCounts = Array.from({ length: placement.length + 1 }, () => 0);
  for (const home of delivered) homeCounts[home] = (homeCounts[home] ?? 0) + 1;
  return { homeCounts, runs };
}
