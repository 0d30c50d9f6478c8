import { expect, test } from "vitest";
import { Moments } from "../../../src/num/moments.ts";

const momentsOf = (values: readonly number[]): Moments => {
  const moments = new Moments();
  for (const value of values) moments.add(value);
  return moments;
};

test("mean, sample variance and standard error", () => {
  // by hand: mean 5, squared differences 9+1+1+1+0+0+4+16 = 32, variance 32/7
  const moments = momentsOf([2, 4, 4, 4, 5, 5, 7, 9]);
  expect(moments.count).toBe(8);
  expect(moments.mean).toBeCloseTo(5, 14);
  expect(moments.variance).toBeCloseTo(32 / 7, 14);
  expect(moments.standardError).toBeCloseTo(0.7559289460184544, 14);
});

test("a large offset costs no digits", () => {
  // by hand: 4, 7, 13, 16 have mean 10 and variance 30
  const moments = momentsOf([4, 7, 13, 16].map((value) => value + 1e9));
  expect(moments.mean).toBe(1e9 + 10);
  expect(moments.variance).toBe(30);
});

test("no value and one value have no spread", () => {
  expect(momentsOf([])).toMatchObject({ count: 0, mean: 0, variance: 0, standardError: 0 });
  expect(momentsOf([3])).toMatchObject({ count: 1, mean: 3, variance: 0, standardError: 0 });
});
