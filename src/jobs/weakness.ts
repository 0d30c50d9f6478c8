import type { Project } from "../model/project.ts";
import type { Routine } from "../model/routine.ts";
import type { Coverage } from "../score/coverage.ts";
import { type DriftBounds, driftBounds } from "../score/driftBounds.ts";
import type { DriftBudget } from "../score/driftBudget.ts";
import type { SureCoverage } from "../score/sureCoverage.ts";
import type { FateBatch } from "../trial/fates.ts";
import type { BlindSpot } from "./blindSpots.ts";
import type { Workers } from "./catalogue.ts";
import { chunksOf, unbroken } from "./chunks.ts";
import type { Failings } from "./failings.ts";
import { hardPlacements, type RatedPlacement } from "./hardPlacements.ts";
import { inTurn } from "./inTurn.ts";
import type { JobOptions } from "./jobOptions.ts";
import { PartsDone } from "./partsDone.ts";

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
  const parts: Parts = {
    batches: [],
    coverage: null,
    blindSpots: [],
    sure: null,
    budget: null,
    still: [],
    drifting: [],
  };
  const done = new PartsDone<WeakPart>(SHARES, options.onProgress);
  const known = async (status: Weakness["status"]): Promise<Weakness> => ({
    status,
    failings: await toldBy(workers, project, routine, unbroken(parts.batches)),
    coverage: parts.coverage,
    blindSpots: parts.blindSpots,
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
    return await known("done");
  } catch (reason) {
    if (!signal?.aborted) throw reason;
    return await known("stopped");
  }
}

type Done = PartsDone<WeakPart>;

/** What was known when the job was stopped is told all the same, so without its signal. */
async function toldBy(
  workers: Workers,
  project: Project,
  routine: Routine,
  batches: readonly FateBatch[],
): Promise<Failings | null> {
  if (batches.length === 0) return null;
  return workers.run(project, routine, { kind: "failings", batches }, { urgent: true });
}

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
  blindSpots: readonly BlindSpot[];
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
  const [smallest] = coverage.sizes;
  if (smallest) {
    const { blindSpots: region, diameterMm } = smallest;
    parts.blindSpots = await workers.run(project, routine, { kind: "blind-spots", region, diameterMm }, run);
  }
  const wantedFrac = BUDGET_FRAC * coverage.coverageFrac;
  const budget = await workers.run(project, routine, { kind: "drift-budget", bounds, wantedFrac }, run);
  parts.budget = budget;
  parts.sure = await sure;
}
