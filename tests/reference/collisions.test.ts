import { Vec2 } from "planck";
import { describe, expect, it } from "vitest";
import type { BallKind } from "../../src/model/ball.ts";
import { robotOutline } from "../../src/model/outline.ts";
import type { Move } from "../../src/model/routine.ts";
import { robotAt } from "../../src/trial/playback.ts";
import { FRAME_STRIDE, type Recording } from "../../src/trial/recording.ts";
import { recordTrial } from "../../src/trial/run.ts";
import { PlanckScene } from "../support/planckScene.ts";
import { MM_PER_UNIT } from "../support/planckUnits.ts";
import {
  compileScene,
  letRoll,
  PLAIN_ROBOT,
  type SceneOptions,
  sceneProject,
  stateOf,
} from "../support/scene.ts";

/**
 * One collision at a time: the engine plays it, planck is given the places and velocities of that instant, and both must
 * answer with the same velocities. How the engine gets there (its touch tolerance of 2 µm) is not compared here.
 */

/** Balls that no floor slows down, so that only the collision changes their velocities. */
const FREE: Partial<BallKind> = {
  rollingResistance: 0,
  floorFrictionCoeff: 0,
  frictionCoeff: 0,
  restitution: 0.8,
};
const LIGHT = { ...FREE, massKg: 0.0027 };
const HEAVY = { ...FREE, massKg: 0.046 };
const WALLS = { walls: { restitution: 0.6, frictionCoeff: 0 } };

/** Gap across which the engine lets a collision happen, mm, and a little more: planck only sees what overlaps. */
const REACH_MM = 2.001e-3;
/** Agreement asked for, relative to the fastest ball. */
const RELATIVE = 1e-6;

interface Motion {
  readonly x: number;
  readonly y: number;
  readonly vx: number;
  readonly vy: number;
}

interface RobotMotion extends Motion {
  readonly heading: number;
  readonly turnRate: number;
}

const FAR_AWAY: RobotMotion = { x: 130, y: 60, vx: 0, vy: 0, heading: Math.PI / 2, turnRate: 0 };

/** What planck makes of balls that touch: their velocities after one step, mm/s. */
function planckAnswer(options: SceneOptions, balls: readonly Motion[], robot: RobotMotion): Motion[] {
  const project = sceneProject(options);
  const scene = new PlanckScene(project, robotOutline(project.robot).footprint);
  scene.robot.setTransform(new Vec2(robot.x / MM_PER_UNIT, robot.y / MM_PER_UNIT), robot.heading);
  scene.robot.setLinearVelocity(new Vec2(robot.vx / MM_PER_UNIT, robot.vy / MM_PER_UNIT));
  scene.robot.setAngularVelocity(robot.turnRate);
  const kinds = project.balls.map((group) => group.kind);
  scene.lay(
    kinds,
    balls.map(({ x, y }) => ({ xMm: x, yMm: y })),
  );
  for (const [i, { body }] of scene.balls.entries()) {
    body.setAwake(true);
    body.setLinearVelocity(new Vec2(balls[i]!.vx / MM_PER_UNIT, balls[i]!.vy / MM_PER_UNIT));
  }
  scene.step(1e-6);
  return scene.balls.map(({ body }, i) => {
    const { x: vx, y: vy } = body.getLinearVelocity();
    return { ...balls[i]!, vx: vx * MM_PER_UNIT, vy: vy * MM_PER_UNIT };
  });
}

/** The place of the collision, with the first ball moved against the impulse it got, so that the partners overlap. */
function overlapping(before: readonly Motion[], after: readonly Motion[]): Motion[] {
  const jx = after[0]!.vx - before[0]!.vx;
  const jy = after[0]!.vy - before[0]!.vy;
  const length = Math.hypot(jx, jy);
  expect(length).toBeGreaterThan(1);
  return before.map(({ vx, vy }, i) => {
    const { x, y } = after[i]!;
    const shift = i === 0 ? REACH_MM / length : 0;
    return { x: x - jx * shift, y: y - jy * shift, vx, vy };
  });
}

function expectSame(ours: readonly Motion[], theirs: readonly Motion[]): void {
  const fastest = Math.max(...ours.map(({ vx, vy }) => Math.hypot(vx, vy)));
  const apart = ours.map((ball, i) => Math.hypot(ball.vx - theirs[i]!.vx, ball.vy - theirs[i]!.vy));
  expect(Math.max(...apart) / fastest).toBeLessThan(RELATIVE);
}

