import { describe, expect, test } from "vitest";
import {
  acos,
  asin,
  atan2,
  cos,
  exp,
  hypot,
  log,
  sin,
  sinCos,
  wrapAngle,
} from "../../../src/num/elementary.ts";
import { TrajectoryHash } from "../../../src/num/hash.ts";
import {
  type Exact,
  errorUlp,
  exactAcos,
  exactAsin,
  exactAtan2,
  exactCos,
  exactExp,
  exactLog,
  exactSin,
  exactWrap,
} from "../../support/exactMath.ts";
import { seededNumbers } from "../../support/seededNumbers.ts";

/** The plain ranges are measured over a million arguments in tests/reference/elementary; here the hard places are. */
const COUNT = 20_000;
const EPSILON = 2.220446049250313e-16;
type Random = () => number;

/** The largest error over seeded arguments, and where it happens. */
function worstError(
  count: number,
  argument: (random: Random) => number,
  ours: (x: number) => number,
  exact: (x: number) => Exact,
): { ulp: number; at: number } {
  const random = seededNumbers(20);
  let worst = { ulp: 0, at: 0 };
  for (let i = 0; i < count; i++) {
    const x = argument(random);
    const ulp = errorUlp(ours(x), exact(x));
    if (!(ulp <= worst.ulp)) worst = { ulp, at: x };
  }
  return worst;
}

/** Says where, should it fail. */
function expectBelow(worst: { ulp: number; at: number | string }, limitUlp: number): void {
  expect(worst.ulp, `${worst.ulp} ulp at ${worst.at}`).toBeLessThan(limitUlp);
}

const within =
  (limit: number) =>
  (random: Random): number =>
    (random() * 2 - 1) * limit;

/** Either sign, sizes spread evenly over the powers of ten from 10^low to 10^high. */
const scales =
  (low: number, high: number) =>
  (random: Random): number =>
    (random() < 0.5 ? -1 : 1) * 10 ** (low + (high - low) * random());

/** Doubles next to multiples of π/2, where the reduction cancels most. */
const nearAxes =
  (turns: number) =>
  (random: Random): number => {
    const x = Math.floor(1 + random() * turns) * (Math.PI / 2);
    return x * (1 + (Math.floor(random() * 5) - 2) * EPSILON);
  };

describe("sin and cos err by less than 1 ulp", () => {
  test.each([
    ["within ±π/4", COUNT, within(Math.PI / 4)],
    ["within ±10", COUNT, within(10)],
    ["from 1e−9 to 2e5", COUNT, scales(-9, 5.3)],
    ["next to multiples of π/2", COUNT, nearAxes(127_000)],
    ["beyond the fast range", 4000, scales(5.25, 308.2)],
  ])("%s", (_, count, argument) => {
    expectBelow(worstError(count, argument, sin, exactSin), 0.85);
    expectBelow(worstError(count, argument, cos, exactCos), 0.85);
  });
});

test("sinCos gives the very values of sin and cos", () => {
  const out = new Float64Array(2);
  const random = seededNumbers(21);
  const different: number[] = [];
  for (let i = 0; i < 50_000; i++) {
    const x = scales(-12, i % 50 === 0 ? 300 : 6)(random);
    sinCos(x, out);
    if (out[0] !== sin(x) || out[1] !== cos(x)) different.push(x);
  }
  expect(different).toEqual([]);
});

test("exp errs by less than 1 ulp, down to the smallest doubles", () => {
  expectBelow(worstError(COUNT, within(1), exp, exactExp), 1);
  expectBelow(worstError(COUNT, within(708), exp, exactExp), 1);
  expectBelow(
    worstError(4000, (random) => -708 - 37 * random(), exp, exactExp),
    1,
  );
  expectBelow(worstError(4000, scales(-20, -1), exp, exactExp), 1);
});

