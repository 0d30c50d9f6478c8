import { mcnemarExact } from "../num/mcnemar.ts";
import { type Comparison, compareRoutines, type PairedTrials, SIGNIFICANCE } from "../score/compare.ts";
import { Wager } from "./wager.ts";

const RUNS_TOLD = 5;

/** Normal quantiles: 5 % two-sided, and the chance of 90 % that so many trials do settle it. */
const Z_ERROR = 1.959964;
const Z_POWER = 1.281552;

/** What trials on the same placements and luck say about two routines. */
export interface PairVerdict {
  readonly comparison: Comparison;
  /** Odds against the first (the second) not being better: largest so far, so that one may look at any time. */
  readonly evidenceFirst: number;
  readonly evidenceSecond: number;
  /** Said in at most 5 of 100 comparisons of equals, however often one looks and whenever one stops. */
  readonly settled: "first" | "second" | null;
  /** The first few runs that only the first (the second) brought all home: to be played. */
  readonly onlyFirstRuns: readonly number[];
  readonly onlySecondRuns: readonly number[];
  /** Trials that would still be needed if the difference seen is the true one; null where none has been seen. */
  readonly moreTrials: number | null;
}

/** @throws RangeError if the two were not run with the same number of balls */
export function pairVerdict(first: PairedTrials, second: PairedTrials): PairVerdict {
  const comparison = compareRoutines(first, second);
  const balls = Math.max(first.deliveredCounts.length, second.deliveredCounts.length) - 1;
  const ofSecond = new Map(second.indices.map((index, i) => [index, second.delivered[i] ?? 0]));
  const forFirst = new Wager();
  const forSecond = new Wager();
  const onlyFirstRuns: number[] = [];
  const onlySecondRuns: number[] = [];
  for (const [i, index] of first.indices.entries()) {
    const other = ofSecond.get(index);
    if (other === undefined) continue;
    const difference = Number(first.delivered[i] === balls) - Number(other === balls);
    if (difference === 0) continue;
    forFirst.add(difference);
    forSecond.add(-difference);
    const runs = difference > 0 ? onlyFirstRuns : onlySecondRuns;
    if (runs.length < RUNS_TOLD) runs.push(index);
  }
  const evidenceFirst = forFirst.evidence;
  const evidenceSecond = forSecond.evidence;
  const settled = settledBy(evidenceFirst, evidenceSecond);
  return {
    ...{ comparison, evidenceFirst, evidenceSecond, settled, onlyFirstRuns, onlySecondRuns },
    moreTrials: moreTrials(comparison),
  };
}

/** Half of the error for either side (Ville; wager.ts). */
function settledBy(evidenceFirst: number, evidenceSecond: number): PairVerdict["settled"] {
  if (Math.max(evidenceFirst, evidenceSecond) < 2 / SIGNIFICANCE) return null;
  return evidenceFirst >= evidenceSecond ? "first" : "second";
}

/**
 * Trials for McNemar's test to find the difference seen with 90 % chance, less those there are:
 * N = (z_error·√p + z_power·√(p − d²))² / d², p the share of trials that differ, d the difference. After a handful of trials
 * that is fewer than the exact test can be content with at all (six that differ, all one way): then as many as it needs.
 *
 * Source: Connor, Biometrics 43 (1987) 207–211; from memory.
 */
export function moreTrials({ onlyFirst, onlySecond, trials }: Comparison): number | null {
  if (trials === 0 || onlyFirst === onlySecond) return null;
  const differing = (onlyFirst + onlySecond) / trials;
  const d = (onlyFirst - onlySecond) / trials;
  const root = Z_ERROR * Math.sqrt(differing) + Z_POWER * Math.sqrt(Math.max(0, differing - d * d));
  let needed = Math.max(trials, Math.ceil((root * root) / (d * d)));
  const isContent = (): boolean =>
    mcnemarExact(Math.floor((needed * onlyFirst) / trials), Math.floor((needed * onlySecond) / trials)) <
    SIGNIFICANCE;
  while (!isContent()) needed = Math.ceil(1.05 * needed);
  return needed - trials;
}
