import type { Project } from "../../src/model/project.ts";
import { entryPose } from "../../src/motion/entry.ts";
import type { Pose } from "../../src/motion/pose.ts";
import { settleMode, sx, sy, vx, vy } from "../../src/trial/balls.kernel.ts";
import { profile, startMove } from "../../src/trial/clock.kernel.ts";
import { compileTrial } from "../../src/trial/compile.ts";
import { runMove } from "../../src/trial/engine.kernel.ts";
import { loadBalls, loadPlan } from "../../src/trial/load.kernel.ts";
import type { TrialOptions } from "../../src/trial/plan.ts";
import { robot } from "../../src/trial/robot.kernel.ts";
import { awake } from "../../src/trial/wake.kernel.ts";
import { type BallState, routineOf, type SceneBall, stateOf } from "./scene.ts";

/** Ramps so short that a move has its speed from the start. */
const AT_ONCE = 1e9;

export interface Stretch {
  /** As the planner takes it: +1 ahead, −1 back, 0 on the spot; heading change per mm or rad; mm or rad; mm/s or rad/s. */
  readonly sigma: number;
  readonly kappa: number;
  readonly length: number;
  readonly rate: number;
}

/**
 * Runs one stretch of even motion from the entry pose by the engine, the only ball of the project moving from the start
 * with velocity (vx, vy), rolling unless its roll (sx, sy) is given. Returns where it all is at the end.
 */
export function runInMotion(
  project: Project,
  ball: SceneBall & { readonly vx: number; readonly vy: number },
  { sigma, kappa, length, rate }: Stretch,
  options: TrialOptions = {},
): { readonly ball: BallState; readonly pose: Pose } {
  const plan = compileTrial(project, routineOf([]), { drift: false, spread: false, ...options });
  loadPlan(plan);
  loadBalls(plan, 0, 0, [{ xMm: ball.x, yMm: ball.y }]);
  const { xMm, yMm, headingRad } = entryPose(project.zone, project.robot);
  plan.planner.plan(xMm, yMm, Math.cos(headingRad), Math.sin(headingRad), headingRad, sigma, kappa, length);
  profile.set(length, rate, AT_ONCE);
  startMove(plan.planner, 0, 0, 1);
  vx[0] = ball.vx;
  vy[0] = ball.vy;
  sx[0] = ball.sx ?? ball.vx;
  sy[0] = ball.sy ?? ball.vy;
  settleMode(0);
  awake[0] = 1;
  runMove(plan.planner, profile.durationS, { stepBegins() {}, stepEnded() {}, jammed() {} });
  return { ball: stateOf(0), pose: { xMm: robot.x, yMm: robot.y, headingRad: robot.heading } };
}

/** What a measure tends to as the engine's contact step goes to 0, its error being proportional to the step. */
export function inTheLimit(stepS: number, measure: (options: TrialOptions) => number): number {
  return 2 * measure({ contactStepS: stepS / 2 }) - measure({ contactStepS: stepS });
}
