import { mcnemarExact } from "../num/mcnemar.ts";
import { Moments } from "../num/moments.ts";
import { normalCdf } from "../num/normal.ts";
import { SIGNIFICANCE } from "../score/compare.ts";

/**
 * Two-sided p-value of equal means, on the same trials: McNemar's exact test where every score is 0 or 1, else the
 * paired mean against its standard error (normal, for the many trials of a race).
 */
export function pairedPValue(first: ArrayLike<number>, second: ArrayLike<number>): number {
  const trials = Math.min(first.length, second.length);
  const moments = new Moments();
  let onlyFirst = 0;
  let onlySecond = 0;
  let binary = true;
  for (let t = 0; t < trials; t++) {
    const a = first[t] ?? 0;
    const b = second[t] ?? 0;
    moments.add(a - b);
    if (a - b === 1) onlyFirst++;
    else if (a - b === -1) onlySecond++;
    else if (a !== b) binary = false;
  }
  if (binary) return mcnemarExact(onlyFirst, onlySecond);
  if (moments.standardError === 0) return moments.mean === 0 ? 1 : 0;
  return Math.min(1, 2 * normalCdf(-Math.abs(moments.mean) / moments.standardError));
}

/** Whether the trials do not tell two routines apart. */
export function isTie(first: ArrayLike<number>, second: ArrayLike<number>): boolean {
  return pairedPValue(first, second) >= SIGNIFICANCE;
}
