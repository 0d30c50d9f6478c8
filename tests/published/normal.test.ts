import { describe, expect, test } from "vitest";
import { betaCdf, betaQuantile } from "../../src/num/beta.ts";
import { normalCdf, normalQuantile } from "../../src/num/normal.ts";

describe("normal quantile", () => {
  // Wichura, Applied Statistics 37 (1988) 477–484, the three values to test an implementation with (from memory; recomputed to 20
  // digits with an arbitrary-precision package).
  test.each([
    [0.25, -0.6744897501960817],
    [0.001, -3.0902323061678136],
    [1e-20, -9.262340089798409],
  ])("%s", (p, quantile) => {
    expect(Math.abs(normalQuantile(p) / quantile - 1)).toBeLessThan(1e-15);
  });

  test("is odd about one half and has the ends at infinity", () => {
    expect(normalQuantile(0.5)).toBe(0);
    for (const p of [2 ** -30, 0.0625, 0.25, 0.375]) expect(normalQuantile(1 - p)).toBe(-normalQuantile(p));
    expect([normalQuantile(0), normalQuantile(1)]).toEqual([-Infinity, Infinity]);
    expect([normalQuantile(-0.1), normalQuantile(1.1), normalQuantile(NaN)]).toEqual([NaN, NaN, NaN]);
  });
});

describe("normal distribution function", () => {
  // Abramowitz and Stegun, Table 26.1, 15 decimals (from memory; recomputed likewise).
  test.each([
    [0, 0.5],
    [1, 0.841344746068543],
    [2, 0.977249868051821],
    [3, 0.99865010196837],
  ])("at %s", (x, p) => {
    expect(normalCdf(x)).toBeCloseTo(p, 15);
    expect(normalCdf(-x)).toBeCloseTo(1 - p, 15);
  });

  // P(Z > 4) = 3.167124e−5, references.md M5.4; P(Z > 5) and P(Z > 10) recomputed with an arbitrary-precision package.
  test.each([
    [-4, 3.1671241833119924e-5],
    [-5, 2.866515718791939e-7],
    [-10, 7.619853024160525e-24],
  ])("at %s", (x, p) => {
    expect(Math.abs(normalCdf(x) / p - 1)).toBeLessThan(1e-15);
  });
});

describe("beta distribution", () => {
  // Uniform prior and 20 trials without a failure: Beta(1, 21), upper 95 % bound .132946. references.md M3.7.
  test("the bound after 20 clean trials", () => {
    expect(betaQuantile(0.95, 1, 21)).toBeCloseTo(0.132946, 6);
  });

  // I_x(1, b) = 1 − (1 − x)^b and I_x(a, 1) = x^a; DLMF 8.17.
  test("closed forms", () => {
    for (const x of [0.01, 0.3, 0.5, 0.9]) {
      for (const shape of [0.5, 1, 2, 7.25, 40]) {
        expect(betaCdf(x, shape, 1)).toBeCloseTo(x ** shape, 13);
        expect(betaCdf(x, 1, shape)).toBeCloseTo(1 - (1 - x) ** shape, 13);
      }
    }
  });
});
