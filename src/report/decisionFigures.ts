import type { Fix, FixList } from "../jobs/fixes.ts";
import type { Calibration } from "../practice/calibrate.ts";
import type { Comparison } from "../score/compare.ts";
import { decisionTexts } from "../texts/english/decision.ts";
import { fixTexts } from "../texts/english/fix.ts";
import { calibrationLines } from "./calibrationWords.ts";
import { fixWords, gainWords } from "./fixWords.ts";
import { rangeWords, rateWords } from "./rateWords.ts";

/** What a decision keeps of a result: sentences with the numbers. Made again from the decision's inputs they are the same. */

export function comparisonFigures(names: readonly [string, string], comparison: Comparison): string[] {
  const { both, onlyFirst, onlySecond, neither, trials, successDifference, better } = comparison;
  const verdict =
    better === "alike"
      ? fixTexts.tooCloseSentence
      : decisionTexts.better(better === "first" ? names[0] : names[1]);
  return [
    decisionTexts.difference(names[0], names[1], gainWords(successDifference), verdict),
    decisionTexts.counts(trials, both, onlyFirst, onlySecond, neither),
  ];
}

export function calibrationFigures(found: Calibration): string[] {
  return calibrationLines(found).map(({ what, value, range, count }) =>
    decisionTexts.measured(what, value, range, count),
  );
}

export function fixFigures(fix: Fix, { successRate }: FixList): string[] {
  const before =
    successRate === null ? "" : decisionTexts.before(rateWords(successRate), rangeWords(successRate));
  return [decisionTexts.runsEach(fixWords(fix), before, fix.trials)];
}
