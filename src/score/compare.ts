import type { RateDifference } from "../num/interval.ts";
import { mcnemarExact } from "../num/mcnemar.ts";
import { Moments } from "../num/moments.ts";
import { type PairedCounts, pairedDifference } from "./pairedDifference.ts";
import type { StressSummary } from "./stress.ts";

/** What a comparison needs of a stress test. */
export type PairedTrials = Pick<StressSummary, "indices" | "delivered" | "deliveredCounts">;

export interface Comparison extends PairedCounts {
  /** Trials that both have run. */
  readonly trials: number;
  /** First success rate minus second, with its 95 % interval. */
  readonly successDifference: RateDifference;
  /** Exact McNemar test of equal success rates, two-sided. */
  readonly pValue: number;
  /** Balls delivered per trial, first minus second, and the standard error of that mean. */
  readonly meanDeliveredDifference: number;
  readonly meanDeliveredDifferenceSe: number;
  /** alike: the test does not tell them apart. */
  readonly better: "first" | "second" | "alike";
}

/** Two routines are called different when equal ones would look this different less often. Common practice, no source. */
export const SIGNIFICANCE = 0.05;

/**
 * Two routines on the trials that both have run: same placements, same drift and spread, so that what they share cancels.
 * Only meaningful for stress tests of one project with one seed.
 *
 * @throws RangeError if the two were not run with the same number of balls
 */
export function compareRoutines(first: PairedTrials, second: PairedTrials): Comparison {
  const pairs = commonTrials(first, second);
  const balls = ballsOf(first, second);
  const counts = { both: 0, onlyFirst: 0, onlySecond: 0, neither: 0 };
  const moments = new Moments();
  for (const [a, b] of pairs) {
    if (a === balls) counts[b === balls ? "both" : "onlyFirst"]++;
    else counts[b === balls ? "onlySecond" : "neither"]++;
    moments.add(a - b);
  }
  const pValue = mcnemarExact(counts.onlyFirst, counts.onlySecond);
  const ahead = counts.onlyFirst > counts.onlySecond ? "first" : "second";
  return {
    ...counts,
    trials: pairs.length,
    successDifference: pairedDifference(counts),
    pValue,
    meanDeliveredDifference: moments.mean,
    meanDeliveredDifferenceSe: moments.standardError,
    better: pValue < SIGNIFICANCE ? ahead : "alike",
  };
}

function ballsOf(first: PairedTrials, second: PairedTrials): number {
  const balls = first.deliveredCounts.length - 1;
  const others = second.deliveredCounts.length - 1;
  if (balls === others || first.indices.length === 0 || second.indices.length === 0) return balls;
  throw new RangeError(`trials with ${balls} and with ${others} balls; expected the same project`);
}

/** Balls delivered by the first and by the second, trial by trial. */
function commonTrials(first: PairedTrials, second: PairedTrials): readonly (readonly [number, number])[] {
  const ofSecond = new Map(second.indices.map((index, i) => [index, second.delivered[i] ?? 0]));
  return first.indices.flatMap((index, i) => {
    const other = ofSecond.get(index);
    return other === undefined ? [] : [[first.delivered[i] ?? 0, other] as const];
  });
}
