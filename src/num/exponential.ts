import { highWord, powerOfTwo } from "./bits.kernel.ts";

/**
 * exp and log after fdlibm (e_exp.c, e_log.c), which is Copyright (C) 2004 and 1993 by Sun Microsystems, Inc. All rights reserved.
 * Permission to use, copy, modify, and distribute this software is freely granted, provided that this notice is preserved.
 */

// ln 2 in two parts: an integer multiple of the first, up to 2^20, is exact.
const LN2_HIGH = 0.6931471803691238;
const LN2_LOW = 1.9082149292705877e-10;
const ONE_OVER_LN2 = Math.LOG2E;

const P1 = 0.16666666666666602;
const P2 = -0.0027777777777015593;
const P3 = 6.613756321437934e-5;
const P4 = -1.6533902205465252e-6;
const P5 = 4.1381367970572385e-8;

const LG1 = 0.6666666666666735;
const LG2 = 0.3999999999940942;
const LG3 = 0.2857142874366239;
const LG4 = 0.22222198432149784;
const LG5 = 0.1818357216161805;
const LG6 = 0.15313837699209373;
const LG7 = 0.14798198605116586;

/** exp(x) overflows above, and rounds to 0 below. */
const EXP_MAX = 709.782712893384;
const EXP_MIN = -745.1332191019411;
const TWO_TO_54 = 18014398509481984;
/** High word of √2/2: significands are taken from [√2/2, √2). */
const SQRT_HALF_OFFSET = 0x3ff00000 - 0x3fe6a09e;

/** e^x. Error < 1 ulp; Infinity above 709.78, 0 below −745.13. */
export function exp(x: number): number {
  if (!(x <= EXP_MAX)) return x > EXP_MAX ? Infinity : NaN;
  if (x < EXP_MIN) return 0;
  const k = Math.abs(x) <= 0.5 * LN2_HIGH ? 0 : Math.floor(x * ONE_OVER_LN2 + 0.5);
  const high = x - k * LN2_HIGH;
  const low = k * LN2_LOW;
  const r = high - low;
  const z = r * r;
  const c = r - z * (P1 + z * (P2 + z * (P3 + z * (P4 + z * P5))));
  if (k === 0) return 1 - ((r * c) / (c - 2) - r);
  const y = 1 - (low - (r * c) / (2 - c) - high);
  if (k === 1024) return y * 2 * powerOfTwo(1023);
  if (k >= -1021) return y * powerOfTwo(k);
  return y * powerOfTwo(k + 1000) * powerOfTwo(-1000);
}

/** Natural logarithm. Error < 1 ulp; −Infinity at 0, NaN below. */
export function log(x: number): number {
  if (!(x > 0)) return x === 0 ? -Infinity : NaN;
  if (x === Infinity) return Infinity;
  let k = 0;
  let scaled = x;
  if (x < 2.2250738585072014e-308) {
    k = -54;
    scaled = x * TWO_TO_54;
  }
  // x = 2^k (1 + f), 1 + f in [√2/2, √2); the product with a power of two is exact
  const exponent = ((highWord(scaled) + SQRT_HALF_OFFSET) >>> 20) - 1023;
  k += exponent;
  const f = scaled * powerOfTwo(-exponent) - 1;
  const half = 0.5 * f * f;
  const s = f / (2 + f);
  const z = s * s;
  const w = z * z;
  const r = w * (LG2 + w * (LG4 + w * LG6)) + z * (LG1 + w * (LG3 + w * (LG5 + w * LG7)));
  return s * (half + r) + k * LN2_LOW - half + f + k * LN2_HIGH;
}
