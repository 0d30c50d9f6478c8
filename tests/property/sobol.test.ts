import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { SOBOL_DIMENSIONS, sobol } from "../../src/num/sobol.kernel.ts";

/** Whether every box of 2^−j × 2^−(m−j) holds exactly one of the 2^m points: a (0, m, 2)-net in base 2. */
function isNet(points: readonly (readonly [number, number])[], m: number): boolean {
  for (let j = 0; j <= m; j++) {
    const boxes = new Set(
      points.map(([x, y]) => Math.floor(x * 2 ** j) * 2 ** (m - j) + Math.floor(y * 2 ** (m - j))),
    );
    if (boxes.size !== points.length) return false;
  }
  return true;
}

const seeds = fc.maxSafeNat();

describe("Sobol points", () => {
  // Sobol 1967; Niederreiter, Random number generation and quasi-Monte Carlo methods (1992), ch. 4: the first two dimensions are a
  // (0, 2)-sequence; Owen 1995: nested scrambling keeps that.
  test("2^m of them, from any multiple of 2^m on, are a net in the first two dimensions, scrambled or not", () => {
    fc.assert(
      fc.property(fc.nat(9), fc.nat(1000), fc.oneof(fc.constant(0), seeds), (m, start, seed) => {
        const points = Array.from({ length: 2 ** m }, (_, i) => {
          const index = start * 2 ** m + i;
          return [sobol(index, 0, seed), sobol(index, 1, seed)] as const;
        });
        expect(isNet(points, m)).toBe(true);
      }),
      { seed: 12, numRuns: 200 },
    );
  });

  test("2^m of them hit every interval of length 2^−m once, in every dimension", () => {
    fc.assert(
      fc.property(
        fc.nat(9),
        fc.nat(SOBOL_DIMENSIONS - 1),
        fc.nat(1000),
        seeds,
        (m, dimension, start, seed) => {
          const cells = Array.from({ length: 2 ** m }, (_, i) =>
            Math.floor(sobol(start * 2 ** m + i, dimension, seed) * 2 ** m),
          );
          expect(new Set(cells).size).toBe(2 ** m);
        },
      ),
      { seed: 13, numRuns: 200 },
    );
  });

  test("no two dimensions are the same, and different seeds scramble differently", () => {
    const column = (dimension: number, seed: number): string =>
      Array.from({ length: 64 }, (_, i) => sobol(i, dimension, seed)).join();
    const dimensions = Array.from({ length: SOBOL_DIMENSIONS }, (_, d) => d);
    for (const seed of [0, 5])
      expect(new Set(dimensions.map((d) => column(d, seed))).size).toBe(SOBOL_DIMENSIONS);
    const scrambles = [0, 1, 2, 2 ** 31, 2 ** 32, 2 ** 32 + 1, 2 ** 52].map((seed) => column(0, seed));
    expect(new Set(scrambles).size).toBe(scrambles.length);
  });

  test("scrambled, each point is uniform over the seeds: mean ½ and variance 1/12 within four standard errors", () => {
    for (const [index, dimension] of [
      [0, 0],
      [1, 3],
      [77, 1],
      [4096, 20],
    ] as const) {
      const values = Array.from({ length: 20_000 }, (_, seed) => sobol(index, dimension, seed + 1));
      const mean = values.reduce((sum, value) => sum + value, 0) / values.length;
      const variance = values.reduce((sum, value) => sum + (value - 0.5) ** 2, 0) / values.length;
      expect(Math.abs(mean - 0.5)).toBeLessThan((4 * Math.sqrt(1 / 12)) / Math.sqrt(20_000));
      expect(Math.abs(variance - 1 / 12)).toBeLessThan((4 * Math.sqrt(1 / 180)) / Math.sqrt(20_000));
    }
  });

  test("scrambled, they integrate a smooth function far better than chance", () => {
    // ∫ Π (1 + (x_i − ½)) over six dimensions = 1; plain chance errs by √((13/12)^6 − 1)/√1024 = 0.0245
    const errors = [1, 2, 3, 4, 5, 6, 7, 8].map((seed) => {
      let sum = 0;
      for (let i = 0; i < 1024; i++) {
        let product = 1;
        for (let d = 0; d < 6; d++) product *= 0.5 + sobol(i, d, seed);
        sum += product;
      }
      return sum / 1024 - 1;
    });
    const rms = Math.sqrt(errors.reduce((sum, error) => sum + error * error, 0) / errors.length);
    expect(rms).toBeLessThan(0.0245 / 10);
  });

  test("a dimension without direction numbers is refused", () => {
    expect(() => sobol(1, SOBOL_DIMENSIONS, 0)).toThrow(`Sobol dimension ${SOBOL_DIMENSIONS}`);
    expect(() => sobol(1, -1, 0)).toThrow(RangeError);
  });
});