test("log errs by less than 1 ulp, up to the largest doubles", () => {
  expectBelow(
    worstError(COUNT, (random) => random() + EPSILON, log, exactLog),
    1,
  );
  expectBelow(
    worstError(COUNT, (random) => Math.abs(scales(-307, 308)(random)), log, exactLog),
    1,
  );
  expectBelow(
    worstError(20_000, (random) => 1 + scales(-15, -1)(random), log, exactLog),
    1,
  );
  expectBelow(
    worstError(2000, (random) => 5e-324 * Math.ceil(2 ** (52 * random())), log, exactLog),
    1,
  );
});

/** The same over points of the plane; `measure` is ours(y, x) against the exact direction. */
function worstDirection(count: number, point: (random: Random) => [y: number, x: number]) {
  const random = seededNumbers(22);
  let worst = { ulp: 0, at: "" };
  for (let i = 0; i < count; i++) {
    const [y, x] = point(random);
    const ulp = errorUlp(atan2(y, x), exactAtan2(y, x));
    if (!(ulp <= worst.ulp)) worst = { ulp, at: `(${y}, ${x})` };
  }
  return worst;
}

test("atan2 errs by less than 1 ulp in all quadrants", () => {
  const square = within(1000);
  expectBelow(
    worstDirection(2 * COUNT, (random) => [square(random), square(random)]),
    0.9,
  );
  const wide = scales(-9, 9);
  expectBelow(
    worstDirection(COUNT, (random) => [wide(random), wide(random)]),
    0.9,
  );
  const far = scales(118, 139);
  expectBelow(
    worstDirection(4000, (random) => [far(random), far(random)]),
    0.9,
  );
  // Too large or too small for the exact remainder of the quotient: the wider promise.
  const beyond = scales(290, 307);
  expectBelow(
    worstDirection(20_000, (random) => [beyond(random), beyond(random)]),
    1.6,
  );
});

test("asin and acos err by less than 2 ulp", () => {
  const nearEnd = (random: Random): number => (1 - 10 ** (-1 - 14 * random())) * (random() < 0.5 ? -1 : 1);
  for (const argument of [within(0.999), nearEnd, scales(-7, -1)]) {
    expectBelow(worstError(20_000, argument, asin, exactAsin), 2);
    expectBelow(worstError(20_000, argument, acos, exactAcos), 2);
  }
});

describe("at the edges", () => {
  test("sin and cos", () => {
    for (const x of [0, -0, 5e-324, -1e-300, 1e-20]) expect(sin(x)).toBe(x);
    for (const x of [0, -0, 5e-324, 1e-9, -1e-9]) expect(cos(x)).toBe(1);
    for (const x of [NaN, Infinity, -Infinity]) expect([sin(x), cos(x)]).toEqual([NaN, NaN]);
    // on both sides of the borders between the ways to reduce
    for (const x of [Math.PI / 4, 2e5, 2 ** 17, 2 ** 53, 2 ** 1023, 1.7976931348623157e308]) {
      for (const at of [x * (1 - EPSILON / 2), x, Math.min(x * (1 + EPSILON), 1.7976931348623157e308)]) {
        expect(errorUlp(sin(at), exactSin(at))).toBeLessThan(0.85);
        expect(errorUlp(cos(-at), exactCos(-at))).toBeLessThan(0.85);
      }
    }
  });

  test("exp", () => {
    expect([exp(0), exp(-0), exp(-Infinity), exp(Infinity), exp(NaN)]).toEqual([1, 1, 0, Infinity, NaN]);
    expect(errorUlp(exp(709.782712893384), exactExp(709.782712893384))).toBeLessThan(1);
    expect(exp(709.7827128933841)).toBe(Infinity);
    expect(exp(-745.1332191019411)).toBe(5e-324);
    expect(exp(-745.1332191019412)).toBe(0);
  });

  test("log", () => {
    expect([log(1), log(0), log(-0), log(Infinity)]).toEqual([0, -Infinity, -Infinity, Infinity]);
    expect([log(-1), log(-Infinity), log(NaN)]).toEqual([NaN, NaN, NaN]);
    expect(log(5e-324)).toBe(-744.4400719213812);
  });

  // IEEE 754-2019, 9.2.1, and ECMA-262, Math.atan2.
  test("atan2 at zeros and infinities", () => {
    const pi = Math.PI;
    const rows: [y: number, x: number, direction: number][] = [
      [0, 0, 0],
      [0, -0, pi],
      [0, 1, 0],
      [0, -1, pi],
      [1, 0, pi / 2],
      [1, -0, pi / 2],
      [1, Infinity, 0],
      [1, -Infinity, pi],
      [Infinity, 1, pi / 2],
      [Infinity, 0, pi / 2],
      [Infinity, Infinity, pi / 4],
      [Infinity, -Infinity, (3 * pi) / 4],
      [5e-324, 1e300, 0],
      [1e300, 5e-324, pi / 2],
      [5e-324, -1e300, pi],
    ];
    for (const [y, x, direction] of rows) {
      expect(atan2(y, x), `${y}, ${x}`).toBe(direction);
      expect(atan2(-y, x), `${-y}, ${x}`).toBe(-direction);
    }
    expect([atan2(NaN, 1), atan2(1, NaN), atan2(NaN, 0), atan2(0, NaN), atan2(NaN, Infinity)]).toEqual(
      Array(5).fill(NaN),
    );
  });

  test("asin and acos", () => {
    expect([asin(-1), asin(-0), asin(1), acos(1), acos(-1)]).toEqual([
      -Math.PI / 2,
      -0,
      Math.PI / 2,
      0,
      Math.PI,
    ]);
    expect([asin(1.0000000000000002), acos(-1.0000000000000002), asin(NaN), acos(NaN)]).toEqual(
      Array(4).fill(NaN),
    );
  });

  test("hypot", () => {
    expect([hypot(3, -4), hypot(0, -0), hypot(-5, 12)]).toEqual([5, 0, 13]);
  });
});

