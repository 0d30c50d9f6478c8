import type { Move } from "../model/routine.ts";
import type { PointMm } from "../model/zone.ts";
import type { ArmSwing } from "../motion/arms.ts";
import { setProfile } from "../motion/duration.ts";
import type { PathTracer } from "../motion/path.kernel.ts";
import { motionOf } from "../motion/walker.ts";
import { sinCos } from "../num/elementary.ts";
import { TrajectoryHash } from "../num/hash.ts";
import { SCRATCH, SLOTS } from "../num/slots.ts";
import { arms, setArms } from "./arms.kernel.ts";
import { bx, by, mode, OUT } from "./balls.kernel.ts";
import { freeze, move, profile, setRobot, startMove, timeOf } from "./clock.kernel.ts";
import { byRobot, stirred } from "./contact.kernel.ts";
import type { RealMotion } from "./drift.ts";
import { isAwake, runMove, type Watcher } from "./engine.kernel.ts";
import { inJam } from "./jam.kernel.ts";
import { loadBalls, loadPlan } from "./load.kernel.ts";
import type { Pilot } from "./pilot.ts";
import type { TrialPlan } from "./plan.ts";
import type { Recorder } from "./recorder.ts";
import type { RunEventKind } from "./recording.ts";
import { robot } from "./robot.kernel.ts";
import { runSwing } from "./swing.kernel.ts";
import { isHome } from "./wedge.kernel.ts";

/**
 * One run from placement to rest, in this worker's world.
 * Over 300 lines: what is remembered of each ball, and the loop that changes it, share module-level arrays.
 */

/** Longest time given to balls to come to rest once the run is over, s: with c = 0.005 a ball at 600 mm/s stops in 12 s. */
const SETTLE_S = 120;
/** From the bumper's contact until the robot has stopped pushing, s; common practice, no source. */
const BUMP_S = 0.1;

/**
 * What the run in this worker's world came to. Read right after `run`.
 */
export const result = {
  timeS: 0,
  cut: false,
  /** Index of the last move that was begun; −1 for none. */
  lastMove: -1,
  /** Moves begun. */
  moves: 0,
  jams: 0,
  stalls: 0,
};
export const touched = new Uint8Array(SLOTS);
/** 1: counts as delivered now. */
export const home = new Uint8Array(SLOTS);
/** Second at which it last came home. */
export const homeAtS = new Float64Array(SLOTS);
/** 1: was home once. */
export const wasHome = new Uint8Array(SLOTS);
/** 1: was in a jam; where. */
export const wasJammed = new Uint8Array(SLOTS);
export const jamX = new Float64Array(SLOTS);
export const jamY = new Float64Array(SLOTS);
/** Second and move of what happened to a ball last; read only where it did happen (touched, wasHome, wasJammed, OUT). */
export const touchS = new Float64Array(SLOTS);
export const touchMove = new Int16Array(SLOTS);
export const leftS = new Float64Array(SLOTS);
export const leftMove = new Int16Array(SLOTS);
export const jamS = new Float64Array(SLOTS);
export const jamMove = new Int16Array(SLOTS);
/** 1: the robot touched it when the time limit cut the routine short. */
export const carried = new Uint8Array(SLOTS);
/** What a pilot had driven, and the lines of its program; as long as `result.moves`. Empty for a list of moves. */
export const executed: Move[] = [];
export const lines: number[] = [];
export const hash = new TrajectoryHash();

const real: RealMotion = { scale: 1, kappaExtra: 0 };
const trig = new Float64Array(SCRATCH);

/** Follows a run step by step: what was touched, what came home, the hash, and the recording if one is wanted. */
class RunWatcher implements Watcher {
  balls = 0;
  recorder: Recorder | null = null;
  pilot: Pilot | null = null;
  planner: PathTracer | null = null;
  jammedInMove = false;
  lastStirS = 0;

  stepBegins(t: number): void {
    if (this.recorder !== null) this.recorder.frame(move.startS + t);
    this.pilot?.stepBegins(t);
  }

  stepEnded(t: number): void {
    const now = move.startS + t;
    if (this.pilot !== null) this.pilot.stepEnded(this.planner!, t);
    for (let i = 0; i < this.balls; i++) {
      if (stirred[i] === 0) continue;
      hash.mix(bx[i]!);
      hash.mix(by[i]!);
      this.lastStirS = now;
      stirred[i] = 0;
      if (byRobot[i] !== 0) {
        touchS[i] = now;
        touchMove[i] = move.index;
        if (touched[i] === 0) {
          touched[i] = 1;
          this.note("touched", now, i);
        }
      }
      if (mode[i] === OUT) {
        this.leaves(i, now);
        this.note("rolled-out", now, i);
      }
      const isIn = mode[i] !== OUT && isHome(i) ? 1 : 0;
      if (isIn === home[i]) continue;
      home[i] = isIn;
      if (isIn === 1) {
        wasHome[i] = 1;
        homeAtS[i] = now;
      } else this.leaves(i, now);
      this.note(isIn === 1 ? "on-wedge" : "off-wedge", now, i);
    }
  }

