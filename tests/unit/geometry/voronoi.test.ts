import { describe, expect, test } from "vitest";
import { GeometryError } from "../../../src/geometry/error.ts";
import { largestEmptyCircle } from "../../../src/geometry/voronoi.ts";
import { RandomStream } from "../../../src/num/stream.ts";

const BOX = { minXMm: 0, minYMm: 0, maxXMm: 1200, maxYMm: 900 };

describe("largest empty circle", () => {
  test("between four points lies in their middle", () => {
    const points = [0, 0, 1200, 0, 1200, 900, 0, 900];
    expect(largestEmptyCircle(points, BOX)).toEqual({ xMm: 600, yMm: 450, radiusMm: 750 });
  });

  test("may have its centre on the box's outline", () => {
    const circle = largestEmptyCircle([0, 0, 1200, 0, 500, 900], BOX);
    // Equally far from (1200, 0) and (500, 900) on the right wall: y = (700² + 900²)/(2·900).
    expect(circle.xMm).toBe(1200);
    expect(circle.yMm).toBeCloseTo(722.2222222, 6);
    expect(circle.radiusMm).toBeCloseTo(722.2222222, 6);
  });

  test("takes points on one line and points given twice", () => {
    expect(largestEmptyCircle([300, 450, 900, 450, 300, 450], BOX).radiusMm).toBeCloseTo(
      Math.hypot(300, 450),
      9,
    );
  });

  test("takes points outside the box", () => {
    expect(largestEmptyCircle([-100, 450, 1300, 450], BOX).radiusMm).toBeCloseTo(Math.hypot(700, 450), 9);
  });

  test.each([1, 2, 3])("is empty, and none on a grid is larger, seed %i", (seed) => {
    const random = new RandomStream().open(seed, 0, 0);
    const points = Array.from({ length: 60 }, (_, i) => random.uniform() * (i % 2 === 0 ? 1200 : 900));
    const circle = largestEmptyCircle(points, BOX);
    const nearest = (x: number, y: number) => {
      let least = Number.POSITIVE_INFINITY;
      for (let i = 0; i < points.length; i += 2) {
        least = Math.min(least, Math.hypot(points[i]! - x, points[i + 1]! - y));
      }
      return least;
    };
    expect(nearest(circle.xMm, circle.yMm)).toBeCloseTo(circle.radiusMm, 6);
    let best = 0;
    for (let x = 0; x <= 1200; x += 10)
      for (let y = 0; y <= 900; y += 10) best = Math.max(best, nearest(x, y));
    expect(circle.radiusMm).toBeGreaterThanOrEqual(best - 1e-9);
    expect(circle.radiusMm).toBeLessThanOrEqual(best + 7.1);
  });

  test("refuses what has no answer", () => {
    expect(() => largestEmptyCircle([], BOX)).toThrow(GeometryError);
    expect(() => largestEmptyCircle([1, 2, 3], BOX)).toThrow(/pairs/);
    expect(() => largestEmptyCircle([1, Number.NaN], BOX)).toThrow(/finite/);
    expect(() => largestEmptyCircle([1, 1], { ...BOX, maxXMm: 0 })).toThrow(/no area/);
  });
});
