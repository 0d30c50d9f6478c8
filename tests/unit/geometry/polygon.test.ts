import { describe, expect, it } from "vitest";
import {
  boundingBox,
  convexHull,
  distanceToPolygon,
  isSimple,
  type PointMm,
  pointInPolygon,
  polygonsTouch,
  signedArea,
} from "../../../src/geometry/polygon.ts";

const points = (...pairs: readonly (readonly [number, number])[]): PointMm[] =>
  pairs.map(([xMm, yMm]) => ({ xMm, yMm }));

const square = points([0, 0], [10, 0], [10, 10], [0, 10]);
const ell = points([0, 0], [30, 0], [30, 10], [10, 10], [10, 30], [0, 30]);
const bowTie = points([0, 0], [10, 10], [10, 0], [0, 10]);

describe("signedArea", () => {
  it("is positive counter-clockwise and negative clockwise", () => {
    expect(signedArea(square)).toBe(100);
    expect(signedArea([...square].reverse())).toBe(-100);
    expect(signedArea(ell)).toBe(500);
  });

  it("is 0 where there is nothing to measure", () => {
    expect(signedArea([])).toBe(0);
    expect(signedArea(square.slice(0, 2))).toBe(0);
  });

  it("keeps its digits far from the origin", () => {
    const far = square.map(({ xMm, yMm }) => ({ xMm: xMm + 1e9, yMm: yMm - 1e9 }));
    expect(signedArea(far)).toBe(100);
  });
});

describe("boundingBox", () => {
  it("holds all vertices", () => {
    expect(boundingBox(points([3, -4], [-1, 2], [0, 9]))).toEqual({
      minXMm: -1,
      minYMm: -4,
      maxXMm: 3,
      maxYMm: 9,
    });
  });

  it("is inverted for no vertices", () => {
    expect(boundingBox([]).minXMm).toBe(Infinity);
    expect(boundingBox([]).maxXMm).toBe(-Infinity);
  });
});

describe("isSimple", () => {
  it.each([
    ["a square", square],
    ["a square, clockwise", [...square].reverse()],
    ["a non-convex outline", ell],
    ["a vertex in the middle of a straight edge", points([0, 0], [5, 0], [10, 0], [10, 10], [0, 10])],
    ["a triangle", points([0, 0], [10, 0], [0, 10])],
  ])("accepts %s", (_, outline) => {
    expect(isSimple(outline)).toBe(true);
  });

  it.each([
    ["two points", square.slice(0, 2)],
    ["crossing edges", bowTie],
    ["a repeated vertex", points([0, 0], [0, 0], [10, 0], [10, 10])],
    ["the first vertex repeated at the end", [...square, ...points([0, 0])]],
    ["a fold back along an edge", points([0, 0], [10, 0], [5, 0], [5, 10])],
    ["a vertex that touches another edge", points([0, 0], [20, 0], [20, 20], [10, 0], [0, 20])],
    ["two vertices at one place", points([0, 0], [10, 0], [5, 5], [10, 10], [0, 10], [5, 5])],
    ["all on one line", points([0, 0], [10, 0], [20, 0])],
    [
      "edges that lie on each other",
      points([0, 0], [20, 0], [20, 10], [15, 10], [15, 0], [5, 0], [5, 10], [0, 10]),
    ],
  ])("refuses %s", (_, outline) => {
    expect(isSimple(outline)).toBe(false);
  });
});

describe("convexHull", () => {
  it("drops what lies inside or on a straight edge", () => {
    expect(convexHull([...ell, ...points([5, 5], [15, 15])])).toEqual(
      points([0, 0], [30, 0], [30, 10], [10, 30], [0, 30]),
    );
    expect(convexHull(points([5, 0], [10, 10], [0, 0], [0, 10], [10, 0]))).toEqual(square);
  });

  it("keeps few points as they are", () => {
    expect(convexHull(points([1, 2]))).toEqual(points([1, 2]));
    expect(convexHull(points([1, 2], [1, 2]))).toEqual(points([1, 2]));
    expect(convexHull(points([3, 3], [1, 1], [2, 2]))).toEqual(points([1, 1], [3, 3]));
    expect(convexHull([])).toEqual([]);
  });
});

describe("pointInPolygon", () => {
  it.each([
    [5, 5, true],
    [5, 25, true],
    [20, 20, false],
    [-1, 5, false],
    [-5, 0, false],
    [31, 10, false],
    // On the boundary: edge, reflex corner, convex corner.
    [20, 10, true],
    [10, 10, true],
    [0, 0, true],
    // Level with vertices, outside.
    [40, 0, false],
    [-1, 30, false],
  ])("(%d, %d) in the L: %s", (xMm, yMm, inside) => {
    expect(pointInPolygon({ xMm, yMm }, ell)).toBe(inside);
    expect(pointInPolygon({ xMm, yMm }, [...ell].reverse())).toBe(inside);
  });
});

describe("distanceToPolygon", () => {
  it("is 0 inside, and measured to edges and corners outside", () => {
    expect(distanceToPolygon({ xMm: 5, yMm: 5 }, square)).toBe(0);
    expect(distanceToPolygon({ xMm: 5, yMm: 13 }, square)).toBe(3);
    expect(distanceToPolygon({ xMm: 13, yMm: 14 }, square)).toBe(5);
    expect(distanceToPolygon({ xMm: 14, yMm: 20 }, ell)).toBe(4);
  });
});

describe("polygonsTouch", () => {
  const moved = (dx: number, dy: number): PointMm[] =>
    square.map(({ xMm, yMm }) => ({ xMm: xMm + dx, yMm: yMm + dy }));
  it.each([
    ["crossing", moved(5, 5), true],
    ["sharing an edge", moved(10, 0), true],
    ["sharing a corner", moved(10, 10), true],
    ["apart", moved(10.001, 0), false],
    ["one inside the other", points([4, 4], [6, 4], [5, 6]), true],
    ["the other way round", points([-5, -5], [15, -5], [15, 15], [-5, 15]), true],
    ["a cross without a vertex inside", points([4, -5], [6, -5], [6, 15], [4, 15]), true],
    ["nothing", [], false],
  ])("%s", (_, other, touch) => {
    expect(polygonsTouch(square, other)).toBe(touch);
    expect(polygonsTouch(other, square)).toBe(touch);
  });
});
