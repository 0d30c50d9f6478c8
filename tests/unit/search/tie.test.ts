import { describe, expect, it } from "vitest";
import { isTie, pairedPValue } from "../../../src/search/tie.ts";

describe("a tie", () => {
  it("is judged by McNemar's exact test where scores are 0 or 1", () => {
    // 6 against 0 discordant trials: 2 / 2⁶.
    expect(pairedPValue([1, 1, 1, 1, 1, 1, 0, 1], [0, 0, 0, 0, 0, 0, 0, 1])).toBeCloseTo(2 / 64, 12);
    expect(isTie([1, 1, 1, 1, 1, 1, 0, 1], [0, 0, 0, 0, 0, 0, 0, 1])).toBe(false);
    expect(isTie([1, 1, 1, 1, 1, 0, 0, 1], [0, 0, 0, 0, 0, 0, 0, 1])).toBe(true);
  });

  it("is judged by the paired mean where they are shares", () => {
    // Differences ⅓ and 0 by turns: mean 1/6, sd of 40 such 0.1688, z = 6.2.
    const first = Array.from({ length: 40 }, (_, t) => (t % 2 === 0 ? 2 / 3 : 1 / 3));
    const second = first.map(() => 1 / 3);
    expect(isTie(first, second)).toBe(false);
    expect(
      isTie(
        first,
        [...second].reverse().map((_, t) => first[t ^ 1] ?? 0),
      ),
    ).toBe(true);
  });

  it("is certain where all scores agree", () => {
    expect(pairedPValue([0.5, 0.25], [0.5, 0.25])).toBe(1);
    expect(pairedPValue([], [])).toBe(1);
  });
});
