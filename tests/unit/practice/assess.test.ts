import { describe, expect, it } from "vitest";
import { assess, successLaw } from "../../../src/practice/assess.ts";

const attempts = (promised: number, successes: number, count: number) =>
  Array.from({ length: count }, (_, i) => ({ promised, succeeded: i < successes }));

describe("practice runs held against promises", () => {
  it("call 11 of 20 worse than a promise of 80, 16 of 20 a fit, 20 of 20 better than 75", () => {
    expect(assess(attempts(0.8, 11, 20)).verdict).toBe("worse");
    expect(assess(attempts(0.8, 16, 20)).verdict).toBe("fits");
    expect(assess(attempts(0.75, 20, 20)).verdict).toBe("better");
    expect(assess(attempts(0.8, 0, 4)).verdict).toBe("too-few");
  });

  it("know the chance of so few: the binomial law where all promises are alike", () => {
    // 1 − 0.8¹⁰ − 10·0.2·0.8⁹ is the chance of at most 8 of 10.
    const { chanceOfFewer, chanceOfMore } = assess(attempts(0.8, 8, 10));
    expect(chanceOfFewer).toBeCloseTo(1 - 0.8 ** 10 - 10 * 0.2 * 0.8 ** 9, 12);
    expect(chanceOfMore).toBeCloseTo(1 - chanceOfFewer + 45 * 0.2 ** 2 * 0.8 ** 8, 12);
  });

  it("have a law that adds up, with the promises' sum as its mean", () => {
    const chances = [0.1, 0.5, 0.93, 0.7];
    const law = successLaw(chances);
    expect(law.reduce((a, b) => a + b, 0)).toBeCloseTo(1, 12);
    expect(law.reduce((sum, p, k) => sum + k * p, 0)).toBeCloseTo(2.23, 12);
  });

  it("get the Brier score that right promises get on average", () => {
    const right = assess([...attempts(0.8, 8, 10), ...attempts(0.3, 3, 10)]);
    expect(right.brier).toBeCloseTo(right.brierExpected, 12);
    expect(right.points.map(({ promised }) => promised).sort()).toEqual([0.3, 0.3, 0.8, 0.8]);
    expect(assess(attempts(0.8, 2, 10)).brier).toBeGreaterThan(2 * right.brierExpected);
  });
});
