import type { Project } from "../model/project.ts";
import type { Routine } from "../model/routine.ts";
import type { RateDifference } from "../num/interval.ts";
import { Moments } from "../num/moments.ts";
import { studentQuantile } from "../num/studentT.ts";
import { compareRoutines, SIGNIFICANCE } from "../score/compare.ts";
import { type StressSummary, summarise } from "../score/stress.ts";
import type { RoutinePart } from "../search/routineParts.ts";
import { shapleyValues } from "../search/shapley.ts";
import type { TrialBatch } from "../trial/outcome.ts";
import type { Workers } from "./catalogue.ts";
import { CHUNK_TRIALS, chunksOf } from "./chunks.ts";
import { inTurn } from "./inTurn.ts";
import type { JobOptions } from "./jobOptions.ts";

/** What a part of a routine is worth. */
export interface PartWorth extends RoutinePart {
  /** Success rate of the whole routine minus that without this part alone; same trials. */
  readonly leaveOut: RateDifference;
  /** Its fair share of the balls home per run (Shapley): all shares add up to the whole routine less the way in alone. */
  readonly ballsShare: BallsShare;
}

/** Balls a run, with the 95 % interval (Student's t) of the mean over the runs. */
export interface BallsShare {
  readonly value: number;
  readonly low: number;
  readonly high: number;
}

export interface WorthOptions extends JobOptions {
  readonly seed: number;
  readonly trials: number;
  /** At most ten; every one doubles the work. */
  readonly most?: number;
  readonly onProgress?: (doneFrac: number) => void;
}

const MOST_PARTS = 5;
/** Trials of each combination, as a share of those of a change. */
const TRIALS_FRAC = 0.25;

/** Tries every combination of a routine's parts on the same trials. Empty where it cannot be cut in two. */
export async function partWorths(
  workers: Workers,
  project: Project,
  routine: Routine,
  { seed, trials, most = MOST_PARTS, onProgress, ...run }: WorthOptions,
): Promise<readonly PartWorth[]> {
  const { parts, variants } = await workers.run(project, routine, { kind: "parts", most }, run);
  if (parts.length < 2) {
    onProgress?.(1);
    return [];
  }
  const count = Math.max(20, Math.round(TRIALS_FRAC * trials));
  const batches: (readonly TrialBatch[])[] = [];
  const pieces = chunksOf(count, Math.max(1, Math.floor(CHUNK_TRIALS / variants.length)));
  // What is left out of a routine leaves what comes before it: all combinations are run together as far as they begin alike.
  await inTurn(pieces, async ({ from, to }) => {
    batches.push(await workers.run(project, variants, { kind: "family", seed, from, to }, run));
    onProgress?.(batches.length / pieces.length);
  });
  const summaries = variants.map((_, mask) =>
    summarise(batches.flatMap((each) => each.slice(mask, mask + 1))),
  );
  const shares = sharesOf(summaries, parts.length);
  const whole = summaries.at(-1);
  if (whole === undefined) return [];
  return parts.map((part, i) => {
    const without = summaries[(variants.length - 1) & ~(1 << i)] ?? whole;
    return {
      ...part,
      leaveOut: compareRoutines(whole, without).successDifference,
      ballsShare: shares[i] ?? { value: 0, low: 0, high: 0 },
    };
  });
}

/** Shapley values are sums of what combinations bring: so each run has its own, and their spread says how sure the mean is. */
function sharesOf(summaries: readonly StressSummary[], parts: number): readonly BallsShare[] {
  const moments = Array.from({ length: parts }, () => new Moments());
  const runs = summaries.at(-1)?.trials ?? 0;
  for (let run = 0; run < runs; run++) {
    const worths = shapleyValues(summaries.map(({ delivered }) => delivered[run] ?? 0));
    for (const [i, worth] of worths.entries()) moments[i]?.add(worth);
  }
  const quantile = runs < 2 ? 0 : studentQuantile(1 - SIGNIFICANCE / 2, runs - 1);
  return moments.map(({ mean: value, standardError }) => {
    const half = quantile * standardError;
    return { value, low: value - half, high: value + half };
  });
}
