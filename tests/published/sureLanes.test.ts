import { describe, expect, test } from "vitest";
import { regionAreaMm2, unionOf } from "../../src/geometry/region.ts";
import { largestFactor } from "../../src/score/driftBudget.ts";
import { type PoseError, Symbols } from "../../src/score/poseError.ts";
import { sureRun } from "../../src/score/sureRun.ts";
import type { Stretch } from "../../src/score/sureTrack.ts";
import { answered } from "../support/answered.ts";

/**
 * Lanes under bounded error: a lane of width w whose lateral error is at most ε0 and whose heading error is at most d leaves
 * w − 2(ε0 + L·tan d) at its end, so that n = ⌈W/(w − 2ε)⌉ lanes cover a width W for sure. The formula is elementary; the problem is
 * that of Lewis, Feshbach and O'Kane, Guaranteed coverage with a blind unreliable robot, IROS 2018. Values worked
 * out by hand for a zone of 0.9 × 1.2 m and w = 0.18 m: 5 lanes for ε = 0, 6 for ε = 10 mm, 8 for ε0 = 5 mm and d = 1° (ε = 25.9461 mm).
 */
const WIDTH_MM = 900;
const LANE_MM = 180;
const LENGTH_MM = 1200;
const DEGREE = Math.PI / 180;

function lane(yMm: number, sideMm: number, headingRad: number): Stretch {
  const symbols = new Symbols();
  const from = { xMm: 0, yMm, headingRad: 0 };
  const error: PoseError = {
    x: [0],
    y: symbols.fresh(sideMm),
    heading: symbols.fresh(headingRad),
    restMm: 0,
    restRad: 0,
  };
  return {
    piece: {
      move: 0,
      kind: "line",
      from,
      to: { ...from, xMm: LENGTH_MM },
      centreXMm: 0,
      centreYMm: 0,
      angleRad: 0,
      startS: 0,
      endS: 1,
    },
    motion: { headingRad: 0, sigma: 1, kappa: 0 },
    lengthMm: LENGTH_MM,
    move: { scale: [0], bend: [0] },
    error,
    isLoose: false,
    arrived: null,
  };
}

/** A bar across the origin, and balls that are points. */
const BAR = [0, -LANE_MM / 2, 0, LANE_MM / 2];

/** Share of the zone's width that n lanes, spread evenly, surely sweep: the least of some places along them, the last near their end. */
function sureShare(lanes: number, sideMm: number, headingRad: number): number {
  const rings = Array.from({ length: lanes }, (_, i) => {
    const yMm = ((i + 0.5) * WIDTH_MM) / lanes;
    return sureRun(lane(yMm, sideMm, headingRad), BAR, 0);
  }).flat();
  const widthAt = (u: number): number => {
    const spans = rings
      .map((ring) => spanAt(ring, u))
      .sort((a, b) => a.low - b.low)
      .reduce(
        (sum, { low, high }) => ({
          upTo: Math.max(sum.upTo, high),
          width: sum.width + Math.max(0, Math.min(high, WIDTH_MM) - Math.max(low, sum.upTo, 0)),
        }),
        { upTo: 0, width: 0 },
      );
    return spans.width / WIDTH_MM;
  };
  return Math.min(...[100, 400, 700, 1000, 1195].map(widthAt));
}

function spanAt(ring: readonly number[], u: number): { low: number; high: number } {
  const ys: number[] = [];
  for (let i = 0; i < ring.length; i += 2) {
    const [x0 = 0, y0 = 0] = ring.slice(i, i + 2);
    const x1 = ring[(i + 2) % ring.length] ?? 0;
    const y1 = ring[(i + 3) % ring.length] ?? 0;
    if (x0 !== x1 && Math.min(x0, x1) <= u && u <= Math.max(x0, x1))
      ys.push(y0 + ((y1 - y0) * (u - x0)) / (x1 - x0));
  }
  return { low: Math.min(...ys), high: Math.max(...ys) };
}

describe("lanes that surely cover 900 mm", () => {
  test.each([
    ["no error", 0, 0, 5],
    ["10 mm to the side", 10, 0, 6],
    ["5 mm to the side and 1°", 5, DEGREE, 8],
  ])("with %s", (_, sideMm, headingRad, lanes) => {
    expect(sureShare(lanes, sideMm, headingRad)).toBeCloseTo(1, 9);
    expect(sureShare(lanes - 1, sideMm, headingRad)).toBeLessThan(0.999);
  });

  test("one lane with 5 mm and 1° surely sweeps 0.178865 m² of its 0.216", () => {
    const region = unionOf([...sureRun(lane(450, 5, DEGREE), BAR, 0)]);
    const area = regionAreaMm2(region);
    // A promise may fall short, by a hundredth here (its ends, and a grid of 10 mm), and never exceed.
    expect(area).toBeLessThanOrEqual(178_865);
    expect(area).toBeGreaterThan(0.99 * 178_865);
    expect(regionAreaMm2(unionOf([...sureRun(lane(450, 0, 0), BAR, 0)]))).toBeCloseTo(216_000, 0);
  });

  test("turned round: five lanes of 200 mm hold up to exactly 10 mm", () => {
    const wide = [0, -100, 0, 100];
    const share = (factor: number): number => {
      const rings = Array.from({ length: 5 }, (_, i) =>
        sureRun(lane(90 + 180 * i, factor, 0), wide, 0),
      ).flat();
      const spans = rings.map((ring) => spanAt(ring, 600)).sort((a, b) => a.low - b.low);
      const isWhole =
        (spans[0]?.low ?? 1) <= 1e-9 &&
        spans.every((span, i) => span.high >= (spans[i + 1]?.low ?? WIDTH_MM) - 1e-9);
      return isWhole ? 1 : 0;
    };
    const { factor, toleranceFactor } = answered(largestFactor(1, 64, 20), share);
    expect(factor).toBeLessThanOrEqual(10 + 1e-8);
    expect(factor + toleranceFactor).toBeGreaterThan(10 - 1e-8);
  });
});
