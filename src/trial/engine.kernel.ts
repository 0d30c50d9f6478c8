import type { PathTracer } from "../motion/path.kernel.ts";
import { SCRATCH, SLOTS } from "../num/slots.ts";
import {
  bx,
  by,
  halt,
  inHand,
  mode,
  OUT,
  phaseOf,
  REST,
  radius,
  rides,
  roam,
  rollDecel,
  sx,
  sy,
  vx,
  vy,
} from "./balls.kernel.ts";
import {
  freeze,
  move,
  phaseEnd,
  pieceEnd,
  progressAt,
  setArrival,
  setRobot,
  timeOf,
} from "./clock.kernel.ts";
import {
  byRobot,
  clearContacts,
  isTooDeep,
  pairBits,
  resolve,
  resolveOn,
  stands,
  stirred,
} from "./contact.kernel.ts";
import { touchAt } from "./firstTouch.kernel.ts";
import { span } from "./impulse.kernel.ts";
import { findJam, inJam } from "./jam.kernel.ts";
import { keepBalls, putBalls } from "./kept.kernel.ts";
import { pairTime } from "./pairs.kernel.ts";
import { beginRide, bendLoss, endRide, rideTime } from "./ride.kernel.ts";
import { FREE, found, hitTime, NEAR, partAccel, probe, robot, SAFE, safeFor, shape } from "./robot.kernel.ts";
import { ANSWER, ASK_LIMIT, ASK_PUSHED, ASK_STEP, ask, isThroughDoor, wallTime } from "./walls.kernel.ts";
import {
  crossEdge,
  depthOf,
  edgeDepth,
  HAND_LIP_STEP_S,
  HAND_SLOPE_STEP_S,
  holds,
  isHeld,
  LIP_STEP_S,
  lipBlocks,
  onSlope,
  onWedge,
  overLip,
  pullAt,
  roamSlope,
  SLOPE_STEP_S,
  slopeAt,
  wedge,
} from "./wedge.kernel.ts";

/**
 * The stepper. Where nothing can touch it jumps: to the end of the move, to the touch of a resting ball (found ahead in
 * units of progress), to the end of a ball's phase, to a wall or the wedge's edge (exact roots). Only lasting contact is
 * stepped: the robot advances, balls move freely, the sweeps put right what overlaps. A step that ends in a jam is made again
 * half as long, until the robot stops close before it.
 * A little over 300 lines: choosing a step and making it share the state of one move.
 */

/** Steps shorter than this are stretched to it, s: at top speed 0.05 mm, the overlap that the sweeps put right anyway. */
const MIN_STEP_S = 1e-4;

export const settings = {
  /** Step while a ball is squeezed, carried through a turn or against other balls, s. Chosen in tests/bench convergence. */
  contactStepS: 1 / 30,
  /** Step while balls only ride before a face that moves straight, s. */
  rideStepS: 1 / 10,
};

/** 1: the ball moves or is in lasting contact; 0: it rests, and the robot's first touch is known. */
export const awake = new Uint8Array(SLOTS);
/** Progress of this move at which the robot touches a resting ball. */
const touchQ = new Float64Array(SLOTS);
export const fromX = new Float64Array(SLOTS);
export const fromY = new Float64Array(SLOTS);

/** Called before and after each step, with the second of the move; may record, count and judge. */
export interface Watcher {
  stepBegins(t: number): void;
  stepEnded(t: number): void;
  jammed(t: number): void;
}

let balls = 0;
/** Bit i: the robot touches ball i. */
let pushers = 0;

export function useBalls(n: number): void {
  balls = n;
}

/** Whether anything still moves. */
export function isAwake(): boolean {
  for (let i = 0; i < balls; i++) if (awake[i] === 1) return true;
  return false;
}

export function ballsInPlay(): number {
  return balls;
}

