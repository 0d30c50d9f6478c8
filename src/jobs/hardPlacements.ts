import type { Project } from "../model/project.ts";
import type { Routine } from "../model/routine.ts";
import type { PointMm } from "../model/zone.ts";
import { type Rate, wilson } from "../num/interval.ts";
import { SIGNIFICANCE } from "../score/compare.ts";
import { summarise } from "../score/stress.ts";
import { withoutDrift, withPlacement } from "../search/variant.ts";
import { type HardPlacement, type WorstEffort, worstPlacement } from "../search/worstPlacement.ts";
import type { Workers } from "./catalogue.ts";
import type { JobOptions } from "./jobOptions.ts";

/** A layout and how the routine does on it, scored anew on seeds that the search never saw. To be played: this placement, `seed`, any index. */
export interface RatedPlacement {
  readonly placement: readonly PointMm[];
  /** Seed of the runs that it is rated by; run 0 is the one without drift where that is asked about. */
  readonly seed: number;
  /** Balls home without drift. */
  readonly deliveredStill: number;
  /**
   * Share of runs with drift that bring every ball home, and balls home per run. The intervals of all searches of a kind hold
   * together in 95 of 100 (Bonferroni): so does that of the layout that is listed first for its rate.
   */
  readonly successRate: Rate;
  readonly meanDelivered: number;
}

export interface HardOptions extends JobOptions {
  readonly seed: number;
  readonly restarts?: number;
  readonly effort?: WorstEffort;
  readonly ratingTrials?: number;
  readonly onFound?:
    | ((still: readonly RatedPlacement[], drifting: readonly RatedPlacement[], doneFrac: number) => void)
    | undefined;
}

const RESTARTS = 6;
const EFFORT: WorstEffort = { population: 30, generations: 5 };
/** Trials a layout of the search is judged by when the robot drifts. */
const SEARCH_TRIALS = 4;
const RATING_TRIALS = 200;
/** Fresh seeds for the final figures: far from those of the search, and the same for both kinds. */
const FRESH_SEED_STEP = 104_729;
/** Layouts whose balls all lie nearer together than this are the same one, mm. */
const SAME_MM = 40;
/** Layouts listed of each kind. */
const LISTED = 5;

/**
 * Looks for layouts that beat a routine: without drift, and with it. Every generation of a search is a task of its own: the
 * result does not depend on the number of workers, and none is kept busy for long; what is found is scored on fresh seeds, and listed worst first.
 */
export async function hardPlacements(
  workers: Workers,
  project: Project,
  routine: Routine,
  options: HardOptions,
): Promise<{ readonly still: readonly RatedPlacement[]; readonly drifting: readonly RatedPlacement[] }> {
  const { seed, signal, gate, onFound } = options;
  const restarts = options.restarts ?? RESTARTS;
  const run = { signal, gate };
  const rated = new Map<
    string,
    { readonly still: boolean; readonly order: number; readonly entry: RatedPlacement }
  >();
  let done = 0;
  const lists = () => {
    const all = [...rated.values()].sort((a, b) => a.order - b.order);
    const of = (still: boolean) => all.filter((each) => each.still === still).map((each) => each.entry);
    const beaten = of(true).filter((entry) => entry.deliveredStill < entry.placement.length);
    return { still: worstFirst(beaten, byStill), drifting: worstFirst(of(false), byRate) };
  };
  const steady = withoutDrift(project);
  const search = async (restart: number, drifts: boolean): Promise<void> => {
    const laying = worstPlacement(project, { ...(options.effort ?? EFFORT), seed, restart, drifts });
    let step = laying.next();
    while (!step.done) {
      const trials = drifts ? SEARCH_TRIALS : 1;
      const task = { kind: "losses", placements: step.value, seed, trials } as const;
      step = laying.next(await workers.run(drifts ? project : steady, routine, task, run));
    }
    const found = step.value;
    if (found !== null) {
      const entry = await rate(workers, project, routine, found, options);
      rated.set(`${drifts} ${restart}`, { still: !drifts, order: restart, entry });
    }
    done++;
    const { still, drifting } = lists();
    onFound?.(still, drifting, done / (2 * restarts));
  };
  const tasks = Array.from({ length: restarts }, (_, restart) => [
    search(restart, false),
    search(restart, true),
  ]);
  await Promise.all(tasks.flat());
  return lists();
}

async function rate(
  workers: Workers,
  project: Project,
  routine: Routine,
  { placement }: HardPlacement,
  options: HardOptions,
): Promise<RatedPlacement> {
  const { signal, gate } = options;
  const seed = options.seed + FRESH_SEED_STEP;
  const laid = withPlacement(project, placement);
  const trials = options.ratingTrials ?? RATING_TRIALS;
  const run = { signal, gate };
  const [batch, still] = await Promise.all([
    workers.run(laid, routine, { kind: "stress", seed, from: 0, to: trials }, run),
    workers.run(withoutDrift(laid), routine, { kind: "stress", seed, from: 0, to: 1 }, run),
  ]);
  const { deliveredCounts, meanDelivered } = summarise([batch]);
  const confidence = 1 - SIGNIFICANCE / (options.restarts ?? RESTARTS);
  const successRate = wilson(deliveredCounts.at(-1) ?? 0, trials, confidence);
  return { placement, seed, deliveredStill: still.delivered[0] ?? 0, successRate, meanDelivered };
}

function byStill(a: RatedPlacement, b: RatedPlacement): number {
  return a.deliveredStill - b.deliveredStill || byRate(a, b);
}

function byRate(a: RatedPlacement, b: RatedPlacement): number {
  return a.successRate.value - b.successRate.value || a.meanDelivered - b.meanDelivered;
}

function worstFirst(
  entries: readonly RatedPlacement[],
  order: (a: RatedPlacement, b: RatedPlacement) => number,
): readonly RatedPlacement[] {
  const kept: RatedPlacement[] = [];
  for (const entry of [...entries].sort(order)) {
    if (!kept.some((other) => isSame(entry.placement, other.placement))) kept.push(entry);
  }
  return kept.slice(0, LISTED);
}

function isSame(a: readonly PointMm[], b: readonly PointMm[]): boolean {
  return a.every((point, i) => {
    const dx = point.xMm - (b[i]?.xMm ?? 0);
    const dy = point.yMm - (b[i]?.yMm ?? 0);
    return dx * dx + dy * dy < SAME_MM * SAME_MM;
  });
}
