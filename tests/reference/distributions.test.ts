import jstat from "jstat";
import { expect, test } from "vitest";
import { betaCdf, betaQuantile } from "../../src/num/beta.ts";
import { chiSquareQuantile } from "../../src/num/chiSquare.ts";
import { clopperPearson } from "../../src/num/interval.ts";
import { mcnemarExact } from "../../src/num/mcnemar.ts";
import { normalCdf, normalQuantile } from "../../src/num/normal.ts";
import { studentQuantile } from "../../src/num/studentT.ts";
import { seededNumbers } from "../support/seededNumbers.ts";

const { beta, binomial, chisquare, normal, studentt } = jstat.jStat;

// jstat 1.9 works to about 8 digits; the tolerances are its, not ours.
test("normal distribution and quantile", () => {
  for (let x = -6; x <= 6; x += 0.05) expect(normalCdf(x)).toBeCloseTo(normal.cdf(x, 0, 1), 12);
  for (let p = 0.002; p < 1; p += 0.002) expect(normalQuantile(p)).toBeCloseTo(normal.inv(p, 0, 1), 7);
});

test("beta distribution and quantile", () => {
  const random = seededNumbers(30);
  for (let i = 0; i < 400; i++) {
    const a = 0.5 + 10 ** (2.5 * random());
    const b = 0.5 + 10 ** (2.5 * random());
    const p = random();
    const x = betaQuantile(p, a, b);
    expect(betaCdf(x, a, b)).toBeCloseTo(p, 12);
    expect(beta.cdf(x, a, b), `Beta(${a}, ${b}) at ${x}`).toBeCloseTo(p, 6);
    expect(x, `Beta(${a}, ${b}) for ${p}`).toBeCloseTo(beta.inv(p, a, b), 6);
  }
});

test("the exact interval leaves 2.5 % on either side in the binomial law", () => {
  for (const [successes, trials] of [
    [3, 10],
    [91, 100],
    [250, 300],
  ] as const) {
    const { low, high } = clopperPearson(successes, trials);
    expect(1 - binomial.cdf(successes - 1, trials, low)).toBeCloseTo(0.025, 6);
    expect(binomial.cdf(successes, trials, high)).toBeCloseTo(0.025, 6);
  }
});

test("McNemar's p-value is twice the smaller binomial tail", () => {
  for (const [b, c] of [
    [0, 5],
    [7, 12],
    [30, 14],
    [120, 90],
  ] as const) {
    const tail = binomial.cdf(Math.min(b, c), b + c, 0.5);
    expect(mcnemarExact(b, c)).toBeCloseTo(Math.min(1, 2 * tail), 6);
  }
});

test("Student's and the chi-square law", () => {
  const random = seededNumbers(31);
  for (let i = 0; i < 300; i++) {
    const p = 0.001 + 0.998 * random();
    const dof = 1 + Math.floor(60 * random());
    const t = studentQuantile(p, dof);
    expect(studentt.cdf(t, dof), `t ${p}, ${dof}`).toBeCloseTo(p, 6);
    const x = chiSquareQuantile(p, dof);
    expect(chisquare.cdf(x, dof), `chi-square ${p}, ${dof}`).toBeCloseTo(p, 6);
  }
});
