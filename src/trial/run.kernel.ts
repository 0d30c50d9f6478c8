import type { Move } from "../model/routine.ts";
import type { PointMm } from "../model/zone.ts";
import type { ArmSwing } from "../motion/arms.ts";
import { setProfile } from "../motion/duration.ts";
import { motionOf } from "../motion/walker.ts";
import { sinCos } from "../num/elementary.ts";
import { SCRATCH } from "../num/slots.ts";
import { arms, setArms } from "./arms.kernel.ts";
import { freeze, move, profile, setRobot, startMove, timeOf } from "./clock.kernel.ts";
import { byRobot } from "./contact.kernel.ts";
import type { RealMotion } from "./drift.ts";
import { runMove } from "./engine.kernel.ts";
import { loadBalls, loadPlan } from "./load.kernel.ts";
import type { Pilot } from "./pilot.ts";
import type { TrialPlan } from "./plan.ts";
import type { Recorder } from "./recorder.ts";
import { carried, executed, hash, lines, resetResult, result, watcher } from "./result.kernel.ts";
import { robot } from "./robot.kernel.ts";
import { runSwing } from "./swing.kernel.ts";
import { isAwake } from "./wake.kernel.ts";

/**
 * One run from placement to rest, in this worker's world: opened, driven move by move, and ended. Between two moves it may be kept
 * and taken up again (world.kernel.ts).
 */

/** Longest time given to balls to come to rest once the run is over, s: with c = 0.005 a ball at 600 mm/s stops in 12 s. */
const SETTLE_S = 120;
/** From the bumper's contact until the robot has stopped pushing, s; common practice, no source. */
const BUMP_S = 0.1;

const real: RealMotion = { scale: 1, kappaExtra: 0 };
const trig = new Float64Array(SCRATCH);

function placeRobot(plan: TrialPlan): void {
  const { entry, drift } = plan;
  robot.x = entry.xMm + drift.startX;
  robot.y = entry.yMm + drift.startY;
  robot.heading = entry.headingRad + drift.startHeading;
  sinCos(robot.heading, trig);
  robot.s = trig[0]!;
  robot.c = trig[1]!;
  freeze();
}

/** Plans move m from where the robot is, with this trial's drift. */
function openMove(plan: TrialPlan, m: number, command: Move, t: number): void {
  const { sigma, kappa, length } = plan.pilot === null ? plan.motions[m]! : motionOf(command);
  plan.drift.openMove(m, command, sigma, real);
  setProfile(plan.project.robot.drive, command, profile);
  if (plan.gyro !== null && command.kind !== "wait" && command.kind !== "arms") {
    const turned = sigma === 0 ? kappa * length : command.kind === "arc" ? command.angleRad : 0;
    const wanted = plan.pilot === null ? plan.headings[m]! : plan.pilot.believedHeadingRad + turned;
    // A wall that squares the robot up decides the heading; on the way there it keeps the one it has.
    const kept = command.kind === "toWall" ? believedBefore(plan, m) : wanted;
    plan.gyro.steer(robot.heading, kept, sigma, kappa, length, t + profile.durationS, real);
  }
  const beside = plan.guide !== null && "beside" in command ? command.beside : undefined;
  // Beside a wall the path begins with no length, and is laid by what the robot reads on the way.
  const laid = beside === undefined ? length * real.scale : 0;
  const { x, y, c, s, heading } = robot;
  plan.planner.plan(x, y, c, s, heading, sigma, kappa + real.kappaExtra, laid);
  if (beside !== undefined)
    plan.guide!.lay(plan, beside, m, sigma, length, real, believedBefore(plan, m), t + profile.durationS);
}

/** Runs one trial to its end in this worker's world. `recorder`: null for none. */
export function run(
  plan: TrialPlan,
  seed: number,
  index: number,
  placement: readonly PointMm[],
  recorder: Recorder | null,
): void {
  openRun(plan, seed, index, placement, recorder);
  driveOn(plan, plan.pilot === null ? plan.routine.moves.length : Number.POSITIVE_INFINITY);
  endRun(plan);
}

/** Robot and balls are where the trial begins. */
export function openRun(
  plan: TrialPlan,
  seed: number,
  index: number,
  placement: readonly PointMm[],
  recorder: Recorder | null,
): void {
  loadPlan(plan);
  openArms(plan);
  loadBalls(plan, seed, index, placement);
  plan.drift.openTrial(seed, index);
  plan.gyro?.openTrial(seed, index, plan.drift.startHeading);
  plan.guide?.openTrial(seed, index);
  placeRobot(plan);
  resetResult(plan, recorder);
  plan.pilot?.open(seed, index);
}

/** Whether the time limit has come. */
export function isTimeUp(plan: TrialPlan): boolean {
  return result.timeS >= plan.project.rules.timeLimitS;
}

/** Drives on until `most` moves of the run are done, the pilot has no more, or the time is up. */
export function driveOn(plan: TrialPlan, most: number): void {
  const { pilot } = plan;
  const { moves } = plan.routine;
  const limit = plan.project.rules.timeLimitS;
  while (result.timeS < limit && result.moves < most) {
    const command = pilot === null ? moves[result.moves]! : nextOf(pilot, result.moves, limit - result.timeS);
    if (command === null) break;
    driveMove(plan, command, limit);
  }
}