/** A move begins: which balls are awake, and when the robot will touch the others. */
export function openMove(): void {
  for (let i = 0; i < balls; i++) {
    if (mode[i] === REST && onSlope(i) && !holds(i, slopeAt(i, depthOf(i)))) awake[i] = 1;
    if (awake[i] === 0) touchQ[i] = mode[i] === OUT ? Number.POSITIVE_INFINITY : firstTouch(i, 0);
  }
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

function firstTouch(i: number, q: number): number {
  return touchAt(i, move.pieces, move.count, q, move.stopQ);
}

export function chooseStep(t: number, left: number): number {
  const q = progressAt(t);
  contact[0] = Number.POSITIVE_INFINITY;
  let h = left;
  let moving = false;
  for (let i = 0; i < balls; i++) {
    if (awake[i] === 1) {
      moving = true;
      continue;
    }
    if (touchQ[i]! > move.stopQ) continue;
    const wait = timeOf(touchQ[i]!) - t;
    if (wait > 0) {
      h = Math.min(h, wait);
      contact[0] = Math.min(contact[0]!, wait);
    } else {
      awake[i] = 1;
      moving = true;
      contact[0] = 0;
    }
  }
  for (let i = 0; i < balls; i++) rides[i] = 0;
  if (!moving) return h;
  if (q < move.stopQ) {
    h = Math.min(h, phaseEnd(t) - t);
    const next = Math.min(pieceEnd(q), move.stopQ);
    if (next < Number.POSITIVE_INFINITY) {
      const until = timeOf(next) - t;
      if (until > 0) h = Math.min(h, until);
    }
  }
  let lasting = false;
  let squeezed = false;
  pushers = 0;
  for (let i = 0; i < balls; i++) if (byRobot[i] !== 0) pushers |= 1 << i;
  let lag = settings.rideStepS;
  for (let i = 0; i < balls; i++) {
    if (awake[i] === 0) continue;
    contact[1] = h;
    ballTime(i);
    h = contact[1]!;
    if (found.lasting && rides[i] === 0) {
      lasting = true;
      lag = Math.min(lag, (LAG * Math.sqrt(vx[i]! * vx[i]! + vy[i]! * vy[i]!)) / rollDecel[i]!);
      if (stands[i]! > 0 || pairBits[i] !== 0) squeezed = true;
    }
  }
  if (lasting) {
    h = Math.min(h, squeezed || robot.accel < 0 ? settings.contactStepS : carryStep(lag));
  }
  return h < MIN_STEP_S ? MIN_STEP_S : h;
}

/** Turning as fast as this, rad/s, the robot takes the contact step; slower, a step in which it turns as far, up to the ride step. */
const FAST_TURN = 5;
/** A carried ball is to lose no more than this share of its speed to the floor before the face makes up for it, unless the contact step is shorter. */
const LAG = 0.1;

/** Step while the robot carries a ball at an even pace or speeding up: what it does to it in a turn goes by the angle. */
function carryStep(lag: number): number {
  const turn = robot.rate > 0 ? Math.abs(robot.kappa) * robot.top : 0;
  const step = Math.min(lag, (settings.contactStepS * FAST_TURN) / (turn + 1e-9));
  return step > settings.contactStepS ? step : settings.contactStepS;
}

/** What the last chooseStep found: the earliest time at which anything may touch, s; 0 while anything stays in touch. Then the step as far as it has been chosen, s. */
const contact = new Float64Array(SCRATCH);
const own = new Float64Array(SCRATCH);

/** Shortens the step to the time within which awake ball i meets nothing new; sets found.lasting if it stays in touch with the robot. */
function ballTime(i: number): void {
  const limit = contact[1]!;
  phaseOf(i, own);
  const ride = rideTime(i, settings.rideStepS);
  if (ride > 0) own[0] = own[1] = 0;
  const pulled = onSlope(i);
  if (pulled) {
    const pull = pullAt(i, depthOf(i));
    own[0]! -= pull * wedge.nx;
    own[1]! -= pull * wedge.ny;
  }
  const ax = own[0]!;
  const ay = own[1]!;
  // On a slope the pull goes on when the free phase has ended, again and again for a ball that creeps: the slope step looks after it.
  const endS = own[2]! > 0 && !pulled ? own[2]! : Number.POSITIVE_INFINITY;
  const brake = Math.sqrt(ax * ax + ay * ay);
  const dx = bx[i]! - robot.x;
  const dy = by[i]! - robot.y;
  const { c, s } = robot;
  probe[0] = c * dx + s * dy;
  probe[1] = -s * dx + c * dy;
  probe[2] = c * vx[i]! + s * vy[i]!;
  probe[3] = -s * vx[i]! + c * vy[i]!;
  probe[4] = c * ax + s * ay;
  probe[5] = -s * ax + c * ay;
  probe[6] = radius[i]!;
  const touching = byRobot[i] !== 0 || (pairBits[i]! & pushers) !== 0;
  // A ball in hand, or against one that the robot touches, is looked at again after a ride step at the latest; a free one at the end of its phase.
  probe[7] = Math.min(limit, ride > 0 ? ride : touching ? settings.rideStepS : endS);
  probe[8] = NEAR;
  probe[FREE] = !touching && !(pulled && overLip(depthOf(i))) ? 1 : 0;
  found.closing = false;
  safeFor();
  let meets = probe[SAFE]!;
  const lasting = found.lasting;
  rides[i] = ride > 0 && lasting ? 1 : 0;
  // At its own limit nothing was found to touch.
  if (lasting) contact[0] = 0;
  let h = Math.min(limit, meets);
  if (meets >= probe[7]!) meets = Number.POSITIVE_INFINITY;
  // It changes between sliding and rolling all the time: free motion takes that in its stride.
  if (!lasting && !touching) h = Math.min(h, endS);
  const pushed = lasting || touching ? brake + partAccel() + 1e-3 : 0;
  ask[0] = ax;
  ask[1] = ay;
  ask[ASK_PUSHED] = pushed;
  ask[ASK_LIMIT] = h;
  ask[ASK_STEP] = settings.contactStepS;
  wallTime(i);
  meets = Math.min(meets, ask[ANSWER]!);
  wedgeTime(i);
  h = Math.min(h, meets, ask[ANSWER]!);
  for (let j = 0; j < balls; j++) {
    if (j === i || mode[j] === OUT || (awake[j] === 1 && j < i)) continue;
    ask[ASK_LIMIT] = h;
    pairTime(i, j);
    const t = ask[ANSWER]!;
    if (t < meets) meets = t;
    if (t < h) h = t;
  }
  // What closes on something it touches has to be put right after any step.
  if (found.closing) meets = 0;
  if (meets < contact[0]!) contact[0] = meets;
  found.lasting = lasting;
  inHand[i] = lasting ? 1 : 0;
  contact[1] = h;
}

/** Time to the wedge's edge, to the line that counts, and on a slope the slope step; question and answer in `ask`. */
function wedgeTime(i: number): void {
  ask[ANSWER] = Number.POSITIVE_INFINITY;
  const d = depthOf(i);
  const rate = vx[i]! * wedge.nx + vy[i]! * wedge.ny;
  const bend = ask[0]! * wedge.nx + ask[1]! * wedge.ny;
  if (onWedge[i] === 0) {
    if (lipBlocks[i] === 1) return;
    const gap = edgeDepth[i]! - d;
    if (gap > 0) ask[ANSWER] = hitTime(gap, -rate, -bend);
    return;
  }
  const pull = wedge.raised ? pullAt(i, d) : 0;
  let h = Number.POSITIVE_INFINITY;
  if (pull !== 0) {
    // What may touch is told from even pull; over a lip it changes.
    if (overLip(d)) contact[0] = 0;
    // Where a face begins and ends the pull changes at once: a step ends there.
    h = Math.min(lineTime(d - edgeDepth[i]!, rate, bend), lineTime(d, rate, bend));
    h = Math.min(h, lineTime(d - wedge.run, rate, bend)) + 1e-9;
    // In the robot's hands the face sets the pace, not the slope.
    const lip = overLip(d);
    const step = found.lasting
      ? lip
        ? HAND_LIP_STEP_S
        : HAND_SLOPE_STEP_S
      : lip
        ? LIP_STEP_S
        : SLOPE_STEP_S;
    ask[ANSWER] = h < step ? h : step;
    return;
  }
  // Inside: the way out over the edge, down from the level part, or over the line at which it counts as home.
  h = Math.min(h, lineTime(d - edgeDepth[i]!, rate, bend));
  if (wedge.raised) h = Math.min(h, lineTime(d - wedge.run, rate, bend));
  ask[ANSWER] = Math.min(h, lineTime(d - (wedge.wholly ? radius[i]! : 0), rate, bend)) + 1e-9;
}

/** Time until a depth difference `gap` closes, from either side. */
function lineTime(gap: number, rate: number, bend: number): number {
  if (gap > 1e-9) return hitTime(gap, rate, bend);
  return gap < -1e-9 ? hitTime(-gap, -rate, -bend) : Number.POSITIVE_INFINITY;
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
  const q0 = progressAt(t);
  const { sigma, kappa } = robot;
  const perQ = (sigma < 0 ? -sigma : sigma) + (kappa < 0 ? -kappa : kappa) * shape.farthest;
  for (let i = 0; i < balls; i++) {
    fromX[i] = bx[i]!;
    fromY[i] = by[i]!;
  }
  keepBalls(balls);
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
  if (pushing && !jam && isTooDeep(deepest)) deepest = resolveOn(balls);
  robot.sigma = sigmaOn;
  robot.kappa = kappaOn;
  robot.rate = rateOn;
  return pushing && isTooDeep(deepest) ? TOO_DEEP : jam ? HELD : FREELY;
}

/** Undoes the robot's advance: it makes no more progress in this move; jammed balls lie still where they were. */
function takeBack(planner: PathTracer, t: number, q0: number, everything: boolean, watcher: Watcher): void {
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

/** Decides whether ball i is still awake, and if not, when the robot will touch it. */
export function tidy(i: number, t: number): void {
  if (mode[i] === OUT || (awake[i] === 0 && stirred[i] === 0)) return;
  // The watcher looks at every ball that took part in this step.
  stirred[i] = 1;
  crossEdge(i);
  if (isThroughDoor(i)) {
    halt(i);
    mode[i] = OUT;
    awake[i] = 0;
    // Nothing touches it again: an old touch would wake it up at every step to come.
    touchQ[i] = Number.POSITIVE_INFINITY;
    return;
  }
  // On a slope a wall, another ball or a robot that stands can hold a ball; the next move looks at it anew.
  const held = stands[i]! > 0 || pairBits[i] !== 0 || byRobot[i] !== 0;
  const pushed = byRobot[i] !== 0 && robot.rate > 0;
  if (mode[i] !== REST && held && !pushed && onSlope(i) && isHeld(fromX[i]!, fromY[i]!, i, span[0]!)) halt(i);
  if (mode[i] !== REST) {
    awake[i] = 1;
    return;
  }
  sx[i] = sy[i] = 0;
  const q = progressAt(t);
  touchQ[i] = q < move.stopQ ? firstTouch(i, q) : Number.POSITIVE_INFINITY;
  awake[i] = touchQ[i]! <= q + 1e-9 ? 1 : 0;
  if (awake[i] === 0 && !held && onSlope(i) && !holds(i, slopeAt(i, depthOf(i)))) awake[i] = 1;
}
