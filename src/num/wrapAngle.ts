import { reduceLargeAngle } from "./largeAngle.ts";

// 2π in parts: a multiple of up to 2^20 of the first two is exact (33 bits each).
const TWO_PI_1 = 4 * 1.5707963267341256;
const TWO_PI_2 = 4 * 6.077100506303966e-11;
const TWO_PI_3 = 4 * 2.0222662487959506e-21;
const TURNS_PER_RAD = 0.15915494309189535;
/** Largest |x|, rad, of the quick way; see FAST_LIMIT_RAD in trig.kernel.ts. */
const FAST_LIMIT_RAD = 2e5;

/**
 * The same direction as an angle in (−π, π]; −π itself becomes π. NaN for NaN and ±Infinity.
 *
 * @param x rad
 * Error below 1 ulp for every finite x. What lies in the range already is returned unchanged.
 */
export function wrapAngle(x: number): number {
  if (x <= Math.PI && x > -Math.PI) return x;
  if (!(Math.abs(x) <= FAST_LIMIT_RAD)) return wrapLarge(x);
  let turns = Math.floor(x * TURNS_PER_RAD + 0.5);
  let wrapped = x - turns * TWO_PI_1 - turns * TWO_PI_2 - turns * TWO_PI_3;
  // The quotient is rounded, so near ±π the count may be one off.
  if (wrapped > Math.PI) turns += 1;
  else if (wrapped <= -Math.PI) turns -= 1;
  else return wrapped;
  wrapped = x - turns * TWO_PI_1 - turns * TWO_PI_2 - turns * TWO_PI_3;
  return Math.abs(wrapped) >= Math.PI ? Math.PI : wrapped;
}

function wrapLarge(x: number): number {
  if (!(Math.abs(x) < Infinity)) return NaN;
  const { quadrant, high, low } = reduceLargeAngle(x);
  const base = quadrant === 3 ? -1 : quadrant === 2 && high > 0 ? -2 : quadrant;
  const wrapped = base * (Math.PI / 2) + (high + (low + base * 6.123233995736766e-17));
  return wrapped <= -Math.PI ? Math.PI : wrapped;
}
