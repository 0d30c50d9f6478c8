import { describe, expect, it } from "vitest";
import { PoseMemo } from "../../../src/plan/poseMemo.kernel.ts";

/** Keys that differ in one place only, some by the sign of a zero. */
function keyOf(i: number): readonly number[] {
  const key = [i % 7, -1.5, i, 0, 0.25, 1e-9];
  key[i % 6] = i % 2 === 0 ? i + 0.1 : -0;
  return [...key.slice(0, 5), i];
}

describe("remembered poses", () => {
  it("are found by the very same key only, and still when the table has been emptied", () => {
    const memo = new PoseMemo();
    const look = (i: number): number => {
      memo.key.set(keyOf(i));
      return memo.find();
    };
    let lost = 0;
    for (let i = 0; i < 20_000; i++) {
      expect(look(i)).toBe(-1);
      memo.keep(i, 0 - i, i / 3);
      const back = look(i >> 1);
      if (back < 0) lost++;
      else expect([0, 1, 2].map((at) => memo.at(back, at))).toEqual([i >> 1, 0 - (i >> 1), (i >> 1) / 3]);
    }
    expect(memo.size).toBe(20_000 - 2 * 8192);
    // Only what came before it was emptied is gone.
    expect(lost).toBeGreaterThan(0);
    expect(look(19_999)).toBeGreaterThan(-1);
    memo.key.set([0, 0, 0, 0, 0, 0]);
    memo.keep(1, 2, 3);
    memo.key[0] = -0;
    expect(memo.find()).toBe(-1);
  });
});
