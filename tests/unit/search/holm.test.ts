import { expect, test } from "vitest";
import { holm } from "../../../src/search/holm.ts";

test("stops at the first p-value that is too large for its rank", () => {
  // Worked by hand at 5 %: 0.01 ≤ 0.05/4, 0.015 ≤ 0.05/3, 0.03 > 0.05/2; 0.04 is not looked at any more.
  expect(holm([0.04, 0.01, 0.03, 0.015], 0.05)).toEqual([false, true, false, true]);
  expect(holm([0.02, 0.03, 0.2], 0.05)).toEqual([false, false, false]);
  expect(holm([0.01, 0.02, 0.04], 0.05)).toEqual([true, true, true]);
  expect(holm([], 0.05)).toEqual([]);
});
