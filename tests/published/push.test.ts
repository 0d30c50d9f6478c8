import { describe, expect, it } from "vitest";
import { type BallKind, inertiaFactor } from "../../src/model/ball.ts";
import type { TrialOptions } from "../../src/trial/plan.ts";
import { startingAt } from "../support/approach.ts";
import { inTheLimit, runInMotion } from "../support/inMotion.ts";
import { bigRamp, onRamp } from "../support/ramp.ts";
import { type BallState, PLAIN_BALL } from "../support/scene.ts";

const SPEED_MM_PER_S = 200;
/** Ball's centre ahead of the robot's origin when it touches the plate, and a touch more. */
const REACH_MM = 140.001;

/** A plate of the given friction drives a ball that already rolls with it, and aside at `asideMmPerS`, straight on. */
function pushed(
  kind: Partial<BallKind>,
  friction: number,
  asideMmPerS: number,
  seconds: number,
  options: TrialOptions,
): BallState {
  const start = { x: 500, y: 3000, headingRad: 0 };
  const at = { x: start.x + REACH_MM, y: start.y, vx: SPEED_MM_PER_S, vy: asideMmPerS };
  const project = startingAt(start, {
    zone: { widthMm: 30_000, heightMm: 20_000 },
    robot: { surface: { restitution: 0, frictionCoeff: friction } },
    balls: [{ ...at, kind: { ...kind, frictionCoeff: friction } }],
  });
  const length = SPEED_MM_PER_S * seconds;
  return runInMotion(project, at, { sigma: 1, kappa: 0, length, rate: SPEED_MM_PER_S }, options).ball;
}

/**
 * The steady push N in weights of the ball, told from how it damps a slow motion along the plate: the ball's surface slips
 * up the plate at v and along it at w, so that friction μ·N·w/v along the plate, the floor's roll and (1+k) of inertia make
 * w fall at the rate N/((1+k)·m·v), as the same textbook mechanics has it.
 */
function steadyPush(kind: Partial<BallKind>, friction: number): number {
  const seconds = 2;
  const rate = inTheLimit(1 / 8000, (options) => {
    const { vy } = pushed(kind, friction, 0.1, seconds, options);
    return Math.log(0.1 / vy) / seconds;
  });
  return (rate * (1 + inertiaFactor({ ...PLAIN_BALL, ...kind })) * SPEED_MM_PER_S) / 9810;
}

describe("a plate that drives a rolling ball steadily ahead", () => {
  // Textbook mechanics, derived, second implementation: N = ρ·m·g/(1 − μ(1+ρ)), ρ the lever arm form of the rolling resistance; ρ 0.02: 0.025126 mg at μ 0.2, 0.040816 mg at μ 0.5.
  it.each([
    ["solid", 0.02 / 1.4, 0, 0.02],
    ["solid", 0.02 / 1.4, 0.2, 0.025126],
    ["hollow", (0.02 * 3) / 5, 0.2, 0.025126],
    ["solid", 0.02 / 1.4, 0.5, 0.040816],
    ["hollow", (0.02 * 3) / 5, 0.5, 0.040816],
  ] as const)(
    "%s, c %f, μ %f: presses with %f of its weight",
    (build, rollingResistance, friction, weights) => {
      expect(steadyPush({ build, rollingResistance }, friction)).toBeCloseTo(weights, 6);
    },
  );

  // The same: the denominator vanishes near μ = 1, where the ball stops rolling and slides.
  it("of friction 0.85 lets it roll, of friction 1.2 stops its rolling", () => {
    const kind = { build: "solid", rollingResistance: 0.01, floorFrictionCoeff: 0.2 } as const;
    expect(pushed(kind, 0.85, 0, 20, {}).sx).toBeCloseTo(SPEED_MM_PER_S, 3);
    expect(pushed(kind, 1.2, 0, 20, {}).sx).toBeLessThan(1);
  });

  // Derived, the same: the floor must grip with N ≤ μ_f·(mg + μN); with N = 0.040816 mg and μ 0.5 that takes μ_f ≥ 0.03999.
  it("needs a floor of friction 0.0400 to let it roll", () => {
    const roll = (floorFrictionCoeff: number): number =>
      pushed({ build: "solid", rollingResistance: 0.02 / 1.4, floorFrictionCoeff }, 0.5, 0, 20, {}).sx;
    expect(roll(0.04005)).toBeCloseTo(SPEED_MM_PER_S, 3);
    expect(roll(0.03995)).toBeLessThan(SPEED_MM_PER_S - 1);
  });
});

