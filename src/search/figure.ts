import { type Rate, wilson } from "../num/interval.ts";
import { Moments } from "../num/moments.ts";
import { normalQuantile } from "../num/normal.ts";

const CONFIDENCE = 0.95;

/**
 * Mean of scores in [0, 1] with its 95 % interval: Wilson's where every score is 0 or 1, else the mean and its standard
 * error (normal, for the many trials of a race), cut off at 0 and 1.
 */
export function figureOf(scores: ArrayLike<number>): Rate {
  const moments = new Moments();
  let isBinary = true;
  let ones = 0;
  for (let t = 0; t < scores.length; t++) {
    const score = scores[t] ?? 0;
    moments.add(score);
    if (score === 1) ones++;
    else if (score !== 0) isBinary = false;
  }
  if (isBinary) return wilson(ones, scores.length, CONFIDENCE);
  const half = normalQuantile(0.5 + CONFIDENCE / 2) * moments.standardError;
  const { mean: value } = moments;
  return { value, low: Math.max(0, value - half), high: Math.min(1, value + half), trials: scores.length };
}
