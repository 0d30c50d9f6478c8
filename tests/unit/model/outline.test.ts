import { describe, expect, it } from "vitest";
import { boundingBox, isSimple, signedArea } from "../../../src/geometry/polygon.ts";
import { counterClockwise, PLATE_THICKNESS_MM, robotOutline } from "../../../src/model/outline.ts";
import type { GroundOutline, PolygonShape, RobotShape } from "../../../src/model/robot.ts";
import type { PointMm } from "../../../src/model/zone.ts";

const points = (...pairs: readonly (readonly [number, number])[]): PointMm[] =>
  pairs.map(([xMm, yMm]) => ({ xMm, yMm }));

const body = { bodyLengthMm: 100, bodyWidthMm: 80, axleFromRearMm: 40 };
const low: GroundOutline = { kind: "body" };
const outlineOf = (shape: RobotShape, ground: GroundOutline = low) => robotOutline({ shape, ground });

/** Ends of the pusher's edges, in order. */
function pusherOf(shape: RobotShape): PointMm[][] {
  const { footprint, pusherEdges } = outlineOf(shape);
  return pusherEdges.map((edge) => [footprint[edge]!, footprint[(edge + 1) % footprint.length]!]);
}

const plate = (plateWidthMm: number, plateReachMm: number): RobotShape => ({
  kind: "plate",
  ...body,
  plateWidthMm,
  plateReachMm,
});

describe("a plate", () => {
  it("wider than the body is a T", () => {
    const back = 90 - PLATE_THICKNESS_MM;
    expect(outlineOf(plate(120, 30)).footprint).toEqual(
      points([-40, -40], [back, -40], [back, -60], [90, -60], [90, 60], [back, 60], [back, 40], [-40, 40]),
    );
  });

  it("as wide as the body is one rectangle", () => {
    expect(outlineOf(plate(80, 30)).footprint).toEqual(points([-40, -40], [90, -40], [90, 40], [-40, 40]));
  });

  it("narrower than the body is a block in front of it", () => {
    expect(outlineOf(plate(50, 30)).footprint).toEqual(
      points([-40, -40], [60, -40], [60, -25], [90, -25], [90, 25], [60, 25], [60, 40], [-40, 40]),
    );
  });

  it("without reach is a part of the body's front", () => {
    expect(outlineOf(plate(50, 0)).footprint).toEqual(
      points([-40, -40], [60, -40], [60, -25], [60, 25], [60, 40], [-40, 40]),
    );
    expect(pusherOf(plate(50, 0))).toEqual([points([60, -25], [60, 25])]);
  });

  it.each([
    [120, 30],
    [80, 30],
    [50, 30],
  ])("pushes with its face alone: %d wide", (width, reach) => {
    expect(pusherOf(plate(width, reach))).toEqual([points([90, -width / 2], [90, width / 2])]);
  });
});

const arms = (armAngleRad: number, armLengthMm = 50): RobotShape => ({
  kind: "arms",
  ...body,
  armLengthMm,
  armThicknessMm: 10,
  armAngleRad,
});

describe("arms", () => {
  it("straight ahead make a U whose outer sides continue the body's", () => {
    expect(outlineOf(arms(0)).footprint).toEqual(
      points([-40, -40], [110, -40], [110, -30], [60, -30], [60, 30], [110, 30], [110, 40], [-40, 40]),
    );
  });

  it("push with tips, inner sides and the body's front between them", () => {
    expect(pusherOf(arms(0))).toEqual([
      points([110, -40], [110, -30]),
      points([110, -30], [60, -30]),
      points([60, -30], [60, 30]),
      points([60, 30], [110, 30]),
      points([110, 30], [110, 40]),
    ]);
  });

  it("turned outward by 3-4-5 keep their length and thickness", () => {
    // cos 0.8, sin 0.6: tip of the outer side at (60 + 40, 40 + 30), inner side 10 mm beside it.
    const { footprint } = outlineOf(arms(0.6435011087932844));
    expect(footprint).toHaveLength(10);
    const left = footprint.filter(({ yMm }) => yMm > 0);
    expect(left.map(({ xMm }) => xMm)).toEqual([60, 106, 100, 60, -40].map((x) => expect.closeTo(x, 9)));
    expect(left.map(({ yMm }) => yMm)).toEqual([27.5, 62, 70, 40, 40].map((y) => expect.closeTo(y, 9)));
  });

  it("turned inward come closer at their tips", () => {
    const { footprint } = outlineOf(arms(-0.3));
    const tips = footprint.filter(({ xMm }) => xMm > 61);
    expect(tips).toHaveLength(4);
    for (const { yMm } of tips) expect(Math.abs(yMm)).toBeLessThan(27);
  });
});

