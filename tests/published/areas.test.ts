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

/**
 * Both bounds are the published value, to `within`. Lengths are taken as many times as long as fit in (40 m), and arcs as fine as
 * is worth while, so that the grid of 1 µm and the straight pieces that stand for arcs shift as few printed digits as possible;
 * where `within` is more than half a unit of the last of them, this is why.
 */
function expectBounds([inside, outside]: readonly [number, number], published: number, within: number): void {
  expect(Math.abs(inside - published)).toBeLessThan(within);
  expect(Math.abs(outside - published)).toBeLessThan(within);
}

/** How many times as long as in the source most lengths are here, and how far a straight piece may stray from its arc, mm. */
const SCALE = 20;
const FINE_MM = 1e-3;

/** Areas of both bounds in m², of a scene `scale` times as long. */
function boundsOf(make: (bound: "inside" | "outside") => Region, scale = 1): readonly [number, number] {
  const area = (bound: "inside" | "outside"): number => regionAreaMm2(make(bound)) / (M2 * scale * scale);
  return [area("inside"), area("outside")];
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
  const zone = rectangle(0, 0, 900 * SCALE, 1200 * SCALE);
  const reach = 100 * SCALE;

  test("0.9 × 1.2 m grown by 0.1 m", () => {
    const bounds = boundsOf((bound) => offsetOf(zone, reach, bound, FINE_MM), SCALE);
    expect(bounds[0]).toBeLessThanOrEqual(1.531415927);
    expect(bounds[1]).toBeGreaterThanOrEqual(1.531415927);
    expectBounds(bounds, 1.531415927, 3e-8);
  });

  test("its outline: 4.2 m + 2 π · 0.1 m", () => {
    const outline = (bound: "inside" | "outside"): number =>
      regionOutlineMm(offsetOf(zone, reach, bound, FINE_MM)) / (1000 * SCALE);
    expectBounds([outline("inside"), outline("outside")], 4.2 + 0.6283185307, 3e-7);
  });

  test("0.9 × 1.2 m shrunk by 0.1 m: 0.7 × 1.0 m", () => {
    expect(boundsOf((bound) => offsetOf(zone, -reach, bound), SCALE)).toEqual([0.7, 0.7]);
  });

  test("shrunk, then grown: the corners stay round, 1.08 − (4 − π) 0.01 m²", () => {
    const opened = (bound: "inside" | "outside"): Region =>
      offsetOf(offsetOf(zone, -reach, bound, FINE_MM), reach, bound, FINE_MM);
    expectBounds(boundsOf(opened, SCALE), 1.071415927, 3e-8);
  });

  test("with the tolerance that the project uses, 0.05 mm, the bounds hold it too", () => {
    const [inside, outside] = boundsOf((bound) => offsetOf(rectangle(0, 0, 900, 1200), 100, bound));
    expect(inside).toBeLessThanOrEqual(1.531415927);
    expect(outside).toBeGreaterThanOrEqual(1.531415927);
    expect(outside - inside).toBeLessThan(4e-5);
  });
});

