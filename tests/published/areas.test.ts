import { describe, expect, test } from "vitest";
import { bandRings, offsetOf } from "../../src/geometry/offset.ts";
import {
  differenceOf,
  type Region,
  rectangle,
  regionAreaMm2,
  regionInside,
  regionOutlineMm,
  unionOf,
} from "../../src/geometry/region.ts";
import { type SweepPiece, sweepOf, sweptByOutline } from "../../src/geometry/sweep.ts";
import { largestEmptyCircle } from "../../src/geometry/voronoi.ts";

const M2 = 1e6;
const ORIGIN = { xMm: 0, yMm: 0, headingRad: 0 };

/** The published value lies between the inner and the outer bound, and these lie close together. */
function expectBetween(inside: number, published: number, outside: number, relativeGap: number): void {
  expect(inside).toBeLessThanOrEqual(published);
  expect(outside).toBeGreaterThanOrEqual(published);
  expect(outside - inside).toBeLessThanOrEqual(relativeGap * published);
}

function boundsOf(make: (bound: "inside" | "outside") => Region): readonly [number, number] {
  return [regionAreaMm2(make("inside")) / M2, regionAreaMm2(make("outside")) / M2];
}

function line(dx: number, dy: number): SweepPiece {
  return {
    kind: "line",
    from: ORIGIN,
    to: { xMm: dx, yMm: dy, headingRad: 0 },
    centreXMm: 0,
    centreYMm: 0,
    angleRad: 0,
  };
}

function spin(angleRad: number): SweepPiece {
  return {
    kind: "rotation",
    from: ORIGIN,
    to: { ...ORIGIN, headingRad: angleRad },
    centreXMm: 0,
    centreYMm: 0,
    angleRad,
  };
}

// Steiner's formula: area A + P r + π r², outline P + 2 π r, of a convex outline grown by r. From memory; values computed
// independently. references.md M6.1, in metres.
describe("Steiner's formula", () => {
  const zone = rectangle(0, 0, 900, 1200);

  test("0.9 × 1.2 m grown by 0.1 m", () => {
    const [inside, outside] = boundsOf((bound) => offsetOf(zone, 100, bound));
    expectBetween(inside, 1.531415927, outside, 3e-5);
  });

  test("its outline: 4.2 m + 2 π · 0.1 m", () => {
    const outline = (bound: "inside" | "outside") => regionOutlineMm(offsetOf(zone, 100, bound)) / 1000;
    expectBetween(outline("inside"), 4.2 + 0.6283185307, outline("outside"), 2e-4);
  });

  test("0.9 × 1.2 m shrunk by 0.1 m: 0.7 × 1.0 m", () => {
    expect(boundsOf((bound) => offsetOf(zone, -100, bound))).toEqual([0.7, 0.7]);
  });

  test("shrunk, then grown: the corners stay round, 1.08 − (4 − π) 0.01 m²", () => {
    const [inside, outside] = boundsOf((bound) => offsetOf(offsetOf(zone, -100, bound), 100, bound));
    expectBetween(inside, 1.071415927, outside, 4e-5);
  });
});

// What a disc of radius r cannot reach in a corner of angle α: r² (cot(α/2) − (π − α)/2). Derived; values computed
// independently. references.md M1.7, r = 1.
describe("corners a disc cannot reach", () => {
  const lost = (outline: readonly number[], r: number, bound: "inside" | "outside"): number => {
    const whole = regionInside(outline);
    const opened = offsetOf(offsetOf(whole, -r, bound, 0.01), r, bound, 0.01);
    return (regionAreaMm2(whole) - regionAreaMm2(opened)) / (r * r);
  };

  test("right and half right angles: 0.214602 + 2 · 1.236116", () => {
    const triangle = [0, 0, 1000, 0, 0, 1000];
    expectBetween(
      lost(triangle, 100, "outside"),
      0.214602 + 2 * 1.236116,
      lost(triangle, 100, "inside"),
      1e-3,
    );
  });

  test("three angles of 60°: 3 · 0.684853", () => {
    const triangle = [0, 0, 1000, 0, 500, 866.0254038];
    expectBetween(lost(triangle, 100, "outside"), 3 * 0.684853, lost(triangle, 100, "inside"), 1e-3);
  });

  test("six angles of 120°: 6 · 0.0537515; twelve of 150°: 12 · 0.00614980", () => {
    const regular = (corners: number): number[] =>
      Array.from({ length: corners }, (_, k) => (2 * Math.PI * k) / corners).flatMap((angle) => [
        1000 * Math.cos(angle),
        1000 * Math.sin(angle),
      ]);
    for (const [corners, each] of [
      [6, 0.0537515],
      [12, 0.0061498],
    ] as const) {
      const outline = regular(corners);
      expectBetween(lost(outline, 400, "outside"), corners * each, lost(outline, 400, "inside"), 1e-2);
    }
  });

  // It touches a ball seated in a corner of angle α iff R/r ≤ (1 + s)/(1 − s), s = sin(α/2): exactly 3 at 60°, 5.828427 at 90°. Derived. references.md M1.8.
  test.each([
    [[0, 0, 1000, 0, 500, 866.0254038], 3],
    [[0, 0, 1000, 0, 1000, 1000, 0, 1000], 5.828427],
  ])("a ball seated in a corner of %o is touched by a disc of up to %f times its size", (outline, ratio) => {
    const whole = regionInside(outline);
    const r = 20;
    const missed = (size: number): number => {
      const touched = offsetOf(offsetOf(whole, -size * r, "outside", 1e-4), (1 + size) * r, "outside", 1e-4);
      return regionAreaMm2(differenceOf(offsetOf(whole, -r, "outside", 1e-4), touched));
    };
    expect(missed(ratio - 0.001)).toBe(0);
    expect(missed(ratio + 0.01)).toBeGreaterThan(0);
  });

  // A disc of radius R touches a ball (radius r) in a right corner only partly. Derived. references.md M1.8: R = 0.15 m, r = 0.02 m.
  test("a disc of 150 mm leaves 1.97321e-4 m² of ball centres per corner", () => {
    const [least, most] = boundsOf((bound) => {
      const discCentres = rectangle(150, 150, 850, 850);
      const ballCentres = rectangle(20, 20, 980, 980);
      const grown = offsetOf(discCentres, 170, bound === "inside" ? "outside" : "inside", 0.002);
      return differenceOf(ballCentres, grown);
    });
    expectBetween(least / 4, 1.97321e-4, most / 4, 1e-2);
  });
});

