import { chiSquareQuantile } from "../num/chiSquare.ts";
import { Moments } from "../num/moments.ts";
import { studentQuantile } from "../num/studentT.ts";

/** A measured quantity with its 95 % interval. */
export interface Estimate {
  readonly value: number;
  readonly low: number;
  readonly high: number;
  /** Standard error. */
  readonly se: number;
  readonly count: number;
}

/** Share on either side of an interval of 95 %. */
const TAIL = 0.025;

/** Value ± t·se. @param dof degrees of freedom, positive */
export function estimateOf(value: number, se: number, dof: number, count: number): Estimate {
  const half = studentQuantile(1 - TAIL, dof) * se;
  return { value, low: value - half, high: value + half, se, count };
}

/** Mean of repeated measurements, with Student's interval; null for fewer than two. */
export function meanOf(values: readonly number[]): Estimate | null {
  if (values.length < 2) return null;
  const moments = new Moments();
  for (const value of values) moments.add(value);
  return estimateOf(moments.mean, moments.standardError, values.length - 1, values.length);
}

/**
 * A standard deviation from a sum of squared residuals, with the chi-square interval (any statistics text).
 *
 * @param dof degrees of freedom, whole, positive
 */
export function spreadOf(squares: number, dof: number, count: number): Estimate {
  const value = Math.sqrt(squares / dof);
  return {
    value,
    low: Math.sqrt(squares / chiSquareQuantile(1 - TAIL, dof)),
    high: Math.sqrt(squares / chiSquareQuantile(TAIL, dof)),
    // The normal approximation σ/√(2ν); the interval above is the exact one.
    se: value / Math.sqrt(2 * dof),
    count,
  };
}

/** Scatter of repeated measurements about their mean; null for fewer than two. */
export function scatterOf(values: readonly number[]): Estimate | null {
  if (values.length < 2) return null;
  const moments = new Moments();
  for (const value of values) moments.add(value);
  return spreadOf(moments.variance * (values.length - 1), values.length - 1, values.length);
}

/** The same estimate of a rising function of the quantity (a falling one swaps the ends); the standard error by its slope. */
export function mapped(estimate: Estimate, to: (value: number) => number): Estimate {
  const [a, b] = [to(estimate.low), to(estimate.high)];
  const slope = (b - a) / (estimate.high - estimate.low || 1);
  return {
    value: to(estimate.value),
    low: Math.min(a, b),
    high: Math.max(a, b),
    se: Math.abs(slope) * estimate.se,
    count: estimate.count,
  };
}
