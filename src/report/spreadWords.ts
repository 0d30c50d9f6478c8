import type { SpreadEffect } from "../score/spreadEffect.ts";
import type { SpreadFactor } from "../trial/spread.ts";

export function factorWords(factor: SpreadFactor): string {
  switch (factor) {
    case "faceFriction":
      return "friction at walls and pusher";
    case "floorFriction":
      return "grip of a sliding ball on the floor";
    case "rollingResistance":
      return "rolling resistance";
    case "restitution":
      return "bounce";
    default:
      return factor satisfies never;
  }
}

/** Smaller shifts than this are not worth a sentence, share of runs. */
const WORTH_TELLING = 0.005;

/** Two normal standard deviations hold 95 of 100 values. */
const LIKELY_SD = 1.96;

/** How much of it comes from the number of runs, in one sentence. */
export function samplingWords(effect: SpreadEffect): string {
  return `By the number of runs alone it may move by ±${points(LIKELY_SD * effect.samplingSd)} of 100; more runs make that smaller.`;
}

/** How much of the doubt comes from values nobody measured, in two sentences. */
export function spreadWords(effect: SpreadEffect): string {
  const shift = LIKELY_SD * effect.modelSd;
  if (shift < WORTH_TELLING) {
    return "Friction, rolling and bounce as far as they are unknown hardly move this rate.";
  }
  const most = [...effect.factors].sort((a, b) => Math.abs(b.change) - Math.abs(a.change))[0];
  const strongest =
    most === undefined
      ? ""
      : ` Most: ${factorWords(most.factor)}, ${most.change < 0 ? "−" : "+"}${points(Math.abs(most.change))} from the low to the high end of its range.`;
  return `What nobody measured (friction, rolling, bounce) may move it by ±${points(shift)} of 100; more runs do not help there, measuring does.${strongest}`;
}

/** Share of runs as points of 100, tenths. */
function points(share: number): string {
  return (100 * share).toFixed(1);
}
