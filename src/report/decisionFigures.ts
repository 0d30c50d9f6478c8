import type { Fix, FixList } from "../jobs/fixes.ts";
import type { Calibration } from "../practice/calibrate.ts";
import type { Comparison } from "../score/compare.ts";
import { calibrationLines } from "./calibrationWords.ts";
import { fixWords, gainWords } from "./fixWords.ts";
import { rangeWords, rateWords } from "./rateWords.ts";

/** What a decision keeps of a result: sentences with the numbers. Made again from the decision's inputs they are the same. */

export function comparisonFigures(names: readonly [string, string], comparison: Comparison): string[] {
  const { both, onlyFirst, onlySecond, neither, trials, successDifference, better } = comparison;
  const verdict =
    better === "alike"
      ? "Too close to call."
      : `${better === "first" ? names[0] : names[1]} is better, by more than chance explains.`;
  return [
    `“${names[0]}” less “${names[1]}”: ${gainWords(successDifference)} with every ball home. ${verdict}`,
    `On the same ${trials} placements with the same luck: both ${both}, only the first ${onlyFirst}, only the second ${onlySecond}, neither ${neither}.`,
  ];
}

export function calibrationFigures(found: Calibration): string[] {
  return calibrationLines(found).map(
    ({ what, value, range, count }) => `${what}: ${value}, likely ${range} (${count} tests).`,
  );
}

export function fixFigures(fix: Fix, { successRate }: FixList): string[] {
  const before =
    successRate === null ? "" : ` Before: ${rateWords(successRate)} (${rangeWords(successRate)}).`;
  return [`${fixWords(fix)}.${before} ${fix.trials} runs each, on the same placements.`];
}
