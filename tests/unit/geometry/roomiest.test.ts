import { describe, expect, test } from "vitest";
import { differenceOf, type Region, rectangle, regionContains } from "../../../src/geometry/region.ts";
import { roomiestCircle, roomiestCircles } from "../../../src/geometry/roomiest.ts";

const box = (minX: number, minY: number, maxX: number, maxY: number): Region =>
  rectangle(minX, minY, maxX, maxY);

describe("the roomiest circle", () => {
  test("of a square touches its four sides", () => {
    const circle = roomiestCircle(box(100, 200, 300, 400));
    expect(circle?.xMm).toBeCloseTo(200, 3);
    expect(circle?.yMm).toBeCloseTo(300, 3);
    expect(circle?.radiusMm).toBeGreaterThan(99.9);
    expect(circle?.radiusMm).toBeLessThanOrEqual(100);
  });

  test("is never larger than it is, also where no point along a side lies where it touches", () => {
    // 105 mm are cut into 21: the middle of a side lies between two points.
    const radius = roomiestCircle(box(0, 0, 105, 105))?.radiusMm ?? 0;
    expect(radius).toBeLessThanOrEqual(52.5);
    expect(radius).toBeGreaterThan(52.3);
  });

  test("of a triangle is its incircle", () => {
    // Legs 300 and 400, hypotenuse 500: r = (300 + 400 − 500)/2 = 100, centre (100, 100).
    const circle = roomiestCircle([[0, 0, 300, 0, 0, 400]]);
    expect(circle?.xMm).toBeCloseTo(100, 0);
    expect(circle?.yMm).toBeCloseTo(100, 0);
    expect(Math.abs((circle?.radiusMm ?? 0) - 100)).toBeLessThan(0.2);
  });

  test("keeps out of holes and of the bay of an L", () => {
    const holed = differenceOf(box(0, 0, 400, 400), box(150, 150, 250, 250));
    const circle = roomiestCircle(holed);
    expect(regionContains(holed, circle?.xMm ?? 0, circle?.yMm ?? 0)).toBe(true);
    // In a corner: r from two sides and from the hole's corner at 150: (150 − r)√2 = r.
    expect(Math.abs((circle?.radiusMm ?? 0) - 150 / (1 + Math.SQRT1_2))).toBeLessThan(0.5);
    const bend = differenceOf(box(0, 0, 400, 400), box(100, 100, 400, 400));
    const inBend = roomiestCircle(bend);
    // In the elbow: (100 − r)√2 = r as well.
    expect(Math.abs((inBend?.radiusMm ?? 0) - 100 / (1 + Math.SQRT1_2))).toBeLessThan(0.5);
  });

  test("is none where nothing fits", () => {
    expect(roomiestCircle([])).toBeNull();
    expect(roomiestCircle(box(0, 0, 300, 6))).toBeNull();
  });
});

test("one after the other they get smaller and do not overlap", () => {
  const region = [...box(0, 0, 200, 200), ...box(300, 0, 400, 300)];
  const circles = roomiestCircles(region, 5);
  expect(circles).toHaveLength(5);
  for (const [i, circle] of circles.entries()) {
    for (const other of circles.slice(0, i)) {
      expect(other.radiusMm).toBeGreaterThanOrEqual(circle.radiusMm);
      const apart = Math.hypot(circle.xMm - other.xMm, circle.yMm - other.yMm);
      expect(apart).toBeGreaterThanOrEqual(circle.radiusMm + other.radiusMm - 0.2);
    }
  }
  expect(circles[1]).toMatchObject({ xMm: expect.closeTo(350, 0) });
});