describe("wrapAngle", () => {
  test.each([
    ["a few turns", COUNT, within(20)],
    ["up to the fast limit", 20_000, scales(0, 5.3)],
    ["next to multiples of π/2", 20_000, nearAxes(127_000)],
    ["beyond", 3000, scales(5.25, 308.2)],
  ])("errs by less than 1 ulp: %s", (_, count, argument) => {
    expectBelow(worstError(count, argument, wrapAngle, exactWrap), 1);
  });

  test("returns (−π, π], both ends included as promised", () => {
    expect([wrapAngle(Math.PI), wrapAngle(-Math.PI)]).toEqual([Math.PI, Math.PI]);
    const lastBelow = Math.PI - 2 * EPSILON;
    expect([wrapAngle(lastBelow), wrapAngle(-lastBelow)]).toEqual([lastBelow, -lastBelow]);
    expect(wrapAngle(Math.PI + 4 * EPSILON)).toBe(-lastBelow);
    expect([wrapAngle(0), wrapAngle(-0), wrapAngle(NaN), wrapAngle(Infinity)]).toEqual([0, -0, NaN, NaN]);
    const random = seededNumbers(24);
    const outside: number[] = [];
    for (let i = 0; i < 50_000; i++) {
      const odd = 2 * Math.floor(random() * 2 ** (17 * random())) + 1;
      const x = (random() < 0.5 ? -1 : 1) * Math.PI * odd * (1 + within(2 * EPSILON)(random));
      const wrapped = wrapAngle(x);
      if (!(wrapped <= Math.PI && wrapped > -Math.PI)) outside.push(x);
    }
    expect(outside).toEqual([]);
  });
});

/** A golden value, recorded from this code: any change of any bit, in any engine, shows. */
test("a hundred thousand results have the recorded hash", () => {
  const random = seededNumbers(25);
  const hash = new TrajectoryHash();
  for (let i = 0; i < 10_000; i++) {
    const x = scales(-6, i % 20 === 0 ? 300 : 5)(random);
    const y = within(600)(random);
    for (const value of [sin(x), cos(x), wrapAngle(x), exp(y), log(Math.abs(x)), hypot(x, y)])
      hash.mix(value);
    for (const value of [atan2(y, x), atan2(x, y), asin(y / 600), acos(y / 600)]) hash.mix(value);
  }
  expect(hash.hex()).toBe("45ef892de8317eea");
});
