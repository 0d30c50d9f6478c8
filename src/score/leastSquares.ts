/**
 * Ordinary least squares with an intercept, by the normal equations of the centred columns; for a few well-conditioned columns.
 *
 * @param columns one array per regressor, all as long as `y`
 * @returns slopes and their standard errors, in the order of the columns; null with too few rows or a column that does not vary
 * Source: any statistics text; checked in tests/unit/score/leastSquares against a worked line.
 */
export interface Fit {
  readonly slopes: readonly number[];
  readonly standardErrors: readonly number[];
}

export function leastSquares(columns: readonly (readonly number[])[], y: readonly number[]): Fit | null {
  const n = y.length;
  const p = columns.length;
  if (n <= p + 1) return null;
  const means = columns.map(meanOf);
  const meanY = meanOf(y);
  const centred = columns.map((column, a) => column.map((value) => value - (means[a] ?? 0)));
  const target = y.map((value) => value - meanY);
  const inverse = invert(centred.map((one) => centred.map((two) => dot(one, two))));
  if (inverse === null) return null;
  const moments = centred.map((column) => dot(column, target));
  const slopes = inverse.map((row) => dot(row, moments));
  let residual = 0;
  for (let i = 0; i < n; i++) {
    let fitted = 0;
    for (let a = 0; a < p; a++) fitted += (slopes[a] ?? 0) * (centred[a]?.[i] ?? 0);
    const left = (target[i] ?? 0) - fitted;
    residual += left * left;
  }
  const variance = residual / (n - p - 1);
  return {
    slopes,
    standardErrors: inverse.map((row, a) => Math.sqrt(Math.max(0, variance * (row[a] ?? 0)))),
  };
}

function meanOf(values: readonly number[]): number {
  return values.reduce((sum, value) => sum + value, 0) / Math.max(1, values.length);
}

function dot(a: readonly number[], b: readonly number[]): number {
  return a.reduce((sum, value, i) => sum + value * (b[i] ?? 0), 0);
}

/** A column whose part not explained by the others is smaller than this share of itself counts as one that does not vary. */
const SINGULAR = 1e-10;

/** Gauss–Jordan on a symmetric positive matrix; null if it is singular. */
function invert(matrix: readonly (readonly number[])[]): number[][] | null {
  const size = matrix.length;
  const work = matrix.map((row, i) => [...row, ...row.map((_, j) => (i === j ? 1 : 0))]);
  for (let k = 0; k < size; k++) {
    const pivotRow = work[k];
    const pivot = pivotRow?.[k] ?? 0;
    if (!pivotRow || !(pivot > SINGULAR * (matrix[k]?.[k] ?? 0)) || pivot <= 0) return null;
    for (let j = 0; j < 2 * size; j++) pivotRow[j] = (pivotRow[j] ?? 0) / pivot;
    for (const row of work) {
      if (row === pivotRow) continue;
      const factor = row[k] ?? 0;
      for (let j = 0; j < 2 * size; j++) row[j] = (row[j] ?? 0) - factor * (pivotRow[j] ?? 0);
    }
  }
  return work.map((row) => row.slice(size));
}
