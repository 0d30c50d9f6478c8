import { expect, test } from "vitest";
import { cos, exp, log, sin } from "../../src/num/elementary.ts";

// Ng, Argument reduction for huge arguments: good to the last bit, 1992, sin 10^22 (from memory; recomputed with an
// arbitrary-precision package).
test("sin 10^22", () => {
  expect(sin(1e22)).toBe(-0.8522008497671888);
});

// The double closest to a multiple of π/2: Muller, Elementary Functions, 3rd ed., ch. 11 (from memory; recomputed likewise).
test("cos(6381956970095103 · 2^797), the hardest case of the reduction", () => {
  const hardest = 6381956970095103 * 2 ** 797;
  expect(cos(hardest)).toBe(-4.687165924254628e-19);
  expect(Math.abs(sin(hardest))).toBe(1);
});

// Decimals of e and ln 2: Sloane's encyclopedia of integer sequences, A001113 and A002162.
test("e and ln 2", () => {
  // one unit in the last place of e is 4.4e−16
  expect(Math.abs(exp(1) - Math.E)).toBeLessThan(4.5e-16);
  expect(log(2)).toBe(Math.LN2);
});
