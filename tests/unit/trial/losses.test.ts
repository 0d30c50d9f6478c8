import { describe, expect, it } from "vitest";
import type { Move } from "../../../src/model/routine.ts";
import type { Wedge } from "../../../src/model/zone.ts";
import { compileTrial } from "../../../src/trial/compile.ts";
import { recordTrial } from "../../../src/trial/run.ts";
import { type Start, startingAt } from "../../support/approach.ts";
import { eventsOf } from "../../support/probe.ts";
import { routineOf, type SceneBall, type SceneOptions } from "../../support/scene.ts";

/** One story for each thing that can become of a ball. The plate's face is 120 mm ahead of the axle, a ball's radius 20. */

const drive = (distanceMm: number, speedMmPerS = 200): Move => ({ kind: "drive", distanceMm, speedMmPerS });
const turn = (angleDeg: number): Move => ({
  kind: "turn",
  angleRad: (angleDeg * Math.PI) / 180,
  rateRadPerS: 2,
});

function story(start: Start, balls: SceneBall[], moves: Move[], options: Partial<SceneOptions> = {}) {
  const project = startingAt(start, { ...options, balls });
  return recordTrial(compileTrial(project, routineOf(moves), { drift: false, spread: false }), 0, 0);
}

const RAMP: Wedge = {
  corner: "upper-right",
  legXMm: 400,
  legYMm: 400,
  profile: "ramp",
  lipMm: 0,
  riseMm: 30,
  runMm: 0,
};
const TO_CORNER: Start = { x: 700, y: 400, headingRad: Math.PI / 4 };

describe("what becomes of a ball", () => {
  it("delivered: pushed onto the mark, and when it came there", () => {
    const { outcome, recording } = story(TO_CORNER, [{ x: 850, y: 550 }], [drive(400)]);
    expect(outcome.delivered).toEqual([true]);
    expect(outcome.losses).toEqual([null]);
    const [onto] = eventsOf(recording, "on-wedge");
    expect(outcome.deliveredAtS[0]).toBe(onto!.timeS);
    expect(outcome.deliveredAtS[0]).toBeGreaterThan(0.3);
    expect(outcome.deliveredAtS[0]).toBeLessThan(outcome.timeS);
    const { xMm, yMm } = outcome.endPositions[0]!;
    // The mark's edge is x + y = 1200 + 900 − 300.
    expect(xMm + yMm).toBeGreaterThan(1800);
  });

  it("delivered, wholly: not until the whole ball is on the mark", () => {
    const wholly = (distanceMm: number) => {
      const project = startingAt(TO_CORNER, {
        balls: [{ x: 850, y: 550, kind: { rollingResistance: 0.5, restitution: 0 } }],
      });
      const strict = { ...project, rules: { ...project.rules, delivered: "wholly" as const } };
      const routine = routineOf([drive(distanceMm, 60)]);
      return [project, strict].map(
        (p) =>
          recordTrial(compileTrial(p, routine, { drift: false, spread: false }), 0, 0).outcome.delivered[0],
      );
    };
    // Edge at (x + y)/√2 = 1272.8; the ball's centre is 140 mm before the axle, which starts at 777.8: 355 mm to the edge.
    expect(wholly(345)).toEqual([false, false]);
    expect(wholly(365)).toEqual([true, false]);
    expect(wholly(385)).toEqual([true, true]);
  });

  it("never touched", () => {
    const { outcome, recording } = story(TO_CORNER, [{ x: 300, y: 700 }], [drive(300)]);
    expect(outcome.losses).toEqual(["never-touched"]);
    expect(outcome.endPositions[0]).toEqual({ xMm: 300, yMm: 700 });
    expect(eventsOf(recording, "touched")).toEqual([]);
  });

  it("left the pusher: touched, and lying somewhere", () => {
    const { outcome, recording } = story(
      { x: 300, y: 400, headingRad: 0 },
      [{ x: 500, y: 420 }],
      [drive(200), turn(60)],
    );
    expect(outcome.losses).toEqual(["left-pusher"]);
    expect(eventsOf(recording, "touched")).toHaveLength(1);
    expect(outcome.endPositions[0]!.xMm).toBeGreaterThan(510);
  });

  it("left the wedge: rolled up the ramp, and back out when the plate backs off", () => {
    const zone = { wedge: RAMP };
    const moves = [drive(420), drive(-250)];
    const { outcome, recording } = story(TO_CORNER, [{ x: 840, y: 540 }], moves, {
      zone,
      robot: { climbsWedge: true },
    });
    expect(eventsOf(recording, "on-wedge").length).toBeGreaterThan(0);
    expect(eventsOf(recording, "off-wedge").length).toBeGreaterThan(0);
    expect(outcome.losses).toEqual(["left-wedge"]);
  });

  it("jammed: held between plate and wall, and lying there still", () => {
    const ball = { x: 1180, y: 400, kind: { restitution: 0 } };
    const { outcome, recording } = story(
      { x: 900, y: 400, headingRad: 0 },
      [ball],
      [drive(250), drive(-100)],
    );
    expect(outcome.jams).toBe(1);
    expect(outcome.losses).toEqual(["jammed"]);
    expect(eventsOf(recording, "jam").map(({ ball: which }) => which)).toEqual([0]);
  });

  it("rolled out: through the doorway", () => {
    const { outcome, recording } = story(
      { x: 130, y: 400, headingRad: -Math.PI / 2 },
      [{ x: 130, y: 200 }],
      [drive(300, 150)],
    );
    expect(outcome.losses).toEqual(["rolled-out"]);
    const [out] = eventsOf(recording, "rolled-out");
    expect(out!.yMm).toBeCloseTo(0, 1);
    expect(eventsOf(recording, "rolled-out")).toHaveLength(1);
    // It was touched at the start of this move, which goes on without it: not in steps of a tenth of a millisecond.
    expect(recording.durationS - out!.timeS).toBeGreaterThan(0.1);
    expect(recording.frameTimeS.length).toBeLessThan(60);
  });

  it("out of time: not reached, or in the robot's hands when the limit came", () => {
    const balls = [
      { x: 500, y: 400 },
      { x: 300, y: 800 },
    ];
    const late = story({ x: 300, y: 400, headingRad: 0 }, balls, [drive(600, 100)], { timeLimitS: 3 });
    expect(late.outcome.timeS).toBe(3);
    expect(late.outcome.losses).toEqual(["out-of-time", "out-of-time"]);
    // A ball that was lost before the limit is lost to the pusher all the same.
    const lost = story(
      { x: 300, y: 400, headingRad: 0 },
      balls,
      [drive(200), turn(60), turn(-60), turn(60), turn(-60)],
      { timeLimitS: 4 },
    );
    expect(lost.outcome.losses[0]).toBe("left-pusher");
  });

  it("a ball that rolls on after the routine still counts where it comes to rest", () => {
    const { outcome, recording } = story(
      TO_CORNER,
      [{ x: 850, y: 550, kind: { restitution: 1, rollingResistance: 0.002 } }],
      [drive(90)],
    );
    expect(outcome.delivered).toEqual([true]);
    expect(outcome.deliveredAtS[0]).toBeGreaterThan(outcome.timeS);
    expect(recording.durationS).toBeGreaterThan(outcome.timeS);
  });
});
