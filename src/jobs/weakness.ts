import type { Project } from "../model/project.ts";
import type { Routine } from "../model/routine.ts";
import type { Coverage } from "../score/coverage.ts";
import { type DriftBounds, driftBounds } from "../score/driftBounds.ts";
import { type DriftBudget, driftBudget } from "../score/driftBudget.ts";
import type { SureCoverage } from "../score/sureCoverage.ts";
import type { FateBatch } from "../trial/fates.ts";
import type { BlindSpot } from "./blindSpots.ts";
import type { Workers } from "./catalogue.ts";
import { type Chunk, chunksOf, unbroken } from "./chunks.ts";
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
  /** Told what is known so far, as if the job had been stopped there: after the first runs, and whenever a part has ended. */
  readonly onKnown?: ((soFar: Weakness) => void) | undefined;
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
  const { signal, onKnown } = options;
  const bounds = driftBounds(project.robot.drift, SURE_SDS);
  const parts: Parts = {
    batches: [],
    failings: null,
    coverage: null,
    blindSpots: [],
    sure: null,
    budget: null,
    still: [],
    drifting: [],
  };
  const done = new PartsDone<WeakPart>(SHARES, options.onProgress);
  const known = (status: Weakness["status"]): Weakness => ({
    status,
    failings: parts.failings,
    coverage: parts.coverage,
    blindSpots: parts.blindSpots,
    sure: parts.sure,
    bounds,
    budget: parts.budget,
    beatenStill: parts.still,
    beatenDrifting: parts.drifting,
  });
  const tell = onKnown && (() => onKnown(known("stopped")));
  try {
    await Promise.all([
      run(workers, project, routine, options, parts, done, tell),
      certify(workers, project, routine, bounds, parts, options, tell).then(() =>
        done.set("sure coverage", 1),
      ),
      beat(workers, project, routine, options, parts, done, tell),
    ]);
    return known("done");
  } catch (reason) {
    if (!signal?.aborted) throw reason;
    parts.failings = await toldBy(workers, project, routine, unbroken(parts.batches));
    return known("stopped");
  }
}

type Tell = (() => void) | undefined;

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
  tell: Tell,
): Promise<void> {
  let finished = 0;
  // Ahead of whatever else is under way: it is what somebody waits for.
  const options = { signal, gate, urgent: true };
  const digest = async (): Promise<void> => {
    const failings = await toldBy(workers, project, routine, unbroken(parts.batches));
    if (signal?.aborted) return;
    parts.failings = failings;
    tell?.();
  };
  const look = async ({ from, to }: Chunk): Promise<void> => {
    parts.batches.push(await workers.run(project, routine, { kind: "fates", seed, from, to }, options));
    finished += to - from;
    done.set("runs", finished / trials);
  };
  const [first, ...others] = chunksOf(trials);
  if (first) await look(first);
  if (tell) await digest();
  await inTurn(others, look);
  await digest();
}

/** Few trials ask for a quick answer: then the search for layouts is short, too. */
async function beat(
  workers: Workers,
  project: Project,
  routine: Routine,
  { seed, trials, signal, gate }: WeaknessOptions,
  parts: Parts,
  done: Done,
  tell: Tell,
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
      tell?.();
    },
  });
}

interface Parts {
  readonly batches: FateBatch[];
  failings: Failings | null;
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
  tell: Tell,
): Promise<void> {
  const run = { signal, gate };
  // A routine that decides as it goes drives another path in every run: it covers nothing beforehand.
  if (routine.program !== undefined) return;
  const sure = workers.run(project, routine, { kind: "sure-coverage", bounds }, run);
  // Taken up below, but it may fail before that.
  sure.catch(() => {});
  const coverage = await workers.run(project, routine, { kind: "coverage" }, run);
  parts.coverage = coverage;
  tell?.();
  const [smallest] = coverage.sizes;
  if (smallest) {
    const { blindSpots: region, diameterMm } = smallest;
    parts.blindSpots = await workers.run(project, routine, { kind: "blind-spots", region, diameterMm }, run);
  }
  const wantedFrac = BUDGET_FRAC * coverage.coverageFrac;
  parts.sure = await sure;
  tell?.();
  // Step by step: one task of a second or two would keep a worker from whatever is asked for next.
  const search = driftBudget(bounds, wantedFrac);
  let step = search.next();
  while (!step.done) {
    const task = { kind: "sure-share", bounds: step.value } as const;
    step = search.next(await workers.run(project, routine, task, run));
  }
  parts.budget = step.value;
  tell?.();
}