const scoop: RobotShape = { kind: "scoop", ...body, openingMm: 120, depthMm: 80, sideThicknessMm: 8 };

describe("a scoop", () => {
  it("is a V from the middle of the body's front to its opening", () => {
    expect(pusherOf(scoop).slice(1, 3)).toEqual([points([140, -60], [60, 0]), points([60, 0], [140, 60])]);
  });

  it("has sides of the thickness given", () => {
    // Side direction (0.8, 0.6); outer tip 8 mm across it from the inner one; the outer side meets the front at y = 8 / 0.8.
    const { footprint } = outlineOf(scoop);
    expect(footprint).toHaveLength(11);
    expect(footprint.slice(7)).toEqual([
      { xMm: expect.closeTo(135.2, 9), yMm: expect.closeTo(66.4, 9) },
      { xMm: 60, yMm: expect.closeTo(10, 9) },
      ...points([60, 40], [-40, 40]),
    ]);
  });

  it("pushes with the tips' ends and both inner sides", () => {
    expect(outlineOf(scoop).pusherEdges).toEqual([3, 4, 5, 6]);
  });
});

describe("an own outline", () => {
  const fork: PolygonShape = {
    kind: "polygon",
    outline: points([0, 0], [50, 0], [50, 20], [0, 30]),
    pusherEdges: [1, 3],
  };

  it("is taken as it is", () => {
    expect(outlineOf(fork).footprint).toEqual(fork.outline);
    expect(outlineOf(fork).pusherEdges).toEqual([1, 3]);
  });

  it("given clockwise keeps the same edges as its pusher", () => {
    const clockwise: PolygonShape = { ...fork, outline: [...fork.outline].reverse(), pusherEdges: [1, 3] };
    // Reversed: edge 1 runs from (50, 20) to (50, 0), edge 3 from (0, 0) to (0, 30).
    expect(pusherOf(clockwise)).toEqual([points([50, 0], [50, 20]), points([0, 30], [0, 0])]);
    expect(signedArea(counterClockwise(clockwise).outline)).toBeGreaterThan(0);
    expect(counterClockwise(fork)).toBe(fork);
  });
});

describe("the ground outline", () => {
  const rectangle = points([-40, -40], [60, -40], [60, 40], [-40, 40]);

  it("is the body's rectangle", () => {
    for (const shape of [plate(120, 30), arms(0.2), scoop])
      expect(outlineOf(shape).ground).toEqual(rectangle);
  });

  it("is an own polygon, turned counter-clockwise", () => {
    const own: GroundOutline = { kind: "polygon", outline: [...rectangle].reverse() };
    expect(signedArea(outlineOf(scoop, own).ground)).toBe(8000);
  });

  it("of an own outline with low body is the whole outline", () => {
    const outline = points([0, 0], [50, 0], [0, 30]);
    expect(outlineOf({ kind: "polygon", outline, pusherEdges: [0] }).ground).toEqual(outline);
  });
});

it("every parametric shape gives a simple outline, symmetric about the robot's axis", () => {
  const shapes = [
    plate(120, 30),
    plate(50, 30),
    plate(200, 0),
    arms(0),
    arms(0.5),
    arms(-0.3),
    arms(1.2),
    scoop,
  ];
  for (const shape of shapes) {
    const { footprint, pusherEdges } = outlineOf(shape);
    const box = boundingBox(footprint);
    expect(isSimple(footprint)).toBe(true);
    expect(signedArea(footprint)).toBeGreaterThan(8000);
    expect(box.minYMm).toBe(-box.maxYMm);
    const mirror = pusherEdges.map((edge) => (2 * footprint.length - 2 - edge) % footprint.length);
    expect(mirror.sort((a, b) => a - b)).toEqual(pusherEdges);
  }
});
