import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { offsetOf } from "../../src/geometry/offset.ts";
import {
  differenceOf,
  GRID_MM,
  intersectionOf,
  type Region,
  regionAreaMm2,
  regionContains,
  regionOutlineMm,
  unionOf,
} from "../../src/geometry/region.ts";
import { placed, type Ring } from "../../src/geometry/ring.kernel.ts";

const RUNS = { seed: 20261125, numRuns: 60 } as const;

/** A star-shaped outline, counter-clockwise. */
const outline: fc.Arbitrary<Ring> = fc
  .record({
    x: fc.double({ min: 0, max: 600, noNaN: true }),
    y: fc.double({ min: 0, max: 600, noNaN: true }),
    radii: fc.array(fc.double({ min: 20, max: 250, noNaN: true }), { minLength: 3, maxLength: 9 }),
    start: fc.double({ min: 0, max: 6, noNaN: true }),
  })
  .map(({ x, y, radii, start }) =>
    radii.flatMap((radius, i) => {
      const angle = start + (2 * Math.PI * i) / radii.length;
      return [x + radius * Math.cos(angle), y + radius * Math.sin(angle)];
    }),
  );
const outlines = fc.array(outline, { minLength: 1, maxLength: 6 });

/** What moving every corner by a grid step can change. */
const rounding = (...regions: readonly Region[]): number =>
  regions.reduce((sum, region) => sum + 2 * GRID_MM * regionOutlineMm(region), 0.01);

describe("regions", () => {
  test("largest ≤ union ≤ sum", () => {
    fc.assert(
      fc.property(outlines, (rings) => {
        const union = unionOf(rings);
        const area = regionAreaMm2(union);
        const each = rings.map((ring) => regionAreaMm2([ring]));
        const slack = rounding(rings);
        expect(area).toBeGreaterThanOrEqual(Math.max(...each) - slack);
        expect(area).toBeLessThanOrEqual(each.reduce((a, b) => a + b, 0) + slack);
      }),
      RUNS,
    );
  });

  test("rigid motion leaves the area of a union alone", () => {
    const angle = fc.double({ min: -4, max: 4, noNaN: true });
    const shift = fc.double({ min: -2000, max: 2000, noNaN: true });
    fc.assert(
      fc.property(outlines, angle, shift, shift, (rings, turn, dx, dy) => {
        const moved = rings.map((ring) => placed(ring, dx, dy, Math.cos(turn), Math.sin(turn)));
        const difference = regionAreaMm2(unionOf(moved)) - regionAreaMm2(unionOf(rings));
        expect(Math.abs(difference)).toBeLessThanOrEqual(rounding(rings, moved));
      }),
      RUNS,
    );
  });

  test("area(a ∪ b) + area(a ∩ b) = area(a) + area(b), and a is a ∩ b with a ∖ b", () => {
    fc.assert(
      fc.property(outlines, outlines, (first, second) => {
        const a = unionOf(first);
        const b = unionOf(second);
        const both = regionAreaMm2(intersectionOf(a, b));
        const slack = rounding(a, b);
        const sum = regionAreaMm2(a) + regionAreaMm2(b);
        expect(Math.abs(regionAreaMm2(unionOf([...a, ...b])) + both - sum)).toBeLessThanOrEqual(slack);
        const rest = regionAreaMm2(differenceOf(a, b));
        expect(Math.abs(rest + both - regionAreaMm2(a))).toBeLessThanOrEqual(slack);
        expect(Math.abs(regionAreaMm2(intersectionOf(b, a)) - both)).toBeLessThanOrEqual(slack);
      }),
      RUNS,
    );
  });

  test("a point is in the union where it is in one of the outlines", () => {
    const coordinate = fc.double({ min: -250, max: 850, noNaN: true });
    fc.assert(
      fc.property(outlines, coordinate, coordinate, (rings, x, y) => {
        // Points near an outline may fall either way.
        fc.pre(rings.every((ring) => distanceToRing(ring, x, y) > 3 * GRID_MM));
        const inOne = rings.some((ring) => regionContains([ring], x, y));
        expect(regionContains(unionOf(rings), x, y)).toBe(inOne);
      }),
      { ...RUNS, numRuns: 300 },
    );
  });
});

