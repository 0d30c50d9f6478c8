import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  boundingBox,
  convexHull,
  distanceToPolygon,
  isSimple,
  type PointMm,
  pointInPolygon,
  signedArea,
} from "../../src/geometry/polygon.ts";
import { checkRobot } from "../../src/model/checkRobot.ts";
import { robotOutline } from "../../src/model/outline.ts";
import type { RobotShape } from "../../src/model/robot.ts";
import { shippedProject } from "../support/projectFiles.ts";

const length = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const body = { bodyLengthMm: length(10, 400), bodyWidthMm: length(10, 400), axleFromRearMm: length(0, 400) };

const shape: fc.Arbitrary<RobotShape> = fc.oneof(
  fc.record({
    kind: fc.constant("plate" as const),
    ...body,
    plateWidthMm: length(10, 500),
    plateReachMm: length(0, 200),
  }),
  fc.record({
    kind: fc.constant("arms" as const),
    ...body,
    armLengthMm: length(0.1, 300),
    armThicknessMm: length(1, 200),
    armAngleRad: length(-1.047, 1.309),
  }),
  fc.record({
    kind: fc.constant("scoop" as const),
    ...body,
    openingMm: length(10, 500),
    depthMm: length(1, 300),
    sideThicknessMm: length(1, 200),
  }),
);

const { robot } = shippedProject();

describe("a robot that passes the checks", () => {
  it("has a simple outline, counter-clockwise, with a pusher, around its low body", () => {
    let sound = 0;
    fc.assert(
      fc.property(shape, (one) => {
        if (checkRobot({ ...robot, shape: one }).length > 0) return;
        sound++;
        const { footprint, pusherEdges, ground } = robotOutline({ shape: one, ground: { kind: "body" } });
        expect(isSimple(footprint)).toBe(true);
        expect(signedArea(footprint)).toBeGreaterThanOrEqual(signedArea(ground) - 1e-6);
        expect(pusherEdges.length).toBeGreaterThan(0);
        expect(pusherEdges.every((edge) => edge >= 0 && edge < footprint.length)).toBe(true);
        for (const corner of ground) expect(distanceToPolygon(corner, footprint)).toBeLessThan(1e-6);
        const box = boundingBox(footprint);
        expect(box.minYMm).toBeCloseTo(-box.maxYMm, 9);
      }),
      { seed: 808, numRuns: 3000 },
    );
    expect(sound).toBeGreaterThan(1000);
  });
});

const point: fc.Arbitrary<PointMm> = fc.record({
  xMm: fc.integer({ min: -50, max: 50 }),
  yMm: fc.integer({ min: -50, max: 50 }),
});

describe("the convex hull of any points", () => {
  it("holds them all, is simple, and is its own hull", () => {
    fc.assert(
      fc.property(fc.array(point, { minLength: 3, maxLength: 30 }), (points) => {
        const hull = convexHull(points);
        fc.pre(hull.length >= 3);
        expect(isSimple(hull)).toBe(true);
        expect(signedArea(hull)).toBeGreaterThan(0);
        for (const one of points) expect(pointInPolygon(one, hull)).toBe(true);
        expect(convexHull([...hull].reverse())).toEqual(hull);
        expect(boundingBox(hull)).toEqual(boundingBox(points));
      }),
      { seed: 4_711, numRuns: 500 },
    );
  });
});

describe("any outline", () => {
  const outline = fc.array(point, { minLength: 3, maxLength: 8 });

  it("changes the sign of its area when it is turned round, and nothing else", () => {
    fc.assert(
      fc.property(outline, point, (points, by) => {
        const turned = [...points].reverse();
        const moved = points.map(({ xMm, yMm }) => ({ xMm: xMm + by.xMm, yMm: yMm + by.yMm }));
        const rotated = [...points.slice(1), ...points.slice(0, 1)];
        expect(signedArea(turned)).toBe(0 - signedArea(points));
        expect(signedArea(moved)).toBe(signedArea(points));
        expect(isSimple(turned)).toBe(isSimple(points));
        expect(isSimple(moved)).toBe(isSimple(points));
        expect(isSimple(rotated)).toBe(isSimple(points));
      }),
      { seed: 2_718, numRuns: 1000 },
    );
  });
});
