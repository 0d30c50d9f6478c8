import { describe, expect, it } from "vitest";
import type { RobotShape } from "../../src/model/robot.ts";
import type { Move } from "../../src/model/routine.ts";
import { type Carry, coneSpeed, leastCurveMm } from "../../src/plan/carry.ts";
import { compileTrial } from "../../src/trial/compile.ts";
import type { TrialOptions } from "../../src/trial/plan.ts";
import { ballAt, robotAt } from "../../src/trial/playback.ts";
import { recordTrial } from "../../src/trial/run.ts";
import { inRobot, startingAt } from "../support/approach.ts";
import { PLAIN_ROBOT, routineOf } from "../support/scene.ts";

const DEGREE = Math.PI / 180;
const R_MM = 20;
/** c·g = 0.1962 m/s² as in the worked examples. */
const ROLLING = 0.02;

/** A V of half-angle `halfDeg` from the way ahead, whose sides hold a ball with its centre `aheadMm` before the axle. */
function vShape(halfDeg: number, aheadMm: number): RobotShape {
  const apex = aheadMm - R_MM / Math.sin(halfDeg * DEGREE);
  const long = 260;
  const tip = { x: apex + long * Math.cos(halfDeg * DEGREE), y: long * Math.sin(halfDeg * DEGREE) };
  const outline = [
    [-60, -50],
    [apex - 20, -50],
    [tip.x - 20, -tip.y],
    [tip.x, -tip.y],
    [apex, 0],
    [tip.x, tip.y],
    [tip.x - 20, tip.y],
    [apex - 20, 50],
    [-60, 50],
  ].map(([xMm, yMm]) => ({ xMm: xMm!, yMm: yMm! }));
  return { kind: "polygon", outline, pusherEdges: [3, 4] };
}

/** Where the ball is in the robot's frame after so much of one move, having started touching at (aheadMm, 0). */
function placeAfter(
  move: Move,
  shape: RobotShape,
  aheadMm: number,
  accelMmPerS2: number,
  share = 1,
  options: TrialOptions = {},
): { xMm: number; yMm: number } {
  const kind = {
    build: "solid",
    diameterMm: 2 * R_MM,
    rollingResistance: ROLLING,
    frictionCoeff: 0,
    floorFrictionCoeff: 0.5,
    restitution: 0,
  } as const;
  const project = startingAt(
    { x: 10_000, y: 3000, headingRad: 0 },
    {
      zone: { widthMm: 30_000, heightMm: 30_000 },
      robot: {
        shape,
        surface: { restitution: 0, frictionCoeff: 0 },
        drive: { ...PLAIN_ROBOT.drive, topSpeedMmPerS: 1000, accelMmPerS2 },
      },
      balls: [{ x: 10_000 + aheadMm + 0.001, y: 3000, kind }],
    },
  );
  const plan = compileTrial(project, routineOf([move]), { drift: false, spread: false, ...options });
  const { recording } = recordTrial(plan, 0, 0);
  // After all of it: at rest at last, or still in the V when the move ends.
  const atS = share * recording.durationS;
  return inRobot(robotAt(recording, atS), ballAt(recording, 0, atS));
}

describe("a ball in a V on a curve", () => {
  // Derived: frictionless sides at 60° from the way ahead, a_r 0.1962 m/s², 0.3 m/s, ball 0.12 m before the axle: it stays seated on curves of 1.059718 m and more.
  const leaves = (radiusM: number, share: number, options: TrialOptions = {}): number => {
    const move: Move = { kind: "arc", distanceMm: 9000, angleRad: 9 / radiusM, speedMmPerS: 300 };
    const { xMm, yMm } = placeAfter(move, vShape(60, 120), 120, 100, share, options);
    return Math.hypot(xMm - 120, yMm);
  };

  it("of 1.059718 m is the narrowest on which it stays", () => {
    // It leaves ever faster, so that a few micrometres show after 8 m, and no fewer; fine steps, since it sits as near to leaving as can be.
    const options = { contactStepS: 1 / 1920 };
    expect(leaves(1.05972, 0.9, options)).toBeLessThan(0.02);
    expect(leaves(1.059715, 0.9, options)).toBeGreaterThan(0.2);
  });

  // At the step of the trials the limit lies 0.2 % higher.
  it.each([
    [1.062, true],
    [1.0597, false],
  ])("of radius %f m at the trials' step stays: %s", (radiusM, stays) => {
    const away = leaves(radiusM, 1);
    if (stays) expect(away).toBeLessThan(5);
    else expect(away).toBeGreaterThan(90);
  });
});

describe("a ball before a plate that brakes", () => {
  const plate = PLAIN_ROBOT.shape;
  const drive: Move = { kind: "drive", distanceMm: 1000, speedMmPerS: 250 };

  // Braking harder than the ball's own deceleration loses it (derived): it rolls v²/(2·0.1962) while the robot needs v²/(2a): 96.8 mm further at 0.25 m/s and 0.5 m/s².
  it("harder than the ball rolls on by 96.8 mm", () => {
    const { xMm } = placeAfter(drive, plate, 140, 500);
    expect(xMm - 140).toBeCloseTo(96.8, 1);
  });

  it("less than the ball itself keeps it", () => {
    const { xMm } = placeAfter(drive, plate, 140, 190);
    expect(xMm - 140).toBeCloseTo(0, 1);
  });
});

describe("the narrowest curve of a V, and its speed there", () => {
  // Rolling ball in a V of half-angle 60° (mechanics of the references, M2.7): losing 0.1962 m/s² it stays at 0.3 m/s down to
  // a radius of 0.794519 m with its centre over the axle, and of 1.059718 m with its centre 0.12 m ahead of it.
  const carry: Carry = {
    holds: true,
    depthMm: 60,
    seatMm: 120,
    halfWidthMm: 60,
    ballDecelMmPerS2: 196.2,
    robotDecelMmPerS2: 500,
    coneRad: 30 * DEGREE,
  };

  it.each([
    [0, 794.519],
    [120, 1059.718],
  ])("at %d mm ahead of the axle", (seatMm, radiusMm) => {
    // The radius is printed to the micrometre.
    for (const side of [-1, 1] as const) {
      const speed = coneSpeed({ ...carry, seatMm }, radiusMm + side * 5e-4, carry.coneRad);
      expect(side * (speed - 300)).toBeGreaterThan(0);
    }
  });

  it("keeps nothing in a curve narrower than the cone allows", () => {
    const least = leastCurveMm(carry);
    expect(least).toBeGreaterThan(120 / Math.tan(30 * DEGREE));
    expect(coneSpeed(carry, 120 / Math.tan(30 * DEGREE), carry.coneRad)).toBeCloseTo(0, 6);
    expect(coneSpeed(carry, least, carry.coneRad)).toBeGreaterThan(0);
    // Arms straight ahead hold it on the spot.
    expect(leastCurveMm({ ...carry, coneRad: Math.PI / 2 })).toBe(0);
  });
});
