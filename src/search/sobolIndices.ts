import { sobol } from "../num/sobol.kernel.ts";
import { RandomStream } from "../num/stream.ts";

/** Points at which a function is asked for to split its variance: two samples of n rows, and for each input the first with that input from the second. */
export interface VarianceDesign {
  readonly dimensions: number;
  readonly rows: number;
  /** rows · (dimensions + 2) points in the unit cube: A, B, then A with input 0 from B, … */
  readonly points: readonly (readonly number[])[];
}

export interface IndexEstimate {
  readonly value: number;
  /** 95 % by the bootstrap over rows. */
  readonly low: number;
  readonly high: number;
}

export interface VarianceShare {
  /** Share of the variance that would vanish if this input alone were known. */
  readonly first: IndexEstimate;
  /** Share that would be left if all others were known: acting together with others counts. */
  readonly total: IndexEstimate;
}

const RESAMPLES = 200;
const BOOTSTRAP_STREAM = 3_000_000_200;

/** @param rows a power of two for even points; @param seed scrambles them */
export function varianceDesign(dimensions: number, rows: number, seed: number): VarianceDesign {
  const sample = (offset: number): number[][] =>
    Array.from({ length: rows }, (_, i) =>
      Array.from({ length: dimensions }, (_, d) => sobol(i, offset + d, seed + 1)),
    );
  const a = sample(0);
  const b = sample(dimensions);
  const mixed = Array.from({ length: dimensions }, (_, d) =>
    a.map((row, i) => row.map((value, k) => (k === d ? (b[i]?.[k] ?? 0) : value))),
  );
  return { dimensions, rows, points: [...a, ...b, ...mixed.flat()] };
}

/**
 * Variance-based indices: first order by Saltelli's estimator mean(f_B·(f_ABi − f_A))/V, total by Jansen's
 * mean((f_A − f_ABi)²)/(2V). All zero where the function does not vary.
 *
 * @param values result at each point of the design, in its order
 * Source: Saltelli et al., Computer Physics Communications 181 (2010) 259–270, table 2 (b) and (f). Checked against Ishigami's
 * function and the g-function in tests/published/sensitivity.
 */
export function varianceShares(
  { dimensions, rows }: VarianceDesign,
  values: readonly number[],
  seed = 1,
): readonly VarianceShare[] {
  // Centred values: the estimator of the first order has less noise then.
  const both = values.slice(0, 2 * rows);
  const centre = both.reduce((sum, value) => sum + value, 0) / Math.max(1, both.length);
  const f = values.map((value) => value - centre);
  const all = Array.from({ length: rows }, (_, i) => i);
  const whole = estimate(f, rows, dimensions, all);
  const stream = new RandomStream();
  const resampled = Array.from({ length: RESAMPLES }, (_, k) => {
    stream.open(seed, k, BOOTSTRAP_STREAM);
    return estimate(
      f,
      rows,
      dimensions,
      all.map(() => stream.below(rows)),
    );
  });
  return whole.map((share, d) => ({
    first: withInterval(
      share.first,
      resampled.map((each) => each[d]?.first ?? 0),
    ),
    total: withInterval(
      share.total,
      resampled.map((each) => each[d]?.total ?? 0),
    ),
  }));
}

interface Shares {
  readonly first: number;
  readonly total: number;
}

function estimate(
  f: readonly number[],
  rows: number,
  dimensions: number,
  picked: readonly number[],
): readonly Shares[] {
  let sum = 0;
  let squares = 0;
  for (const i of picked) {
    for (const value of [f[i] ?? 0, f[rows + i] ?? 0]) {
      sum += value;
      squares += value * value;
    }
  }
  const mean = sum / (2 * picked.length);
  const variance = squares / (2 * picked.length) - mean * mean;
  return Array.from({ length: dimensions }, (_, d) => {
    let first = 0;
    let total = 0;
    for (const i of picked) {
      const a = f[i] ?? 0;
      const mixed = f[(2 + d) * rows + i] ?? 0;
      first += (f[rows + i] ?? 0) * (mixed - a);
      total += (a - mixed) * (a - mixed);
    }
    if (!(variance > 1e-15)) return { first: 0, total: 0 };
    return { first: first / picked.length / variance, total: total / (2 * picked.length * variance) };
  });
}

function withInterval(value: number, resampled: readonly number[]): IndexEstimate {
  const sorted = [...resampled].sort((a, b) => a - b);
  const at = (share: number): number => sorted[Math.round(share * (sorted.length - 1))] ?? value;
  return { value, low: at(0.025), high: at(0.975) };
}
