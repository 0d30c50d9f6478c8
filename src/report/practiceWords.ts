import type { Assessment } from "../practice/assess.ts";
import type { DriftFit } from "../practice/driftFit.ts";
import { outOf100, rangeWords } from "./rateWords.ts";

/** What practice says about the model, in plain words. */
export function verdictWords(assessment: Assessment): string {
  const { attempts, successes, promised, verdict } = assessment;
  const got = `The model promised ${outOf100(promised)} of 100, you got ${successes} of ${attempts}`;
  switch (verdict) {
    case "too-few":
      return `${got}: too few runs to tell anything; make at least five.`;
    case "fits":
      return `${got}: that fits. It does not prove the model, but nothing speaks against it.`;
    case "worse":
      return `${got}: worse than promised, by more than chance explains (${chanceText(assessment.chanceOfFewer)}). Likely the robot drifts more than you told: measure turns and straights again.`;
    case "better":
      return `${got}: better than promised, by more than chance explains (${chanceText(assessment.chanceOfMore)}). Likely the robot drifts less than you told.`;
    default:
      return verdict satisfies never;
  }
}

function chanceText(chance: number): string {
  return chance < 0.001 ? "less than 1 in 1000" : `${(100 * chance).toFixed(1)} in 100`;
}

/** "Updated success rate: 57 of 100 runs, likely between 36 and 77". */
export function updatedWords({ updated }: Assessment): string {
  return `Success rate after these runs: ${outOf100(updated.value)} of 100, ${rangeWords(updated)}.`;
}

/** The mean squared error of the promises beside what it would be if they were right. */
export function brierWords({ brier, brierExpected }: Assessment): string {
  return `Brier score ${brier.toFixed(3)} (0 is perfect; ${brierExpected.toFixed(3)} is what right promises would get).`;
}

export function driftFitWords({ factor, low, high }: DriftFit): string {
  const range = low === high ? "" : ` (from ${low} to ${high} times is possible)`;
  return `A drift ${factor} times as large as in the project would explain these runs best${range}.`;
}
