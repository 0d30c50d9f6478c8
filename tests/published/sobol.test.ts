import { expect, test } from "vitest";
import { sobol } from "../../src/num/sobol.kernel.ts";

// Joe and Kuo's direction numbers, dimensions 1–3, first points as two public implementations print them. references.md M3.9
// (rows 0–7); rows 8 and 9 from a public example that names the same table.
const FIRST_POINTS = [
  [0, 0, 0],
  [0.5, 0.5, 0.5],
  [0.75, 0.25, 0.25],
  [0.25, 0.75, 0.75],
  [0.375, 0.375, 0.625],
  [0.875, 0.875, 0.125],
  [0.625, 0.125, 0.875],
  [0.125, 0.625, 0.375],
  [0.1875, 0.3125, 0.9375],
  [0.6875, 0.8125, 0.4375],
];

test("the first points in three dimensions are the published ones", () => {
  const points = FIRST_POINTS.map((_, index) => [0, 1, 2].map((dimension) => sobol(index, dimension, 0)));
  expect(points).toEqual(FIRST_POINTS);
});