/** Lets balls roll; places and velocities right after the step in which the first collision happened. */
function firstCollision(options: SceneOptions): { before: Motion[]; after: Motion[] } {
  const before = options.balls.map(({ x, y, vx = 0, vy = 0 }) => ({ x, y, vx, vy }));
  let after: Motion[] = [];
  letRoll(options, 3, () => {
    if (after.length > 0) return;
    const now = before.map((_, i) => stateOf(i));
    if (now.some((ball, i) => Math.hypot(ball.vx - before[i]!.vx, ball.vy - before[i]!.vy) > 1)) after = now;
  });
  expect(after).toHaveLength(before.length);
  return { before, after };
}

/** Runs moves; the first ball's place and velocity, and the robot's motion, right after the step of its first touch. */
function firstTouch(options: SceneOptions): { before: Motion[]; after: Motion[]; robot: RobotMotion } {
  const { recording } = recordTrial(compileScene(options), 0, 0);
  const { frames, frameTimeS, ballCount } = recording;
  const [place] = options.balls.map(({ x, y }) => ({ x, y, vx: 0, vy: 0 }));
  const stride = FRAME_STRIDE * ballCount;
  const frame = frameTimeS.findIndex((_, f) => frames[f * stride + 2] !== 0 || frames[f * stride + 3] !== 0);
  expect(frame).toBeGreaterThan(0);
  const [x, y, vx, vy] = frames.subarray(frame * stride, frame * stride + 4);
  const t = frameTimeS[frame]!;
  return {
    before: [place!],
    after: [{ x: x!, y: y!, vx: vx!, vy: vy! }],
    robot: robotMotionAt(recording, t),
  };
}

/** Velocity by a central difference: the robot moves evenly around the touch, so that only its rounding counts. */
function robotMotionAt(recording: Recording, t: number): RobotMotion {
  const h = 1e-3;
  const [early, now, late] = [t - h, t, t + h].map((at) => robotAt(recording, at));
  const turnRate = (late!.headingRad - early!.headingRad) / (2 * h);
  // On a circle the chord is shorter than the arc: sin(φ)/φ with φ = ω·h.
  const chord = turnRate === 0 ? 1 : Math.sin(turnRate * h) / (turnRate * h);
  return {
    x: now!.xMm,
    y: now!.yMm,
    heading: now!.headingRad,
    vx: (late!.xMm - early!.xMm) / (2 * h * chord),
    vy: (late!.yMm - early!.yMm) / (2 * h * chord),
    turnRate,
  };
}

describe("single collisions, against planck", () => {
  it.each([
    ["straight into a wall", 400, 0],
    ["slantwise into a wall", 300, 170],
  ])("a ball %s", (_, vx, vy) => {
    const scene = { zone: WALLS, balls: [{ x: 1000, y: 400, vx, vy, kind: FREE }] };
    const { before, after } = firstCollision(scene);
    expect(after[0]!.vx).toBeCloseTo(-0.6 * vx, 9);
    expectSame(after, planckAnswer(scene, overlapping(before, after), FAR_AWAY));
  });

  it.each([
    ["alike, head-on", LIGHT, LIGHT, 0],
    ["alike, off centre", LIGHT, LIGHT, 17],
    ["a heavy one into a light one", HEAVY, LIGHT, -23],
    ["a light one into a heavy one", LIGHT, HEAVY, 31],
  ])("two balls: %s", (_, one, other, offset) => {
    const scene = {
      balls: [
        { x: 300, y: 500, vx: 420, vy: 35, kind: one },
        { x: 600, y: 525 + offset, vx: -80, vy: 0, kind: other },
      ],
    };
    const { before, after } = firstCollision(scene);
    expectSame(after, planckAnswer(scene, overlapping(before, after), FAR_AWAY));
  });

  const drive: Move = { kind: "drive", distanceMm: 500, speedMmPerS: 180 };
  it.each([
    ["the middle of a driving plate", drive, 130, 400],
    ["the corner of a driving plate", drive, 226, 420],
    [
      "a plate in a curve",
      { kind: "arc", distanceMm: 500, angleRad: 0.9, speedMmPerS: 150 } as const,
      60,
      350,
    ],
    ["a plate in a turn", { kind: "turn", angleRad: 1.5, rateRadPerS: 1.2 } as const, 30, 180],
  ])("a ball that lies before %s", (_, move, x, y) => {
    const scene = {
      // Far from all walls, and with room to turn.
      robot: { entry: { alongMm: 0, insetMm: 150, headingRad: 0 } },
      balls: [{ x, y, kind: FREE }],
      moves: [move],
    };
    const { before, after, robot } = firstTouch(scene);
    expectSame(after, planckAnswer(scene, overlapping(before, after), robot));
  });

  it("a plate at speed V sends a ball that lies still off with V(1 + e)", () => {
    const scene = { balls: [{ x: 130, y: 400, kind: FREE }], moves: [drive] };
    const { after } = firstTouch(scene);
    expect(after[0]!.vy).toBeCloseTo(180 * (1 + Math.min(0.8, PLAIN_ROBOT.surface.restitution)), 9);
  });
});
