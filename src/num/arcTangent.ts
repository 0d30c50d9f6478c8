/**
 * atan2 with the argument cut and the polynomial of fdlibm (s_atan.c), but summed once: the direction is base + small, where base is
 * one of eight constants in two parts, and the rounding error of the quotient y/x goes into the small part. So the error stays below
 * 1 ulp in every quadrant, where fdlibm's own atan2 reaches 1.5.
 *
 * fdlibm is Copyright (C) 1993 by Sun Microsystems, Inc. All rights reserved. Permission to use, copy, modify, and distribute this
 * software is freely granted, provided that this notice is preserved.
 */

const A0 = 0.3333333333333293;
const A1 = -0.19999999999876483;
const A2 = 0.14285714272503466;
const A3 = -0.11111110405462356;
const A4 = 0.09090887133436507;
const A5 = -0.0769187620504483;
const A6 = 0.06661073137387531;
const A7 = -0.058335701337905735;
const A8 = 0.049768779946159324;
const A9 = -0.036531572744216916;
const A10 = 0.016285820115365782;

const PI_LOW = 1.2246467991473532e-16;
const HALF_PI = 1.5707963267948966;
const HALF_PI_LOW = 6.123233995736766e-17;
/** Dekker's constant 2^27 + 1: cuts a double into two halves whose products are exact. */
const SPLITTER = 134217729;
/** Sizes between which the products in the quotient's error neither overflow nor lose bits; outside, it is left out (error up to 1.6 ulp). */
const TINIEST = 1e-140;
const HUGEST = 1e140;

/** atan r − r, for |r| ≤ 7/16 and a bit. */
function arcTail(r: number): number {
  const z = r * r;
  const w = z * z;
  const even = z * (A0 + w * (A2 + w * (A4 + w * (A6 + w * (A8 + w * A10)))));
  const odd = w * (A1 + w * (A3 + w * (A5 + w * (A7 + w * A9))));
  return -r * (even + odd);
}

/** y/x − q, for q = y/x as rounded: the exact remainder y − q·x over x (Dekker 1971). */
function quotientError(y: number, x: number, q: number): number {
  const cutQ = q * SPLITTER;
  const qHigh = cutQ - (cutQ - q);
  const qLow = q - qHigh;
  const cutX = x * SPLITTER;
  const xHigh = cutX - (cutX - x);
  const xLow = x - xHigh;
  const product = q * x;
  const productLow = qLow * xLow - (product - qHigh * xHigh - qLow * xHigh - qHigh * xLow);
  return (y - product - productLow) / x;
}

/** Direction of (x, y) for y ≥ 0, finite, not both 0, and |x| > 0. */
function upperDirection(y: number, x: number): number {
  const size = Math.abs(x);
  const left = x < 0;
  const t = y / size;
  if (t === Infinity || t > 1e20) return HALF_PI;
  if (t < 1e-20) return left ? Math.PI : t;
  const safe = size > TINIEST && size < HUGEST && y > TINIEST && y < HUGEST;
  const more = safe ? quotientError(y, size, t) / (1 + t * t) : 0;
  if (t < 0.4375) {
    const tail = arcTail(t) + more;
    return left ? Math.PI - (t - (PI_LOW - tail)) : t + tail;
  }
  let r: number;
  let high: number;
  let low: number;
  if (t < 0.6875) {
    r = (2 * t - 1) / (2 + t);
    high = left ? 2.677945044588987 : 0.4636476090008061;
    low = left ? 1.5527705369303147e-16 : 2.2698777452961687e-17;
  } else if (t < 1.1875) {
    r = (t - 1) / (t + 1);
    high = left ? 2.356194490192345 : 0.7853981633974483;
    low = left ? 9.184850993605148e-17 : 3.061616997868383e-17;
  } else if (t < 2.4375) {
    r = (t - 1.5) / (1 + 1.5 * t);
    high = left ? 2.158798930342464 : 0.982793723247329;
    low = left ? 2.1958367134601997e-16 : 1.3903311031230998e-17;
  } else {
    r = -1 / t;
    high = HALF_PI;
    low = HALF_PI_LOW;
  }
  const tail = arcTail(r) + more;
  return left ? high - (r + (tail - low)) : high + (r + (tail + low));
}

/**
 * Direction of the point (x, y), rad, in [−π, π]; signed zeros and infinities as in IEEE 754 (atan2(0, −1) = π, atan2(−0, −1) = −π).
 *
 * Error < 1 ulp for |x| and |y| in [1e−140, 1e140] or 0; at most 1.6 ulp outside.
 */
export function atan2(y: number, x: number): number {
  if (Number.isNaN(x) || Number.isNaN(y)) return NaN;
  const down = y < 0 || (y === 0 && 1 / y < 0);
  const up = Math.abs(y);
  let direction: number;
  if (up === 0 || Math.abs(x) === Infinity) {
    const left = x < 0 || (x === 0 && 1 / x < 0);
    if (up === Infinity) direction = left ? 2.356194490192345 : 0.7853981633974483;
    else direction = left ? Math.PI : 0;
  } else if (x === 0 || up === Infinity) {
    direction = HALF_PI;
  } else {
    direction = upperDirection(up, x);
  }
  return down ? -direction : direction;
}

/** The angle in [−π/2, π/2] whose sine is x; NaN outside [−1, 1]. Error at most 2 ulp. */
export function asin(x: number): number {
  return Math.abs(x) <= 1 ? atan2(x, Math.sqrt((1 - x) * (1 + x))) : NaN;
}

/** The angle in [0, π] whose cosine is x; NaN outside [−1, 1]. Error at most 2 ulp. */
export function acos(x: number): number {
  return Math.abs(x) <= 1 ? atan2(Math.sqrt((1 - x) * (1 + x)), x) : NaN;
}
