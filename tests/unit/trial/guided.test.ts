import { describe, expect, it } from "vitest";
import type { Drift } from "../../../src/model/robot.ts";
import type { Move } from "../../../src/model/routine.ts";
import { compileTrial } from "../../../src/trial/compile.ts";
import { robotAt } from "../../../src/trial/playback.ts";
import { recordTrial } from "../../../src/trial/run.ts";
import { startingAt } from "../../support/approach.ts";
import { PLAIN_ROBOT, routineOf } from "../../support/scene.ts";

/** A robot whose tracks bend its way by 1/3000 mm, about 19° a metre, to one side. */
function bending(curvatureMeanRadPerMm: number): Drift {
  const { drift } = PLAIN_ROBOT;
  return { ...drift, systematic: { ...drift.systematic, curvatureMeanRadPerMm } };
}

/** Where it is after the moves, having started with the plate's end touching the right wall. */
function placeAfter(curvature: number, moves: Move[]) {
  const project = startingAt(
    { x: 1200 - 90, y: 200, headingRad: Math.PI / 2 },
    { robot: { drift: bending(curvature) }, balls: [{ x: 300, y: 300 }] },
  );
  const { outcome, recording } = recordTrial(compileTrial(project, routineOf(moves)), 0, 0);
  return { outcome, pose: robotAt(recording, recording.durationS) };
}

const ahead: Move = { kind: "drive", distanceMm: 450, speedMmPerS: 150 };

describe("driving along a wall with drift", () => {
  it("into it: the wall guides the robot, which keeps heading and way and does not stall", () => {
    const { outcome, pose } = placeAfter(-1 / 3000, [ahead]);
    expect(outcome.stalls).toBe(0);
    expect(pose.headingRad).toBeCloseTo(Math.PI / 2, 4);
    expect(pose.xMm).toBeCloseTo(1110, 1);
    expect(pose.yMm).toBeCloseTo(650, 1);
  });

  it("away from it: the robot bends off on its arc", () => {
    const { pose } = placeAfter(1 / 3000, [ahead]);
    expect(pose.headingRad).toBeCloseTo(Math.PI / 2 + 0.15, 9);
    expect(pose.xMm).toBeCloseTo(1110 - 3000 * (1 - Math.cos(0.15)), 6);
    expect(pose.yMm).toBeCloseTo(200 + 3000 * Math.sin(0.15), 6);
  });

  it("so that a run along the wall ends square on the next one", () => {
    const { pose } = placeAfter(-1 / 3000, [
      { kind: "toWall", distanceMm: 580, overrunMm: 40, speedMmPerS: 150 },
    ]);
    expect(pose.headingRad).toBeCloseTo(Math.PI / 2, 4);
    expect(pose.yMm).toBeCloseTo(900 - 120, 1);
  });
});
