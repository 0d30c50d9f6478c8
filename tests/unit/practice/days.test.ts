import { describe, expect, it } from "vitest";
import { assess } from "../../../src/practice/assess.ts";
import { compareDays, type DayRun, spreadBetween } from "../../../src/practice/days.ts";
import { daysWords } from "../../../src/report/practiceWords.ts";
import { seededNumbers } from "../../support/seededNumbers.ts";

/** Runs of days with rates of their own, `each` a day. */
function practised(rates: readonly number[], each: number, random: () => number): readonly DayRun[] {
  return rates.flatMap((rate, d) =>
    Array.from({ length: each }, () => ({ day: `day ${d}`, promised: 0.6, succeeded: random() < rate })),
  );
}

/** Successes of each day, of so many runs. */
const counted = (successes: readonly number[], each: number): readonly DayRun[] =>
  successes.flatMap((home, d) =>
    Array.from({ length: each }, (_, i) => ({ day: `day ${d}`, promised: 0.6, succeeded: i < home })),
  );

describe("days of practice", () => {
  it("are called different in 5 of 100 repetitions where they are alike, and mostly where they are not", () => {
    const random = seededNumbers(3);
    const differing = (rates: readonly number[], repeats: number) => {
      let found = 0;
      for (let n = 0; n < repeats; n++) if (compareDays(practised(rates, 8, random))?.differ) found++;
      return found / repeats;
    };
    expect(differing([0.6, 0.6, 0.6], 150)).toBeLessThan(0.1);
    expect(differing([0.95, 0.15, 0.95], 40)).toBeGreaterThan(0.85);
  });

  it("have a spread whose interval holds the planted one in 95 of 100 repetitions", () => {
    const random = seededNumbers(8);
    // Rates of 0.5 ± 0.25, one or the other by lot: a standard deviation between days of 0.25.
    for (const [half, days] of [
      [0, 4],
      [0.25, 3],
      [0.25, 6],
    ] as const) {
      const repeats = 200;
      let held = 0;
      for (let n = 0; n < repeats; n++) {
        const rates = Array.from({ length: days }, () => 0.5 + (random() < 0.5 ? -half : half));
        const found = spreadBetween(
          rates.map((rate, d) => {
            const successes = Array.from({ length: 8 }, random).filter((u) => u < rate).length;
            return { day: String(d), runs: 8, successes, promised: 0.6 };
          }),
        );
        if (found.low <= half + 1e-9 && half <= found.high + 1e-9) held++;
      }
      expect(held / repeats, `±${half} on ${days} days`).toBeGreaterThan(0.92);
    }
  });

  it("have the spread of the counts themselves where there are many runs", () => {
    // Rates of 0.25 and 0.75, twenty days each: a standard deviation of 0.25.
    const found = spreadBetween(
      Array.from({ length: 40 }, (_, d) => ({
        ...{ day: String(d), runs: 40, successes: d % 2 === 0 ? 10 : 30, promised: 0.5 },
      })),
    );
    expect(found.value).toBeCloseTo(0.25, 1);
    expect(found.low).toBeGreaterThan(0.18);
    expect(found.high).toBeLessThan(0.34);
  });

  it("know the chance of two days, one all successes and one all failures: 2 of 70 deals", () => {
    // Of the 8!/(4!·4!) = 70 ways to deal 4 successes out, 2 are as unlike; the count of 2000 deals adds itself.
    const chance = compareDays(counted([4, 0], 4))?.chance ?? 0;
    expect(chance).toBeGreaterThan(0.02);
    expect(chance).toBeLessThan(0.04);
    expect(compareDays(counted([2, 2], 4))?.chance).toBe(1);
  });

  it("take hard placements into account: a day of hard ones that went as promised is like the others", () => {
    const runs = [
      ...Array.from({ length: 10 }, (_, i) => ({ day: "easy", promised: 0.9, succeeded: i < 9 })),
      ...Array.from({ length: 10 }, (_, i) => ({ day: "hard", promised: 0.2, succeeded: i < 2 })),
    ];
    const kept = compareDays(runs);
    expect(kept?.differ).toBe(false);
    expect(compareDays(runs.map((run) => ({ ...run, promised: 0.55 })))?.differ).toBe(true);
  });

  it("are not compared where fewer than two are told; runs without a day are left out", () => {
    const runs = counted([3, 1], 4);
    expect(compareDays(runs.map((run) => ({ ...run, day: "" })))).toBeNull();
    expect(compareDays(runs.filter(({ day }) => day === "day 0"))).toBeNull();
    expect(compareDays([...runs, { day: "", promised: 0.5, succeeded: true }])).toEqual(compareDays(runs));
  });

  it("are said in words, with the chance and the spread", () => {
    const differ = assess(counted([9, 1], 10));
    expect(differ.days?.days.map(({ successes }) => successes)).toEqual([9, 1]);
    expect(daysWords(differ.days)).toMatch(
      /^Your days differ by more than chance explains \(.+ in 100|^Your days differ/,
    );
    expect(daysWords(differ.days)).toMatch(/day 0: 9 of 10; day 1: 1 of 10/);
    const alike = daysWords(assess(counted([6, 6, 7], 10)).days);
    expect(alike).toMatch(/differ no more than chance explains/);
    expect(alike).toMatch(/±\d+ of 100/);
    expect(daysWords(null)).toBe("");
  });
});
