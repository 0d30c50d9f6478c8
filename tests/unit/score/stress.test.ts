import { describe, expect, test } from "vitest";
import { StressTally, summarise } from "../../../src/score/stress.ts";
import { LOSS_REASONS, type LossReason, type TrialBatch } from "../../../src/trial/outcome.ts";

/** Trials from `from` on, of 3 balls, that delivered the given numbers and lost the rest for one reason. */
function batch(from: number, delivered: readonly number[], reason: LossReason = "never-touched"): TrialBatch {
  const losses = new Float64Array(LOSS_REASONS.length);
  losses[LOSS_REASONS.indexOf(reason)] = delivered.reduce((sum, count) => sum + 3 - count, 0);
  return {
    from,
    to: from + delivered.length,
    delivered: Uint8Array.from(delivered),
    timeS: Float64Array.from(delivered, (count, i) => 20.1 + 0.37 * i + count / 3),
    points: Float64Array.from(delivered, (count) => 2 * count),
    losses,
    hashLow: 0xffffffff - from,
    hashHigh: 7 * from + 1,
    jams: 2,
    stalls: from,
  };
}

const PIECES = [
  batch(0, [3, 3, 1]),
  batch(3, [3, 0], "jammed"),
  batch(5, [2, 3, 3, 3], "rolled-out"),
  batch(9, [3]),
];

describe("a stress test put together from pieces", () => {
  const summary = summarise(PIECES);

  test("counts by hand", () => {
    expect(summary.trials).toBe(10);
    expect(summary.successRate.value).toBe(0.7);
    expect(summary.successRate.trials).toBe(10);
    expect(summary.deliveredCounts).toEqual([1, 1, 1, 7]);
    expect(summary.meanDelivered).toBeCloseTo(2.4, 12);
    // Σx² − n x̄² = 0 + 1 + 4 + 63 − 57.6 = 10.4; over 9 and over 10.
    expect(summary.meanDeliveredSe).toBeCloseTo(Math.sqrt(10.4 / 90), 12);
    expect(summary.losses).toMatchObject({ "never-touched": 2, jammed: 3, "rolled-out": 1, "left-wedge": 0 });
    expect(summary.meanPoints).toBeCloseTo(4.8, 12);
    expect([summary.jams, summary.stalls]).toEqual([8, 17]);
    expect(summary.indices).toEqual([0, 1, 2, 3, 4, 5, 6, 7, 8, 9]);
    expect(summary.delivered).toEqual([3, 3, 1, 3, 0, 2, 3, 3, 3, 3]);
  });

  // Wilson, 7 of 10 at 95 %: (0.7 + z²/20 ± z √(0.021 + z²/400)) / (1 + z²/10), z = 1.959964. From memory, computed by hand.
  test("gives the rate its interval", () => {
    expect(summary.successRate.low).toBeCloseTo(0.3968, 4);
    expect(summary.successRate.high).toBeCloseTo(0.8922, 4);
  });

  test("is bit for bit the same in any order and any cut", () => {
    const [a, b, c, d] = PIECES as [TrialBatch, TrialBatch, TrialBatch, TrialBatch];
    for (const order of [
      [d, c, b, a],
      [b, d, a, c],
    ]) {
      expect(summarise(order)).toEqual(summary);
    }
  });

  test("adds its hash up a lane at a time, modulo 2³²", () => {
    // Low: 4·(2³² − 1) − 17 ≡ −21; high: 7·17 + 4.
    expect(summary.hash).toBe(`${(123).toString(16).padStart(8, "0")}${(2 ** 32 - 21).toString(16)}`);
  });

  test("may have gaps while it runs", () => {
    const partial = summarise([PIECES[2]!, PIECES[0]!]);
    expect(partial.indices).toEqual([0, 1, 2, 5, 6, 7, 8]);
    expect(partial.deliveredCounts).toEqual([0, 1, 1, 5]);
  });

  test("knows nothing before its first trial", () => {
    const nothing = new StressTally().summary();
    expect(nothing.successRate).toEqual({ value: 0, low: 0, high: 1, trials: 0 });
    expect(nothing).toMatchObject({
      trials: 0,
      meanDelivered: 0,
      deliveredCounts: [0],
      meanTimeS: 0,
      hash: "0".repeat(16),
    });
  });
});

describe("pieces that cannot be right", () => {
  test("are refused when a trial comes twice", () => {
    const tally = new StressTally();
    tally.add(batch(0, [3, 3, 3]));
    expect(() => tally.add(batch(2, [1]))).toThrow(/trials 2 to 3 overlap 0 to 3/);
    tally.add(batch(3, [1]));
    expect(tally.trials).toBe(4);
  });

  test("are refused when their columns do not fit their range", () => {
    expect(() => summarise([{ ...batch(0, [3, 3]), to: 3 }])).toThrow(RangeError);
    expect(() => summarise([{ ...batch(0, [3, 3]), timeS: new Float64Array(1) }])).toThrow(RangeError);
    expect(() => summarise([{ ...batch(0, [3]), from: -1, to: 0 }])).toThrow(RangeError);
  });

  test("are refused when trials differ in their number of balls", () => {
    const odd = { ...batch(0, [3, 2]), losses: new Float64Array(LOSS_REASONS.length) };
    expect(() => summarise([odd])).toThrow(/same number/);
  });

  test("of no trials change nothing", () => {
    expect(summarise([batch(4, []), batch(0, [3])]).trials).toBe(1);
  });
});
