import type { Assessment } from "../practice/assess.ts";
import type { DayComparison } from "../practice/days.ts";
import type { DriftFit, FactorRange } from "../practice/driftFit.ts";
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

/** Whether days differ, and how far the rate of one day speaks for another; "" where fewer than two days were told. */
export function daysWords(comparison: DayComparison | null): string {
  if (comparison === null) return "";
  const { days, chance, differ, spread } = comparison;
  const counts = days.map(({ day, runs, successes }) => verdictTexts.day(day, successes, runs)).join("; ");
  const [value, low, high] = [spread.value, spread.low, spread.high].map((sd) => fixed(100 * sd, 0));
  return differ
    ? verdictTexts.daysDiffer(counts, chanceText(chance), value ?? "", low ?? "", high ?? "")
    : verdictTexts.daysAlike(counts, chanceText(chance), high ?? "");
}

/** Which drift would explain the results, of straights and of turns, and whether the two can be told apart. */
export function driftFitWords({ straight, turn, blame }: DriftFit): string {
  if (blame === "none") return verdictTexts.blame.none;
  const best = verdictTexts.drift(factorWords(straight), factorWords(turn));
  return `${best} ${verdictTexts.blame[blame]}`;
}

function factorWords({ factor, low, high, openBelow, openAbove }: FactorRange): string {
  const range = verdictTexts.possible(plain(low), plain(high), openBelow, openAbove);
  return `${verdictTexts.times(plain(factor))}${range}`;
}
