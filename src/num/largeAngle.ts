import { powerOfTwo } from "./bits.kernel.ts";

/**
 * Reduction of large angles modulo π/2 with exact integers, for the rare arguments beyond the fast range of trig.kernel.ts.
 *
 * A double is an integer times a power of two; with π/2 to 1216 bits the remainder keeps more than 120 correct bits even
 * for the double that comes closest to a multiple of π/2 (about 2^−61 away). Cost: microseconds, and it allocates.
 */
const FRACTION_BITS = 1216n;
const KEPT_BITS = 240n;
/** 2^−240. */
const KEPT_SCALE = powerOfTwo(-240);
/** Every double of at least 2^17 is a multiple of 2^−36. */
const INPUT_BITS = 36n;
const INPUT_SCALE = 68719476736;
/** Above this every double is an integer. */
const ALL_INTEGER = 9007199254740992;

let halfPi: bigint | undefined;

/** floor(2^bits · atan(1/n)), good to the last few bits (Gregory's series). */
function inverseTangent(n: bigint, bits: bigint): bigint {
  const square = n * n;
  let power = (1n << bits) / n;
  let sum = power;
  for (let odd = 3n, negative = true; power !== 0n; odd += 2n, negative = !negative) {
    power /= square;
    sum += negative ? -(power / odd) : power / odd;
  }
  return sum;
}

/** π/2 · 2^FRACTION_BITS, by Machin's formula π/4 = 4·atan(1/5) − atan(1/239). */
function halfPiScaled(): bigint {
  if (halfPi === undefined) {
    const bits = FRACTION_BITS + 32n;
    halfPi = (8n * inverseTangent(5n, bits) - 2n * inverseTangent(239n, bits)) >> 32n;
  }
  return halfPi;
}

/** x = quadrant·π/2 + high + low (mod 2π), |high| ≤ π/4, low at most half an ulp of high. */
export interface LargeAngle {
  readonly quadrant: number;
  readonly high: number;
  readonly low: number;
}

/**
 * The remainder of a large angle modulo π/2.
 *
 * @param x rad, finite, |x| ≥ 2^17
 */
export function reduceLargeAngle(x: number): LargeAngle {
  const size = Math.abs(x);
  const scaled = size < ALL_INTEGER ? BigInt(size * INPUT_SCALE) : BigInt(size) << INPUT_BITS;
  const unit = halfPiScaled();
  const angle = scaled << (FRACTION_BITS - INPUT_BITS);
  const turns = (angle + (unit >> 1n)) / unit;
  const rest = (angle - turns * unit) >> (FRACTION_BITS - KEPT_BITS);
  // Number(bigint) rounds to nearest, ties to even, by specification.
  const high = Number(rest);
  const low = Number(rest - BigInt(high));
  const quadrant = Number(turns & 3n);
  return x < 0
    ? { quadrant: -quadrant & 3, high: -high * KEPT_SCALE, low: -low * KEPT_SCALE }
    : { quadrant, high: high * KEPT_SCALE, low: low * KEPT_SCALE };
}
