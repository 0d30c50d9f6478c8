import { SCRATCH } from "../num/slots.ts";
import { bx, by, inHand, mode, OUT, phaseOf, radius, rides, rollDecel, vx, vy } from "./balls.kernel.ts";
import { move, phaseEnd, pieceEnd, progressAt, timeOf } from "./clock.kernel.ts";
import { byRobot, pairBits, stands } from "./contact.kernel.ts";
import { pairTime } from "./pairs.kernel.ts";
import { rideTime } from "./ride.kernel.ts";
import { FREE, found, hitTime, NEAR, partAccel, probe, robot, SAFE, safeFor } from "./robot.kernel.ts";
import { awake, ballsInPlay, touchQ } from "./wake.kernel.ts";
import { ANSWER, ASK_LIMIT, ASK_PUSHED, ASK_STEP, ask, wallTime } from "./walls.kernel.ts";
import {
  addPull,
  depthOf,
  edgeDepth,
  HAND_LIP_STEP_S,
  HAND_SLOPE_STEP_S,
  LIP_STEP_S,
  lipBlocks,
  onSlope,
  onWedge,
  overLip,
  pullAt,
  SLOPE_STEP_S,
  wedge,
} from "./wedge.kernel.ts";

/**
 * How long a step may be: until anything new can touch, and short where contact lasts. Where nothing can touch that is to the end of
 * the move, to the touch of a resting ball (found ahead in units of progress), to the end of a ball's phase, to a wall or the
 * wedge's edge (exact roots).
 */

/** Steps shorter than this are stretched to it, s: at top speed 0.05 mm, the overlap that the sweeps put right anyway. */
export const MIN_STEP_S = 1e-4;

export const settings = {
  /** Step while a ball is squeezed, carried through a turn or against other balls, s. Chosen in tests/bench convergence. */
  contactStepS: 1 / 30,
  /** Step while balls only ride before a face that moves straight, s. */
  rideStepS: 1 / 10,
};

/** Bit i: the robot touches ball i. */
let pushers = 0;

export function chooseStep(t: number, left: number): number {
  const balls = ballsInPlay();
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
export const contact = new Float64Array(SCRATCH);
const own = new Float64Array(SCRATCH);

/** Shortens the step to the time within which awake ball i meets nothing new; sets found.lasting if it stays in touch with the robot. */
function ballTime(i: number): void {
  const balls = ballsInPlay();
  const limit = contact[1]!;
  phaseOf(i, own);
  const ride = rideTime(i, settings.rideStepS);
  if (ride > 0) own[0] = own[1] = 0;
  const pulled = onSlope(i);
  if (pulled) addPull(i, own);
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
    h = Math.min(lineTime(d - edgeDepth[i]!, rate, bend), footTime(d, rate, bend));
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

/** Time until a ball on a slope crosses its foot: from the foot itself, until the pull has brought it back there. */
function footTime(d: number, rate: number, bend: number): number {
  if (d > 1e-9 || d < -1e-9) return lineTime(d, rate, bend);
  if (rate <= 0) return 0;
  return bend < 0 ? (-2 * rate) / bend : Number.POSITIVE_INFINITY;
}

/** Time until a depth difference `gap` closes, from either side. */
function lineTime(gap: number, rate: number, bend: number): number {
  if (gap > 1e-9) return hitTime(gap, rate, bend);
  return gap < -1e-9 ? hitTime(-gap, -rate, -bend) : Number.POSITIVE_INFINITY;
}