  jammed(t: number): void {
    if (!this.jammedInMove) result.jams++;
    this.jammedInMove = true;
    for (let i = 0; i < this.balls; i++) {
      if (inJam[i] === 0) continue;
      if (byRobot[i] !== 0 || touched[i] === 1) touched[i] = 1;
      wasJammed[i] = 1;
      jamX[i] = bx[i]!;
      jamY[i] = by[i]!;
      jamS[i] = touchS[i] = move.startS + t;
      jamMove[i] = touchMove[i] = move.index;
      this.note("jam", move.startS + t, i);
    }
  }

  /** A ball rolls off the wedge or out of the zone. */
  private leaves(i: number, now: number): void {
    leftS[i] = now;
    leftMove[i] = move.index;
  }

  note(kind: RunEventKind, timeS: number, ball: number): void {
    if (this.recorder === null) return;
    const xMm = ball < 0 ? robot.x : bx[ball]!;
    const yMm = ball < 0 ? robot.y : by[ball]!;
    this.recorder.event({ kind, timeS, ball, xMm, yMm, move: move.index });
  }
}

const watcher = new RunWatcher();

function reset(plan: TrialPlan, recorder: Recorder | null): void {
  watcher.balls = plan.kinds.length;
  watcher.recorder = recorder;
  watcher.lastStirS = 0;
  hash.reset();
  result.timeS = 0;
  result.cut = false;
  result.lastMove = -1;
  result.jams = result.stalls = result.moves = 0;
  executed.length = lines.length = 0;
  watcher.pilot = plan.pilot;
  watcher.planner = plan.planner;
  for (let i = 0; i < plan.kinds.length; i++) {
    touched[i] = wasJammed[i] = carried[i] = 0;
    home[i] = wasHome[i] = isHome(i) ? 1 : 0;
    homeAtS[i] = 0;
  }
  recorder?.begin();
}

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
  loadPlan(plan);
  openArms(plan);
  loadBalls(plan, seed, index, placement);
  plan.drift.openTrial(seed, index);
  plan.gyro?.openTrial(seed, index, plan.drift.startHeading);
  plan.guide?.openTrial(seed, index);
  placeRobot(plan);
  reset(plan, recorder);
  const { pilot } = plan;
  const limit = plan.project.rules.timeLimitS;
  const { moves } = plan.routine;
  let t = 0;
  result.cut = limit <= 0 && moves.length > 0;
  pilot?.open(seed, index);
  let m = 0;
  for (; t < limit; m++) {
    const command = pilot === null ? (m < moves.length ? moves[m]! : null) : nextOf(pilot, m, limit - t);
    if (command === null) break;
    result.lastMove = m;
    openMove(plan, m, command, t);
    startMove(plan.planner, m, t, real.scale);
    const whole = wholeS(plan, command);
    const duration = Math.min(whole, limit - t);
    watcher.jammedInMove = false;
    recorder?.moveBegins(t);
    if (plan.planner.stalled && !(command.kind === "toWall" && plan.planner.flush)) {
      result.stalls++;
      watcher.note("stall", t, -1);
    }
    if (command.kind === "arms" && plan.arms !== null) swingArms(plan, plan.arms, command, duration);
    else runMove(plan.planner, duration, watcher);
    recorder?.moveEnds(duration);
    hash.mix(robot.x);
    hash.mix(robot.y);
    hash.mix(robot.heading);
    t += duration;
    if (duration < whole || (t >= limit && (pilot !== null || m < moves.length - 1))) result.cut = true;
    pilot?.moveEnded(command, ranInto(plan, command));
    if (pilot !== null) plan.gyro?.believe(pilot.headingFixRad);
    if (plan.gyro !== null && command.kind === "toWall" && plan.planner.flush) {
      plan.gyro.set(robot.heading, believedAfter(plan, m), t);
    }
  }
  result.timeS = t;
  result.moves = m;
  for (let i = 0; i < watcher.balls; i++) carried[i] = result.cut && byRobot[i] !== 0 ? 1 : 0;
  settle(plan, m, t);
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
  recorder?.frame(Math.max(t, watcher.lastStirS));
  watcher.note("end", t, -1);
}

/** Last second at which a ball moved, or the end of the routine. */
export function restS(): number {
  return Math.max(result.timeS, watcher.lastStirS);
}
