import type { BallKind } from "../../src/model/ball.ts";
import type { Project } from "../../src/model/project.ts";
import { NO_DRIFT, type Robot } from "../../src/model/robot.ts";
import type { Move, Routine } from "../../src/model/routine.ts";
import type { Wedge, Zone } from "../../src/model/zone.ts";
import { bx, by, energyOf, settleMode, sx, sy, vx, vy } from "../../src/trial/balls.kernel.ts";
import { move, profile, setRobot, startMove } from "../../src/trial/clock.kernel.ts";
import { compileTrial } from "../../src/trial/compile.ts";
import { runMove } from "../../src/trial/engine.kernel.ts";
import { loadBalls, loadPlan } from "../../src/trial/load.kernel.ts";
import type { TrialPlan } from "../../src/trial/plan.ts";
import { robot } from "../../src/trial/robot.kernel.ts";
import { awake } from "../../src/trial/wake.kernel.ts";

/** Small worlds for tests of the engine: everything plain, no drift, no spread, overridden where a test needs it. */

export const PLAIN_BALL: BallKind = {
  name: "test ball",
  diameterMm: 40,
  massKg: 0.0027,
  build: "hollow",
  rollingResistance: 0.02,
  restitution: 0.6,
  frictionCoeff: 0.3,
  floorFrictionCoeff: 0.2,
};

export const FLAT_WEDGE: Wedge = {
  corner: "upper-right",
  legXMm: 300,
  legYMm: 300,
  profile: "flat",
  lipMm: 0,
  riseMm: 0,
  runMm: 0,
};

export const PLAIN_ROBOT: Robot = {
  name: "test robot",
  massKg: 1,
  shape: {
    kind: "plate",
    bodyLengthMm: 160,
    bodyWidthMm: 140,
    axleFromRearMm: 60,
    plateWidthMm: 180,
    plateReachMm: 20,
  },
  ground: { kind: "body" },
  climbsWedge: false,
  surface: { restitution: 0.4, frictionCoeff: 0.3 },
  drive: {
    gaugeMm: 120,
    wheelDiameterMm: 40,
    trackContactMm: 80,
    topSpeedMmPerS: 200,
    accelMmPerS2: 500,
    turnRateRadPerS: 2,
    tractionCoeff: 0.7,
    lateralFrictionCoeff: 0.6,
  },
  drift: NO_DRIFT,
  entry: { alongMm: 0, insetMm: 60, headingRad: 0 },
  sensors: [],
};

/** The plain robot with a body as wide as its plate, 180 mm. */
export const EVEN_SHAPE = {
  kind: "plate",
  bodyLengthMm: 160,
  bodyWidthMm: 180,
  axleFromRearMm: 60,
  plateWidthMm: 180,
  plateReachMm: 20,
} as const;

export interface SceneBall {
  readonly x: number;
  readonly y: number;
  readonly vx?: number;
  readonly vy?: number;
  /** Roll; left out: rolling (roll = velocity). */
  readonly sx?: number;
  readonly sy?: number;
  readonly kind?: Partial<BallKind>;
}

export interface SceneOptions {
  readonly zone?: Partial<Zone>;
  readonly robot?: Partial<Robot>;
  readonly balls: readonly SceneBall[];
  readonly moves?: readonly Move[];
  readonly timeLimitS?: number;
  readonly contactStepS?: number;
}

/** Doorway at the lower left, the robot parked just inside it, out of the way. */
export function sceneProject(options: SceneOptions): Project {
  return {
    name: "scene",
    note: "",
    zone: {
      widthMm: 1200,
      heightMm: 900,
      walls: { restitution: 1, frictionCoeff: 0 },
      doorway: { wall: "bottom", centreMm: 130, widthMm: 200 },
      wedge: FLAT_WEDGE,
      keepOuts: [],
      ...options.zone,
    },
    balls: options.balls.map((ball) => ({ kind: { ...PLAIN_BALL, ...ball.kind }, count: 1, points: 1 })),
    rules: {
      timeLimitS: options.timeLimitS ?? 120,
      delivered: "centre",
      layout: { kind: "fixed", positions: options.balls.map(({ x, y }) => ({ xMm: x, yMm: y })) },
      wedgeCorners: [],
    },
    robot: { ...PLAIN_ROBOT, ...options.robot },
    spread: { frictionFrac: 0, rollingResistanceFrac: 0, restitution: 0 },
    settings: { clearanceMm: 15, overrunMm: 40, speedFracs: [1] },
  };
}

export function routineOf(moves: readonly Move[]): Routine {
  return { id: "test", pattern: "own", label: "test", params: {}, moves };
}

export function compileScene(options: SceneOptions): TrialPlan {
  return compileTrial(sceneProject(options), routineOf(options.moves ?? []), {
    drift: false,
    spread: false,
    ...(options.contactStepS === undefined ? {} : { contactStepS: options.contactStepS }),
  });
}

export interface BallState {
  readonly x: number;
  readonly y: number;
  readonly vx: number;
  readonly vy: number;
  readonly sx: number;
  readonly sy: number;
  readonly energy: number;
}

/** Lets balls roll for a while beside a robot that stands, by the engine itself; `onStep` sees every step. */
export function letRoll(options: SceneOptions, durationS: number, onStep?: (t: number) => void): BallState[] {
  const plan = compileScene(options);
  loadPlan(plan);
  loadBalls(
    plan,
    0,
    0,
    options.balls.map(({ x, y }) => ({ xMm: x, yMm: y })),
  );
  const { planner, entry } = plan;
  planner.plan(
    entry.xMm,
    entry.yMm,
    Math.cos(entry.headingRad),
    Math.sin(entry.headingRad),
    entry.headingRad,
    0,
    0,
    0,
  );
  profile.hold(durationS);
  startMove(planner, 0, 0, 1);
  move.count = 0;
  setRobotPose(entry.xMm, entry.yMm, entry.headingRad);
  for (const [i, ball] of options.balls.entries()) {
    vx[i] = ball.vx ?? 0;
    vy[i] = ball.vy ?? 0;
    sx[i] = ball.sx ?? vx[i]!;
    sy[i] = ball.sy ?? vy[i]!;
    settleMode(i);
    awake[i] = 1;
  }
  setRobot(planner, 0);
  runMove(planner, durationS, { stepBegins() {}, stepEnded: (t) => onStep?.(t), jammed() {} });
  return options.balls.map((_, i) => stateOf(i));
}

export function stateOf(i: number): BallState {
  return { x: bx[i]!, y: by[i]!, vx: vx[i]!, vy: vy[i]!, sx: sx[i]!, sy: sy[i]!, energy: energyOf(i) };
}

function setRobotPose(x: number, y: number, heading: number): void {
  robot.x = x;
  robot.y = y;
  robot.heading = heading;
  robot.c = Math.cos(heading);
  robot.s = Math.sin(heading);
}
