import type { Rate } from "../num/interval.ts";
import { rateTexts } from "../texts/english/rate.ts";
import { fixed } from "../texts/numbers.ts";

/**
 * A share as "of 100", honest at both ends: 0 and 100 only where it is exactly none or all; tenths where whole numbers
 * would have to lie.
 */
export function outOf100(share: number): string {
  const percent = 100 * share;
  const whole = Math.round(percent);
  if ((whole === 0 && share > 0) || (whole === 100 && share < 1)) {
    const tenths = share > 0.5 ? Math.min(99.9, floorTo(percent, 10)) : Math.max(0.1, ceilTo(percent, 10));
    return fixed(tenths, 1);
  }
  return String(whole);
}

/** "91 of 100 runs" */
export function rateWords(rate: Rate): string {
  return rateTexts.runs(outOf100(rate.value));
}

/** "likely between 88 and 93"; the ends are rounded outward, so that the range never claims too much. */
export function rangeWords(rate: Rate): string {
  return rateTexts.likely(...rangeEnds(rate));
}

/** Both ends of 100. */
export function rangeEnds(rate: Rate): readonly [low: number, high: number] {
  return [Math.max(0, Math.floor(100 * rate.low)), Math.min(100, Math.ceil(100 * rate.high))];
}

/** "2.9 of 3 balls" */
export function meanBallsWords(meanDelivered: number, balls: number): string {
  return rateTexts.meanBalls(fixed(meanDelivered, 1), balls);
}

function floorTo(value: number, parts: number): number {
  return Math.floor(value * parts) / parts;
}

function ceilTo(value: number, parts: number): number {
  return Math.ceil(value * parts) / parts;
}
