/**
 * Elementary functions in exact integers, as the measure for src/num: series with small rational arguments, tables of step 1/64, 160
 * bits behind the point. It shares no method, constant or code with what it measures, and is itself checked in tests/unit/support.
 */
const BITS = 160n;
const ONE = 1n << BITS;
/** Table step 2^−6. */
const STEP_BITS = BITS - 6n;

/** The real number mantissa · 2^(exponent − 160), its mantissa cut off, not rounded. */
export interface Exact {
  readonly mantissa: bigint;
  readonly exponent: number;
}

const view = new DataView(new ArrayBuffer(8));

/** A finite double as integer · 2^exponent. */
export function parts(x: number): { integer: bigint; exponent: number } {
  view.setFloat64(0, x);
  const bits = view.getBigUint64(0);
  const biased = Number((bits >> 52n) & 0x7ffn);
  const fraction = bits & 0xfffffffffffffn;
  const size = biased === 0 ? fraction : fraction | 0x10000000000000n;
  return { integer: x < 0 ? -size : size, exponent: Math.max(biased, 1) - 1075 };
}

function shifted(x: bigint, by: bigint): bigint {
  return by >= 0n ? x << by : x >> -by;
}

function fixed(x: number, bits = BITS): bigint {
  const { integer, exponent } = parts(x);
  return shifted(integer, BigInt(exponent) + bits);
}

/** atan(1/n) with the given bits. */
function arcCotangent(n: bigint, bits: bigint): bigint {
  let sum = 0n;
  let power = (1n << bits) / n;
  for (let k = 0n; power !== 0n; k++, power /= n * n) {
    sum += k % 2n === 0n ? power / (2n * k + 1n) : -(power / (2n * k + 1n));
  }
  return sum;
}

/** π by Størmer's formula (1896): π/4 = 44 atan 1/57 + 7 atan 1/239 − 12 atan 1/682 + 24 atan 1/12943. */
function piWith(bits: bigint): bigint {
  const guard = bits + 32n;
  const quarter =
    44n * arcCotangent(57n, guard) +
    7n * arcCotangent(239n, guard) -
    12n * arcCotangent(682n, guard) +
    24n * arcCotangent(12943n, guard);
  return (4n * quarter) >> 32n;
}

const PI = piWith(BITS + 40n);
const LONG_BITS = 1400n;
const LONG_PI = piWith(LONG_BITS);

/** ln 2 = 18 acoth 26 − 2 acoth 4801 + 8 acoth 8749. */
function logTwo(): bigint {
  const acoth = (n: bigint): bigint => {
    let sum = 0n;
    let power = (1n << (BITS + 32n)) / n;
    for (let k = 1n; power !== 0n; k += 2n, power /= n * n) sum += power / k;
    return sum;
  };
  return (18n * acoth(26n) - 2n * acoth(4801n) + 8n * acoth(8749n)) >> 32n;
}
const LN2 = logTwo();

function product(a: bigint, b: bigint): bigint {
  return (a * b) >> BITS;
}

/** sin and cos of a small fixed-point number by their Taylor series. */
function seriesSinCos(r: bigint): [sin: bigint, cos: bigint] {
  let sine = 0n;
  let cosine = 0n;
  let term = ONE;
  for (let k = 1n; term !== 0n && term !== -1n; k++) {
    const odd = k % 2n === 0n;
    const minus = (k - 1n) % 4n >= 2n;
    if (odd) sine += minus ? -term : term;
    else cosine += minus ? -term : term;
    term = product(term, r) / k;
  }
  return [sine, cosine];
}

function seriesExp(r: bigint): bigint {
  let sum = 0n;
  let term = ONE;
  for (let k = 1n; term !== 0n && term !== -1n; k++) {
    sum += term;
    term = product(term, r) / k;
  }
  return sum;
}

/** z − z³/3 + z⁵/5 … (sign −1) or z + z³/3 + z⁵/5 … (sign 1). */
function seriesOdd(z: bigint, sign: 1n | -1n): bigint {
  const square = sign * product(z, z);
  let sum = 0n;
  let power = z;
  for (let k = 1n; power !== 0n && power !== -1n; k += 2n) {
    sum += power / k;
    power = product(power, square);
  }
  return sum;
}

const sinCosTable = Array.from({ length: 60 }, (_, k) => seriesSinCos(BigInt(k) << STEP_BITS));
const expTable = Array.from({ length: 60 }, (_, k) => seriesExp(BigInt(k) << STEP_BITS));
const logTable = Array.from({ length: 66 }, (_, k) => {
  const c = ONE + (BigInt(k) << STEP_BITS);
  return 2n * seriesOdd(((c - ONE) << BITS) / (c + ONE), 1n);
});
const arcTable = Array.from({ length: 66 }, (_, k) => {
  // atan c = 2 atan(c / (1 + √(1 + c²))), twice, so that the series converges at c = 1 too
  const halve = (c: bigint): bigint => (c << BITS) / (ONE + squareRoot(ONE + product(c, c)));
  return 4n * seriesOdd(halve(halve(BigInt(k) << STEP_BITS)), -1n);
});

/** √x by Newton's method from above, which falls until it is there. */
function squareRoot(x: bigint): bigint {
  const target = x << BITS;
  let root = ONE << 1n;
  for (;;) {
    const next = (root + target / root) >> 1n;
    if (next >= root) return root;
    root = next;
  }
}

/** x = quarter · π/2 + rest, 0 ≤ rest < π/2. */
function reduced(x: number): { quarter: number; rest: bigint } {
  const wide = Math.abs(x) > 2 ** 40;
  const bits = wide ? LONG_BITS : BITS + 40n;
  const half = wide ? LONG_PI >> 1n : PI >> 1n;
  const angle = fixed(x, bits);
  let turns = angle / half;
  if (angle < 0n) turns -= 1n;
  return { quarter: Number(((turns % 4n) + 4n) % 4n), rest: (angle - turns * half) >> (bits - BITS) };
}

