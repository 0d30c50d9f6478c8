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

/** The double with the given words (each taken modulo 2^32). */
export function fromWords(high: number, low: number): number {
  asWords[HIGH] = high;
  asWords[LOW] = low;
  return asDouble[0]!;
}

/** 2^k as a double, for integer k in [−1022, 1023]. */
export function powerOfTwo(k: number): number {
  return fromWords((k + 1023) << 20, 0);
}
