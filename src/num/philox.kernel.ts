/**
 * Philox4x32-10, a counter-based generator: a fixed bijection of the counter for every key, so any block of any stream can be had
 * alone, in any order.
 *
 * Source: Salmon, Moraes, Dror and Shaw, Parallel random numbers: as easy as 1, 2, 3, SC11 (2011). Checked in tests/published/philox.
 */
const ROUNDS = 10;
const MULTIPLIER_0 = 0xd2511f53;
const MULTIPLIER_1 = 0xcd9e8d57;
/** Added to the key after each round: the golden ratio and √3 − 1, as 32-bit fractions. */
const KEY_STEP_0 = 0x9e3779b9;
const KEY_STEP_1 = 0xbb67ae85;

/**
 * The high 32 bits of a 32 × 32 bit product, from products of 16-bit halves. Every sum of halves stays below 2^32, so the signed
 * and unsigned readings differ only where `>>>` puts them right.
 */
function multiplyHigh(xHigh: number, xLow: number, y: number): number {
  const yHigh = y >>> 16;
  const yLow = y & 0xffff;
  const cross = (Math.imul(xHigh, yLow) + (Math.imul(xLow, yLow) >>> 16)) >>> 0;
  const middle = (Math.imul(xLow, yHigh) + (cross & 0xffff)) >>> 0;
  return (Math.imul(xHigh, yHigh) + (cross >>> 16) + (middle >>> 16)) | 0;
}

/**
 * One block of four random words.
 *
 * @param c0 counter words, each taken modulo 2^32; the same for c1, c2, c3
 * @param k0 key words, likewise k1
 * @param out receives four words
 */
export function philox4x32(
  c0: number,
  c1: number,
  c2: number,
  c3: number,
  k0: number,
  k1: number,
  out: Uint32Array,
): void {
  let x0 = c0 | 0;
  let x1 = c1 | 0;
  let x2 = c2 | 0;
  let x3 = c3 | 0;
  let key0 = k0 | 0;
  let key1 = k1 | 0;
  for (let round = 0; round < ROUNDS; round++) {
    const high0 = multiplyHigh(MULTIPLIER_0 >>> 16, MULTIPLIER_0 & 0xffff, x0);
    const low0 = Math.imul(MULTIPLIER_0, x0);
    const high1 = multiplyHigh(MULTIPLIER_1 >>> 16, MULTIPLIER_1 & 0xffff, x2);
    const low1 = Math.imul(MULTIPLIER_1, x2);
    x0 = high1 ^ x1 ^ key0;
    x1 = low1;
    x2 = high0 ^ x3 ^ key1;
    x3 = low0;
    key0 = (key0 + KEY_STEP_0) | 0;
    key1 = (key1 + KEY_STEP_1) | 0;
  }
  out[0] = x0;
  out[1] = x1;
  out[2] = x2;
  out[3] = x3;
}

/**
 * A number strictly between 0 and 1 from the two words at `at`: an odd multiple of 2^−53, so 52 random bits and a last bit that is
 * always set. That keeps 0 and 1 out and the grid symmetric about ½, both without a rounding.
 */
export function openUnit(words: Uint32Array, at: number): number {
  const top = words[at]!;
  const rest = words[at + 1]! >>> 12;
  return (top * 1048576 + rest + 0.5) * 2.220446049250313e-16;
}