function sinCosOf(rest: bigint): [sin: bigint, cos: bigint] {
  // From about π/4 on count down from π/2, so that a small cosine keeps its digits.
  const upper = rest >> STEP_BITS >= 50n;
  const from = upper ? (PI >> 41n) - rest : rest;
  const cell = Number(from >> STEP_BITS);
  const [sa, ca] = sinCosTable[cell]!;
  const [sb, cb] = seriesSinCos(from - (BigInt(cell) << STEP_BITS));
  const s = product(sa, cb) + product(ca, sb);
  const c = product(ca, cb) - product(sa, sb);
  return upper ? [c, s] : [s, c];
}

export function exactSin(x: number): Exact {
  const { quarter, rest } = reduced(x);
  const [s, c] = sinCosOf(rest);
  return { mantissa: [s, c, -s, -c][quarter]!, exponent: 0 };
}

export function exactCos(x: number): Exact {
  const { quarter, rest } = reduced(x);
  const [s, c] = sinCosOf(rest);
  return { mantissa: [c, -s, -c, s][quarter]!, exponent: 0 };
}

/** The angle in (−π, π] of the same direction. */
export function exactWrap(x: number): Exact {
  const { quarter, rest } = reduced(x);
  // From the half turn on count from the full turn, so that a small negative angle keeps its digits.
  const mantissa = ((BigInt(quarter < 2 ? quarter : quarter - 4) * PI) >> 41n) + rest;
  return { mantissa, exponent: 0 };
}

export function exactExp(x: number): Exact {
  const argument = fixed(x);
  let k = argument / LN2;
  if (argument < 0n) k -= 1n;
  const rest = argument - k * LN2;
  const cell = Number(rest >> STEP_BITS);
  const mantissa = product(expTable[cell]!, seriesExp(rest - (BigInt(cell) << STEP_BITS)));
  return { mantissa, exponent: Number(k) };
}

/** x positive and finite. */
export function exactLog(x: number): Exact {
  const { integer, exponent } = parts(x);
  const length = BigInt(integer.toString(2).length);
  const m = integer << (BITS + 1n - length); // in [1, 2)
  const cell = Number((m - ONE) >> STEP_BITS);
  // Close to 2 count down from 2: of a number just below 1 the two ln 2 then cancel and the logarithm keeps its digits.
  const nearTwo = cell >= 60;
  const centre = nearTwo ? 2n * ONE : ONE + (BigInt(cell) << STEP_BITS);
  const base = nearTwo ? LN2 : logTable[cell]!;
  const tail = 2n * seriesOdd(((m - centre) << BITS) / (m + centre), 1n);
  const turns = BigInt(exponent) + length - 1n;
  return { mantissa: turns * LN2 + base + tail, exponent: 0 };
}

/** Direction of the point (x, y) for y ≥ 0 and ratio = |y/x|, which has 120 more bits; |y/x| within 2^±80. */
function upperDirection(ratio: bigint, left: boolean): bigint {
  const steep = ratio > ONE << 120n;
  const t = steep ? (1n << (2n * BITS + 120n)) / ratio : ratio >> 120n;
  const cell = Number(t >> STEP_BITS);
  const c = BigInt(cell) << STEP_BITS;
  const acute = arcTable[cell]! + seriesOdd(((t - c) << BITS) / (ONE + product(t, c)), -1n);
  const fromX = steep ? (PI >> 41n) - acute : acute;
  return left ? (PI >> 40n) - fromX : fromX;
}

/** |y/x| within 2^±80. */
export function exactAtan2(y: number, x: number): Exact {
  const a = parts(Math.abs(y));
  const b = parts(Math.abs(x));
  const ratio = shifted(a.integer, BITS + BigInt(a.exponent - b.exponent) + 120n) / b.integer;
  const upper = upperDirection(ratio, x < 0);
  return { mantissa: y < 0 ? -upper : upper, exponent: 0 };
}

/** |x| in [2^−27, 1), where 1 − x² fits the bits. */
export function exactAsin(x: number): Exact {
  const size = fixed(Math.abs(x));
  const upper = upperDirection((size << (BITS + 120n)) / squareRoot(ONE - product(size, size)), false);
  return { mantissa: x < 0 ? -upper : upper, exponent: 0 };
}

/** |x| in [2^−27, 1). */
export function exactAcos(x: number): Exact {
  const size = fixed(Math.abs(x));
  const root = squareRoot(ONE - product(size, size));
  return { mantissa: upperDirection((root << (BITS + 120n)) / size, x < 0), exponent: 0 };
}

/** Distance of a double from the exact value, in units of the double's last place. */
export function errorUlp(y: number, exact: Exact): number {
  const { integer, exponent } = parts(y);
  // 64 more bits, so that the quotient below keeps a fraction
  const scale = BigInt(exact.exponent - exponent) - BITS + 64n;
  return Math.abs(Number((integer << 64n) - shifted(exact.mantissa, scale))) / 2 ** 64;
}

/** The exact value as a decimal with the given number of digits behind the point, cut off; for looking and for comparing with tables. */
export function decimal(exact: Exact, digits: number): string {
  const value = shifted(exact.mantissa, BigInt(exact.exponent));
  const size = value < 0n ? -value : value;
  const scaled = (size * 10n ** BigInt(digits)) >> BITS;
  const text = scaled.toString().padStart(digits + 1, "0");
  return `${value < 0n ? "-" : ""}${text.slice(0, -digits)}.${text.slice(-digits)}`;
}
