import { betaCdf } from "./beta.ts";

/**
 * Exact two-sided McNemar test for two routines run on the same trials: could the trials on which they differ have fallen like fair coins?
 *
 * @param onlyFirst trials that only the first one won, whole number
 * @param onlySecond trials that only the second one won, whole number
 * @returns the p-value in (0, 1]; 1 when they never differ
 * @throws RangeError for counts that are negative or not whole
 * Source: two-sided binomial test at ½ on the discordant pairs, twice the smaller tail. Checked in tests/published/intervals.
 */
export function mcnemarExact(onlyFirst: number, onlySecond: number): number {
  if (!(Number.isInteger(onlyFirst) && Number.isInteger(onlySecond) && onlyFirst >= 0 && onlySecond >= 0)) {
    throw new RangeError(
      `differing trials ${onlyFirst} and ${onlySecond}; expected whole numbers, at least 0`,
    );
  }
  const fewer = Math.min(onlyFirst, onlySecond);
  const more = Math.max(onlyFirst, onlySecond);
  if (fewer === more) return 1;
  // P(at most `fewer` heads in fewer + more throws) = I_½(more, fewer + 1)
  return Math.min(1, 2 * betaCdf(0.5, more, fewer + 1));
}