// What a disc of radius r cannot reach in a corner of angle α: r² (cot(α/2) − (π − α)/2). Derived; values computed
// independently. references.md M1.7, r = 1.
describe("corners a disc cannot reach", () => {
  const lost = (outline: readonly number[], r: number, tolerance = 3e-4): readonly [number, number] => {
    const whole = regionInside(outline);
    const left = (bound: "inside" | "outside"): number =>
      (regionAreaMm2(whole) -
        regionAreaMm2(offsetOf(offsetOf(whole, -r, bound, tolerance), r, bound, tolerance))) /
      (r * r);
    return [left("outside"), left("inside")];
  };
  const SIDE = 36_000;

  test("right and half right angles: 0.214602 + 2 · 1.236116", () => {
    expectBounds(lost([0, 0, SIDE, 0, 0, SIDE], 10_000), 0.214602 + 2 * 1.236116, 3 * 5e-7);
  });

  test("three angles of 60°: 3 · 0.684853", () => {
    const even = [0, 0, SIDE, 0, SIDE / 2, SIDE * Math.sqrt(0.75)];
    expectBounds(lost(even, 10_000), 3 * 0.684853, 3 * 5e-7);
  });

  test("six angles of 120°: 6 · 0.0537515; twelve of 150°: 12 · 0.00614980", () => {
    const regular = (corners: number): number[] =>
      Array.from({ length: corners }, (_, k) => (2 * Math.PI * k) / corners).flatMap((angle) => [
        39_000 * Math.cos(angle),
        39_000 * Math.sin(angle),
      ]);
    expectBounds(lost(regular(6), 33_000, FINE_MM), 6 * 0.0537515, 6 * 5e-8);
    // Corners so blunt are so small that the grid shifts the last digit but one.
    expectBounds(lost(regular(12), 37_000, FINE_MM), 12 * 0.0061498, 4e-7);
  });

  // It touches a ball seated in a corner of angle α iff R/r ≤ (1 + s)/(1 − s), s = sin(α/2): exactly 3 at 60°, 5.828427 at 90°. Derived. references.md M1.8.
  test.each([
    [[0, 0, 20_000, 0, 10_000, 20_000 * Math.sqrt(0.75)], 3],
    [[0, 0, 20_000, 0, 20_000, 20_000, 0, 20_000], 5.828427],
  ])("a ball seated in a corner of %o is touched by a disc of up to %f times its size", (outline, ratio) => {
    const whole = regionInside(outline);
    const r = 400;
    const missed = (size: number): number => {
      const touched = offsetOf(offsetOf(whole, -size * r, "outside", 1e-4), (1 + size) * r, "outside", 1e-4);
      return regionAreaMm2(differenceOf(offsetOf(whole, -r, "outside", 1e-4), touched));
    };
    // To all printed digits in tests/published/dead-pockets; here what is missed has to be larger than the grid.
    expect(missed(ratio - 0.0005)).toBe(0);
    expect(missed(ratio + 0.0005)).toBeGreaterThan(0);
  });

  // A disc of radius R touches a ball (radius r) in a right corner only partly. Derived. references.md M1.8: R = 0.15 m, r = 0.02 m.
  test("a disc of 150 mm leaves 1.97321e-4 m² of ball centres per corner", () => {
    const [least, most] = boundsOf((bound) => {
      const discCentres = rectangle(150 * SCALE, 150 * SCALE, 850 * SCALE, 850 * SCALE);
      const ballCentres = rectangle(20 * SCALE, 20 * SCALE, 980 * SCALE, 980 * SCALE);
      const grown = offsetOf(discCentres, 170 * SCALE, bound === "inside" ? "outside" : "inside", 3e-4);
      return differenceOf(ballCentres, grown);
    }, SCALE);
    expectBounds([least / 4, most / 4], 1.97321e-4, 1e-9);
  });
});

// A convex outline moved by L sweeps its area plus L times its width across the motion; a capsule is 2 r L + π r²; a rectangle that
// spins about its centre sweeps the disc of its half diagonal. Derived. references.md M6.2.
describe("swept areas", () => {
  const bar = [-100, -80, 100, -80, 100, 80, -100, 80];
  const times = (scale: number): number[] => bar.map((mm) => mm * scale);
  // A sweep's arcs stray by 0.05 mm always.
  const WIDE = 100;
  const round = spin(6.283185307179586);

  test("capsule, r = 0.1 m, L = 1 m: 0.231415927 m²", () => {
    const band = (bound: "inside" | "outside"): Region =>
      unionOf(bandRings([0, 0, 1000 * SCALE, 0], 100 * SCALE, bound, FINE_MM));
    expectBounds(boundsOf(band, SCALE), 0.231415927, 3e-8);
  });

  test("0.20 × 0.16 m moved 1 m across its short side", () => {
    const [inside, outside] = boundsOf((bound) => sweptByOutline(bar, ORIGIN, [line(1000, 0)], bound));
    expect([inside, outside]).toEqual([0.192, 0.192]);
  });

  test("0.20 × 0.16 m moved 1 m along its diagonal direction of 45°: + 0.36/√2 m²", () => {
    const along = line(707.1067812 * 30, 707.1067812 * 30);
    const bounds = boundsOf((bound) => sweptByOutline(times(30), ORIGIN, [along], bound), 30);
    expectBounds(bounds, 0.032 + 0.2545584412, 1e-8);
  });

  test("0.20 × 0.16 m spun once about its centre: 0.0515221 m²", () => {
    const bounds = boundsOf((bound) => sweptByOutline(times(WIDE), ORIGIN, [round], bound), WIDE);
    expectBounds(bounds, 0.0515221, 3e-7);
  });

  test("its edges alone leave out the disc that stays inside: π (0.128062² − 0.08²)", () => {
    const wide = times(WIDE);
    const sweep = sweepOf([[...wide, ...wide.slice(0, 2)]], ORIGIN, [round]);
    expectBounds(
      boundsOf((bound) => sweep[bound], WIDE),
      0.0515221 - 0.0201062,
      4e-7,
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
