import { DoubleDouble } from "./doubleDouble.ts";
import { type Exact, exactAtan2, exactCos, exactExp, exactLog, exactSin } from "./exactMath.ts";

/**
 * Elementary functions in double-double arithmetic: good to 2^−90, and a hundred times as fast as exactMath.ts, from whose exact
 * integers its tables come. It shares nothing with src/num. Each function returns the same object each time.
 */
const CELLS = 64;

type Triple = readonly [number, number, number];

/** An exact value in three doubles, each the rest behind those before. */
function doubles({ mantissa, exponent }: Exact): Triple {
  const first = Number(mantissa);
  const second = Number(mantissa - BigInt(first));
  const third = Number(mantissa - BigInt(first) - BigInt(second));
  const unit = 2 ** (exponent - 160);
  return [first * unit, second * unit, third * unit];
}

function table(from: number, to: number, value: (x: number) => Exact): DoubleDouble[] {
  return Array.from({ length: to - from + 1 }, (_, k) => {
    const [hi, lo] = doubles(value((from + k) / CELLS));
    return new DoubleDouble().set(hi, lo);
  });
}

const SINES = table(0, 51, exactSin);
const COSINES = table(0, 51, exactCos);
const POWERS = table(-23, 23, exactExp);
const LOGS_FROM = 45;
const LOGS = table(LOGS_FROM, 91, exactLog);
const ARCS = table(0, CELLS, (x) => (x === 0 ? { mantissa: 0n, exponent: 0 } : exactAtan2(x, 1)));
const QUARTER_PI = exactAtan2(1, 1);
const HALF_PI = doubles({ ...QUARTER_PI, mantissa: 2n * QUARTER_PI.mantissa });
const LN2 = doubles(exactLog(2));
const argument = new DoubleDouble();
const square = new DoubleDouble();
const power = new DoubleDouble();
const series = new DoubleDouble();
const other = new DoubleDouble();
const result = new DoubleDouble();

/** x − count · unit: what is left keeps its digits through the cancellation, because the unit has three parts. */
function less(x: number, count: number, unit: Triple): DoubleDouble {
  argument.set(x);
  for (const piece of unit) argument.minus(other.set(piece).scale(count));
  return argument;
}

/** x + x·Σ c_n zⁿ, the c_n given as whole divisors of the term before: c_n = c_(n−1)/d_n. */
function powerSeries(
  to: DoubleDouble,
  x: DoubleDouble,
  z: DoubleDouble,
  divisors: readonly number[],
): DoubleDouble {
  to.copy(x);
  power.copy(x);
  for (const divisor of divisors) {
    power.times(z).over(other.set(divisor));
    to.plus(power);
  }
  return to;
}

const SIN_DIVISORS = [6, 20, 42, 72, 110, 156];
const COS_DIVISORS = [2, 12, 30, 56, 90, 132];
const EXP_DIVISORS = [2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12];
const one = new DoubleDouble().set(1);
const cosine = new DoubleDouble();
const sine = new DoubleDouble();

/** sin (quarter 0) or cos (quarter 1) of x, |x| ≤ 2e5. */
function wave(x: number, quarter: number): DoubleDouble {
  const turns = Math.round(x / (Math.PI / 2));
  const angle = less(x, turns, HALF_PI);
  const down = angle.hi < 0;
  if (down) angle.negate();
  const cell = Math.round(angle.hi * CELLS);
  angle.add(-cell / CELLS);
  square.copy(angle).times(angle).negate();
  powerSeries(sine, angle, square, SIN_DIVISORS);
  powerSeries(cosine, one, square, COS_DIVISORS);
  const s = SINES[cell]!;
  const c = COSINES[cell]!;
  const which = (turns + quarter) & 3;
  if ((which & 1) === 0) {
    // sin(a + b) = sin a · cos b + cos a · sin b
    result.copy(s).times(cosine).plus(sine.times(c));
    if (down) result.negate();
  } else {
    result.copy(c).times(cosine).minus(sine.times(s));
  }
  return (which & 2) === 0 ? result : result.negate();
}

export function wideSin(x: number): DoubleDouble {
  return wave(x, 0);
}

export function wideCos(x: number): DoubleDouble {
  return wave(x, 1);
}

/** e^x, |x| ≤ 700. */
export function wideExp(x: number): DoubleDouble {
  const twos = Math.round(x / Math.LN2);
  const small = less(x, twos, LN2);
  const cell = Math.round(small.hi * CELLS);
  small.add(-cell / CELLS);
  powerSeries(result, small, small, EXP_DIVISORS).add(1);
  result.times(POWERS[cell + 23]!);
  const size = 2 ** twos;
  return result.set(result.hi * size, result.lo * size);
}

/** z + z³/3 + z⁵/5 … (sign 1) or z − z³/3 + z⁵/5 … (sign −1), |z| ≤ 1/100. */
function oddSeries(z: DoubleDouble, sign: 1 | -1): DoubleDouble {
  square.copy(z).times(z).scale(sign);
  series.copy(z);
  power.copy(z);
  for (let n = 3; n < 19; n += 2) {
    power.times(square);
    series.plus(other.copy(power).over(divisor.set(n)));
  }
  return series;
}
const divisor = new DoubleDouble();

/** ln x, x positive and normal. */
export function wideLog(x: number): DoubleDouble {
  let exponent = Math.floor(Math.log2(x));
  let mantissa = x / 2 ** exponent;
  if (mantissa > Math.SQRT2) {
    mantissa /= 2;
    exponent++;
  }
  if (mantissa < Math.SQRT1_2) {
    mantissa *= 2;
    exponent--;
  }
  const cell = Math.round(mantissa * CELLS);
  const centre = cell / CELLS;
  argument.set(mantissa).add(-centre);
  argument.over(below.set(mantissa).add(centre));
  result
    .copy(oddSeries(argument, 1))
    .scale(2)
    .plus(LOGS[cell - LOGS_FROM]!);
  return result.plus(other.set(LN2[0], LN2[1]).scale(exponent));
}
const below = new DoubleDouble();

/** Direction of (x, y), neither 0, |y/x| within 10^±100. */
export function wideAtan2(y: number, x: number): DoubleDouble {
  const steep = Math.abs(y) > Math.abs(x);
  const [top, bottom] = steep ? [Math.abs(x), Math.abs(y)] : [Math.abs(y), Math.abs(x)];
  const cell = Math.round((top / bottom) * CELLS);
  const centre = cell / CELLS;
  // atan t = atan c + atan((t − c)/(1 + t·c)) with t = top/bottom, both sides times bottom
  argument.set(bottom).scale(-centre).add(top);
  argument.over(below.set(top).scale(centre).add(bottom));
  result.copy(oddSeries(argument, -1)).plus(ARCS[cell]!);
  if (steep) result.negate().add(HALF_PI[0], HALF_PI[1]);
  if (x < 0) result.negate().add(2 * HALF_PI[0], 2 * HALF_PI[1]);
  return y < 0 ? result.negate() : result;
}

/** Distance of a double from the value, in units of the double's last place; for normal doubles. */
export function wideErrorUlp(y: number, value: DoubleDouble): number {
  return Math.abs(y - value.hi - value.lo) / lastPlace(y);
}

const view = new DataView(new ArrayBuffer(8));

function lastPlace(y: number): number {
  view.setFloat64(0, y);
  view.setUint32(0, view.getUint32(0) & 0x7ff00000);
  view.setUint32(4, 0);
  return view.getFloat64(0) * 2 ** -52;
}
