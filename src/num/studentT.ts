import { betaCdf } from "./beta.ts";
import { normalQuantile } from "./normal.ts";

/** Share of Student's t law above t ≥ 0: ½ I_x(ν/2, ½) with x = ν/(ν + t²). Abramowitz and Stegun 26.7.1, from memory. */
function upperTail(t: number, dof: number): number {
  return 0.5 * betaCdf(dof / (dof + t * t), dof / 2, 0.5);
}

/**
 * Quantile of Student's t law: the t below which the share p lies, to about 1e−12.
 *
 * @param p strictly between 0 and 1
 * @param dof degrees of freedom ν, positive
 * Checked in tests/published/smallSamples.
 */
export function studentQuantile(p: number, dof: number): number {
  if (p < 0.5) return -studentQuantile(1 - p, dof);
  if (p === 0.5) return 0;
  const tail = 1 - p;
  let low = 0;
  let high = Math.max(1, 2 * normalQuantile(p));
  while (upperTail(high, dof) > tail) high *= 2;
  // False position on the tail's reciprocal, which is far straighter than the tail; Illinois halving of a standing end.
  const off = (t: number): number => 1 / upperTail(t, dof) - 1 / tail;
  let atLow = off(low);
  let atHigh = off(high);
  let t = high;
  let side = 0;
  for (let step = 0; step < 200; step++) {
    const next = (low * atHigh - high * atLow) / (atHigh - atLow);
    if (Math.abs(next - t) <= 1e-13 * next) return next;
    t = next;
    const at = off(t);
    if (at < 0) {
      low = t;
      atLow = at;
      if (side < 0) atHigh *= 0.5;
      side = -1;
    } else {
      high = t;
      atHigh = at;
      if (side > 0) atLow *= 0.5;
      side = 1;
    }
  }
  return t;
}
