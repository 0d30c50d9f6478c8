import { roomiestCircles } from "../geometry/roomiest.ts";
import type { CircleMm } from "../geometry/voronoi.ts";
import type { Project } from "../model/project.ts";
import type { Routine } from "../model/routine.ts";
import { moveDurationS } from "../motion/duration.ts";
import type { Coverage } from "../score/coverage.ts";
import { type DriftBounds, driftBounds } from "../score/driftBounds.ts";
import type { DriftBudget } from "../score/driftBudget.ts";
import { type HeatMap, heatMap } from "../score/heatMap.ts";
import { type LossCount, lossesByMove } from "../score/lossCounts.ts";
import type { SureCoverage } from "../score/sureCoverage.ts";
import { type StopAdvice, type TimeToHome, timeToHome, whenToStop } from "../score/timeToHome.ts";
import { type FateBatch, joinFates } from "../trial/fates.ts";
import type { Workers } from "./catalogue.ts";
import { chunksOf, unbroken } from "./chunks.ts";
import { hardPlacements, type RatedPlacement } from "./hardPlacements.ts";
import { inTurn } from "./inTurn.ts";
import type { JobOptions } from "./jobOptions.ts";
import { PartsDone } from "./partsDone.ts";

/** What the trials of one routine say about where and when it fails; plain data. */
export interface Failings {
  readonly trials: number;
  readonly balls: number;
  readonly delivered: number;
  readonly losses: readonly LossCount[];
  readonly map: HeatMap;
  readonly time: TimeToHome;
  readonly stop: StopAdvice;
}

export interface BlindSpot extends CircleMm {
  readonly diameterMm: number;
}

/** Everything known of a routine's weak sides. Parts that were not finished when the job was stopped are null. */
export interface Weakness {
  readonly status: "done" | "stopped";
  readonly failings: Failings | null;
  readonly coverage: Coverage | null;
  /** Largest circles no ball's centre in which is touched without drift, largest first. */
  readonly blindSpots: readonly BlindSpot[];
  readonly sure: SureCoverage | null;
  readonly bounds: DriftBounds;
  /** The drift at which nine tenths of what is covered without drift is still sure. */
  readonly budget: DriftBudget | null;
  /** Layouts that beat the routine even without drift. */
  readonly beatenStill: readonly RatedPlacement[];
  /** Layouts with the lowest rates with drift. */
  readonly beatenDrifting: readonly RatedPlacement[];
}

export interface WeaknessOptions extends JobOptions {
  readonly seed: number;
  readonly trials: number;
  readonly onProgress?: ((doneFrac: number, what: string) => void) | undefined;
}

/** Errors up to this many standard deviations count for the promise: two of three of each. Common practice, no source. */
export const SURE_SDS = 1;
/** Share of what is covered without drift that the drift budget asks for. */
const BUDGET_FRAC = 0.9;
const BLIND_SPOTS = 5;
/** Smaller circles are no spots, mm. */
const LEAST_SPOT_MM = 8;
/** What share of the whole job its parts are, roughly. */
type WeakPart = "runs" | "sure coverage" | "worst placements";
const SHARES: Readonly<Record<WeakPart, number>> = {
  runs: 0.3,
  "sure coverage": 0.1,
  "worst placements": 0.6,
};

/**
 * Finds the weak sides of a routine in the workers: losses by reason, move and place, times, blind spots, sure coverage, drift
 * budget and worst placements. The same for any number of workers. Being stopped is a result; rejects when a task fails.
 */
export async function findWeakness(
  workers: Workers,
  project: Project,
  routine: Routine,
  options: WeaknessOptions,
): Promise<Weakness> {
  const { signal } = options;
  const bounds = driftBounds(project.robot.drift, SURE_SDS);
  const parts: Parts = { batches: [], coverage: null, sure: null, budget: null, still: [], drifting: [] };
  const done = new PartsDone<WeakPart>(SHARES, options.onProgress);
  const known = (status: Weakness["status"]): Weakness => ({
    status,
    failings: failingsOf(project, routine, unbroken(parts.batches)),
    coverage: parts.coverage,
    blindSpots: blindSpotsOf(parts.coverage),
    sure: parts.sure,
    bounds,
    budget: parts.budget,
    beatenStill: parts.still,
    beatenDrifting: parts.drifting,
  });
  try {
    await Promise.all([
      run(workers, project, routine, options, parts, done),
      certify(workers, project, routine, bounds, parts, options).then(() => done.set("sure coverage", 1)),
      beat(workers, project, routine, options, parts, done),
    ]);
    return known("done");
  } catch (reason) {
    if (!signal?.aborted) throw reason;
    return known("stopped");
  }
}

