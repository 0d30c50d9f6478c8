import { describe, expect, test } from "vitest";
import { morrisDesign, morrisEffects } from "../../src/search/morris.ts";
import { shapleyValues } from "../../src/search/shapley.ts";
import { varianceDesign, varianceShares } from "../../src/search/sobolIndices.ts";

type Fn = (x: readonly number[]) => number;

function sharesOf(f: Fn, dimensions: number, rows: number, seed = 7) {
  const design = varianceDesign(dimensions, rows, seed);
  expect(design.points).toHaveLength(rows * (dimensions + 2));
  return varianceShares(design, design.points.map(f));
}

/** Every combination of one value from each list. */
function combinations(lists: readonly (readonly number[])[]): readonly (readonly number[])[] {
  return lists.reduce<readonly (readonly number[])[]>(
    (rows, list) => rows.flatMap((row) => list.map((value) => [...row, value])),
    [[]],
  );
}

/** The shares from chosen rows of both samples: with nodes of a closed quadrature for rows no chance is left in them. */
function sharesAt(f: Fn, first: readonly (readonly number[])[], second: readonly (readonly number[])[]) {
  const dimensions = first[0]?.length ?? 0;
  const mixed = Array.from({ length: dimensions }, (_, d) =>
    first.map((row, i) => row.map((value, k) => (k === d ? (second[i]?.[k] ?? 0) : value))),
  );
  const points = [...first, ...second, ...mixed.flat()];
  return varianceShares({ dimensions, rows: first.length, points }, points.map(f));
}

const ishigami: Fn = (u) => {
  const [a = 0, b = 0, c = 0] = u.map((value) => Math.PI * (2 * value - 1));
  return Math.sin(a) + 7 * Math.sin(b) ** 2 + 0.1 * c ** 4 * Math.sin(a);
};

/** Half widths of the six decimals that are printed. */
const SIX = 5e-7;

describe("variance-based indices", () => {
  // Ishigami and Homma (1990): f = sin x1 + 7 sin² x2 + 0.1 x3⁴ sin x1 on (−π, π)³; values from Saltelli et al., Global
  // Sensitivity Analysis: The Primer (2008), with V13 = 8·b²π⁸/225 (the printed one is wrong). references.md M4.1.
  const first = [0.313905, 0.442411, 0];
  const total = [0.557589, 0.442411, 0.243684];

  test("of Ishigami's function, by a closed quadrature", () => {
    // Even points on a circle are exact for sines and cosines of a degree below their number: 4 for sin², 5 for sin⁴. The
    // even moments 1/5 and 1/9 of u⁴ on (−1, 1) are those of 0, 0, and 0.4 ± √(2/9 − 0.16).
    const circle = (n: number): readonly number[] => Array.from({ length: n }, (_, i) => (i + 0.5) / n);
    const spread = Math.sqrt(2 / 9 - 0.16);
    const fourth = [0, 0, 0.4 - spread, 0.4 + spread].map((y) => (1 + Math.sqrt(Math.sqrt(y))) / 2);
    const nodes = combinations([circle(4), circle(5), fourth]);
    const shares = sharesAt(
      ishigami,
      nodes.flatMap((row) => nodes.map(() => row)),
      nodes.flatMap(() => nodes),
    );
    for (const [i, share] of shares.entries()) {
      expect(Math.abs(share.first.value - (first[i] ?? 9))).toBeLessThan(SIX);
      expect(Math.abs(share.total.value - (total[i] ?? 9))).toBeLessThan(SIX);
    }
  });

  // The tests of scipy, which has the same estimators, allow 0.01 at 4096 rows: what is printed for points that are drawn.
  test.each([1, 12, 100])("of Ishigami's function from drawn points, seed %i", (seed) => {
    const shares = sharesOf(ishigami, 3, 4096, seed);
    for (const [i, share] of shares.entries()) {
      expect(Math.abs(share.first.value - (first[i] ?? 9))).toBeLessThan(0.01);
      expect(Math.abs(share.total.value - (total[i] ?? 9))).toBeLessThan(0.01);
      expect(share.total.low).toBeLessThanOrEqual(share.total.value);
      expect(share.total.high).toBeGreaterThanOrEqual(share.total.value);
    }
  });

  test("have intervals that hold, from as few points as what to fix asks for", () => {
    // f = Σ c·u: V_i = c²/12, by hand; nothing acts together, so that alone and with others are the same share.
    const weights = [3, 2, 1];
    const whole = 9 + 4 + 1;
    let holds = 0;
    const seeds = 60;
    for (let seed = 1; seed <= seeds; seed++) {
      const design = varianceDesign(3, 32, seed);
      const values = design.points.map((u) => weights.reduce((sum, c, i) => sum + c * (u[i] ?? 0), 0));
      for (const [i, { total: share }] of varianceShares(design, values, seed).entries()) {
        const is = (weights[i] ?? 0) ** 2 / whole;
        if (share.low <= is && is <= share.high) holds++;
        expect(share.high - share.low).toBeLessThan(0.9);
      }
    }
    expect(holds / (3 * seeds)).toBeGreaterThan(0.92);
  });

  // Saltelli and Sobol (1995): g = Π (|4u − 2| + a)/(1 + a), V_i = 1/(3(1 + a_i)²), from memory, values recomputed. references.md M4.2.
  test("of the g-function with eight inputs, by a closed quadrature", () => {
    const a = [0, 1, 4.5, 9, 99, 99, 99, 99];
    const g: Fn = (u) =>
      u.reduce(
        (product, value, i) => (product * (Math.abs(4 * value - 2) + (a[i] ?? 0))) / (1 + (a[i] ?? 0)),
        1,
      );
    // |4u − 2| is even on (0, 2): its mean and mean square are those of 1 ± 1/√3, so that two nodes will do for each input. All
    // signs of the first six inputs of both samples; those of the other two are products of ten of them, and what that leaves
    // out is a product of ten amplitudes (the first four of both samples in it), below 1e-8.
    const signs = combinations(Array.from({ length: 12 }, () => [-1, 1]));
    const node = (sign: number): number => (3 + sign / Math.sqrt(3)) / 4;
    const product = (row: readonly number[], ...which: readonly number[]): number =>
      which.reduce((sign, i) => sign * (row[i] ?? 0), 1);
    const most = [0, 1, 2, 3, 6, 7, 8, 9];
    const shares = sharesAt(
      g,
      signs.map((row) =>
        [...row.slice(0, 6), product(row, ...most, 4, 10), product(row, ...most, 4, 5)].map(node),
      ),
      signs.map((row) =>
        [...row.slice(6), product(row, ...most, 5, 11), product(row, ...most, 10, 11)].map(node),
      ),
    );
    const printed = [
      [0.716192, 0.787144],
      [0.179048, 0.242198],
      [0.023676, 0.034317],
      [0.007162, 0.01046],
    ] as const;
    for (const [i, [one, all]] of printed.entries()) {
      expect(Math.abs((shares[i]?.first.value ?? 9) - one)).toBeLessThan(SIX);
      expect(Math.abs((shares[i]?.total.value ?? 9) - all)).toBeLessThan(SIX);
    }
    // Four like ones: V_i = 1/(3·100²) each of V = 0.465424, so 0.000072.
    for (const { first } of shares.slice(4)) expect(Math.abs(first.value - 0.000072)).toBeLessThan(SIX);
  });

  test("of a product: each alone explains nothing that one at a time could see, together all", () => {
    // f = (2u − 1)(2v − 1): V = 1/9, first order 0, total 1 each; by two nodes of Gauss for each, ±1/√3.
    const nodes = combinations([0, 1].map(() => [-1, 1].map((sign) => (1 + sign / Math.sqrt(3)) / 2)));
    const shares = sharesAt(
      ([u = 0, v = 0]) => (2 * u - 1) * (2 * v - 1),
      nodes.flatMap((row) => nodes.map(() => row)),
      nodes.flatMap(() => nodes),
    );
    for (const { first, total } of shares) {
      expect(first.value).toBeCloseTo(0, 12);
      expect(total.value).toBeCloseTo(1, 12);
    }
  });

  test("of a constant are zero", () => {
    for (const { first, total } of sharesOf(() => 4, 2, 64))
      expect([first.value, total.value]).toEqual([0, 0]);
  });
});

