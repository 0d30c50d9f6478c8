import { describe, expect, it } from "vitest";
import type { Drive } from "../../src/model/robot.ts";
import { Walker } from "../../src/motion/walker.ts";
import { PLAIN_ROBOT, sceneProject } from "../support/scene.ts";

/** Half the width of the robot's front, and the front before the axle, mm: of the corner that meets the wall first. */
const HALF = 70;
const FRONT = 100;

/**
 * Drives head-on, but `headingRad` to the left, into the right wall; the heading in which it ends. Its corner meets the
 * wall at the lever arm |front·sin δ − half·cos δ|.
 */
function headingAfter(headingRad: number, drive: Partial<Drive>): number {
  const project = sceneProject({
    zone: { heightMm: 6000 },
    robot: {
      shape: {
        kind: "plate",
        bodyLengthMm: 160,
        bodyWidthMm: 140,
        axleFromRearMm: 60,
        plateWidthMm: 140,
        plateReachMm: 0,
      },
      drive: { ...PLAIN_ROBOT.drive, ...drive },
    },
    balls: [{ x: 300, y: 300 }],
  });
  const walker = new Walker(project, { xMm: 700, yMm: 300, headingRad });
  walker.advance({ kind: "toWall", distanceMm: 900, overrunMm: 0, speedMmPerS: 100 });
  return walker.pose.headingRad;
}

describe("tracks that press against a wall off their middle", () => {
  // Wong, Theory of Ground Vehicles, from memory: turning the tracks takes about μ_lat·W·l/4. The wall's push N = F/cos δ (no friction along it, F = μ_trac·W)
  // turns the robot while N·lever exceeds that, so between tan δ = half/front ∓ μ_lat·l/(4·μ_trac·front) it stalls crooked. Bounds derived, second implementation.
  it.each([
    [{ trackContactMm: 80, lateralFrictionCoeff: 0.6, tractionCoeff: 0.7 }, 0.5286, 0.8714],
    [{ trackContactMm: 120, lateralFrictionCoeff: 0.9, tractionCoeff: 0.5 }, 0.16, 1.24],
    [{ trackContactMm: 40, lateralFrictionCoeff: 0.5, tractionCoeff: 1 }, 0.65, 0.75],
  ])("turn flush or stall crooked by the yaw resistance: %o between %f and %f", (drive, from, to) => {
    for (const slope of [0.02, 0.1, from - 0.00005]) {
      expect(headingAfter(Math.atan(slope), drive), `front, ${slope}`).toBeCloseTo(0, 9);
    }
    for (const slope of [from + 0.00005, HALF / FRONT, to - 0.00005]) {
      const heading = Math.atan(slope);
      expect(headingAfter(heading, drive), `crooked, ${slope}`).toBe(heading);
    }
    // Beyond that it is the side that turns to the wall, along which the robot slides.
    for (const slope of [to + 0.00005, to + 0.4]) {
      const heading = Math.atan(slope);
      expect(headingAfter(heading, drive), `side, ${slope}`).toBeGreaterThan(heading + 0.01);
    }
  });

  it("turn at almost any lever arm on two wheels, which have no length of contact", () => {
    const drive = { trackContactMm: 0 };
    expect(headingAfter(Math.atan(0.68), drive)).toBeCloseTo(0, 9);
    expect(headingAfter(Math.atan(0.72), drive)).toBeGreaterThan(1.5);
  });
});
