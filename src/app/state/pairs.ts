import { comparePair, type Side } from "../../jobs/comparing.ts";
import type { PairVerdict } from "../../search/pairVerdict.ts";
import { Finder } from "./finder.svelte.ts";
import type { Workers } from "./workers.ts";

/** Which of two routines or robots is better, on the same placements and luck. */
export type PairFinder = Finder<
  [sides: () => Promise<readonly [Side, Side]>, seed: number, trials: number],
  PairVerdict
>;

export function pairFinder(pool: Workers): PairFinder {
  return new Finder(async ({ onProgress, ...course }, sidesOf, seed, trials) => {
    const told = { ...course, onProgress: (done: number) => onProgress(done / (2 * trials)) };
    const { status, verdict } = await comparePair(pool, await sidesOf(), { seed, trials, ...told });
    return { result: verdict, status };
  });
}
