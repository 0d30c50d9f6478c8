/** The 64 bits of a double as two 32-bit words. One shared view: no allocation. */
const asDouble = new Float64Array(1);
const asWords = new Uint32Array(asDouble.buffer);

// Byte order of the machine, found once: 1.0 has an empty low word.
asDouble[0] = 1;
const LOW = asWords[0]! === 0 ? 0 : 1;
const HIGH = 1 - LOW;

/** Sign, exponent and the top 20 bits of the significand, as an unsigned 32-bit integer. */
export function highWord(value: number): number {
  asDouble[0] = value;
  return asWords[HIGH]!;
}

/** The low 32 bits of the significand, as an unsigned 32-bit integer. */
export function lowWord(value: number): number {
  asDouble[0] = value;
  return asWords[LOW]!;
}

const LEAST_EXPONENT = -1074;
const powers = buildPowers();

/** Powers of two from the smallest double on: a lookup is quicker than writing words and reading them back as a double. */
function buildPowers(): Float64Array {
  const all = new Float64Array(1024 - LEAST_EXPONENT);
  let power = 5e-324;
  for (let i = 0; i < all.length; i++) {
    all[i] = power;
    power *= 2;
  }
  return all;
}

/** 2^k, exact, for integer k in [−1074, 1023]. */
export function powerOfTwo(k: number): number {
  return powers[k - LEAST_EXPONENT]!;
}
