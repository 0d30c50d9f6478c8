import { expect, test } from "vitest";
import { atan2, cos, exp, log, sin } from "../../src/num/elementary.ts";
import type { DoubleDouble } from "../support/doubleDouble.ts";
import { seededNumbers } from "../support/seededNumbers.ts";
import { wideAtan2, wideCos, wideErrorUlp, wideExp, wideLog, wideSin } from "../support/wideMath.ts";

/**
 * A million arguments each against double-double arithmetic, which is itself held to exact integers in tests/unit/support/wideMath.
 * The hard places (axes, huge angles, the smallest doubles) are in tests/unit/num/elementary, by exact integers.
 */
const COUNT = 1_000_000;
type Random = () => number;

const within =
  (limit: number) =>
  (random: Random): number =>
    (2 * random() - 1) * limit;

/** Either sign, sizes spread evenly over the powers of two. */
const scales =
  (low: number, high: number) =>
  (random: Random): number => {
    const exponent = Math.floor(low + (high - low) * random());
    return (random() < 0.5 ? -1 : 1) * (1 + random()) * 2 ** exponent;
  };

/** The largest error, in units of the last place, and how many arguments were measured. */
function worst(
  count: number,
  measure: (random: Random) => number,
): { readonly ulp: number; readonly count: number } {
  const random = seededNumbers(40);
  let ulp = 0;
  let measured = 0;
  for (; measured < count; measured++) {
    const error = measure(random);
    if (!(error <= ulp)) ulp = error;
  }
  return { ulp, count: measured };
}

function expectBelowOne(parts: readonly { readonly ulp: number; readonly count: number }[]): void {
  expect(parts.reduce((sum, { count }) => sum + count, 0)).toBeGreaterThanOrEqual(COUNT);
  for (const { ulp } of parts) {
    expect(ulp).toBeLessThan(1);
    // a reference of the same roundings would show less than half a unit
    expect(ulp).toBeGreaterThan(0.5);
  }
}

function worstOf(
  count: number,
  argument: (random: Random) => number,
  ours: (x: number) => number,
  wide: (x: number) => DoubleDouble,
) {
  return worst(count, (random) => {
    const x = argument(random);
    return wideErrorUlp(ours(x), wide(x));
  });
}

test.each([
  ["sin", sin, wideSin],
  ["cos", cos, wideCos],
] as const)("%s errs by less than 1 ulp over a million angles", (_, ours, wide) => {
  expectBelowOne([
    worstOf(COUNT / 2, within(10), ours, wide),
    worstOf(COUNT / 4, within(2e5), ours, wide),
    worstOf(COUNT / 4, scales(-8, 17), ours, wide),
  ]);
});

test("exp errs by less than 1 ulp over a million numbers", () => {
  expectBelowOne([
    worstOf(COUNT / 2, within(10), exp, wideExp),
    worstOf(COUNT / 2, within(700), exp, wideExp),
  ]);
});

test("log errs by less than 1 ulp over a million numbers", () => {
  expectBelowOne([
    worstOf(COUNT / 2, (random) => 2 * random() + 2 ** -60, log, wideLog),
    worstOf(COUNT / 4, (random) => 1 + within(0.1)(random), log, wideLog),
    worstOf(COUNT / 4, (random) => Math.abs(scales(-1000, 1000)(random)), log, wideLog),
  ]);
});

test("atan2 errs by less than 1 ulp over a million points of the plane", () => {
  const direction = (count: number, coordinate: (random: Random) => number) =>
    worst(count, (random) => {
      const [y, x] = [coordinate(random), coordinate(random)];
      return wideErrorUlp(atan2(y, x), wideAtan2(y, x));
    });
  expectBelowOne([direction(COUNT / 2, within(1000)), direction(COUNT / 2, scales(-30, 30))]);
});
