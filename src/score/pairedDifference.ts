import { type RateDifference, wilson } from "../num/interval.ts";

/** Trials that both routines ran, by who succeeded. */
export interface PairedCounts {
  readonly both: number;
  readonly onlyFirst: number;
  readonly onlySecond: number;
  readonly neither: number;
}

/**
 * First success rate minus second, on the same trials, with Newcombe's interval: the two Wilson intervals squared and
 * added, less what the two rates have in common (correlation φ, corrected for continuity where positive).
 * Without trials: 0 in [−1, 1].
 *
 * @throws RangeError for counts that are negative or not whole, or a confidence out of range
 * Source: Newcombe, Stat. Med. 17 (1998) 2635–2650, method 10. Checked in tests/published/paired.
 */
export function pairedDifference(counts: PairedCounts, confidence = 0.95): RateDifference {
  const { both, onlyFirst, onlySecond, neither } = counts;
  const trials = both + onlyFirst + onlySecond + neither;
  if (trials === 0) return { value: 0, low: -1, high: 1 };
  const first = wilson(both + onlyFirst, trials, confidence);
  const second = wilson(both + onlySecond, trials, confidence);
  const value = (onlyFirst - onlySecond) / trials;
  const phi = correlation(counts, trials);
  return {
    value,
    low: value - lengthLess(first.value - first.low, second.high - second.value, phi),
    high: value + lengthLess(first.high - first.value, second.value - second.low, phi),
  };
}

function correlation({ both, onlyFirst, onlySecond, neither }: PairedCounts, trials: number): number {
  // In two factors: the product of all four would leave the whole numbers that a double holds.
  const first = (both + onlyFirst) * (onlySecond + neither);
  const second = (both + onlySecond) * (onlyFirst + neither);
  if (first === 0 || second === 0) return 0;
  const cross = both * neither - onlyFirst * onlySecond;
  const corrected = cross > 0 ? Math.max(cross - trials / 2, 0) : cross;
  return corrected / Math.sqrt(first) / Math.sqrt(second);
}

function lengthLess(x: number, y: number, phi: number): number {
  return Math.sqrt(Math.max(0, x * x - 2 * phi * x * y + y * y));
}
