import { expect, test } from "vitest";
import { chiSquareCdf, chiSquareQuantile } from "../../src/num/chiSquare.ts";
import { studentQuantile } from "../../src/num/studentT.ts";

// Tables of Student's t and of chi-square as printed in statistics textbooks (Fisher and Yates, Statistical Tables, from memory).
test.each([
  [0.975, 1, 12.706],
  [0.975, 4, 2.776],
  [0.975, 9, 2.262],
  [0.95, 10, 1.812],
  [0.995, 30, 2.75],
  [0.975, 120, 1.98],
])("Student: %f of the law with %i degrees of freedom lies below %f", (p, dof, t) => {
  expect(studentQuantile(p, dof)).toBeCloseTo(t, 3);
  expect(studentQuantile(1 - p, dof)).toBe(-studentQuantile(p, dof));
});

test.each([
  [0.95, 1, 3.841],
  [0.95, 2, 5.991],
  [0.975, 4, 11.143],
  [0.025, 4, 0.484],
  [0.975, 10, 20.483],
  [0.025, 10, 3.247],
  [0.95, 30, 43.773],
])("chi-square: %f of the law with %i degrees of freedom lies below %f", (p, dof, x) => {
  expect(chiSquareQuantile(p, dof)).toBeCloseTo(x, 3);
  expect(chiSquareCdf(chiSquareQuantile(p, dof), dof)).toBeCloseTo(p, 10);
});

// With two degrees of freedom it is the exponential law: 1 − e^(−x/2).
test("chi-square with two degrees of freedom", () => {
  for (const x of [0.1, 1, 3, 20]) expect(chiSquareCdf(x, 2)).toBeCloseTo(1 - Math.exp(-x / 2), 13);
});
