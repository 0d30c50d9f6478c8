import { describe, expect, it } from "vitest";
import type { Pose } from "../../../src/motion/pose.ts";
import { surroundingsOf } from "../../../src/motion/surroundings.ts";
import { Walker } from "../../../src/motion/walker.ts";
import { courseInSteps, sunkInHull } from "../../support/blockCourse.ts";
import { EVEN_SHAPE, PLAIN_ROBOT, sceneProject } from "../../support/scene.ts";

/** A block in the open, 100 mm square; the robot is 180 mm wide, its front 120 mm ahead of its axle. */
const BLOCK = { xMm: 600, yMm: 400, widthMm: 100, heightMm: 100 };
const project = sceneProject({
  zone: { keepOuts: [BLOCK] },
  // Wheels: the push of a corner turns it at any lever worth the name.
  robot: {
    shape: EVEN_SHAPE,
    drive: { ...PLAIN_ROBOT.drive, trackContactMm: 0 },
  },
  balls: [{ x: 300, y: 300 }],
});
const { whole } = surroundingsOf(project.zone, project.robot);

const SIDES = { x0: 600, x1: 700, y0: 400, y1: 500 };
const depthOf = (px: number, py: number, pose: Pose) => sunkInHull(whole, pose, px, py);

const drive = (distanceMm: number) => ({ kind: "drive", distanceMm, speedMmPerS: 100 }) as const;
const arc = (distanceMm: number, angleRad: number) =>
  ({ kind: "arc", distanceMm, angleRad, speedMmPerS: 100 }) as const;

describe("an edge of the robot on the corner of a block", () => {
  it.each([
    ["its side, in a curve towards it", { xMm: 650, yMm: 309.5, headingRad: 0 }, arc(200, 0.5)],
    ["its side, until its front has turned past", { xMm: 660, yMm: 305, headingRad: 0.03 }, arc(150, 0.6)],
    ["its side, backward", { xMm: 650, yMm: 309.5, headingRad: 0 }, arc(-60, 0.15)],
    ["its front, until the drive ends", { xMm: 400, yMm: 330, headingRad: 0.05 }, drive(95)],
  ] as const)("%s: turns about it as small steps do", (_, from, one) => {
    const walker = new Walker(project, from);
    const walked = walker.advance(one);
    const reference = courseInSteps(
      whole,
      SIDES,
      from,
      one.distanceMm,
      "angleRad" in one ? one.angleRad : 0,
      1e-3,
    );
    expect(walked).toEqual({ touched: true, stalled: false, flush: false });
    expect(walker.pose.headingRad).toBeCloseTo(reference.headingRad, 3);
    expect(walker.pose.xMm).toBeCloseTo(reference.xMm, 0);
    expect(walker.pose.yMm).toBeCloseTo(reference.yMm, 0);
  });

  it("stops it where the tracks turn no further: N·ℓ against their yaw resistance, N ≤ F/|h·n|", () => {
    const { tractionCoeff, lateralFrictionCoeff } = PLAIN_ROBOT.drive;
    const trackContactMm = 120;
    const tracked = {
      ...project,
      robot: { ...project.robot, drive: { ...PLAIN_ROBOT.drive, trackContactMm } },
    };
    const walker = new Walker(tracked, { xMm: 400, yMm: 330, headingRad: 0.05 });
    expect(walker.advance(drive(200))).toEqual({ touched: true, stalled: true, flush: false });
    // The front is square to the heading: h·n = 1 all the way, so that the post stays where its lever has become this short.
    const shortestMm = (lateralFrictionCoeff * trackContactMm) / (4 * tractionCoeff);
    const { lever, depth } = depthOf(BLOCK.xMm, BLOCK.yMm, walker.pose);
    expect(Math.abs(depth)).toBeLessThan(0.06);
    expect(lever).toBeLessThan(shortestMm);
    expect(lever).toBeGreaterThan(0.93 * shortestMm);
    expect(walker.advance(drive(-100)).touched).toBe(false);
  });

  it("holds it where it stands if it would turn on the spot into it", () => {
    const walker = new Walker(project, { xMm: 650, yMm: 309.5, headingRad: 0 });
    const walked = walker.advance({ kind: "turn", angleRad: 0.5, rateRadPerS: 1 });
    expect(walked).toEqual({ touched: true, stalled: true, flush: false });
    expect(Math.abs(depthOf(700, BLOCK.yMm, walker.pose).depth)).toBeLessThan(0.002);
  });
});

