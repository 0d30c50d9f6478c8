import { topic } from "../language.ts";

/** What a decision keeps of a result. */
export const decisionTexts = topic("decision", {
  better: (name: string) => `${name} is better, by more than chance explains.`,
  difference: (first: string, second: string, gain: string, verdict: string) =>
    `“${first}” less “${second}”: ${gain} with every ball home. ${verdict}`,
  counts: (trials: number, both: number, onlyFirst: number, onlySecond: number, neither: number) =>
    `On the same ${trials} placements with the same luck: both ${both}, only the first ${onlyFirst}, only the second ${onlySecond}, neither ${neither}.`,
  measured: (what: string, value: string, range: string, count: number) =>
    `${what}: ${value}, likely ${range} (${count} tests).`,
  before: (rate: string, range: string) => ` Before: ${rate} (${range}).`,
  runsEach: (fix: string, before: string, trials: number) =>
    `${fix}.${before} ${trials} runs each, on the same placements.`,
});
