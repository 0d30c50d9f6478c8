import { expect, test } from "vitest";
import { DoubleDouble } from "../../support/doubleDouble.ts";
import {
  type Exact,
  exactAtan2,
  exactCos,
  exactExp,
  exactLog,
  exactSin,
  parts,
} from "../../support/exactMath.ts";
import { seededNumbers } from "../../support/seededNumbers.ts";
import { wideAtan2, wideCos, wideErrorUlp, wideExp, wideLog, wideSin } from "../../support/wideMath.ts";

/** x · 2^1200 as an integer. */
function whole(x: number): bigint {
  const { integer, exponent } = parts(x);
  return exponent >= -1200 ? integer << BigInt(exponent + 1200) : integer >> BigInt(-1200 - exponent);
}

const wholeOf = (value: DoubleDouble): bigint => whole(value.hi) + whole(value.lo);

/** Correct bits: −log2 of the relative error, at most 110. */
function bitsRight(value: bigint, truth: bigint): number {
  const error = value > truth ? value - truth : truth - value;
  const size = truth < 0n ? -truth : truth;
  return size.toString(2).length - (error + (size >> 110n)).toString(2).length;
}

function wholeExact({ mantissa, exponent }: Exact): bigint {
  return mantissa << BigInt(1200 - 160 + exponent);
}

/** Fewest correct bits over seeded arguments. */
function worstBits(
  argument: (random: () => number) => number[],
  wide: (...x: number[]) => DoubleDouble,
  exact: (...x: number[]) => Exact,
): number {
  const random = seededNumbers(26);
  let fewest = Infinity;
  for (let n = 0; n < 1500; n++) {
    const x = argument(random);
    fewest = Math.min(fewest, bitsRight(wholeOf(wide(...x)), wholeExact(exact(...x))));
  }
  return fewest;
}

test("+ × ÷ of two-part numbers err by less than 2^−100", () => {
  const random = seededNumbers(27);
  const draw = (): DoubleDouble => {
    const hi = (random() - 0.5) * 2 ** (40 * random());
    return new DoubleDouble().set(hi).add(hi * 2 ** -54 * random());
  };
  const c = new DoubleDouble();
  for (let n = 0; n < 2000; n++) {
    const [a, b] = [draw(), draw()];
    const [A, B] = [wholeOf(a), wholeOf(b)];
    expect(bitsRight(wholeOf(c.copy(a).times(b)), (A * B) >> 1200n)).toBeGreaterThan(100);
    expect(bitsRight(wholeOf(c.copy(a).over(b)), (A << 1200n) / B)).toBeGreaterThan(100);
    // of a sum the digits that cancel are lost, as they must be
    const size = A < 0n ? -A : A;
    const error = wholeOf(c.copy(a).plus(b)) - (A + B);
    expect((error < 0n ? -error : error) << 100n).toBeLessThanOrEqual(size + (B < 0n ? -B : B));
  }
});

test.each([
  ["sin", wideSin, exactSin, 2e5],
  ["cos", wideCos, exactCos, 2e5],
  ["sin near 0", wideSin, exactSin, 0.01],
  ["exp", wideExp, exactExp, 500],
] as const)("%s has 90 correct bits", (_, wide, exact, limit) => {
  expect(worstBits((random) => [(2 * random() - 1) * limit], wide, exact)).toBeGreaterThan(90);
});

test("log has 90 correct bits, next to 1 as well", () => {
  expect(worstBits((random) => [10 ** (400 * random() - 200)], wideLog, exactLog)).toBeGreaterThan(90);
  expect(
    worstBits((random) => [1 + (random() - 0.5) * 2 ** (-30 * random())], wideLog, exactLog),
  ).toBeGreaterThan(90);
});

test("atan2 has 90 correct bits in all quadrants", () => {
  const draw = (random: () => number): number => (random() < 0.5 ? -1 : 1) * 10 ** (10 * random() - 5);
  expect(worstBits((random) => [draw(random), draw(random)], wideAtan2, exactAtan2)).toBeGreaterThan(90);
});

test("an error is counted in units of the double's last place", () => {
  expect(wideErrorUlp(Math.LN2, wideLog(2))).toBeLessThan(0.5);
  expect(wideErrorUlp(Math.LN2 + 9 * 2 ** -53, wideLog(2))).toBeCloseTo(9, 0);
  expect(wideErrorUlp(1 + 2 ** -52, new DoubleDouble().set(1))).toBe(1);
});
