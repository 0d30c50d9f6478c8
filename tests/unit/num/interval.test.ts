import { describe, expect, test } from "vitest";
import { clopperPearson, jeffreys, newcombe, noFailureBound, wilson } from "../../../src/num/interval.ts";
import { mcnemarExact } from "../../../src/num/mcnemar.ts";

describe.each([
  ["wilson", wilson],
  ["clopperPearson", clopperPearson],
  ["jeffreys", jeffreys],
])("%s", (_, interval) => {
  test("contains the rate, mirrors with it, narrows with more trials", () => {
    for (let x = 0; x <= 40; x++) {
      const rate = interval(x, 40);
      const mirrored = interval(40 - x, 40);
      expect(rate.low <= rate.value && rate.value <= rate.high).toBe(true);
      expect(rate.low).toBeCloseTo(1 - mirrored.high, 13);
      const longer = interval(10 * x, 400);
      expect(longer.high - longer.low).toBeLessThan(rate.high - rate.low);
      const surer = interval(x, 40, 0.99);
      expect(surer.low <= rate.low && surer.high >= rate.high).toBe(true);
    }
  });

  test("ends exactly at 0 and 1, and says nothing without trials", () => {
    expect(interval(0, 7)).toMatchObject({ value: 0, low: 0, trials: 7 });
    expect(interval(7, 7)).toMatchObject({ value: 1, high: 1, trials: 7 });
    expect(interval(0, 0)).toEqual({ value: 0, low: 0, high: 1, trials: 0 });
  });

  test("refuses counts and confidences that make no sense", () => {
    expect(() => interval(8, 7)).toThrow("8 successes in 7 trials");
    expect(() => interval(-1, 7)).toThrow(RangeError);
    expect(() => interval(0.5, 7)).toThrow(RangeError);
    expect(() => interval(1, 7, 95)).toThrow("confidence 95");
  });
});

test("the exact interval covers any true rate in at least 95 % of samples", () => {
  const intervals = Array.from({ length: 31 }, (_, x) => clopperPearson(x, 30));
  for (let p = 0.005; p < 1; p += 0.005) {
    let covered = 0;
    let weight = (1 - p) ** 30;
    intervals.forEach(({ low, high }, x) => {
      if (low <= p && p <= high) covered += weight;
      weight *= ((30 - x) / (x + 1)) * (p / (1 - p));
    });
    expect(covered, `p = ${p}`).toBeGreaterThanOrEqual(0.95);
  }
});

test("swapping the two rates turns the difference round", () => {
  const a = wilson(41, 50);
  const b = wilson(33, 60);
  const forward = newcombe(a, b);
  const back = newcombe(b, a);
  expect(back.value).toBe(-forward.value);
  expect(back.low).toBeCloseTo(-forward.high, 15);
  expect(back.high).toBeCloseTo(-forward.low, 15);
});

test("McNemar's p-value at its ends", () => {
  expect([mcnemarExact(0, 0), mcnemarExact(5, 5)]).toEqual([1, 1]);
  expect(mcnemarExact(5, 6)).toBeCloseTo(1, 14);
  // ten fair coins that all fall alike: 2/1024
  expect(mcnemarExact(10, 0)).toBeCloseTo(2 / 1024, 15);
  expect(() => mcnemarExact(-1, 3)).toThrow(RangeError);
  expect(() => mcnemarExact(1.5, 3)).toThrow(RangeError);
  expect(() => noFailureBound(0)).toThrow(RangeError);
});
