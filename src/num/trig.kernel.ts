import { reduceLargeAngle } from "./largeAngle.ts";
import { SCRATCH } from "./slots.ts";

/**
 * sin and cos, the same bits in every engine: only + − × ÷ and comparisons.
 *
 * Polynomials and two-part reduction after fdlibm (k_sin.c, k_cos.c, e_rem_pio2.c), error below 1 ulp for every finite argument.
 * Checked in tests/unit/num/elementary.
 *
 * fdlibm is Copyright (C) 1993 by Sun Microsystems, Inc. All rights reserved. Permission to use, copy, modify, and distribute
 * this software is freely granted, provided that this notice is preserved.
 */

const S1 = -0.16666666666666632;
const S2 = 0.00833333333332249;
const S3 = -0.0001984126982985795;
const S4 = 2.7557313707070068e-6;
const S5 = -2.5050760253406863e-8;
const S6 = 1.58969099521155e-10;

const C1 = 0.0416666666666666;
const C2 = -0.001388888888887411;
const C3 = 2.480158728947673e-5;
const C4 = -2.7557314351390663e-7;
const C5 = 2.087572321298175e-9;
const C6 = -1.1359647557788195e-11;

const QUARTER_PI = 0.7853981633974483;
const TWO_OVER_PI = 0.6366197723675814;

// π/2 in parts of 33 bits, so that a multiple of up to 2^20 of the first two is exact; each T is the rest behind its part.
const HALF_PI_1 = 1.5707963267341256;
const HALF_PI_2 = 6.077100506303966e-11;
const HALF_PI_2T = 2.0222662487959506e-21;
const HALF_PI_3 = 2.0222662487111665e-21;
const HALF_PI_3T = 8.4784276603689e-32;

/**
 * Largest |x|, rad, of the two-part reduction: up to 2^17 quarter turns, where the second part times the count stays below 2^−16,
 * which makes the compensated differences below exact.
 */
const FAST_LIMIT_RAD = 2e5;

/** Below this remainder (rad) the two-part tail is no longer negligible against its ulp, and the third part is taken. */
const CLOSE_TO_AXIS_RAD = 1e-11;

/** The remainder of the last reduction: [high, low], rad. */
const rest = new Float64Array(SCRATCH);

/** sin(x + y) for |x| ≤ π/4, y the rounding tail of x. */
function sinNear(x: number, y: number): number {
  const z = x * x;
  const r = S2 + z * (S3 + z * (S4 + z * (S5 + z * S6)));
  const v = z * x;
  return x - (z * (0.5 * y - v * r) - y - v * S1);
}

/** cos(x + y) for |x| ≤ π/4, y the rounding tail of x. */
function cosNear(x: number, y: number): number {
  const z = x * x;
  const zz = z * z;
  const r = z * (C1 + z * (C2 + z * C3)) + zz * zz * (C4 + z * (C5 + z * C6));
  const half = 0.5 * z;
  const w = 1 - half;
  return w + (1 - w - half + (z * r - x * y));
}

/**
 * Brings x into [−π/4, π/4] (or a rounding beyond); leaves the remainder in `rest`.
 *
 * @returns the number of quarter turns taken off, modulo 4
 */
function reduce(x: number): number {
  if (!(Math.abs(x) <= FAST_LIMIT_RAD)) return reduceSlow(x);
  const turns = Math.floor(x * TWO_OVER_PI + 0.5);
  const first = x - turns * HALF_PI_1; // exact: the product has at most 53 bits and lies within a factor of two of x
  const second = turns * HALF_PI_2;
  let r = first - second;
  let tail = turns * HALF_PI_2T - (first - r - second);
  let high = r - tail;
  if (high < CLOSE_TO_AXIS_RAD && high > -CLOSE_TO_AXIS_RAD) {
    // r is exact here (see FAST_LIMIT_RAD), so the third part starts from it.
    const third = turns * HALF_PI_3;
    const before = r;
    r = before - third;
    tail = turns * HALF_PI_3T - (before - r - third);
    high = r - tail;
  }
  rest[0] = high;
  rest[1] = r - high - tail;
  return turns & 3;
}

/** The same for |x| beyond the fast range; NaN for NaN and ±Infinity. */
function reduceSlow(x: number): number {
  if (!(Math.abs(x) < Infinity)) {
    rest[0] = NaN;
    rest[1] = NaN;
    return 0;
  }
  const angle = reduceLargeAngle(x);
  rest[0] = angle.high;
  rest[1] = angle.low;
  return angle.quadrant;
}

/** sin x, x in rad. Error < 1 ulp for every finite x; NaN for NaN and ±Infinity. Beyond |x| = 2e5 slower by a factor of a hundred. */
export function sin(x: number): number {
  if (x <= QUARTER_PI && x >= -QUARTER_PI) return sinNear(x, 0);
  const quarter = reduce(x);
  const size = (quarter & 1) === 0 ? sinNear(rest[0]!, rest[1]!) : cosNear(rest[0]!, rest[1]!);
  return (quarter & 2) === 0 ? size : -size;
}

/** cos x, x in rad. Accuracy and range as for sin. */
export function cos(x: number): number {
  if (x <= QUARTER_PI && x >= -QUARTER_PI) return cosNear(x, 0);
  const quarter = reduce(x) + 1;
  const size = (quarter & 1) === 0 ? sinNear(rest[0]!, rest[1]!) : cosNear(rest[0]!, rest[1]!);
  return (quarter & 2) === 0 ? size : -size;
}

/**
 * Both at the cost of little more than one; the same bits as sin and cos.
 *
 * @param x rad
 * @param out receives [sin x, cos x]
 */
export function sinCos(x: number, out: Float64Array): void {
  if (x <= QUARTER_PI && x >= -QUARTER_PI) {
    out[0] = sinNear(x, 0);
    out[1] = cosNear(x, 0);
    return;
  }
  const quarter = reduce(x);
  const s = sinNear(rest[0]!, rest[1]!);
  const c = cosNear(rest[0]!, rest[1]!);
  const swapped = (quarter & 1) !== 0;
  const sine = swapped ? c : s;
  const cosine = swapped ? s : c;
  out[0] = (quarter & 2) === 0 ? sine : -sine;
  out[1] = ((quarter + 1) & 2) === 0 ? cosine : -cosine;
}
