import { describe, expect, it } from "vitest";
import type { Robot } from "../../../src/model/robot.ts";
import { reachOf } from "../../../src/plan/reach.ts";
import { shippedProject } from "../../support/projectFiles.ts";

const base = shippedProject().robot;
const body = { bodyLengthMm: 180, bodyWidthMm: 140, axleFromRearMm: 60 };

describe("a robot's reach", () => {
  it("of a plate in front of the body", () => {
    const robot: Robot = {
      ...base,
      ground: { kind: "body" },
      shape: { kind: "plate", ...body, plateWidthMm: 200, plateReachMm: 30 },
    };
    const reach = reachOf(robot);
    // Rear 60 behind the axle, front 120 ahead; the plate's face 30 farther, half of 200 to each side.
    expect(reach).toMatchObject({ rearMm: 60, frontMm: 150, leftMm: 100, rightMm: 100, groundFrontMm: 120 });
    expect(reach).toMatchObject({
      pusherFrontMm: 150,
      pusherBackMm: 150,
      pusherLeftMm: 100,
      pusherRightMm: 100,
    });
    expect(reach).toMatchObject({ pusherConeRad: 0, pusherBottomRad: 0 });
    expect(reach.tipRadiusMm).toBeCloseTo(Math.sqrt(150 * 150 + 100 * 100), 9);
    expect(reach.rearRadiusMm).toBeCloseTo(Math.sqrt(60 * 60 + 70 * 70), 9);
  });

  it("of straight arms: the pusher is as deep as they are long", () => {
    const robot: Robot = {
      ...base,
      ground: { kind: "body" },
      shape: { kind: "arms", ...body, armLengthMm: 90, armThicknessMm: 6, armAngleRad: 0 },
    };
    const reach = reachOf(robot);
    expect(reach.pusherFrontMm - reach.pusherBackMm).toBeCloseTo(90, 9);
    expect(reach.groundFrontMm).toBe(120);
    expect(reach.pusherConeRad).toBeCloseTo(Math.PI / 2, 9);
    expect(reach.pusherBottomRad).toBe(0);
  });

  it("of a scoop: its sides push as far aside as they stand from the way across", () => {
    const robot: Robot = {
      ...base,
      ground: { kind: "body" },
      shape: { kind: "scoop", ...body, openingMm: 160, depthMm: 80, sideThicknessMm: 6 },
    };
    // Half of 160 aside over 80 ahead: sides at 45°.
    expect(reachOf(robot).pusherConeRad).toBeCloseTo(Math.PI / 4, 9);
    expect(reachOf(robot).pusherBottomRad).toBeCloseTo(Math.PI / 4, 9);
  });

  it("of an own outline that is not the same on both sides", () => {
    const outline = [
      { xMm: -50, yMm: -40 },
      { xMm: 80, yMm: -40 },
      { xMm: 80, yMm: 70 },
      { xMm: -50, yMm: 70 },
    ];
    const robot: Robot = {
      ...base,
      ground: { kind: "body" },
      shape: { kind: "polygon", outline, pusherEdges: [1] },
    };
    expect(reachOf(robot)).toMatchObject({ leftMm: 70, rightMm: 40, pusherLeftMm: 70, pusherRightMm: 40 });
    // Turned 20° to the right the rear left corner swings out by 50 sin 20°.
    const tilt = (20 * Math.PI) / 180;
    expect(reachOf(robot).tiltedLeftMm).toBeCloseTo(70 * Math.cos(tilt) + 50 * Math.sin(tilt), 9);
  });
});
