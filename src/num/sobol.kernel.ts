import { finish } from "./hash.ts";
import { SOBOL_ROWS } from "./sobolTable.ts";

/** Number of dimensions there are direction numbers for. */
export const SOBOL_DIMENSIONS = 64;

const BITS = 32;
const TWO_TO_32 = 4294967296;
const UNIT = 1 / TWO_TO_32;

/** Word `dimension · 32 + j`: what bit j of the point's number contributes. */
const directions = buildDirections();

function buildDirections(): Uint32Array {
  const all = new Uint32Array(SOBOL_DIMENSIONS * BITS);
  for (let j = 0; j < BITS; j++) all[j] = 1 << (BITS - 1 - j);
  for (let dimension = 1; dimension < SOBOL_DIMENSIONS; dimension++) {
    const row = SOBOL_ROWS[dimension - 1]!;
    const degree = row.length - 1;
    const v = all.subarray(dimension * BITS, (dimension + 1) * BITS);
    for (let j = 0; j < degree; j++) v[j] = row[j + 1]! << (BITS - 1 - j);
    for (let j = degree; j < BITS; j++) {
      let word = v[j - degree]! ^ (v[j - degree]! >>> degree);
      for (let k = 1; k < degree; k++) {
        if (((row[0] >>> (degree - 1 - k)) & 1) !== 0) word ^= v[j - k]!;
      }
      v[j] = word;
    }
  }
  return all;
}

function reverseBits(word: number): number {
  let x = word;
  x = ((x >>> 1) & 0x55555555) | ((x & 0x55555555) << 1);
  x = ((x >>> 2) & 0x33333333) | ((x & 0x33333333) << 2);
  x = ((x >>> 4) & 0x0f0f0f0f) | ((x & 0x0f0f0f0f) << 4);
  x = ((x >>> 8) & 0x00ff00ff) | ((x & 0x00ff00ff) << 8);
  return (x >>> 16) | (x << 16);
}

/**
 * Owen's nested scramble by a hash: on the reversed word each step changes a bit by the bits below it only (x ^= x·even, x += c,
 * x *= odd), so on the word itself a bit is flipped depending on the bits above it, which is what keeps a net a net.
 *
 * Source: Laine and Karras, Stratified sampling for stochastic transparency (2011); Burley, Practical hash-based Owen scrambling,
 * JCGT 9 (2020) no. 4; constants of Vegdahl's later search (2021).
 */
function owenScramble(word: number, seed: number): number {
  let x = reverseBits(word);
  x ^= Math.imul(x, 0x3d20adea);
  x = (x + seed) | 0;
  x = Math.imul(x, (seed >>> 16) | 1);
  x ^= Math.imul(x, 0x05526c56);
  x ^= Math.imul(x, 0x53a22864);
  return reverseBits(x);
}

/**
 * One coordinate of a point of Sobol's sequence, in the usual Gray-code order; any 2^m points from a multiple of 2^m on are evenly spread.
 *
 * @param index number of the point, non-negative integer below 2^32; point 0 is the origin when not scrambled
 * @param dimension 0 … SOBOL_DIMENSIONS − 1
 * @param scrambleSeed non-negative safe integer; 0: not scrambled. The same seed scrambles every dimension in its own way
 * @returns a multiple of 2^−32 in [0, 1)
 * @throws RangeError for a dimension without direction numbers
 * Checked in tests/published/sobol and tests/property/sobol.
 */
export function sobol(index: number, dimension: number, scrambleSeed: number): number {
  if (!(dimension >= 0 && dimension < SOBOL_DIMENSIONS)) {
    throw new RangeError(
      `Sobol dimension ${dimension}; expected an integer from 0 to ${SOBOL_DIMENSIONS - 1}`,
    );
  }
  let word = 0;
  const base = dimension * BITS;
  for (let gray = index ^ (index >>> 1); gray !== 0; gray &= gray - 1) {
    word ^= directions[base + 31 - Math.clz32(gray & -gray)]!;
  }
  if (scrambleSeed !== 0) {
    const high = Math.floor(scrambleSeed / TWO_TO_32);
    const seed = finish(
      finish(scrambleSeed ^ 0x6c8e9cf5) + finish(high + 0x2545f491) + Math.imul(dimension + 1, 0x9e3779b1),
    );
    word = owenScramble(word, seed);
  }
  return (word >>> 0) * UNIT;
}
