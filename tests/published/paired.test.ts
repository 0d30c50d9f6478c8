import { describe, expect, test } from "vitest";
import { pairedDifference } from "../../src/score/pairedDifference.ts";

function expectDifference(
  counts: readonly [both: number, onlyFirst: number, onlySecond: number, neither: number],
  expected: readonly [value: number, low: number, high: number],
  digits: number,
): void {
  const [both, onlyFirst, onlySecond, neither] = counts;
  const { value, low, high } = pairedDifference({ both, onlyFirst, onlySecond, neither });
  expect([value, low, high].map((x) => x.toFixed(digits))).toEqual(expected.map((x) => x.toFixed(digits)));
}

// Newcombe, Stat. Med. 17 (1998) 2635–2650, method 10 ("square and add").
describe("difference of two rates on the same trials", () => {
  // Fagerland, Lydersen and Laake, Statistical Analysis of Contingency Tables (2017), ch. 8: complete response before and after a
  // therapy (Cavo et al. 2012). Read in the tests of the authors' R package contingencytables.
  test("59, 6, 16, 80: −0.0621 (−0.1186 to −0.0046)", () => {
    expectDifference([59, 6, 16, 80], [-0.0621, -0.1186, -0.0046], 4);
  });

  // The same book and Stat. Med. 33 (2014) 2850–2875: airway hyper-responsiveness (Bentur et al. 2009). From memory.
  test("1, 1, 7, 12: −0.286 (−0.507 to −0.026)", () => {
    expectDifference([1, 1, 7, 12], [-0.286, -0.507, -0.026], 3);
  });
});
