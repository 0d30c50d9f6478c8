import { describe, expect, it } from "vitest";
import type { Move } from "../../../src/model/routine.ts";
import { compileTrial } from "../../../src/trial/compile.ts";
import { robotAt } from "../../../src/trial/playback.ts";
import { recordTrial } from "../../../src/trial/run.ts";
import { startingAt } from "../../support/approach.ts";
import { eventsOf } from "../../support/probe.ts";
import { routineOf, type SceneBall, type SceneOptions } from "../../support/scene.ts";

const drive = (distanceMm: number): Move => ({ kind: "drive", distanceMm, speedMmPerS: 100 });
/** Balls that neither bounce nor roll far, 40 mm across, before a plate 120 mm ahead of the axle. */
const DEAD = { restitution: 0, rollingResistance: 0.2 };

function run(balls: SceneBall[], moves: Move[], options: Partial<SceneOptions> = {}) {
  const start = { x: 800, y: 400, headingRad: 0 };
  const project = startingAt(start, {
    ...options,
    balls: balls.map((ball) => ({ ...ball, kind: { ...DEAD, ...ball.kind } })),
  });
  return recordTrial(compileTrial(project, routineOf(moves), { drift: false, spread: false }), 0, 0);
}

describe("a jam", () => {
  it("through a row of balls stops the robot where the row is closed", () => {
    const { outcome, recording } = run(
      [
        { x: 1180, y: 400 },
        { x: 1130, y: 400 },
        { x: 1080, y: 400 },
      ],
      [drive(350)],
    );
    expect(outcome.jams).toBe(1);
    expect(
      eventsOf(recording, "jam")
        .map(({ ball }) => ball)
        .sort(),
    ).toEqual([0, 1, 2]);
    // Wall, three balls, face; 0.3 mm at most are taken back.
    const short = 1200 - 3 * 40 - 120 - robotAt(recording, 10).xMm;
    expect(short).toBeGreaterThan(-0.01);
    expect(short).toBeLessThan(0.3);
    for (const [i, xMm] of [1180, 1140, 1100].entries()) {
      expect(outcome.endPositions[i]!.xMm).toBeLessThan(xMm + 0.01);
      expect(outcome.endPositions[i]!.xMm).toBeGreaterThan(xMm - 0.3);
    }
  });

  it("ends no move before its time, and the next one is free again", () => {
    const { outcome, recording } = run([{ x: 1180, y: 400 }], [drive(350), drive(-80), drive(40)]);
    // 350 mm, 80 mm, 40 mm at 100 mm/s, each with one ramp of 0.2 s.
    expect(outcome.timeS).toBeCloseTo(3.7 + 1 + 0.6, 9);
    const jammed = 1200 - 40 - 120;
    expect(robotAt(recording, 3.69).xMm).toBeCloseTo(jammed, 1);
    expect(robotAt(recording, 4.7).xMm).toBeCloseTo(jammed - 80, 1);
    expect(robotAt(recording, 5.4).xMm).toBeCloseTo(jammed - 40, 1);
    expect(outcome.jams).toBe(1);
  });

  it("counts once a move", () => {
    const { outcome } = run([{ x: 1180, y: 400 }], [drive(350), drive(50), drive(-80), drive(150)]);
    expect(outcome.jams).toBe(3);
  });

  it("does not come about where the row can give way", () => {
    // The second ball is pushed past the first, which lies at the wall beside its way.
    const { outcome, recording } = run(
      [
        { x: 1180, y: 400 },
        { x: 1100, y: 425 },
      ],
      [drive(230)],
    );
    expect(outcome.jams).toBe(0);
    expect(robotAt(recording, 10).xMm).toBeCloseTo(1030, 6);
    expect(outcome.endPositions[1]!.yMm).toBeGreaterThan(430);
  });

  it("holds a ball in the robot's notch against a wall, however smooth they are", () => {
    const smooth = { frictionCoeff: 0 };
    const outline = [
      [-60, -70],
      [100, -70],
      [120, -70],
      [100, 0],
      [120, 70],
      [100, 70],
      [-60, 70],
    ].map(([xMm, yMm]) => ({ xMm: xMm!, yMm: yMm! }));
    const { outcome } = run([{ x: 1180, y: 400, kind: smooth }], [drive(350)], {
      robot: {
        shape: { kind: "polygon", outline, pusherEdges: [2, 3] },
        surface: { restitution: 0, frictionCoeff: 0 },
      },
    });
    expect(outcome.jams).toBe(1);
  });

  it("in a turn stops the turn", () => {
    const spin: Move = { kind: "turn", angleRad: -1, rateRadPerS: 1 };
    // The plate's end swings up against the ball at the wall.
    const { outcome, recording } = run([{ x: 1180, y: 480, kind: { frictionCoeff: 1 } }], [drive(235), spin]);
    expect(outcome.jams).toBe(1);
    const { headingRad } = robotAt(recording, outcome.timeS);
    expect(headingRad).toBeLessThan(0);
    expect(headingRad).toBeGreaterThan(-0.5);
  });
});
