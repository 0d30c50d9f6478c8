import { describe, expect, it } from "vitest";
import type { Pose } from "../../../src/motion/pose.ts";
import { surroundingsOf } from "../../../src/motion/surroundings.ts";
import { Walker } from "../../../src/motion/walker.ts";
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

/** How deep a point is within the robot's hull, mm, by the edge it is nearest to; negative outside. */
function depthOf(px: number, py: number, { xMm, yMm, headingRad }: Pose) {
  const [c, s] = [Math.cos(headingRad), Math.sin(headingRad)];
  const [x, y] = [c * (px - xMm) + s * (py - yMm), c * (py - yMm) - s * (px - xMm)];
  let depth = Number.POSITIVE_INFINITY;
  let lever = 0;
  for (let i = 0; i < whole.count; i++) {
    const [ex, ey] = [whole.normalX[i]!, whole.normalY[i]!];
    const inside = -(ex * (x - whole.x[i]!) + ey * (y - whole.y[i]!));
    if (inside >= depth) continue;
    depth = inside;
    lever = ex * y - ey * x;
  }
  return { depth, lever };
}

/** The same drive in steps of `ds` mm: what has sunk into the hull turns the robot until it lies on its edge. */
function driveInSteps(from: Pose, wayMm: number, angleRad: number, ds: number): Pose {
  let { xMm, yMm, headingRad } = from;
  const steps = Math.round(Math.abs(wayMm) / ds);
  for (let i = 0; i < steps; i++) {
    xMm += (wayMm / steps) * Math.cos(headingRad);
    yMm += (wayMm / steps) * Math.sin(headingRad);
    headingRad += angleRad / steps;
    for (const px of [BLOCK.xMm, BLOCK.xMm + BLOCK.widthMm]) {
      const { depth, lever } = depthOf(px, BLOCK.yMm, { xMm, yMm, headingRad });
      if (depth > 0) headingRad += depth / lever;
    }
  }
  return { xMm, yMm, headingRad };
}

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
    const reference = driveInSteps(from, one.distanceMm, "angleRad" in one ? one.angleRad : 0, 1e-3);
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
