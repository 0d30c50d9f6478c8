import type { PairVerdict } from "../../search/pairVerdict.ts";
import { compareTexts as t } from "../../texts/english/compare.ts";
import { fixed, plain } from "../../texts/numbers.ts";
import { differenceWords } from "./differenceWords.ts";

/**
 * What a comparison says, in sentences.
 *
 * @param isOver whether no more runs come: only then may the exact test be asked, once
 */
export function compareWords(verdict: PairVerdict, isOver: boolean): readonly string[] {
  const { comparison, settled, moreTrials } = verdict;
  const { trials, both, onlyFirst, onlySecond, neither, pValue, better } = comparison;
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