// A convex outline moved by L sweeps its area plus L times its width across the motion; a capsule is 2 r L + π r²; a rectangle that
// spins about its centre sweeps the disc of its half diagonal. Derived. references.md M6.2.
describe("swept areas", () => {
  const bar = [-100, -80, 100, -80, 100, 80, -100, 80];

  test("capsule, r = 0.1 m, L = 1 m: 0.231415927 m²", () => {
    const [inside, outside] = boundsOf((bound) => unionOf(bandRings([0, 0, 1000, 0], 100, bound)));
    expectBetween(inside, 0.231415927, outside, 3e-4);
  });

  test("0.20 × 0.16 m moved 1 m across its short side", () => {
    const [inside, outside] = boundsOf((bound) => sweptByOutline(bar, ORIGIN, [line(1000, 0)], bound));
    expect([inside, outside]).toEqual([0.192, 0.192]);
  });

  test("0.20 × 0.16 m moved 1 m along its diagonal direction of 45°: + 0.36/√2 m²", () => {
    const [inside] = boundsOf((bound) =>
      sweptByOutline(bar, ORIGIN, [line(707.1067812, 707.1067812)], bound),
    );
    expect(inside).toBeCloseTo(0.032 + 0.2545584412, 6);
  });

  test("0.20 × 0.16 m spun once about its centre: 0.0515221 m²", () => {
    const [inside, outside] = boundsOf((bound) =>
      sweptByOutline(bar, ORIGIN, [spin(6.283185307179586)], bound),
    );
    expectBetween(inside, 0.0515221, outside, 1e-3);
  });

  test("its edges alone leave out the disc that stays inside: π (0.128062² − 0.08²)", () => {
    const sweep = sweepOf([[...bar, -100, -80]], ORIGIN, [spin(6.283185307179586)]);
    expectBetween(
      regionAreaMm2(sweep.inside) / M2,
      0.0515221 - 0.0201062,
      regionAreaMm2(sweep.outside) / M2,
      4e-3,
    );
  });

  // n = ⌈W/w⌉ lanes. references.md M1.3: W = 0.9 m, w = 0.18 m → 5.
  test("5 lanes of a 0.18 m bar cover 0.9 m, 4 do not", () => {
    const lanes = (n: number) => {
      const pieces = Array.from({ length: n }, (_, i): SweepPiece => {
        const from = { xMm: 0, yMm: 90 + 180 * i, headingRad: 0 };
        return { ...line(0, 0), from, to: { ...from, xMm: 1200 } };
      });
      return regionAreaMm2(sweepOf([[0, -90, 0, 90]], ORIGIN, pieces).inside) / M2;
    };
    expect(lanes(5)).toBeCloseTo(0.9 * 1.2, 9);
    expect(lanes(4)).toBeCloseTo(0.72 * 1.2, 9);
  });
});

// references.md M6.3; areas by hand.
describe("unions and empty circles", () => {
  test("two unit squares, one moved by (½, ½): 1.75", () => {
    const both = unionOf([...rectangle(0, 0, 1000, 1000), ...rectangle(500, 500, 1500, 1500)]);
    expect(regionAreaMm2(both) / M2).toBe(1.75);
  });

  test("unit square with one point in its middle: 0.7071068, at a corner", () => {
    const box = { minXMm: 0, minYMm: 0, maxXMm: 1, maxYMm: 1 };
    const circle = largestEmptyCircle([0.5, 0.5], box);
    // biome-ignore lint/suspicious/noApproximativeNumericConstant: the digits of the source
    expect(circle.radiusMm).toBeCloseTo(0.7071068, 7);
    expect([0, 1]).toContain(circle.xMm);
    expect([0, 1]).toContain(circle.yMm);
  });
});
