import { describe, expect, it } from "vitest";
import { Walker } from "../../../src/motion/walker.ts";
import { PLAIN_ROBOT, sceneProject } from "../../support/scene.ts";

const ARC = { kind: "arc", distanceMm: -105, angleRad: 1.5, speedMmPerS: 100 } as const;

/** A robot 160 × 140 mm whose axle is its rear edge, so far beside the bottom wall, that reverses about its right wheel, which stays where it is. */
function besideWall(gapMm: number): Walker {
  const project = sceneProject({
    robot: {
      shape: {
        kind: "plate",
        bodyLengthMm: 160,
        bodyWidthMm: 140,
        axleFromRearMm: 0,
        plateWidthMm: 140,
        plateReachMm: 0,
      },
      drive: { ...PLAIN_ROBOT.drive, trackContactMm: 0 },
    },
    balls: [{ x: 300, y: 300 }],
  });
  return new Walker(project, { xMm: 600, yMm: 70 + gapMm, headingRad: 0 });
}

// The corner by the wall is next to the middle of the circle, and the search for a touch took 0.3 mm at a time there: it gave up
// after 80 steps, the robot stood for the rest of its move, and planning was told that the way was free.
describe("a robot that turns about a corner of its own beside a wall", () => {
  it.each([0.002, 0.01, 0.1])("%f mm away goes all the way", (gapMm) => {
    const walker = besideWall(gapMm);
    expect(walker.isClear(ARC)).toBe(true);
    expect(walker.advance(ARC)).toEqual({ touched: false, stalled: false, flush: false });
    expect(walker.pose.headingRad).toBeCloseTo(1.5, 9);
    // Its middle has gone round the wheel at (600, gap), 70 mm away.
    expect(walker.pose.xMm).toBeCloseTo(600 - 70 * Math.sin(1.5), 6);
    expect(walker.pose.yMm).toBeCloseTo(gapMm + 70 * Math.cos(1.5), 6);
  });

  it("is stopped where it turns on into that wall", () => {
    const walker = besideWall(0.01);
    const on = { ...ARC, distanceMm: -140, angleRad: 2 } as const;
    expect(walker.isClear(on)).toBe(false);
    expect(walker.advance(on).touched).toBe(true);
    // Its rear edge has come down on the wall.
    expect(walker.pose.headingRad).toBeGreaterThan(Math.PI / 2 - 1e-3);
    expect(walker.pose.headingRad).toBeLessThan(Math.PI / 2 + 1e-3);
  });
});
