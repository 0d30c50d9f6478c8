import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  firstMarks,
  type Marks,
  markedGaugeMm,
  photoMatrix,
  robotFromPhoto,
  turnedAround,
  withMark,
} from "../../../src/app/outline/marks.ts";
import {
  FOOTPRINT,
  pointsAt,
  pushersAt,
  withoutPoint,
  withPointInserted,
} from "../../../src/app/outline/outlineForm.ts";
import { sheetView } from "../../../src/app/outline/sheetView.ts";
import { boxAround, leftMirrored, nearestEdges } from "../../../src/app/outline/sides.ts";
import type { PointMm } from "../../../src/model/zone.ts";

const point = (xMm: number, yMm: number): PointMm => ({ xMm, yMm });

/** A robot that points right in a photo of 1000 × 500: axle at x 400, wheels 200 points apart; 1 point is 0.5 mm. */
const MARKS: Marks = {
  ruler: [
    { x: 100, y: 100 },
    { x: 500, y: 100 },
  ],
  trueMm: 200,
  wheels: [
    { x: 400, y: 350 },
    { x: 400, y: 150 },
  ],
  mirrored: false,
};

describe("marks in a photo", () => {
  it("give scale, axle and direction", () => {
    expect(robotFromPhoto(MARKS, { x: 400, y: 250 })).toEqual(point(0, 0));
    expect(robotFromPhoto(MARKS, { x: 600, y: 250 })).toEqual(point(100, 0));
    expect(robotFromPhoto(MARKS, { x: 400, y: 350 })).toEqual(point(0, 50));
    expect(markedGaugeMm(MARKS)).toBe(100);
    // From below, forward is the other way while left stays left.
    expect(robotFromPhoto({ ...MARKS, mirrored: true }, { x: 600, y: 350 })).toEqual(point(-100, 50));
    expect(robotFromPhoto(turnedAround(MARKS), { x: 600, y: 350 })).toEqual(point(-100, -50));
  });

  it("lay every point of the image where the robot's frame has it", () => {
    const view = sheetView({ left: -100, right: 100, low: -80, high: 80 }, point(0, 0), 1.5, 700, 400);
    for (const marks of [MARKS, { ...MARKS, mirrored: true }, firstMarks(1000, 500, 240)]) {
      const numbers = photoMatrix(marks, 500, view).slice(7, -1).split(",").map(Number);
      const [a = 0, b = 0, c = 0, d = 0, e = 0, f = 0] = numbers;
      for (const [u, v] of [
        [0, 0],
        [1000, 0],
        [321, 456],
      ] as const) {
        const at = robotFromPhoto(marks, { x: u, y: 500 - v });
        expect(a * u + c * v + e).toBeCloseTo(view.x(at.xMm), 9);
        expect(b * u + d * v + f).toBeCloseTo(view.y(at.yMm), 9);
      }
    }
  });

  it("cannot lie on each other", () => {
    expect(withMark(MARKS, "wheel-1", { x: 401, y: 349 })).toBeNull();
    expect(withMark(MARKS, "ruler-0", { x: 0, y: 0 })?.ruler[0]).toEqual({ x: 0, y: 0 });
  });
});

const form = (points: readonly (readonly [number, number])[], pusherEdges: readonly number[]) => ({
  robot: { shape: { kind: "polygon", outlineMm: points, pusherEdges } },
});
const SQUARE = [
  [-50, -40],
  [60, -40],
  [60, 40],
  [-50, 40],
] as const;

describe("an outline in the form", () => {
  it("keeps its pusher edges on the same stretches when corners come and go", () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 0, max: 3 }),
        fc.subarray([0, 1, 2, 3]),
        fc.double({ min: 0.1, max: 0.9, noNaN: true }),
        (edge, pushers, share) => {
          const before = form(SQUARE, pushers);
          const a = SQUARE[edge] ?? SQUARE[0];
          const b = SQUARE[(edge + 1) % 4] ?? SQUARE[0];
          const at = point(a[0] + share * (b[0] - a[0]), a[1] + share * (b[1] - a[1]));
          const more = withPointInserted(before, FOOTPRINT, edge, at);
          expect(pointsAt(more, FOOTPRINT)).toHaveLength(5);
          expect(pushersAt(more, FOOTPRINT)).toHaveLength(pushers.length + Number(pushers.includes(edge)));
          expect(withoutPoint(more, FOOTPRINT, edge + 1)).toEqual(before);
        },
      ),
      { seed: 61, numRuns: 60 },
    );
  });

  it("joins the first corner's edges when that corner goes", () => {
    const less = withoutPoint(form(SQUARE, [3]), FOOTPRINT, 0);
    expect([pointsAt(less, FOOTPRINT)?.length, pushersAt(less, FOOTPRINT)]).toEqual([3, [2]]);
    expect(pointsAt(form([[0, 0], ["x", 1] as never], []), FOOTPRINT)).toBeNull();
  });
});

describe("both sides of an outline", () => {
  const points = [point(-50, -30), point(60, -50), point(70, 0), point(60, 40), point(-50, 40)];

  it("become alike, edges included, and stay so", () => {
    const made = leftMirrored({ points, edges: [false, false, true, false, false] });
    expect(made?.points).toEqual([
      point(70, 0),
      point(60, 40),
      point(-50, 40),
      point(-50, -40),
      point(60, -40),
    ]);
    expect(made?.edges).toEqual([true, false, false, false, true]);
    expect(made && leftMirrored(made)).toEqual(made);
  });

  it("get no spike from a corner far on the other side, but keep one that was meant for the middle", () => {
    const moved = [point(-75, -91), point(185, -91), point(88, 85), point(-75, 75)];
    const made = leftMirrored({ points: moved, edges: [false, true, false, false] });
    expect(made?.points).toEqual([point(88, 85), point(-75, 75), point(-75, -75), point(88, -85)]);
    expect(made?.edges).toEqual([false, false, false, true]);
    const nearly = [point(-75, -75), point(88, -85), point(70, -3), point(88, 85), point(-75, 75)];
    const scoop = leftMirrored({ points: nearly, edges: [false, true, true, false, false] });
    expect(scoop?.points).toHaveLength(5);
    expect(scoop?.points[0]?.xMm).toBeCloseTo(70.6, 9);
  });

  it("keep a corner on the middle line where pusher and other edge meet", () => {
    const made = leftMirrored({
      points: [point(0, -9), point(30, -9), point(30, 9), point(0, 9)],
      edges: [false, true, false, false],
    });
    expect(made?.points).toEqual([point(30, 9), point(0, 9), point(0, -9), point(30, -9)]);
    expect(made?.edges).toEqual([false, false, false, true]);
  });

  it("cannot be told apart where the outline crosses the middle line more than twice, or never", () => {
    const wavy = [0, 10, 20, 30].map((x, i) => point(x, i % 2 === 0 ? 5 : -5));
    const all = [...wavy, point(30, -20), point(0, -20)];
    expect(leftMirrored({ points: all, edges: all.map(() => false) })).toBeNull();
    expect(leftMirrored({ points: points.map(({ xMm }) => point(xMm, -9)), edges: [] })).toBeNull();
  });

  it("fit into a box, whose nearest edge is found", () => {
    const box = boxAround(points);
    expect(box).toEqual({
      points: [point(-50, -50), point(70, -50), point(70, 40), point(-50, 40)],
      edges: [false, true, false, false],
    });
    expect(nearestEdges(box.points, point(90, 0))[0]).toBe(1);
    expect(nearestEdges(box.points, point(0, -60))[0]).toBe(0);
  });
});
