import fc from "fast-check";
import jstat from "jstat";
import { describe, expect, test } from "vitest";
import { RandomStream } from "../../src/num/stream.ts";

const SEED = 20260;

/** Chi-square statistic of counts that should all be equal. */
function chiSquare(counts: ArrayLike<number>, total: number): number {
  const expected = total / counts.length;
  return Array.from(counts).reduce((sum, count) => sum + (count - expected) ** 2 / expected, 0);
}

/** Both tails: too even is as suspicious as too uneven. With a fixed seed the outcome is fixed; one in 500 would fail by chance. */
function expectPlausible(statistic: number, degrees: number): void {
  const p = jstat.jStat.chisquare.cdf(statistic, degrees);
  expect(p).toBeGreaterThan(0.001);
  expect(p).toBeLessThan(0.999);
}

describe("uniform numbers", () => {
  test("fill 256 cells evenly along one stream", () => {
    const stream = new RandomStream().open(SEED, 0, 0);
    const counts = new Uint32Array(256);
    for (let i = 0; i < 100_000; i++) counts[Math.floor(stream.uniform() * 256)]! += 1;
    expectPlausible(chiSquare(counts, 100_000), 255);
  });

  test("have even low bits too", () => {
    const stream = new RandomStream().open(SEED, 1, 0);
    const counts = new Uint32Array(256);
    for (let i = 0; i < 100_000; i++) counts[((stream.uniform() * 2 ** 53 - 1) / 2) % 256]! += 1;
    expectPlausible(chiSquare(counts, 100_000), 255);
  });

  // What a trial sees: the first number of many neighbouring trials, streams or seeds.
  test.each([
    ["trials", [SEED, 0, 3], [0, 1, 0]],
    ["streams", [SEED, 3, 0], [0, 0, 1]],
    ["seeds", [0, 3, 3], [1, 0, 0]],
    ["seeds 2^32 apart", [0, 3, 3], [2 ** 32, 0, 0]],
  ])("of neighbouring %s fill the square of (first, next first) evenly", (_, from, step) => {
    const stream = new RandomStream();
    const counts = new Uint32Array(16 * 16);
    const first = (i: number): number => {
      const [seed, trial, number] = from.map((start, k) => start + i * step[k]!);
      return Math.floor(stream.open(seed!, trial!, number!).uniform() * 16);
    };
    for (let i = 0; i < 40_000; i++) counts[first(2 * i) * 16 + first(2 * i + 1)]! += 1;
    expectPlausible(chiSquare(counts, 40_000), 255);
  });

  test("of two streams of a trial are not correlated", () => {
    const a = new RandomStream().open(SEED, 7, 1);
    const b = new RandomStream().open(SEED, 7, 2);
    let sum = 0;
    for (let i = 0; i < 40_000; i++) sum += 12 * (a.uniform() - 0.5) * (b.uniform() - 0.5);
    // mean of products of two standardised numbers: standard error 1/√40 000
    expect(Math.abs(sum / 40_000)).toBeLessThan(4 / 200);
  });

  test("lie strictly between 0 and 1 and repeat, whatever the key", () => {
    const word = fc.integer({ min: 0, max: 2 ** 32 - 1 });
    fc.assert(
      fc.property(fc.maxSafeNat(), word, word, (seed, trial, number) => {
        const stream = new RandomStream().open(seed, trial, number);
        const values = [stream.uniform(), stream.uniform(), stream.uniform()];
        for (const value of values) expect(value > 0 && value < 1).toBe(true);
        const again = new RandomStream().open(seed, trial, number);
        expect([again.uniform(), again.uniform(), again.uniform()]).toEqual(values);
      }),
      { seed: 11, numRuns: 300 },
    );
  });
});
