import { describe, expect, test } from "vitest";
import { HashSum, TrajectoryHash } from "../../../src/num/hash.ts";
import { seededNumbers } from "../../support/seededNumbers.ts";

function hashOf(values: readonly number[]): TrajectoryHash {
  const hash = new TrajectoryHash();
  for (const value of values) hash.mix(value);
  return hash;
}

/** How many of the 64 bits of two hashes differ. */
function differingBits(a: TrajectoryHash, b: TrajectoryHash): number {
  const ones = (word: number): number => word.toString(2).replaceAll("0", "").length;
  return ones((a.low ^ b.low) >>> 0) + ones((a.high ^ b.high) >>> 0);
}

const view = new DataView(new ArrayBuffer(8));
function withBitFlipped(value: number, bit: number): number {
  view.setFloat64(0, value);
  view.setBigUint64(0, view.getBigUint64(0) ^ (1n << BigInt(bit)));
  return view.getFloat64(0);
}

describe("TrajectoryHash", () => {
  test("is 16 digits, the same for the same values, and starts afresh after reset", () => {
    const hash = hashOf([1, 2.5, -3]);
    const text = hash.hex();
    expect(text).toMatch(/^[0-9a-f]{16}$/);
    expect(hashOf([1, 2.5, -3]).hex()).toBe(text);
    hash.reset();
    expect(hash.hex()).toBe(new TrajectoryHash().hex());
    for (const value of [1, 2.5, -3]) hash.mix(value);
    expect(hash.hex()).toBe(text);
  });

  /** A golden value, recorded from this code: stored hashes stay comparable from version to version. */
  test("keeps its recorded value", () => {
    expect(hashOf([0, -0, 1, Math.PI, -1e300, 5e-324, Infinity, NaN]).hex()).toBe("3a6206664aeebada");
  });

  test("tells order, signs of zero, length and last bits apart", () => {
    const texts = [[], [0], [-0], [0, 0], [0, 0, 0], [1, 2], [2, 1], [1, 2, 0], [1, 2.0000000000000004]].map(
      (values) => hashOf(values).hex(),
    );
    expect(new Set(texts).size).toBe(texts.length);
  });

  test("takes all NaN for one", () => {
    view.setBigUint64(0, 0xfff8000000000001n);
    expect(hashOf([view.getFloat64(0)]).hex()).toBe(hashOf([NaN]).hex());
  });

  test("changes about half of its bits when any one bit of any one value changes", () => {
    const random = seededNumbers(40);
    let total = 0;
    let cases = 0;
    for (let round = 0; round < 20; round++) {
      const values = Array.from({ length: 12 }, () => (random() - 0.5) * 1000);
      const before = hashOf(values);
      for (let bit = 0; bit < 62; bit++) {
        const place = Math.floor(random() * 12);
        const changed = values.map((value, i) => (i === place ? withBitFlipped(value, bit) : value));
        const bits = differingBits(before, hashOf(changed));
        expect(bits, `bit ${bit} of value ${place}`).toBeGreaterThan(9);
        total += bits;
        cases += 1;
      }
    }
    // standard error of the mean: 4/√1240 = 0.11
    expect(Math.abs(total / cases - 32)).toBeLessThan(0.6);
  });

  test("has no collision among 200,000 short series of close values", () => {
    const seen = new Set<string>();
    const hash = new TrajectoryHash();
    for (let i = 0; i < 200_000; i++) {
      hash.reset();
      hash.mix(1 + (i & 511) * 2.220446049250313e-16);
      hash.mix(i >> 9);
      seen.add(hash.hex());
    }
    expect(seen.size).toBe(200_000);
  });

  test("its low word alone is spread evenly: collisions as many as chance gives", () => {
    const low = new Set<number>();
    const hash = new TrajectoryHash();
    for (let i = 0; i < 100_000; i++) {
      hash.reset();
      hash.mix(i);
      low.add(hash.low);
    }
    // 100 000² / 2^33 = 1.16 collisions expected; more than 8 has probability 1e−5
    expect(100_000 - low.size).toBeLessThan(9);
  });
});

describe("HashSum", () => {
  const trials = [3, 1, 4, 1, 5].map((value, index) => ({ index, hash: hashOf([value, index]) }));
  const sumOf = (rows: typeof trials): string => {
    const sum = new HashSum();
    for (const { index, hash } of rows) sum.add(index, hash.low, hash.high);
    return sum.hex();
  };

  test("does not depend on the order or the grouping of the trials", () => {
    const whole = sumOf(trials);
    expect(sumOf(trials.toReversed())).toBe(whole);
    const joined = new HashSum();
    for (const part of [trials.slice(2), trials.slice(0, 2)]) {
      const sum = new HashSum();
      for (const { index, hash } of part) sum.add(index, hash.low, hash.high);
      joined.addSum(sum.low, sum.high);
    }
    expect(joined.hex()).toBe(whole);
  });

  test("depends on which trial had which trajectory, and on every trial", () => {
    const whole = sumOf(trials);
    const swapped = trials.map(({ index }, i) => ({ index, hash: trials[(i + 1) % 5]!.hash }));
    expect(sumOf(swapped)).not.toBe(whole);
    for (let left = 0; left < 5; left++) expect(sumOf(trials.filter((_, i) => i !== left))).not.toBe(whole);
    expect(sumOf([...trials, ...trials])).not.toBe(whole);
  });
});
