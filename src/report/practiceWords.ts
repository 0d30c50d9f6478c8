import type { Assessment } from "../practice/assess.ts";
import type { DriftFit } from "../practice/driftFit.ts";
import { verdictTexts } from "../texts/english/verdict.ts";
import { fixed, plain } from "../texts/numbers.ts";
import { outOf100, rangeWords } from "./rateWords.ts";

/** What practice says about the model, in plain words. */
export function verdictWords(assessment: Assessment): string {
  const { attempts, successes, promised, verdict } = assessment;
  const got = verdictTexts.promised(outOf100(promised), successes, attempts);
  switch (verdict) {
    case "too-few":
      return verdictTexts.tooFew(got);
    case "fits":
      return verdictTexts.fits(got);
    case "worse":
      return verdictTexts.worse(got, chanceText(assessment.chanceOfFewer));
    case "better":
      return verdictTexts.better(got, chanceText(assessment.chanceOfMore));
    default:
      return verdict satisfies never;
  }
}

function chanceText(chance: number): string {
  return chance < 0.001 ? verdictTexts.rare : verdictTexts.chance(fixed(100 * chance, 1));
}

/** "Updated success rate: 57 of 100 runs, likely between 36 and 77". */
export function updatedWords({ updated }: Assessment): string {
  return verdictTexts.updated(outOf100(updated.value), rangeWords(updated));
}

/** The mean squared error of the promises beside what it would be if they were right. */
export function brierWords({ brier, brierExpected }: Assessment): string {
  return verdictTexts.brier(fixed(brier, 3), fixed(brierExpected, 3));
}

export function driftFitWords({ factor, low, high }: DriftFit): string {
  const range = low === high ? "" : verdictTexts.possible(plain(low), plain(high));
  return verdictTexts.drift(plain(factor), range);
}
