import { expect, test } from "vitest";
import { costWords, fixWords, gainWords, partTitle, shareWords } from "../../../src/report/fixWords.ts";

test("gains have signs, and ranges are rounded outward", () => {
  expect(gainWords({ value: 0.062, low: 0.041, high: 0.079 })).toBe("+6 of 100 runs (+4 to +8)");
  expect(gainWords({ value: -0.031, low: -0.052, high: 0.004 })).toBe("−3 of 100 runs (−6 to +1)");
  expect(gainWords({ value: -0.001, low: -0.001, high: 0 })).toBe("0 of 100 runs (−1 to 0)");
});

test("what a part is worth has its range, rounded outward", () => {
  expect(shareWords({ value: 0.654, low: 0.518, high: 0.781 })).toBe("0.65 (0.51 to 0.79)");
  expect(shareWords({ value: -0.002, low: -0.052, high: 0.048 })).toBe("0.00 (−0.06 to 0.05)");
});

test("a fix is one line", () => {
  const fix = {
    id: "square-up",
    about: "routine" as const,
    title: "squaring up before the last run",
    gain: { value: 0.09, low: 0.05, high: 0.13 },
    ballsGain: 0.1,
    verdict: "helps" as const,
    costsS: 3.2,
    trials: 600,
  };
  expect(fixWords(fix)).toBe("squaring up before the last run: +9 of 100 runs (+5 to +13), costs 3 s");
  expect(fixWords({ ...fix, costsS: -0.2, verdict: "not told apart" })).toBe(
    "squaring up before the last run: +9 of 100 runs (+5 to +13); too close to call",
  );
  expect([costWords(-2), costWords(0.4)]).toEqual(["saves 2 s", ""]);
  expect([partTitle({ from: 4, to: 12 }), partTitle({ from: 4, to: 5 })]).toEqual([
    "moves 5 to 12",
    "move 5",
  ]);
});
