import { describe, expect, it } from "vitest";
import type { Drift } from "../../../src/model/robot.ts";
import type { Move } from "../../../src/model/routine.ts";
import { compileTrial } from "../../../src/trial/compile.ts";
import { robotAt } from "../../../src/trial/playback.ts";
import { recordTrial } from "../../../src/trial/run.ts";
import { type Start, startingAt } from "../../support/approach.ts";
import { EVEN_SHAPE, PLAIN_ROBOT, routineOf } from "../../support/scene.ts";

/** A robot whose tracks bend its way by 1/3000 mm, about 19° a metre, to one side. */
function bending(curvatureMeanRadPerMm: number): Drift {
  const { drift } = PLAIN_ROBOT;
  return { ...drift, systematic: { ...drift.systematic, curvatureMeanRadPerMm } };
}

/** The corners of a robot 180 mm wide whose plate is no wider than its body, in its own frame, mm. */
const CORNERS = [
  [120, -90],
  [120, 90],
  [-60, 90],
  [-60, -90],
] as const;

/** What becomes of a curve beside the right wall, in steps of `ds` mm: of the corners none may pass the wall; it turns the robot about the one that would. */
function curveInSteps(start: Start, wayMm: number, angleRad: number, ds: number) {
  let { x, y, headingRad } = start;
  for (let i = 0; i < wayMm / ds; i++) {
    x += ds * Math.cos(headingRad);
    y += ds * Math.sin(headingRad);
    headingRad += (ds * angleRad) / wayMm;
    const c = Math.cos(headingRad);
    const s = Math.sin(headingRad);
    const beyond = CORNERS.map(([ahead, left]) => x + ahead * c - left * s - 1200);
    const most = Math.max(...beyond);
    const [ahead, left] = CORNERS[beyond.indexOf(most)]!;
    if (most > 0) headingRad += most / (ahead * s + left * c);
  }
  return { xMm: x, yMm: y, headingRad };
}

function curve(start: Start, wayMm: number, angleRad: number) {
  const project = startingAt(start, { robot: { shape: EVEN_SHAPE }, balls: [{ x: 300, y: 300 }] });
  const moves: Move[] = [{ kind: "arc", distanceMm: wayMm, angleRad, speedMmPerS: 150 }];
  const { outcome, recording } = recordTrial(compileTrial(project, routineOf(moves), { drift: false }), 0, 0);
  return { outcome, pose: robotAt(recording, recording.durationS) };
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

  // Both found by following curves in small steps: once on the wall, the robot stayed there although its own curve led away.
  it.each([
    ["runs into it and away again", { x: 1060, y: 150, headingRad: 1.1 }, 500, 1],
    ["swings its tail into it", { x: 1108, y: 200, headingRad: Math.PI / 2 + 0.02 }, 200, 1.6],
    [
      "swings its tail into it, hardly leading away",
      { x: 1109, y: 200, headingRad: Math.PI / 2 + 1e-3 },
      400,
      2,
    ],
  ] as const)("in a curve that %s: lets go where it leads away", (_, start, wayMm, angleRad) => {
    const { outcome, pose } = curve(start, wayMm, angleRad);
    const reference = curveInSteps(start, wayMm, angleRad, 1e-3);
    expect(outcome.stalls).toBe(0);
    expect(Math.abs(reference.headingRad - start.headingRad - angleRad)).toBeGreaterThan(0.02);
    expect(pose.headingRad).toBeCloseTo(reference.headingRad, 2);
    expect(Math.abs(pose.xMm - reference.xMm)).toBeLessThan(0.5);
    expect(Math.abs(pose.yMm - reference.yMm)).toBeLessThan(0.5);
  });
});