/** The next move of the run, up to the time limit. */
function driveMove(plan: TrialPlan, command: Move, limit: number): void {
  const { pilot, planner, gyro } = plan;
  const { recorder } = watcher;
  const m = result.moves;
  const t = result.timeS;
  result.lastMove = m;
  openMove(plan, m, command, t);
  startMove(planner, m, t, real.scale);
  const whole = wholeS(plan, command);
  const duration = Math.min(whole, limit - t);
  watcher.jammedInMove = false;
  recorder?.moveBegins(t);
  if (planner.stalled && !(command.kind === "toWall" && planner.flush)) {
    result.stalls++;
    watcher.note("stall", t, -1);
  }
  if (command.kind === "arms" && plan.arms !== null) swingArms(plan, plan.arms, command, duration);
  else runMove(planner, duration, watcher);
  recorder?.moveEnds(duration);
  hash.mix(robot.x);
  hash.mix(robot.y);
  hash.mix(robot.heading);
  const endS = t + duration;
  result.timeS = endS;
  result.moves = m + 1;
  if (duration < whole) result.cut = true;
  pilot?.moveEnded(command, ranInto(plan, command));
  if (pilot !== null) gyro?.believe(pilot.headingFixRad);
  if (gyro !== null && command.kind === "toWall" && planner.flush) {
    gyro.set(robot.heading, believedAfter(plan, m), endS);
  }
}

/** The robot stands and everything comes to rest. At the time limit moves of the list may be left; a pilot is not asked for more. */
export function endRun(plan: TrialPlan): void {
  const isLeft = result.moves < plan.routine.moves.length || (plan.pilot !== null && result.moves > 0);
  if (isLeft && isTimeUp(plan)) result.cut = true;
  for (let i = 0; i < watcher.balls; i++) carried[i] = result.cut && byRobot[i] !== 0 ? 1 : 0;
  settle(plan, result.moves, result.timeS);
}

/** The arms swing as far as walls and balls let them; what can stop the robot afterwards goes by where they are. */
function swingArms(
  plan: TrialPlan,
  swings: ArmSwing,
  command: Extract<Move, { readonly kind: "arms" }>,
  durationS: number,
): void {
  const pose = { xMm: robot.x, yMm: robot.y, headingRad: robot.heading };
  const { toRad, blocked } = swings.after(command, pose, arms.angle);
  if (blocked) {
    result.stalls++;
    watcher.note("stall", move.startS, -1);
  }
  runSwing(plan.planner, swings.arms, toRad, durationS, watcher);
  plan.planner.around = swings.surroundings(arms.angle);
  hash.mix(arms.angle);
}

/** A run starts with open arms. */
function openArms(plan: TrialPlan): void {
  if (plan.arms === null) return;
  const { openAngleRad } = plan.arms.arms;
  setArms(plan.arms.arms, openAngleRad);
  plan.planner.around = plan.arms.surroundings(openAngleRad);
}

/** The pilot's next move; its line is kept. */
function nextOf(pilot: Pilot, m: number, leftS: number): Move | null {
  const command = pilot.next(leftS);
  if (command === null) return null;
  executed.length = lines.length = m;
  executed.push(command.move);
  lines.push(command.line);
  return command.move;
}

/** Believed heading after a move of the list, or now for a pilot that has been told of it. */
function believedAfter(plan: TrialPlan, m: number): number {
  return plan.pilot === null ? plan.headings[m]! : plan.pilot.believedHeadingRad;
}

function believedBefore(plan: TrialPlan, m: number): number {
  if (plan.pilot !== null) return plan.pilot.believedHeadingRad;
  return m === 0 ? plan.entry.headingRad : plan.headings[m - 1]!;
}

/** With which side the move just planned runs into something solid. */
function ranInto(plan: TrialPlan, command: Move): "front" | "back" | null {
  if (!plan.planner.touched || !("distanceMm" in command)) return null;
  return command.distanceMm < 0 ? "back" : "front";
}

/** Seconds of the move that was started: a bumper ends a drive to the wall as soon as the robot is pressed against it. */
function wholeS(plan: TrialPlan, command: Move): number {
  const { planner, bumps } = plan;
  if (command.kind !== "toWall" || !planner.stalled) return profile.durationS;
  const side = ranInto(plan, command);
  if (side === null || !bumps[side]) return profile.durationS;
  return Math.min(profile.durationS, timeOf(planner.stopQ) + BUMP_S);
}

/** The run is over; the robot stands; whatever still rolls comes to rest. */
function settle(plan: TrialPlan, moves: number, t: number): void {
  const { recorder } = watcher;
  profile.hold(SETTLE_S);
  plan.planner.count = 0;
  plan.planner.stopQ = 0;
  startMove(plan.planner, moves, t, 1);
  freeze();
  recorder?.moveBegins(t);
  setRobot(plan.planner, 0);
  if (isAwake()) runMove(plan.planner, SETTLE_S, watcher);
  recorder?.frame(Math.max(t, result.lastStirS));
  watcher.note("end", t, -1);
}

/** Last second at which a ball moved, or the end of the routine. */
export function restS(): number {
  return Math.max(result.timeS, result.lastStirS);
}
