import { describe, expect, it } from "vitest";
import type { Move } from "../../../src/model/routine.ts";
import type { Corner } from "../../../src/model/zone.ts";
import { nominalCourse } from "../../../src/motion/course.ts";
import { movesFromFrame, targetFrame } from "../../../src/plan/frame.ts";
import { shippedProject } from "../../support/projectFiles.ts";

const usual = shippedProject();
const corners: readonly Corner[] = ["lower-left", "lower-right", "upper-left", "upper-right"];
const moves: readonly Move[] = [
  { kind: "drive", distanceMm: 200, speedMmPerS: 200 },
  { kind: "turn", angleRad: -0.5, rateRadPerS: 1 },
  { kind: "arc", distanceMm: 150, angleRad: 0.7, speedMmPerS: 100 },
  { kind: "drive", distanceMm: 60, speedMmPerS: 200 },
];

describe("the frame of the target corner", () => {
  it.each(corners)("puts the wedge into the lower left corner: %s", (corner) => {
    // The doorway in the middle of a wall is clear of every wedge.
    const zone = {
      ...usual.zone,
      doorway: { ...usual.zone.doorway, centreMm: 600 },
      wedge: { ...usual.zone.wedge, corner },
    };
    for (const longFirst of [true, false]) {
      const { project } = targetFrame({ ...usual, zone }, longFirst);
      expect(project.zone.wedge.corner).toBe("lower-left");
      expect(project.zone.widthMm > project.zone.heightMm).toBe(longFirst);
    }
  });

  it.each([true, false])(
    "and moves planned in it do the same in the real zone: long side first %s",
    (longFirst) => {
      const frame = targetFrame(usual, longFirst);
      const seen = nominalCourse(frame.project, moves).end;
      const real = nominalCourse(usual, movesFromFrame(frame, moves)).end;
      // The usual zone's target is the upper right corner: distances from its two walls are what the frame calls x and y.
      const fromTarget = [1200 - real.xMm, 900 - real.yMm];
      if (!longFirst) fromTarget.reverse();
      expect(seen.xMm).toBeCloseTo(fromTarget[0] ?? 0, 6);
      expect(seen.yMm).toBeCloseTo(fromTarget[1] ?? 0, 6);
    },
  );

  it("turns left into right only when the handedness changes", () => {
    const frame = targetFrame(usual, true);
    expect(frame.flipped).toBe(false);
    expect(targetFrame(usual, false).flipped).toBe(true);
    const turned = movesFromFrame(targetFrame(usual, false), moves);
    expect(turned.map((move) => ("angleRad" in move ? move.angleRad : 0))).toEqual([0, 0.5, -0.7, 0]);
  });
});
