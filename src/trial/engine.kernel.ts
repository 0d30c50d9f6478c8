import type { PathTracer } from "../motion/path.kernel.ts";
import { SCRATCH } from "../num/slots.ts";
import { bx, by, halt, inHand, rides, roam } from "./balls.kernel.ts";
import { freeze, move, progressAt, setArrival, setRobot } from "./clock.kernel.ts";
import { clearContacts, isTooDeep, resolve, resolveOn, stirred } from "./contact.kernel.ts";
import { span } from "./impulse.kernel.ts";
import { findJam, inJam } from "./jam.kernel.ts";
import { keepBalls, putBalls } from "./kept.kernel.ts";
import { beginRide, bendLoss, endRide } from "./ride.kernel.ts";
import { robot, shape } from "./robot.kernel.ts";
import { chooseStep, contact, MIN_STEP_S } from "./stepLength.kernel.ts";
import { awake, ballsInPlay, fromX, fromY, isAwake, openMove, tidy, touchQ } from "./wake.kernel.ts";
import { onSlope, roamSlope } from "./wedge.kernel.ts";

/**
 * The stepper: jumps as far as nothing new can touch (stepLength.kernel), moves robot and balls on, puts right what overlaps. A step
 * that ends in a jam is made again half as long, until the robot stops close before it.
 */

/** Called before and after each step, with the second of the move; may record, count and judge. */
export interface Watcher {
  stepBegins(t: number): void;
  stepEnded(t: number): void;
  jammed(t: number): void;
}

/** Runs the started move for `durationS` seconds. */
export function runMove(planner: PathTracer, durationS: number, watcher: Watcher, fromS = 0): void {
  let t = fromS;
  wary[0] = Number.POSITIVE_INFINITY;
  setRobot(planner, fromS);
  openMove();
  while (t < durationS) {
    const left = durationS - t;
    const chosen = Math.min(chooseStep(t, left), left, wary[0]!);
    watcher.stepBegins(t);
    const h = step(planner, t, chosen, watcher);
    t = h === left ? durationS : t + h;
    watcher.stepEnded(t);
  }
}

/** The robot stops at most so far before the place where it jams, mm. */
const JAM_WAY_MM = 0.3;
/** Longest step after one that was made again, s: half of that, since the jam is not far, then twice as long each time that nothing jams. */
const wary = new Float64Array(SCRATCH);

/** One step from second t of the move: of `chosen` seconds, or less where it would end in a jam. Returns its length, s. */
function step(planner: PathTracer, t: number, chosen: number, watcher: Watcher): number {
  if (!isAwake()) {
    setRobot(planner, t + chosen);
    return chosen;
  }
  const balls = ballsInPlay();
  const q0 = progressAt(t);
  const { sigma, kappa } = robot;
  const perQ = (sigma < 0 ? -sigma : sigma) + (kappa < 0 ? -kappa : kappa) * shape.farthest;
  for (let i = 0; i < balls; i++) {
    fromX[i] = bx[i]!;
    fromY[i] = by[i]!;
  }
  // A step in which nothing can touch is not made again.
  if (chosen >= contact[0]!) keepBalls(balls);
  let h = chosen;
  let jam = advance(planner, t, h, q0);
  while (jam !== FREELY && h > MIN_STEP_S && (progressAt(t + h) - q0) * perQ > JAM_WAY_MM) {
    putBalls(balls);
    setRobot(planner, t);
    h *= 0.5;
    jam = advance(planner, t, h, q0);
  }
  wary[0] = jam !== FREELY ? Number.POSITIVE_INFINITY : h < chosen ? 0.5 * h : 2 * wary[0]!;
  if (jam !== FREELY) takeBack(planner, t + h, q0, jam === TOO_DEEP, watcher);
  for (let i = 0; i < balls; i++) tidy(i, t + h);
  return h;
}

/** How a step ended: nothing jams, a ball is held, or is left too deep. */
const FREELY = 0;
const HELD = 1;
const TOO_DEEP = 2;

/** Moves everything on by h seconds from second t of the move, where the progress is q0. */
function advance(planner: PathTracer, t: number, h: number, q0: number): number {
  const balls = ballsInPlay();
  for (let i = 0; i < balls; i++) if (rides[i] === 1) beginRide(i, h);
  const { sigma, kappa, heading } = robot;
  setRobot(planner, t + h);
  const sigmaOn = robot.sigma;
  const kappaOn = robot.kappa;
  const rateOn = robot.rate;
  setArrival(t + h, q0, sigma, kappa);
  span[0] = h;
  span[1] = 0.5 * (robot.heading - heading);
  for (let i = 0; i < balls; i++) {
    if (awake[i] === 0) continue;
    if (rides[i] === 1) endRide(i, h);
    else if (onSlope(i)) roamSlope(i, h);
    else roam(i, h);
    if (inHand[i] === 1) bendLoss(i, h, span[1]!);
  }
  clearContacts(balls);
  // Nothing can have come into touch: nothing to put right.
  const quiet = h < contact[0]!;
  let deepest = quiet ? 0 : resolve(balls);
  const pushing = !quiet && (robot.rate > 0 || progressAt(t + h) > q0);
  const jam = pushing && findJam(balls);
  if (!jam && isTooDeep(deepest)) deepest = resolveOn(balls);
  robot.sigma = sigmaOn;
  robot.kappa = kappaOn;
  robot.rate = rateOn;
  return pushing && isTooDeep(deepest) ? TOO_DEEP : jam ? HELD : FREELY;
}

/** Undoes the robot's advance: it makes no more progress in this move; jammed balls lie still where they were. */
function takeBack(planner: PathTracer, t: number, q0: number, everything: boolean, watcher: Watcher): void {
  const balls = ballsInPlay();
  move.stopQ = q0;
  setRobot(planner, t);
  freeze();
  for (let i = 0; i < balls; i++) {
    if (inJam[i] === 0 && !(everything && stirred[i] === 1)) continue;
    bx[i] = fromX[i]!;
    by[i] = fromY[i]!;
    halt(i);
    inJam[i] = 1;
  }
  watcher.jammed(t);
  for (let i = 0; i < balls; i++) stirred[i] = 0;
  resolve(balls);
  for (let i = 0; i < balls; i++) if (awake[i] === 0) touchQ[i] = Number.POSITIVE_INFINITY;
}
