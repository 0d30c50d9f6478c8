import type { Rate } from "../num/interval.ts";

/**
 * A share as "of 100", honest at both ends: 0 and 100 only where it is exactly none or all; tenths where whole numbers
 * would have to lie.
 */
export function outOf100(share: number): string {
  const percent = 100 * share;
  const whole = Math.round(percent);
  if ((whole === 0 && share > 0) || (whole === 100 && share < 1)) {
    const tenths = share > 0.5 ? Math.min(99.9, floorTo(percent, 10)) : Math.max(0.1, ceilTo(percent, 10));
    return tenths.toFixed(1);
  }
  return String(whole);
}

/** "91 of 100 runs" */
export function rateWords(rate: Rate): string {
  return `${outOf100(rate.value)} of 100 runs`;
}

/** "likely between 88 and 93"; the ends are rounded outward, so that the range never claims too much. */
export function rangeWords(rate: Rate): string {
  const low = Math.max(0, Math.floor(100 * rate.low));
  const high = Math.min(100, Math.ceil(100 * rate.high));
  return `likely between ${low} and ${high}`;
}

/** "2.9 of 3 balls" */
export function meanBallsWords(meanDelivered: number, balls: number): string {
  return `${meanDelivered.toFixed(1)} of ${balls} ${balls === 1 ? "ball" : "balls"}`;
}

function floorTo(value: number, parts: number): number {
  return Math.floor(value * parts) / parts;
}

function ceilTo(value: number, parts: number): number {
  return Math.ceil(value * parts) / parts;
}
