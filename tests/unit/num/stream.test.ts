import { describe, expect, test } from "vitest";
import { philox4x32 } from "../../../src/num/philox.kernel.ts";
import { RandomStream } from "../../../src/num/stream.ts";

const draws = (stream: RandomStream, count: number): number[] =>
  Array.from({ length: count }, () => stream.uniform());

describe("RandomStream", () => {
  test("starts again wherever and whenever it is opened", () => {
    const stream = new RandomStream();
    const first = draws(stream.open(7, 3, 2), 9);
    draws(stream.open(7, 4, 2), 5);
    expect(draws(stream.open(7, 3, 2), 9)).toEqual(first);
    expect(draws(new RandomStream().open(7, 3, 2), 9)).toEqual(first);
  });

  test("differs in every number when seed, trial or stream differs", () => {
    const base = draws(new RandomStream().open(7, 3, 2), 50);
    const others: [number, number, number][] = [
      [8, 3, 2],
      [7 + 2 ** 32, 3, 2],
      [7 + 2 ** 52, 3, 2],
      [7, 2, 3],
      [7, 4, 2],
      [7, 3 + 2 ** 31, 2],
      [7, 3, 0],
    ];
    for (const [seed, trial, number] of others) {
      const other = draws(new RandomStream().open(seed, trial, number), 50);
      expect(other.filter((value) => base.includes(value))).toEqual([]);
    }
  });

  test("takes the words of the blocks (trial, stream, block, 0) under the key of the seed", () => {
    const seed = 2 ** 52 + 12345;
    const words = new Uint32Array(4);
    const values = draws(new RandomStream().open(seed, 11, 5), 4);
    for (const block of [0, 1]) {
      philox4x32(11, 5, block, 0, 12345, 2 ** 20, words);
      // the first 32 bits of a number in [0, 1) are its word
      expect(Math.floor(values[2 * block]! * 2 ** 32)).toBe(words[0]);
      expect(Math.floor(values[2 * block + 1]! * 2 ** 32)).toBe(words[2]);
    }
  });

  test("uniform numbers are odd multiples of 2^−53", () => {
    for (const value of draws(new RandomStream().open(1, 0, 0), 1000)) {
      expect((value * 2 ** 53) % 2).toBe(1);
      expect(value > 0 && value < 1).toBe(true);
    }
  });

  test("every kind of draw takes one uniform number", () => {
    const fourth = draws(new RandomStream().open(9, 1, 1), 4)[3];
    const stream = new RandomStream().open(9, 1, 1);
    stream.normal();
    stream.normalCut(2);
    stream.below(6);
    expect(stream.uniform()).toBe(fourth);
  });

  test("below(n) takes every value equally often, 0 and n − 1 included", () => {
    const stream = new RandomStream().open(4, 0, 0);
    const counts = [0, 0, 0, 0, 0];
    for (let i = 0; i < 10_000; i++) counts[stream.below(5)]! += 1;
    // standard deviation of a count: √(10 000 · 0.2 · 0.8) = 40
    for (const count of counts) expect(Math.abs(count - 2000)).toBeLessThan(160);
    expect(stream.below(1)).toBe(0);
  });
});

describe("normal draws", () => {
  const moments = (
    draw: () => number,
    count: number,
  ): { mean: number; variance: number; largest: number } => {
    let sum = 0;
    let squares = 0;
    let largest = 0;
    for (let i = 0; i < count; i++) {
      const value = draw();
      sum += value;
      squares += value * value;
      largest = Math.max(largest, Math.abs(value));
    }
    const mean = sum / count;
    return { mean, variance: squares / count - mean * mean, largest };
  };

  test("have mean 0 and variance 1", () => {
    const stream = new RandomStream().open(5, 0, 0);
    const { mean, variance } = moments(() => stream.normal(), 40_000);
    // four standard errors: 4/√40 000 and 4·√(2/40 000)
    expect(Math.abs(mean)).toBeLessThan(0.02);
    expect(Math.abs(variance - 1)).toBeLessThan(0.0284);
  });

  // Variance of the normal law cut at ±c: 1 − 2cφ(c)/(2Φ(c) − 1) (Johnson, Kotz and Balakrishnan, Continuous univariate distributions 1,
  // 2nd ed., 10.1; from memory). c = 2: φ = .0539910, 2Φ − 1 = .9544997, so .7737413; c = 1: .2419707, .6826895, so .2911251.
  test.each([
    [2, 0.7737413],
    [1, 0.2911251],
  ])("cut at %s stay inside and have variance %s", (limit, expected) => {
    const stream = new RandomStream().open(6, 0, 0);
    const { mean, variance, largest } = moments(() => stream.normalCut(limit), 40_000);
    expect(largest).toBeLessThanOrEqual(limit);
    expect(largest).toBeGreaterThan(limit - 0.01);
    expect(Math.abs(mean)).toBeLessThan(0.02);
    expect(Math.abs(variance - expected)).toBeLessThan(0.0284 * expected);
  });

  test("cut far out are the uncut ones, nearly", () => {
    const cut = new RandomStream().open(6, 0, 0);
    const uncut = new RandomStream().open(6, 0, 0);
    for (let i = 0; i < 100; i++) expect(cut.normalCut(8)).toBeCloseTo(uncut.normal(), 9);
  });
});
