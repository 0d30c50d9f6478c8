import { exp, log } from "./elementary.ts";

const HALF_LOG_PI = 0.5 * log(Math.PI);
/** The series stops when a term no longer changes the sum. */
const MAX_TERMS = 10_000;

/** ln Γ(1 + n/2) for a whole n ≥ 0, by the recurrence from Γ(1) = 1 or Γ(½) = √π. */
function logGammaHalf(n: number): number {
  let sum = n % 2 === 0 ? 0 : HALF_LOG_PI;
  for (let z = n % 2 === 0 ? 1 : 0.5; z <= n / 2; z++) sum += log(z);
  return sum;
}

/**
 * Share of the chi-square law below x: the regularised lower incomplete gamma function P(ν/2, x/2), by its power series.
 *
 * @param x non-negative
 * @param dof degrees of freedom ν, whole, 1 … 1000
 * Source: Abramowitz and Stegun 6.5.29, from memory. Checked in tests/published/smallSamples and tests/reference/distributions.
 */
export function chiSquareCdf(x: number, dof: number): number {
  if (x <= 0) return 0;
  const a = dof / 2;
  const half = x / 2;
  let term = 1;
  let sum = 1;
  for (let n = 1; n < MAX_TERMS && term > sum * 1e-17; n++) {
    term *= half / (a + n);
    sum += term;
  }
  return Math.min(1, sum * exp(a * log(half) - half - logGammaHalf(dof)));
}

/** The x below which the share p of the chi-square law lies, to about 1e−13 of it. @param p strictly between 0 and 1 */
export function chiSquareQuantile(p: number, dof: number): number {
  let low = 0;
  let high = dof;
  while (chiSquareCdf(high, dof) < p) high *= 2;
  let x = Math.min(high, dof);
  // Newton steps, kept between bounds that close in; a step that leaves them is replaced by a halving.
  for (let step = 0; step < 200; step++) {
    const excess = chiSquareCdf(x, dof) - p;
    if (excess > 0) high = x;
    else low = x;
    const newton = x - excess / density(x, dof);
    const next = newton > low && newton < high ? newton : (low + high) / 2;
    if (Math.abs(next - x) <= 1e-13 * x) return next;
    x = next;
  }
  return x;
}

function density(x: number, dof: number): number {
  const a = dof / 2;
  return (a / x) * exp(a * log(x / 2) - x / 2 - logGammaHalf(dof));
}
