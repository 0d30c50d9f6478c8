import { SIGNIFICANCE } from "../../score/compare.ts";
import type { PairVerdict } from "../../search/pairVerdict.ts";
import { compareTexts as t } from "../../texts/english/compare.ts";
import { fixed, plain } from "../../texts/numbers.ts";
import { differenceWords } from "./differenceWords.ts";

/**
 * Which is better by the exact test. Whoever goes on asks it once more, so each time it is twice as strict as before, the first time
 * included: 2.5 % + 1.25 % + … stays below 5 % however often somebody goes on.
 *
 * @param asked how often it has been asked, this time included
 */
export function betterAfter(
  { comparison: { pValue, onlyFirst, onlySecond } }: PairVerdict,
  asked: number,
): "first" | "second" | "alike" {
  let level = SIGNIFICANCE;
  for (let i = 0; i < asked; i++) level /= 2;
  if (pValue >= level) return "alike";
  return onlyFirst > onlySecond ? "first" : "second";
}

/**
 * What a comparison says, in sentences.
 *
 * @param isOver whether all runs that were asked for are in: only then may the exact test be asked, not when somebody stops who has looked
 * @param asked how often it is asked, this time included
 */
export function compareWords(verdict: PairVerdict, isOver: boolean, asked = 1): readonly string[] {
  const { comparison, settled, moreTrials } = verdict;
  const { trials, both, onlyFirst, onlySecond, neither, pValue } = comparison;
  const better = betterAfter(verdict, asked);
  const seen = [
    t.counts(plain(trials), both, onlyFirst, onlySecond, neither),
    t.difference(differenceWords(comparison)),
  ];
  if (settled !== null) seen.push(settled === "first" ? t.settledThis : t.settledOther);
  if (!isOver) return settled === null ? [...seen, t.unsettled] : seen;
  const share = pValue < 0.001 ? t.lessThan(fixed(0.1, 1)) : fixed(100 * pValue, 1);
  if (better !== "alike") return [...seen, better === "first" ? t.better(share) : t.worse(share)];
  return [...seen, t.tooClose(share), moreTrials === null ? t.noMore : t.more(plain(moreTrials))];
}
