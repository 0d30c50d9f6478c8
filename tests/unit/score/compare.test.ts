import { describe, expect, test } from "vitest";
import { compareRoutines, type PairedTrials } from "../../../src/score/compare.ts";
import { pairedDifference } from "../../../src/score/pairedDifference.ts";

/** Trials `from`, from + 1, … of 3 balls. */
function run(delivered: readonly number[], from = 0): PairedTrials {
  return { indices: delivered.map((_, i) => from + i), delivered, deliveredCounts: [0, 0, 0, 0] };
}

const times = (count: number, value: number): readonly number[] => new Array<number>(count).fill(value);

describe("two routines on the same trials", () => {
  // The table {21, 9; 2, 12} of references.md M3.4 (exact2x2's vignette): p = 0.0654297.
  const first = run([...times(21, 3), ...times(9, 3), ...times(2, 2), ...times(12, 1)]);
  const second = run([...times(21, 3), ...times(9, 2), ...times(2, 3), ...times(12, 1)]);
  const comparison = compareRoutines(first, second);

  test("are counted by who succeeded", () => {
    expect(comparison).toMatchObject({ trials: 44, both: 21, onlyFirst: 9, onlySecond: 2, neither: 12 });
  });

  test("are called alike while the exact test does not tell them apart", () => {
    expect(comparison.pValue).toBeCloseTo(0.0654297, 6);
    expect(comparison.better).toBe("alike");
    expect(comparison.successDifference.value).toBeCloseTo(7 / 44, 12);
  });

  test("differ in balls delivered by the mean of the differences", () => {
    // Nine times +1, twice −1: mean 7/44, Σd² = 11.
    expect(comparison.meanDeliveredDifference).toBeCloseTo(7 / 44, 12);
    expect(comparison.meanDeliveredDifferenceSe).toBeCloseTo(Math.sqrt((11 - 49 / 44) / 43 / 44), 12);
  });

  test("swapped, give the opposite", () => {
    const swapped = compareRoutines(second, first);
    expect(swapped.pValue).toBe(comparison.pValue);
    expect(swapped.successDifference.value).toBe(-comparison.successDifference.value);
    expect(swapped.successDifference.low).toBeCloseTo(-comparison.successDifference.high, 12);
  });

  test("are called different when the test says so", () => {
    const better = run([...times(40, 3), ...times(10, 3)]);
    const worse = run([...times(40, 3), ...times(10, 0)]);
    expect(compareRoutines(better, worse).better).toBe("first");
    expect(compareRoutines(worse, better).better).toBe("second");
    expect(compareRoutines(better, worse).successDifference.low).toBeGreaterThan(0);
  });

  test("only common trials count", () => {
    const early = run([3, 3, 0, 3]);
    const late = run([3, 3, 2], 2);
    expect(compareRoutines(early, late)).toMatchObject({
      trials: 2,
      both: 1,
      onlySecond: 1,
      onlyFirst: 0,
      neither: 0,
    });
  });

  test("without common trials nothing is known", () => {
    expect(compareRoutines(run([3]), run([0], 5))).toMatchObject({
      trials: 0,
      pValue: 1,
      better: "alike",
      successDifference: { value: 0, low: -1, high: 1 },
      meanDeliveredDifference: 0,
    });
  });

  test("must have the same balls", () => {
    const others: PairedTrials = { indices: [0], delivered: [2], deliveredCounts: [0, 0, 1] };
    expect(() => compareRoutines(run([3]), others)).toThrow(/3 and with 2 balls/);
  });
});

describe("the interval of a paired difference", () => {
  test("is no wider than 0 when nothing differs and everything succeeds, and holds 0", () => {
    const { value, low, high } = pairedDifference({ both: 300, onlyFirst: 0, onlySecond: 0, neither: 0 });
    expect(value).toBe(0);
    expect(low).toBeLessThanOrEqual(0);
    expect(high).toBeGreaterThanOrEqual(0);
    expect(high - low).toBeLessThan(0.04);
  });

  test("gains from pairing: agreeing trials narrow it", () => {
    const paired = pairedDifference({ both: 80, onlyFirst: 10, onlySecond: 5, neither: 55 });
    const unpaired = pairedDifference({ both: 51, onlyFirst: 39, onlySecond: 34, neither: 26 });
    expect(paired.high - paired.low).toBeLessThan(0.75 * (unpaired.high - unpaired.low));
  });

  test("stays within its range for very many trials", () => {
    const { low, high } = pairedDifference({ both: 1e8, onlyFirst: 1e7, onlySecond: 0, neither: 1e8 });
    expect(low).toBeGreaterThan(0.04);
    expect(high).toBeLessThan(0.05);
  });
});
