import { describe, expect, it } from "vitest";
import { compileTrial } from "../../src/trial/compile.ts";
import type { TrialOptions } from "../../src/trial/plan.ts";
import { ballAt, robotAt } from "../../src/trial/playback.ts";
import { recordTrial } from "../../src/trial/run.ts";
import { startBefore, startingAt } from "../support/approach.ts";
import { routineOf } from "../support/scene.ts";

const DEGREE = Math.PI / 180;
const WAY_MM = 100;
/** Driven on after the plate has met the ball. */
const ON_MM = 6;

interface Squeeze {
  readonly jams: number;
  /** How far the robot got after it met the ball, and how far the ball was moved along the wall. */
  readonly onMm: number;
  readonly alongMm: number;
}

/** A plate at `angleDeg` to the right wall drives at right angles to itself and takes a ball that lies at the wall between them. */
function squeeze(
  angleDeg: number,
  friction: { plate: number; wall: number; ball: number },
  options: TrialOptions = {},
): Squeeze {
  const ball = {
    x: 1180,
    y: 400,
    kind: { frictionCoeff: friction.ball, restitution: 0, rollingResistance: 0.02 },
  };
  // The plate's face is 120 mm ahead; the ball meets it 35 mm from the end that points at the wall, which at 2·26.565° is 5 mm off it.
  const start = startBefore(ball, angleDeg * DEGREE, 140, -55, WAY_MM);
  const project = startingAt(start, {
    zone: { walls: { restitution: 0, frictionCoeff: friction.wall } },
    robot: { surface: { restitution: 0, frictionCoeff: friction.plate } },
    balls: [ball],
  });
  const routine = routineOf([{ kind: "drive", distanceMm: WAY_MM + ON_MM, speedMmPerS: 30 }]);
  const { outcome, recording } = recordTrial(
    compileTrial(project, routine, { drift: false, spread: false, ...options }),
    0,
    0,
  );
  const end = robotAt(recording, recording.durationS);
  return {
    jams: outcome.jams,
    onMm: Math.hypot(end.xMm - start.x, end.yMm - start.y) - WAY_MM,
    alongMm: ballAt(recording, 0, recording.durationS).yMm - ball.y,
  };
}

const EVEN = { plate: 0.3, wall: 0.3, ball: 0.3 };

describe("a ball between a plate and a wall", () => {
  // Nguyen 1988, from memory: two frictional contacts hold a disc iff the line between them lies in both cones: angle/2 ≤ atan μ. μ 0.3: 30° jams (15 ≤ 16.70), 40° lets it out (20 > 16.70).
  it("jams at 30° and clears at 40° with friction 0.3", () => {
    const jammed = squeeze(30, EVEN);
    expect(jammed.jams).toBe(1);
    expect(jammed.onMm).toBeCloseTo(0, 1);
    expect(jammed.alongMm).toBeCloseTo(0, 1);
    const cleared = squeeze(40, EVEN);
    expect(cleared.jams).toBe(0);
    expect(cleared.onMm).toBeCloseTo(ON_MM, 6);
    expect(cleared.alongMm).toBeGreaterThan(ON_MM);
  });

  // The same: 2·atan 0.3 = 2·16.699°, 2·atan 0.5 = 2·26.565° (friction angles derived).
  it.each([
    [0.3, 16.699],
    [0.5, 26.565],
  ])("of friction %f jams up to twice %f°", (mu, degrees) => {
    const friction = { plate: mu, wall: mu, ball: mu };
    expect(squeeze(2 * degrees - 0.001, friction).jams).toBe(1);
    expect(squeeze(2 * degrees + 0.001, friction).jams).toBe(0);
  });

  // The same: both cones must hold it, so that the smaller friction decides. Combined √(0.6·0.15) = 0.3 at the plate, √(0.6·1.35) = 0.9 at the wall, and the other way round.
  it.each([
    ["plate", { plate: 0.15, wall: 1.35, ball: 0.6 }],
    ["wall", { plate: 1.35, wall: 0.15, ball: 0.6 }],
  ])("jams by the smaller friction, here the %s's", (_, friction) => {
    expect(squeeze(2 * 16.699 - 0.001, friction).jams).toBe(1);
    expect(squeeze(2 * 16.699 + 0.001, friction).jams).toBe(0);
  });

  // Of the pairs in friction tables the least is PTFE on steel, 0.04 (howwhy.nfshost.com; references.md P7.7): surfaces said to have
  // less jam a ball as that pair does, up to twice its friction angle of 2.2906°, and at any step of the engine.
  it.each([undefined, 1 / 60, 1 / 240, 1 / 960])(
    "counts with a friction of 0.04 at least, at a contact step of %f s",
    (contactStepS) => {
      const options = contactStepS === undefined ? {} : { contactStepS };
      for (const friction of [
        { plate: 0, wall: 0.5, ball: 0.5 },
        { plate: 0, wall: 0, ball: 0 },
      ]) {
        expect(squeeze(2 * 2.2906 - 0.0001, friction, options).jams).toBe(1);
        const cleared = squeeze(2 * 2.2906 + 0.0001, friction, options);
        expect(cleared.jams).toBe(0);
        expect(cleared.alongMm).toBeGreaterThan(ON_MM);
      }
    },
  );

  // A frictionless plate would not hold a sliding block against a wall up to the wall's own friction angle alone (quasi-static
  // pushing, M2.6): a ball rolls along the wall instead, so that the wall's friction by itself holds nothing.
  it("rolls along a rough wall before a smooth plate", () => {
    expect(squeeze(10, { plate: 0, wall: 0.5, ball: 0.5 }).jams).toBe(0);
  });
});