describe("elementary effects", () => {
  // Morris (1991): a linear function has the same effect everywhere.
  test("of a linear function are its slopes, without spread", () => {
    const design = morrisDesign(2, 10, 3);
    expect(design.points).toHaveLength(30);
    for (const value of design.points.flat()) expect(value >= 0 && value <= 1 + 1e-12).toBe(true);
    const [x, y] = morrisEffects(
      design,
      design.points.map(([a = 0, b = 0]) => 2 * a - 3 * b),
    );
    expect(x?.meanSize).toBeCloseTo(2, 12);
    expect(y?.meanSize).toBeCloseTo(3, 12);
    expect(y?.mean).toBeCloseTo(-3, 12);
    expect(x?.sd).toBeCloseTo(0, 12);
  });

  test("of a product spread, and their means hide them", () => {
    const design = morrisDesign(2, 200, 3);
    const [x] = morrisEffects(
      design,
      design.points.map(([a = 0, b = 0]) => (2 * a - 1) * (2 * b - 1)),
    );
    // At b = 0, 1/3, 2/3, 1 the slope is −2, −2/3, 2/3, 2: mean size 4/3, mean 0.
    expect(Math.abs((x?.meanSize ?? 0) - 4 / 3)).toBeLessThan(0.1);
    expect(Math.abs(x?.mean ?? 9)).toBeLessThan(0.25);
    expect(x?.sd).toBeGreaterThan(1);
  });
});

describe("what each player is worth", () => {
  // The glove game, Shapley (1953) in any textbook: one left glove (A), two right ones (B, C): 2/3, 1/6, 1/6.
  test("in the glove game", () => {
    const pairs = Array.from({ length: 8 }, (_, s) => ((s & 1) !== 0 && (s & 6) !== 0 ? 1 : 0));
    const worth = shapleyValues(pairs);
    expect(worth[0]).toBeCloseTo(2 / 3, 12);
    expect(worth[1]).toBeCloseTo(1 / 6, 12);
    expect(worth[2]).toBeCloseTo(1 / 6, 12);
  });

  test("adds up to the total, for up to ten", () => {
    let state = 1;
    const values = Array.from({ length: 1024 }, () => {
      state = (state * 16807) % 2147483647;
      return state / 2147483647;
    });
    const worth = shapleyValues(values);
    expect(worth).toHaveLength(10);
    const sum = worth.reduce((total, each) => total + each, 0);
    expect(sum).toBeCloseTo((values[1023] ?? 0) - (values[0] ?? 0), 12);
    expect(() => shapleyValues([1, 2, 3])).toThrow(RangeError);
    expect(() => shapleyValues(new Array(2048).fill(0))).toThrow(RangeError);
    expect(shapleyValues([5])).toEqual([]);
  });
});
