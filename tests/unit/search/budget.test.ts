import { describe, expect, it } from "vitest";
import { Budget } from "../../../src/search/budget.ts";

const budgetOf = (trials: number, timeFrac: number | null = null): Budget =>
  Object.assign(new Budget(), { trials, timeFrac });

describe("a race that may take so many trials", () => {
  it("lets routines in, goes to the final and ends by its trials", () => {
    const budget = budgetOf(10_000);
    expect([100, 3_400, 3_600].map((done) => budget.isFull(done))).toEqual([false, false, true]);
    expect([8_100, 8_300].map((done) => budget.isFinalDue(done))).toEqual([false, true]);
    expect([9_999, 10_000].map((done) => budget.isSpent(done))).toEqual([false, true]);
  });

  it("keeps its door open as long as it may take any number", () => {
    const budget = budgetOf(Number.POSITIVE_INFINITY);
    expect(budget.isShort).toBe(false);
    expect([budget.isFull(1e9), budget.isFinalDue(1e9), budget.isSpent(1e9)]).toEqual([false, false, false]);
    expect(budget.seats(1e9, 5, 3, 1)).toBe(Number.POSITIVE_INFINITY);
  });
});

describe("a race that has so long", () => {
  it("goes by its clock, however few trials the first second promises", () => {
    // One worker of two has warmed up, and routines were being made: 640 trials in the first second of ten.
    const budget = budgetOf(1_500, 0.1);
    expect(budget.isFull(640)).toBe(false);
    expect(budget.isFinalDue(1_400)).toBe(false);
    budget.timeFrac = 0.4;
    expect(budget.isFull(640)).toBe(true);
    budget.timeFrac = 0.9;
    expect(budget.isFinalDue(640)).toBe(true);
    expect(budget.isSpent(640)).toBe(false);
  });

  it("shares out the trials there is time for", () => {
    const seats = (trials: number) => budgetOf(trials, 0.4).seats(2_000, 50, 4, 0);
    expect(seats(20_000)).toBeGreaterThan(3 * seats(6_000));
    expect(seats(2_000)).toBe(3);
  });
});