/** How the roll of a ball grows, mm/s², that a plate pushes along before it rolls. */
function spinUp(kind: Partial<BallKind>, friction: number, floorFrictionCoeff: number): number {
  const start = { x: 500, y: 3000, headingRad: 0 };
  const at = { x: start.x + REACH_MM, y: start.y, vx: SPEED_MM_PER_S, vy: 0, sx: 0, sy: 0 };
  const project = startingAt(start, {
    zone: { widthMm: 30_000, heightMm: 20_000 },
    robot: { surface: { restitution: 0, frictionCoeff: friction } },
    balls: [{ ...at, kind: { ...kind, floorFrictionCoeff, frictionCoeff: friction } }],
  });
  const rollAfter = (seconds: number, options: TrialOptions): number => {
    const stretch = { sigma: 1, kappa: 0, length: SPEED_MM_PER_S * seconds, rate: SPEED_MM_PER_S };
    return runInMotion(project, at, stretch, options).ball.sx;
  };
  // Not from the start: in the first step, of any length, nothing slips along the face yet.
  return inTheLimit(1 / 8000, (options) => (rollAfter(0.04, options) - rollAfter(0.02, options)) / 0.02);
}

describe("a plate that drives a sliding ball ahead", () => {
  // Derived, the same: N = μ_f·(mg + μN), and the roll grows at (1 − μ)·N/(k·m).
  it.each([
    ["solid", 0.3, 0.2],
    ["solid", 0.6, 0.25],
    ["hollow", 0.3, 0.25],
  ] as const)("%s, μ %f, floor %f: the face's friction presses it on the floor", (build, friction, floor) => {
    const push = (floor * 9810) / (1 - floor * friction);
    const expected = ((1 - friction) * push) / (build === "solid" ? 0.4 : 2 / 3);
    expect(spinUp({ build }, friction, floor) / expected).toBeCloseTo(1, 3);
  });
});

/** The same plate drives a ball, which slides a little, straight up a slope of tan θ 0.2 at an even pace: how its roll grows, mm/s². */
function spinUpOnSlope(kind: Partial<BallKind>, friction: number, rollShare = 0.5): number {
  const ramp = bigRamp(Math.atan(0.2));
  const ball = onRamp(ramp, 3000, { ...kind, rollingResistance: 0, frictionCoeff: friction }, SPEED_MM_PER_S);
  const project = startingAt(
    { x: ball.x - REACH_MM / Math.SQRT2, y: ball.y - REACH_MM / Math.SQRT2, headingRad: Math.PI / 4 },
    {
      zone: ramp.zone,
      robot: { climbsWedge: true, surface: { restitution: 0, frictionCoeff: friction } },
      balls: [ball],
    },
  );
  const roll = (rollShare * SPEED_MM_PER_S) / Math.SQRT2;
  const at = { x: ball.x, y: ball.y, vx: ball.vx ?? 0, vy: ball.vy ?? 0, sx: roll, sy: roll };
  const rollAfter = (seconds: number): number => {
    const stretch = { sigma: 1, kappa: 0, length: SPEED_MM_PER_S * seconds, rate: SPEED_MM_PER_S };
    // In a step of 1/30 s a ball with so little grip rolls by itself before the face is on it again, and loses what the floor would give.
    const { sx, sy } = runInMotion(project, at, stretch, { contactStepS: 1 / 240 }).ball;
    return (sx + sy) / Math.SQRT2;
  };
  return (rollAfter(1) - rollAfter(0.5)) / 0.5;
}

describe("a plate that drives a ball steadily up a slope", () => {
  // Derived, the same: N·(1 − μ) = mg·sin θ, and the floor must grip with μN ≤ μ_f·(mg·cos θ + μN): at tan θ 0.2 and μ 0.3 that takes μ_f ≥ 0.07895.
  it.each(["solid", "hollow"] as const)("needs a floor of friction 0.07895 to let it roll: %s", (build) => {
    expect(spinUpOnSlope({ build, floorFrictionCoeff: 0.078955 }, 0.3)).toBeGreaterThan(0);
    expect(spinUpOnSlope({ build, floorFrictionCoeff: 0.078945 }, 0.3)).toBeLessThan(0);
  });

  // The same for one that rolls already: it goes on rolling, and stops its roll where the floor grips less.
  it.each(["solid", "hollow"] as const)(
    "keeps it rolling on a floor of friction 0.082, not of 0.078: %s",
    (build) => {
      expect(spinUpOnSlope({ build, floorFrictionCoeff: 0.082 }, 0.3, 1)).toBeCloseTo(0, 6);
      expect(spinUpOnSlope({ build, floorFrictionCoeff: 0.078 }, 0.3, 1)).toBeLessThan(-10);
    },
  );
});
