import { describe, expect, test } from "vitest";
import {
  clopperPearson,
  jeffreys,
  newcombe,
  noFailureBound,
  type Rate,
  wilson,
} from "../../src/num/interval.ts";
import { mcnemarExact } from "../../src/num/mcnemar.ts";

function expectInterval(rate: Rate, low: number, high: number, digits: number): void {
  expect(rate.low).toBeCloseTo(low, digits);
  expect(rate.high).toBeCloseTo(high, digits);
}

// Newcombe, Stat. Med. 17 (1998) 857–872, Table I, 95 %: Wilson (method 3) and Clopper–Pearson (method 5). The Jeffreys column is not
// in the paper; it was computed independently. references.md M3.1. Four decimals are given.
const TABLE_I = [
  { x: 81, n: 263, wilson: [0.2553, 0.3662], exact: [0.2527, 0.3676], jeffreys: [0.2545, 0.3656] },
  { x: 0, n: 20, wilson: [0, 0.1611], exact: [0, 0.1684], jeffreys: [0, 0.1166] },
  { x: 1, n: 29, wilson: [0.0061, 0.1718], exact: [0.0009, 0.1776], jeffreys: [0.0037, 0.1501] },
] as const;

describe("intervals of one rate", () => {
  test.each(TABLE_I)("$x of $n, Newcombe's Table I", (row) => {
    expectInterval(wilson(row.x, row.n), row.wilson[0], row.wilson[1], 4);
    expectInterval(clopperPearson(row.x, row.n), row.exact[0], row.exact[1], 4);
  });

  test.each(TABLE_I)("$x of $n, Jeffreys", (row) => {
    expectInterval(jeffreys(row.x, row.n), row.jeffreys[0], row.jeffreys[1], 4);
  });

  // R package `binom`, as quoted in the test data of statsmodels (results_proportion.py). references.md M3.1.
  test("18 of 20, 4 of 200 and 0 of 30, R's binom", () => {
    expectInterval(clopperPearson(18, 20), 0.6830172859809176, 0.9876514728297052, 15);
    expectInterval(wilson(18, 20), 0.6989663547715128, 0.972133518786232, 15);
    expectInterval(clopperPearson(4, 200), 0.005475565879556443, 0.05041360908989634, 15);
    expectInterval(wilson(4, 200), 0.00780442641634947, 0.05028708690582643, 15);
    expectInterval(clopperPearson(0, 30), 0, 0.11570331, 8);
    expectInterval(wilson(0, 30), 0, 0.11351339, 8);
  });

  // How often the interval covers the true rate, summed over the binomial law by hand of an independent script. references.md M3.1.
  test.each([
    { n: 50, p: 0.95, coverage: 0.962224 },
    { n: 20, p: 0.9, coverage: 0.956826 },
  ])("Wilson covers $p in $coverage of samples of $n", ({ n, p, coverage }) => {
    let covered = 0;
    let weight = (1 - p) ** n;
    for (let x = 0; x <= n; x++) {
      const rate = wilson(x, n);
      if (rate.low <= p && p <= rate.high) covered += weight;
      weight *= ((n - x) / (x + 1)) * (p / (1 - p));
    }
    expect(covered).toBeCloseTo(coverage, 6);
  });
});

// Hanley and Lippman-Hand, JAMA 249 (1983) 1743–1745 ("rule of three"); exact values 1 − 0.05^(1/n). references.md M3.3.
test("no failure in 20 and in 1500 trials", () => {
  expect(noFailureBound(20)).toBeCloseTo(0.139108, 6);
  expect(noFailureBound(1500)).toBeCloseTo(0.00199516, 8);
});

// 59 and 299 runs without a failure prove 95 % and 99 % with confidence 95 %. references.md M3.3.
test("fewest clean runs for 95/95 and 99/95", () => {
  const fewest = (limit: number): number => {
    let n = 1;
    while (noFailureBound(n) > limit) n++;
    return n;
  };
  expect(fewest(0.05)).toBe(59);
  expect(fewest(0.01)).toBe(299);
});

// Newcombe, Stat. Med. 17 (1998) 873–890, Table II, method 10. references.md M3.2.
test.each([
  { a: 6, m: 7, b: 2, n: 7, value: 0.5714, low: 0.0582, high: 0.8062 },
  { a: 5, m: 56, b: 0, n: 29, value: 0.0893, low: -0.0381, high: 0.1926 },
])("difference of $a/$m and $b/$n", ({ a, m, b, n, value, low, high }) => {
  const difference = newcombe(wilson(a, m), wilson(b, n));
  expect(difference.value).toBeCloseTo(value, 4);
  expect(difference.low).toBeCloseTo(low, 4);
  expect(difference.high).toBeCloseTo(high, 4);
});

// Table {21, 9; 2, 12} of the exact2x2 package's vignette: b = 9, c = 2, p = .0654297. references.md M3.4.
test("McNemar's exact test on 9 against 2", () => {
  expect(mcnemarExact(9, 2)).toBeCloseTo(0.0654297, 7);
  expect(mcnemarExact(2, 9)).toBe(mcnemarExact(9, 2));
});
