import { describe, expect, it } from "vitest";
import { nominalCourse } from "../../../src/motion/course.ts";
import { RoutineBuilder } from "../../../src/plan/builder.ts";
import { targetFrame } from "../../../src/plan/frame.ts";
import { beforeWedge, behindMm, besideMm } from "../../../src/plan/place.ts";
import { sceneOf } from "../../../src/plan/scene.ts";
import { beforeWedgeMm } from "../../../src/plan/target.ts";
import { arriveAt, leaveWedge, reachPoint, retrace } from "../../../src/plan/transfer.ts";
import { shippedProject } from "../../support/projectFiles.ts";

const scene = sceneOf(targetFrame(shippedProject(), true));
const built = () => new RoutineBuilder(scene, 250);

function expectAt(builder: RoutineBuilder, x: number, y: number, heading: number): void {
  expect(builder.pose.xMm).toBeCloseTo(x, 3);
  expect(builder.pose.yMm).toBeCloseTo(y, 3);
  expect(Math.cos(builder.pose.headingRad - heading)).toBeCloseTo(1, 6);
}

describe("getting from one place to another", () => {
  it("reaches a point behind it in reverse, without turning round", () => {
    const builder = built();
    expect(builder.drive(400)).toBe(true);
    expect(reachPoint(builder, { xMm: 1000, yMm: 700 })).toBe(true);
    expect(builder.pose.yMm).toBeCloseTo(700, 3);
    expect(Math.sin(builder.pose.headingRad)).toBeLessThan(0);
  });

  it("arrives in the open at the wanted heading", () => {
    const builder = built();
    expect(arriveAt(builder, { xMm: 600, yMm: 450, headingRad: 2 })).toBe(true);
    expectAt(builder, 600, 450, 2);
  });

  it("backs in beside a wall, where it could not turn, touching nothing", () => {
    const builder = built();
    const pose = { xMm: 1200 - behindMm(scene), yMm: besideMm(scene, "x"), headingRad: Math.PI };
    expect(arriveAt(builder, pose)).toBe(true);
    expectAt(builder, pose.xMm, pose.yMm, pose.headingRad);
    expect(nominalCourse(scene.project, builder.moves).blockedMoves).toEqual([]);
  });

  it("and gets away from there again, over the corner with two walls", () => {
    const builder = built();
    arriveAt(builder, { xMm: 1200 - behindMm(scene), yMm: besideMm(scene, "x"), headingRad: Math.PI });
    expect(arriveAt(builder, { xMm: 400, yMm: 600, headingRad: 0 })).toBe(true);
    expectAt(builder, 400, 600, 0);
  });

  it("leaves no trace where there is no way", () => {
    const builder = built();
    expect(arriveAt(builder, { xMm: 60, yMm: 60, headingRad: 0 })).toBe(false);
    expect(builder.moves).toEqual([]);
  });

  it("backs off the wedge until its tips cannot sweep a delivered ball down", () => {
    const builder = built();
    const { headingRad } = scene.target;
    expect(arriveAt(builder, { ...beforeWedge(scene, 300), headingRad })).toBe(true);
    expect(builder.toWall(1)).toBe(true);
    leaveWedge(builder);
    const gap = beforeWedgeMm(scene.target, builder.pose) - scene.reach.tipRadiusMm;
    expect(gap).toBeCloseTo(20, 3);
  });

  it("goes back the way it came, curves and all", () => {
    const builder = built();
    builder.drive(100);
    const { pose } = builder;
    const mark = builder.mark();
    expect(builder.drive(200) && builder.arc(200, -1.2) && builder.turn(-0.3) && builder.toWall(1)).toBe(
      true,
    );
    expect(retrace(builder, mark)).toBe(true);
    expectAt(builder, pose.xMm, pose.yMm, pose.headingRad);
  });
});
