import { describe, expect, it } from "vitest";
import { leastSquares } from "../../../src/score/leastSquares.ts";

describe("leastSquares", () => {
  // Anscombe, The American Statistician 27 (1973) 17, first data set: slope 0.5001, standard error 0.1179 (from memory).
  it("fits the first of Anscombe's four data sets", () => {
    const x = [10, 8, 13, 9, 11, 14, 6, 4, 12, 7, 5];
    const y = [8.04, 6.95, 7.58, 8.81, 8.33, 9.96, 7.24, 4.26, 10.84, 4.82, 5.68];
    const fit = leastSquares([x], y);
    expect(fit?.slopes[0]).toBeCloseTo(0.5001, 4);
    expect(fit?.standardErrors[0]).toBeCloseTo(0.1179, 4);
  });

  it("recovers two planted slopes exactly", () => {
    const a = [0, 1, 2, 3, 4, 5];
    const b = [1, 0, 1, 3, 2, 2];
    const y = a.map((value, i) => 7 + 2 * value - 3 * (b[i] ?? 0));
    const fit = leastSquares([a, b], y);
    expect(fit?.slopes[0]).toBeCloseTo(2, 12);
    expect(fit?.slopes[1]).toBeCloseTo(-3, 12);
    expect(fit?.standardErrors[0]).toBeCloseTo(0, 7);
  });

  it("gives null for too few rows and for a column that follows another", () => {
    expect(leastSquares([[1, 2]], [1, 2])).toBeNull();
    expect(
      leastSquares(
        [
          [1, 2, 3, 4, 5],
          [2, 4, 6, 8, 10],
        ],
        [1, 0, 2, 1, 3],
      ),
    ).toBeNull();
  });
});