/** The same plate drives a row of two balls, one behind the other along its way, at the wall: jams. */
function squeezeRow(
  angleDeg: number,
  offDeg: number,
  friction: { plate: number; wall: number; ball: number },
): number {
  const [c, s] = [Math.cos((angleDeg + offDeg) * DEGREE), Math.sin((angleDeg + offDeg) * DEGREE)];
  const kind = { frictionCoeff: friction.ball, restitution: 0, rollingResistance: 0.02 };
  const atWall = { x: 1180, y: 400, kind };
  const before = { x: 1180 - 40.0005 * c, y: 400 - 40.0005 * s, kind };
  const start = startBefore(before, angleDeg * DEGREE, 140, -55, 30);
  const project = startingAt(start, {
    zone: { walls: { restitution: 0, frictionCoeff: friction.wall } },
    robot: { surface: { restitution: 0, frictionCoeff: friction.plate } },
    balls: [atWall, before],
  });
  const routine = routineOf([{ kind: "drive", distanceMm: 30.1, speedMmPerS: 30 }]);
  return recordTrial(compileTrial(project, routine, { drift: false, spread: false }), 0, 0).outcome.jams;
}

describe("a row of two balls between a plate and a wall", () => {
  // The rule for each ball of the row (Nguyen 1988, from memory): the one at the wall is held up to twice the friction angle between
  // its neighbour's push and the wall, 2·16.699° at 0.3, whatever the plate is like, which does not touch it.
  it.each([0, 0.3])(
    "is held at the wall by the friction of ball and wall alone: plate of friction %f",
    (plate) => {
      const friction = { plate, wall: 0.3, ball: 0.3 };
      expect(squeezeRow(2 * 16.699 - 0.05, 0, friction)).toBe(1);
      expect(squeezeRow(2 * 16.699 + 0.05, 0, friction)).toBe(0);
    },
  );

  // The one at the plate is held up to twice the friction angle between the plate's push and the line of centres.
  it("is held at the plate up to twice the friction angle off the line of centres", () => {
    expect(squeezeRow(-20, 2 * 16.699 - 0.1, EVEN)).toBe(1);
    expect(squeezeRow(-20, 2 * 16.699 + 0.1, EVEN)).toBe(0);
  });
});

describe("a ball in a corner", () => {
  // Two walls and a plate that pushes between their normals hold a disc without any friction (three frictionless contacts whose normals span the plane; Reuleaux, from memory).
  it.each([15, 45, 75])("jams whatever the friction: pushed at %f°", (degrees) => {
    const ball = { x: 1180, y: 20, kind: { frictionCoeff: 0, restitution: 0 } };
    const start = startBefore(ball, -degrees * DEGREE, 140, 0, WAY_MM);
    const wedge = {
      corner: "upper-left",
      legXMm: 300,
      legYMm: 300,
      profile: "flat",
      lipMm: 0,
      riseMm: 0,
      runMm: 0,
    } as const;
    const project = startingAt(start, {
      zone: { wedge },
      // Narrow enough to reach into the corner.
      robot: {
        shape: {
          kind: "plate",
          bodyLengthMm: 160,
          bodyWidthMm: 20,
          axleFromRearMm: 60,
          plateWidthMm: 20,
          plateReachMm: 20,
        },
      },
      balls: [ball],
    });
    const routine = routineOf([{ kind: "drive", distanceMm: WAY_MM + ON_MM, speedMmPerS: 30 }]);
    const { outcome, recording } = recordTrial(
      compileTrial(project, routine, { drift: false, spread: false }),
      0,
      0,
    );
    const end = robotAt(recording, recording.durationS);
    expect(outcome.jams).toBe(1);
    expect(Math.hypot(end.xMm - start.x, end.yMm - start.y)).toBeCloseTo(WAY_MM, 1);
  });
});
