import { describe, expect, it } from "vitest";
import type { Project } from "../../../src/model/project.ts";
import { entryPose } from "../../../src/motion/entry.ts";
import { mirroredProject, transposedProject } from "../../../src/plan/mirror.ts";
import { shippedProject } from "../../support/projectFiles.ts";

const usual = shippedProject("usual-zone.json");
const mixed = shippedProject("five-mixed-balls.json");

describe("a project in a mirror", () => {
  it("swaps left and right: doorway, wedge, blocks, the robot's sides, its entry", () => {
    const seen = mirroredProject({
      ...usual,
      zone: { ...usual.zone, keepOuts: [{ xMm: 100, yMm: 300, widthMm: 50, heightMm: 70 }] },
      robot: { ...usual.robot, entry: { alongMm: 12, insetMm: 85, headingRad: 0.1 } },
    });
    expect(seen.zone.doorway).toEqual({ wall: "bottom", centreMm: 1040, widthMm: 250 });
    expect(seen.zone.wedge.corner).toBe("upper-left");
    expect(seen.zone.keepOuts).toEqual([{ xMm: 1050, yMm: 300, widthMm: 50, heightMm: 70 }]);
    expect(seen.robot.entry).toEqual({ alongMm: -12, insetMm: 85, headingRad: -0.1 });
  });

  it("puts the entry pose where the mirror shows it", () => {
    const tilted: Project = {
      ...usual,
      robot: { ...usual.robot, entry: { alongMm: 12, insetMm: 85, headingRad: 0.1 } },
    };
    const here = entryPose(tilted.zone, tilted.robot);
    const seen = mirroredProject(tilted);
    const there = entryPose(seen.zone, seen.robot);
    expect(there.xMm).toBeCloseTo(1200 - here.xMm, 9);
    expect(there.yMm).toBeCloseTo(here.yMm, 9);
    expect(there.headingRad).toBeCloseTo(Math.PI - here.headingRad, 9);
  });

  it("keeps an own outline counter-clockwise and its pusher edges the same pieces of it", () => {
    if (mixed.robot.shape.kind !== "polygon") throw new Error("the field has a polygon robot");
    const lopsided = {
      ...mixed,
      robot: { ...mixed.robot, shape: { ...mixed.robot.shape, pusherEdges: [3, 4] } },
    };
    const { outline } = mixed.robot.shape;
    const shape = mirroredProject(lopsided).robot.shape;
    if (shape.kind !== "polygon") throw new Error("a polygon stays one");
    const ends = (points: typeof outline, edge: number, sign: number) =>
      [points[edge]!, points[(edge + 1) % points.length]!]
        .map(({ xMm, yMm }) => `${xMm} ${sign * yMm + 0}`)
        .sort()
        .join(" | ");
    const wanted = [3, 4].map((edge) => ends(outline, edge, -1)).sort();
    expect(shape.pusherEdges.map((edge) => ends(shape.outline, edge, 1)).sort()).toEqual(wanted);
  });

  it("is the same again after a second look", () => {
    expect(mirroredProject(mirroredProject(usual))).toEqual(usual);
    expect(transposedProject(transposedProject(usual))).toEqual(usual);
  });
});

describe("a transposed project", () => {
  it("swaps the sides of the zone and the legs of the wedge", () => {
    const tray = shippedProject("tray-corner.json");
    const seen = transposedProject(tray);
    expect([seen.zone.widthMm, seen.zone.heightMm]).toEqual([900, 1200]);
    expect([seen.zone.wedge.legXMm, seen.zone.wedge.legYMm]).toEqual([320, 280]);
    expect(seen.zone.doorway).toEqual({ wall: "top", centreMm: 740, widthMm: 250 });
  });
});
