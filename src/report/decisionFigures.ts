import type { Fix, FixList } from "../jobs/fixes.ts";
import type { Project } from "../model/project.ts";
import type { Routine } from "../model/routine.ts";
import type { Calibration } from "../practice/calibrate.ts";
import type { Comparison } from "../score/compare.ts";
import { decisionTexts } from "../texts/english/decision.ts";
import { fixTexts } from "../texts/english/fix.ts";
import { keptTexts } from "../texts/english/kept.ts";
import { calibrationLines } from "./calibrationWords.ts";
import { fixWords, gainWords } from "./fixWords.ts";
import { differenceText, projectDifferences } from "./projectDifferences.ts";
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

/** The same with what differs between the projects of two sides, where they are two. */
export function pairFigures(
  [first, second]: readonly [
    { readonly project: Project; readonly routine: Routine },
    { readonly project: Project; readonly routine: Routine },
  ],
  comparison: Comparison,
): string[] {
  const { project, routine } = first;
  const isSame = project === second.project;
  const names = isSame
    ? ([routine.label, second.routine.label] as const)
    : ([keptTexts.now(project.name), keptTexts.before(second.project.name)] as const);
  const changed = isSame ? [] : projectDifferences(second.project, project);
  return [
    ...comparisonFigures(names, comparison),
    ...changed.map((difference) => keptTexts.changed(differenceText(difference))),
  ];
}

/**
 * Whether sentences hold the same numbers, whatever the words around them and their order: those of one result, said in two
 * languages.
 */
export function haveSameNumbers(these: readonly string[], those: readonly string[]): boolean {
  return numbersOf(these) === numbersOf(those);
}

function numbersOf(sentences: readonly string[]): string {
  const found = sentences.flatMap((sentence) => sentence.match(/[−-]?\d+([.,]\d+)?/g) ?? []);
  return found
    .map((number) => number.replace(",", ".").replace("-", "−"))
    .sort()
    .join(" ");
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
