import { describe, expect, test } from "vitest";
import {
  fitSquares,
  gaugeRatio,
  type SquareRun,
  squareErrors,
  systematicErrorMm,
  wheelRatio,
  wheelRatioOf,
} from "../../src/practice/squares.ts";

// Borenstein and Feng, Measurement and correction of systematic odometry errors in mobile robots, IEEE T-RA 12 (1996) 869–880.
const DEGREE = Math.PI / 180;

describe("errors of squares both ways, to first order", () => {
  // Open course checker, worked by hand: x −0.2 and 0.1 m, L 2 m, b 0.2 m. references.md P9.6.
  test("alpha 0.0125, beta 0.0375 rad, E_b 1.0080216, E_d 1.0037568", () => {
    const { alphaRad, betaRad } = squareErrors(2000, -200, 100);
    expect(alphaRad).toBeCloseTo(0.0125, 12);
    expect(betaRad).toBeCloseTo(0.0375, 12);
    expect(gaugeRatio(alphaRad)).toBeCloseTo(1.0080216, 7);
    expect(wheelRatio(betaRad, 2000, 200)).toBeCloseTo(1.0037568, 7);
  });

  // Second lab script (public course code): x 0.20 and 0.12 m, L 1 m, b 0.26 m. references.md P9.10.
  test("alpha −4.58366°, beta −1.14592°, E_b 0.95154, E_d 0.99481, b 0.24740", () => {
    const { alphaRad, betaRad } = squareErrors(1000, 200, 120);
    expect(alphaRad / DEGREE).toBeCloseTo(-4.58366, 5);
    expect(betaRad / DEGREE).toBeCloseTo(-1.14592, 5);
    expect(gaugeRatio(alphaRad)).toBeCloseTo(0.95154, 5);
    expect(0.26 * gaugeRatio(alphaRad)).toBeCloseTo(0.2474, 5);
    expect(wheelRatio(betaRad, 1000, 260)).toBeCloseTo(0.99481, 5);
  });

  // Round trip (public course code, reproduced by an independent simulation): a track 4 % wider, x = −0.2252 m both ways. P9.7.
  test("of a track 4 % too wide: E_b 1.0372, E_d 1", () => {
    const { alphaRad, betaRad } = squareErrors(2000, -225.2, -225.2);
    expect(gaugeRatio(alphaRad)).toBeCloseTo(1.0372, 4);
    expect(wheelRatio(betaRad, 2000, 200)).toBe(1);
  });

  // The same for a right wheel 0.5 % too large: x −0.1702 and 0.2313 m; E_d 1.00503, E_b 0.9952. P9.8.
  test("of a right wheel 0.5 % too large: E_d 1.00503, E_b 0.9952", () => {
    const { alphaRad, betaRad } = squareErrors(2000, -170.2, 231.3);
    expect(wheelRatio(betaRad, 2000, 200)).toBeCloseTo(1.00503, 5);
    expect(gaugeRatio(alphaRad)).toBeCloseTo(0.9952, 4);
  });
});

const at = (sideMm: number, ...points: readonly (readonly [number, number])[]): readonly SquareRun[] =>
  points.map(([x, y]) => ({ sideMm, aheadMm: x * 1000, leftMm: y * 1000 }));

// Public course code: clockwise (0.3, −0.4), (0.1, −0.2), the other way (−0.1, 0.05), (0.1, 0.15): centres (0.2, −0.3), (0, 0.1),
// systematic error 0.36056. references.md P9.1.
test("the systematic error is the larger distance of the two centres: 0.36056", () => {
  const runs = { right: at(2000, [0.3, -0.4], [0.1, -0.2]), left: at(2000, [-0.1, 0.05], [0.1, 0.15]) };
  expect(systematicErrorMm(runs) / 1000).toBeCloseTo(0.36056, 5);
});

// From the same end points the exact fit finds the planted 4 % itself, where first order sees 3.72 %: (−0.2252, ∓0.2702). P9.7.
test("the exact fit of a track 4 % too wide finds 1.0400", () => {
  const both = (y: number) => at(2000, [-0.2252, y], [-0.2252, y]);
  const fit = fitSquares({ right: both(-0.2702), left: both(0.2702) }, 0);
  expect(1 / (1 + fit!.turnScale.value)).toBeCloseTo(1.04, 4);
  expect(fit!.curvatureRadPerMm.value * 2000).toBeCloseTo(0, 9);
});

// Chong and Kleeman 1997, Table 8 (second hand): b 0.37100 → 0.36898 m is E_b = 0.994555. references.md P9.15.
test("an effective gauge of 0.36898 for 0.37100 m is a turn scale of 1/0.994555", () => {
  expect(gaugeRatio((1 - 1 / 0.994555) * (Math.PI / 2)) * 0.371).toBeCloseTo(0.36898, 5);
});

// R = 53.336 m for a beta of 0.0375 rad over 2 m: the same ratio from the curvature 1/R. references.md P9.6.
test("a straight that curves with R 53.336 m tells of wheels 1.0037568 apart", () => {
  // R is printed to half a millimetre, which is worth 3.5e-8 here, E_d to 5e-8.
  expect(Math.abs(wheelRatioOf(1 / 53_336, 200) - 1.0037568)).toBeLessThan(8.5e-8);
});
