import type { SpreadEffect } from "../score/spreadEffect.ts";
import { spreadTexts } from "../texts/english/spread.ts";
import { fixed } from "../texts/numbers.ts";
import type { SpreadFactor } from "../trial/spread.ts";

export function factorWords(factor: SpreadFactor): string {
  return spreadTexts.factors[factor];
}

/** Smaller shifts than this are not worth a sentence, share of runs. */
const WORTH_TELLING = 0.005;

/** Two normal standard deviations hold 95 of 100 values. */
const LIKELY_SD = 1.96;

/** How much of it comes from the number of runs, in one sentence. */
export function samplingWords(effect: SpreadEffect): string {
  return spreadTexts.sampling(points(LIKELY_SD * effect.samplingSd));
}

/** How much of the doubt comes from values nobody measured, in two sentences. */
export function spreadWords(effect: SpreadEffect): string {
  const shift = LIKELY_SD * effect.modelSd;
  if (shift < WORTH_TELLING) {
    return spreadTexts.hardly;
  }
  const most = [...effect.factors].sort((a, b) => Math.abs(b.change) - Math.abs(a.change))[0];
  const strongest =
    most === undefined
      ? ""
      : spreadTexts.most(
          factorWords(most.factor),
          `${most.change < 0 ? "−" : "+"}${points(Math.abs(most.change))}`,
        );
  return spreadTexts.unmeasured(points(shift), strongest);
}

/** Share of runs as points of 100, tenths. */
function points(share: number): string {
  return fixed(100 * share, 1);
}
