import { describe, expect, it } from "vitest";
import type { BallKind } from "../../src/model/ball.ts";
import { mode, ROLLING } from "../../src/trial/balls.kernel.ts";
import { compileTrial } from "../../src/trial/compile.ts";
import { runTrial } from "../../src/trial/run.ts";
import { depthOf } from "../../src/trial/wedge.kernel.ts";
import { bigRamp, onRamp } from "../support/ramp.ts";
import { letRoll, PLAIN_ROBOT, routineOf, sceneProject } from "../support/scene.ts";

/** A shelf of the given height behind a lip of the same height: level on top. */
function ledge(heightMm: number) {
  return {
    corner: "upper-right",
    legXMm: 500,
    legYMm: 500,
    profile: "shelf",
    lipMm: heightMm,
    riseMm: heightMm,
    runMm: 20,
  } as const;
}

/**
 * A robot whose tracks can press with `pushN` drives a ball straight at the ledge, which stands along the diagonal.
 * True if the ball ends on it.
 */
function pushesOver(kind: Partial<BallKind>, heightMm: number, pushN: number): boolean {
  const tractionCoeff = 0.5;
  const heading = Math.PI / 4;
  const project = sceneProject({
    zone: {
      widthMm: 1500,
      heightMm: 1500,
      wedge: ledge(heightMm),
      doorway: { wall: "bottom", centreMm: 700, widthMm: 300 },
    },
    robot: {
      massKg: pushN / (tractionCoeff * 9.81),
      drive: { ...PLAIN_ROBOT.drive, tractionCoeff },
      surface: { restitution: 0, frictionCoeff: 0 },
      entry: { alongMm: 0, insetMm: 700, headingRad: heading - Math.PI / 2 },
      climbsWedge: true,
    },
    balls: [{ x: 860, y: 860, kind }],
  });
  const plan = compileTrial(project, routineOf([{ kind: "drive", distanceMm: 750, speedMmPerS: 60 }]), {
    drift: false,
    spread: false,
  });
  return runTrial(plan, 0, 0).delivered[0] === true;
}

describe("pushing a ball up a step", () => {
  // Halliday, Fundamentals of Physics 10e, problem 12-25 (answer 13.6 N), and UF PHY2049 solution ch12-p021: r 6.00 cm, h 3.00 cm, 0.800 kg, g 9.8: 13.58 N.
  it("takes 13.58 N: r 6 cm, h 3 cm, 0.8 kg", () => {
    const kind = {
      diameterMm: 120,
      massKg: 0.8 * (9.8 / 9.81),
      build: "solid",
      rollingResistance: 0.01,
    } as const;
    expect(pushesOver(kind, 30, 13.575)).toBe(false);
    expect(pushesOver(kind, 30, 13.585)).toBe(true);
  });

  // The same by algebra, derived, second implementation: 2.7 g, r 20 mm, h 5 mm: 0.02336 N.
  it("takes 0.02336 N: r 20 mm, h 5 mm, 2.7 g", () => {
    const kind = { diameterMm: 40, massKg: 0.0027, rollingResistance: 0.01 };
    expect(pushesOver(kind, 5, 0.023355)).toBe(false);
    expect(pushesOver(kind, 5, 0.023365)).toBe(true);
  });

  // No force at the centre lifts a ball over a step as high as its middle (h < r in the formula above).
  it("is no use where the step is as high as the ball's middle", () => {
    const kind = { diameterMm: 40, massKg: 0.0027, rollingResistance: 0.01 };
    expect(pushesOver(kind, 20, 1e6)).toBe(false);
    expect(pushesOver(kind, 19, 1e6)).toBe(true);
  });
});

describe("a ball that rolls against a step", () => {
  // Angular momentum about the edge, then energy: v·(1 − h/(r(1+k))) must reach √(2gh/(1+k)). Derived, second implementation.
  it.each([
    ["solid, r 20 mm, h 2 mm", "solid", 40, 2, 180.296],
    ["hollow, r 20 mm, h 2 mm", "hollow", 40, 2, 163.235],
    ["hollow, r 20 mm, h 8 mm", "hollow", 40, 8, 403.791],
    ["solid, r 30 mm, h 1 mm", "solid", 60, 1, 121.269],
  ] as const)("climbs it from a speed on: %s", (_, build, diameterMm, heightMm, least) => {
    const kind = { build, diameterMm, rollingResistance: 1e-9 };
    const climbs = (speed: number): boolean => {
      const step = bigRamp(0, { lipMm: heightMm, riseMm: heightMm });
      letRoll({ zone: step.zone, balls: [onRamp(step, -60, kind, speed)] }, 3);
      expect(mode[0]).toBe(ROLLING);
      return depthOf(0) > 0;
    };
    expect(climbs(least - 0.0005)).toBe(false);
    expect(climbs(least + 0.0005)).toBe(true);
  });

  // Derived, second implementation: on the top of a step of 2 mm a shell that came with 200 mm/s has √((0.94·200)² − 2g·2/(5/3)) = 108.628 mm/s.
  it("has the speed left that the impact and the height leave it", () => {
    const step = bigRamp(0, { lipMm: 2, riseMm: 2 });
    const kind = { build: "hollow", diameterMm: 40, rollingResistance: 1e-9 } as const;
    const [end] = letRoll({ zone: step.zone, balls: [onRamp(step, -60, kind, 200)] }, 2);
    expect(depthOf(0)).toBeGreaterThan(0);
    expect(Math.hypot(end!.vx, end!.vy)).toBeCloseTo(108.628, 3);
  });
});