type Done = PartsDone<WeakPart>;

async function run(
  workers: Workers,
  project: Project,
  routine: Routine,
  { seed, trials, signal, gate }: WeaknessOptions,
  parts: Parts,
  done: Done,
): Promise<void> {
  let finished = 0;
  await inTurn(chunksOf(trials), async ({ from, to }) => {
    parts.batches.push(
      await workers.run(project, routine, { kind: "fates", seed, from, to }, { signal, gate }),
    );
    finished += to - from;
    done.set("runs", finished / trials);
  });
}

/** Few trials ask for a quick answer: then the search for layouts is short, too. */
async function beat(
  workers: Workers,
  project: Project,
  routine: Routine,
  { seed, trials, signal, gate }: WeaknessOptions,
  parts: Parts,
  done: Done,
): Promise<void> {
  await hardPlacements(workers, project, routine, {
    signal,
    gate,
    seed,
    restarts: Math.min(6, Math.max(2, Math.round(trials / 250))),
    ratingTrials: Math.min(200, Math.max(40, Math.round(trials / 10))),
    onFound: (still, drifting, doneFrac) => {
      parts.still = still;
      parts.drifting = drifting;
      done.set("worst placements", doneFrac);
    },
  });
}

interface Parts {
  readonly batches: FateBatch[];
  coverage: Coverage | null;
  sure: SureCoverage | null;
  budget: DriftBudget | null;
  still: readonly RatedPlacement[];
  drifting: readonly RatedPlacement[];
}

async function certify(
  workers: Workers,
  project: Project,
  routine: Routine,
  bounds: DriftBounds,
  parts: Parts,
  { signal, gate }: JobOptions,
): Promise<void> {
  const run = { signal, gate };
  // A routine that decides as it goes drives another path in every run: it covers nothing beforehand.
  if (routine.program !== undefined) return;
  const sure = workers.run(project, routine, { kind: "sure-coverage", bounds }, run);
  // Taken up below, but it may fail before that.
  sure.catch(() => {});
  const coverage = await workers.run(project, routine, { kind: "coverage" }, run);
  parts.coverage = coverage;
  const wantedFrac = BUDGET_FRAC * coverage.coverageFrac;
  const budget = await workers.run(project, routine, { kind: "drift-budget", bounds, wantedFrac }, run);
  parts.budget = budget;
  parts.sure = await sure;
}

/** @returns null without a trial */
export function failingsOf(
  project: Project,
  routine: Routine,
  batches: readonly FateBatch[],
): Failings | null {
  if (batches.length === 0) return null;
  const joined = joinFates(batches);
  // Each run of a program drives other moves; its lines are what they have in common.
  const fates = routine.program === undefined ? joined : { ...joined, lossMove: joined.lossLine };
  const { timeLimitS } = project.rules;
  let timeS = 0;
  const moveEndS = (routine.program === undefined ? routine.moves : []).map((move) => {
    timeS += moveDurationS(project.robot.drive, move);
    return timeS;
  });
  return {
    trials: fates.to - fates.from,
    balls: fates.balls,
    delivered: fates.loss.reduce((sum, code) => sum + (code === 0 ? 1 : 0), 0),
    losses: lossesByMove(fates),
    map: heatMap(fates, project.zone),
    time: timeToHome(
      fates,
      Math.max(1, routine.program === undefined ? Math.min(timeLimitS, timeS) : timeLimitS),
    ),
    stop: whenToStop(fates, moveEndS, timeLimitS),
  };
}

export function blindSpotsOf(coverage: Coverage | null): readonly BlindSpot[] {
  const [smallest] = coverage?.sizes ?? [];
  if (smallest === undefined) return [];
  const { diameterMm, blindSpots } = smallest;
  return roomiestCircles(blindSpots, BLIND_SPOTS, LEAST_SPOT_MM).map((circle) => ({ ...circle, diameterMm }));
}