const pose = (xMm: number, yMm: number, headingRad: number) => ({ xMm, yMm, headingRad });

describe("a face of a block, which ends", () => {
  // All found by following the same course in steps of 1 µm: such a tail cost the rest of the curve, and the line of a face went on beyond its end.
  it.each([
    ["tail swings into it and slides along", pose(700, 309.5, -0.001), arc(150, -0.6)],
    ["tail swings into it and off its end", pose(755, 309.6, -0.005), arc(200, -1.2)],
    ["tail comes to it round its corner", pose(620, 309.4, 0), arc(300, -1.2)],
    ["tail slides along it for as long as it lasts", pose(690, 309.9, -1e-3), arc(300, -2)],
    ["nose swings into it on the way back", pose(640, 309.6, 0.005), arc(-200, -0.6)],
    ["side is guided by it, and turns on past its end", pose(560, 309.99, 0), arc(300, 1)],
    ["side is guided by it backward", pose(720, 309.99, 0), arc(-300, -1)],
    ["corner meets it at a glance and slides off its end", pose(545, 282, 0.25), drive(200)],
    ["corner meets it in a curve", pose(545, 277, 0.3), arc(300, 0.6)],
    ["rear corner meets it in a curve backward", pose(740, 295, -0.25), arc(-250, -0.6)],
  ] as const)("%s: turns as small steps do", (_, from, one) => {
    const walker = new Walker(project, from);
    const angleRad = "angleRad" in one ? one.angleRad : 0;
    expect(walker.advance(one)).toEqual({ touched: true, stalled: false, flush: false });
    const reference = courseInSteps(whole, SIDES, from, one.distanceMm, angleRad, 1e-3);
    expect(Math.abs(reference.headingRad - from.headingRad - angleRad)).toBeGreaterThan(0.02);
    expect(walker.pose.headingRad).toBeCloseTo(reference.headingRad, 2);
    expect(Math.abs(walker.pose.headingRad - reference.headingRad)).toBeLessThan(1e-3);
    expect(Math.abs(walker.pose.xMm - reference.xMm)).toBeLessThan(0.2);
    expect(Math.abs(walker.pose.yMm - reference.yMm)).toBeLessThan(0.2);
  });

  it.each([1, -1])(
    "to one side (%d) of the axle turns the front about its end, before the axle holds it flush",
    (side) => {
      // The block spans from 30 mm beside the axle to beyond the front's end, or from one side of it to the other.
      const aside = new Walker(project, pose(470, side > 0 ? 370 : 530, 0));
      const walked = aside.advance(drive(12));
      expect([walked.stalled, walked.flush]).toEqual([false, false]);
      expect(Math.sign(aside.pose.headingRad)).toBe(side);
      expect(Math.abs(sunkInHull(whole, aside.pose, 600, side > 0 ? 400 : 500).depth)).toBeLessThan(0.06);
      const before = new Walker(project, pose(470, side > 0 ? 440 : 460, 0));
      expect(before.advance(drive(30))).toEqual({ touched: true, stalled: true, flush: true });
    },
  );

  it("of a doorpost does not square up a robot that comes mostly to the doorway", () => {
    // The doorway is open from 30 to 230 mm; 20 mm of the rear stand before the wall, 50 to 70 mm beside the axle.
    const walker = new Walker(project, pose(300, 200, Math.PI / 2));
    expect(walker.advance(drive(-150)).flush).toBe(true);
    const half = new Walker(project, pose(160, 200, Math.PI / 2));
    const walked = half.advance(drive(-150));
    expect([walked.touched, walked.flush]).toEqual([true, false]);
    expect(half.pose.headingRad).not.toBeCloseTo(Math.PI / 2, 2);
  });
});