describe("offsets", () => {
  const distance = fc.double({ min: -60, max: 80, noNaN: true });

  test("the inner bound is part of the outer one and not much smaller", () => {
    fc.assert(
      fc.property(outlines, distance, (rings, by) => {
        const region = unionOf(rings);
        const inside = offsetOf(region, by, "inside");
        const outside = offsetOf(region, by, "outside");
        const slack = rounding(inside, outside, region);
        expect(regionAreaMm2(differenceOf(inside, outside))).toBeLessThanOrEqual(slack);
        const gap = regionAreaMm2(outside) - regionAreaMm2(inside);
        expect(gap).toBeLessThanOrEqual(0.1 * regionOutlineMm(outside) + slack);
      }),
      RUNS,
    );
  });

  test("a point belongs to the grown region when it is near enough", () => {
    const coordinate = fc.double({ min: -350, max: 950, noNaN: true });
    const growth = fc.double({ min: 1, max: 80, noNaN: true });
    fc.assert(
      fc.property(outlines, growth, coordinate, coordinate, (rings, by, x, y) => {
        const region = unionOf(rings);
        const away = regionContains(region, x, y)
          ? 0
          : Math.min(...region.map((ring) => distanceToRing(ring, x, y)));
        // 0.05 mm is the arcs' tolerance.
        if (away <= by - 0.06) expect(regionContains(offsetOf(region, by, "inside"), x, y)).toBe(true);
        if (away <= by - 0.004) expect(regionContains(offsetOf(region, by, "outside"), x, y)).toBe(true);
        if (away >= by + 0.06) expect(regionContains(offsetOf(region, by, "outside"), x, y)).toBe(false);
        if (away >= by + 0.004) expect(regionContains(offsetOf(region, by, "inside"), x, y)).toBe(false);
      }),
      { ...RUNS, numRuns: 300 },
    );
  });

  test("a point stays in the shrunk region when it is deep enough", () => {
    const coordinate = fc.double({ min: -100, max: 700, noNaN: true });
    const depth = fc.double({ min: 1, max: 60, noNaN: true });
    fc.assert(
      fc.property(outlines, depth, coordinate, coordinate, (rings, by, x, y) => {
        const region = unionOf(rings);
        const inside = regionContains(region, x, y);
        const edge = Math.min(...region.map((ring) => distanceToRing(ring, x, y)));
        const kept = (bound: "inside" | "outside") => regionContains(offsetOf(region, -by, bound), x, y);
        if (inside && edge >= by + 0.06) expect(kept("inside")).toBe(true);
        if (inside && edge >= by + 0.004) expect(kept("outside")).toBe(true);
        if (!inside || edge <= by - 0.06) expect(kept("outside")).toBe(false);
        if (!inside || edge <= by - 0.004) expect(kept("inside")).toBe(false);
      }),
      { ...RUNS, numRuns: 300 },
    );
  });
});

function distanceToRing(ring: Ring, x: number, y: number): number {
  let least = Number.POSITIVE_INFINITY;
  for (let i = 0; i < ring.length; i += 2) {
    const j = (i + 2) % ring.length;
    const [ax, ay, bx, by] = [ring[i]!, ring[i + 1]!, ring[j]!, ring[j + 1]!];
    const [ex, ey] = [bx - ax, by - ay];
    const square = ex * ex + ey * ey;
    const t = square > 0 ? Math.min(1, Math.max(0, ((x - ax) * ex + (y - ay) * ey) / square)) : 0;
    least = Math.min(least, Math.hypot(x - ax - t * ex, y - ay - t * ey));
  }
  return least;
}
