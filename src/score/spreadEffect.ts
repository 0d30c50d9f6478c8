import { drawSpread, SPREAD_FACTORS, type SpreadFactor } from "../trial/spread.ts";
import { leastSquares } from "./leastSquares.ts";
import type { StressSummary } from "./stress.ts";

/** How one unmeasured value moves the success rate. */
export interface FactorEffect {
  readonly factor: SpreadFactor;
  /** Success rate at the top of its range minus that at the bottom, all else drawn as usual; and its standard error. */
  readonly change: number;
  readonly changeSe: number;
}

/**
 * How much of what is not known about a success rate comes from values nobody measured, beside the number of runs.
 * samplingSd shrinks with more trials; modelSd does not: it shrinks only when somebody measures.
 */
export interface SpreadEffect {
  readonly samplingSd: number;
  /** Standard deviation of the success rate over the stated ranges, noise taken off. */
  readonly modelSd: number;
  /** modelSd² / (modelSd² + samplingSd²). */
  readonly modelShareFrac: number;
  readonly factors: readonly FactorEffect[];
}

/** Variance of a uniform number in (−1, 1). */
const UNIT_VARIANCE = 1 / 3;

/**
 * Regresses success (every ball home: 1, else 0) on what each trial drew for friction, rolling resistance and restitution.
 * Each slope's share of the variance, slope²/3, is taken less its own noise; sums below zero count as zero. Straight-line
 * effects only. null with too few trials.
 */
export function spreadEffect(
  seed: number,
  summary: Pick<StressSummary, "indices" | "delivered" | "deliveredCounts">,
): SpreadEffect | null {
  const { indices, delivered } = summary;
  const balls = summary.deliveredCounts.length - 1;
  const drawn = new Float64Array(SPREAD_FACTORS.length);
  const columns: number[][] = SPREAD_FACTORS.map(() => []);
  for (const index of indices) {
    drawSpread(seed, index, drawn);
    for (const [a, column] of columns.entries()) column.push(drawn[a] ?? 0);
  }
  const fit = leastSquares(
    columns,
    delivered.map((count) => (count === balls ? 1 : 0)),
  );
  if (fit === null) return null;
  const n = indices.length;
  const rate = delivered.filter((count) => count === balls).length / n;
  const samplingVariance = (rate * (1 - rate)) / n;
  const modelVariance = Math.max(
    0,
    fit.slopes.reduce(
      (sum, slope, a) => sum + UNIT_VARIANCE * (slope * slope - squared(fit.standardErrors[a] ?? 0)),
      0,
    ),
  );
  const total = modelVariance + samplingVariance;
  return {
    samplingSd: Math.sqrt(samplingVariance),
    modelSd: Math.sqrt(modelVariance),
    modelShareFrac: total === 0 ? 0 : modelVariance / total,
    factors: SPREAD_FACTORS.map((factor, a) => ({
      factor,
      change: 2 * (fit.slopes[a] ?? 0),
      changeSe: 2 * (fit.standardErrors[a] ?? 0),
    })),
  };
}

function squared(x: number): number {
  return x * x;
}
