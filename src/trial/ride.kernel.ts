import { SCRATCH } from "../num/slots.ts";
import { bx, by, inHand, mode, ROLLING, rides, roam, rollDecel, sx, sy, vx, vy } from "./balls.kernel.ts";
import { byRobot, holdNx, holdNy, pairBits, stands } from "./contact.kernel.ts";
import { robot } from "./robot.kernel.ts";
import { onSlope } from "./wedge.kernel.ts";

/**
 * A ball that rolls before a face which goes straight on at an even pace stays where it is in the robot's frame, but for a
 * slow slide along the face. Such a ride may be one long step: the ball's place is carried along with the face, its
 * velocity runs down freely as in any step, and the push of the face, which grows with the length of the step, makes up for it.
 */

/** How far a ball may slide along the face in one step of a ride, mm: friction would change that slide by a tenth or so. */
const SLIDE_MM = 1;
/** How far a slight curve of the way may push it aside in one step, mm. */
const ASIDE_MM = 0.1;
/** A ball that closes on its face or parts from it faster than this does not ride, mm/s. */
const SETTLED = 0.5;
/** A ride's step is at most this many ride steps long. */
const LONGEST = 10;
/** The face must look ahead at least this much: cosine of its normal to the heading. */
const AHEAD = 0.5;

/** Where a riding ball will be in the robot's frame. */
const toX = new Float64Array(rides.length);
const toY = new Float64Array(rides.length);
/** Velocity along the face of the ball last asked for, mm/s. */
const along = new Float64Array(SCRATCH);

/** Seconds for which ball i may ride in one step; 0 if it does not ride, or not for longer than a ride step. */
export function rideTime(i: number, rideStepS: number): number {
  if (byRobot[i] !== 1 || inHand[i] === 0 || mode[i] !== ROLLING || stands[i] !== 0 || pairBits[i] !== 0)
    return 0;
  const { sigma, kappa, rate, accel } = robot;
  if (sigma === 0 || rate === 0 || accel !== 0 || sigma * holdNx[i]! < AHEAD || onSlope(i)) return 0;
  const closing = slideOf(i);
  if (closing > SETTLED || closing < -SETTLED) return 0;
  const slide = along[0]! < 0 ? -along[0]! : along[0]!;
  const bend = (kappa < 0 ? -kappa : kappa) * rate * rate;
  const speed = Math.sqrt(vx[i]! * vx[i]! + vy[i]! * vy[i]!);
  let t = Math.min(LONGEST * rideStepS, (0.5 * speed) / rollDecel[i]!);
  if (slide * t > SLIDE_MM) t = SLIDE_MM / slide;
  if (bend * t * t > 2 * ASIDE_MM) t = Math.sqrt((2 * ASIDE_MM) / bend);
  return t > rideStepS ? t : 0;
}

/** Velocity of ball i against the face that holds it: returns the part along the normal, leaves the part along the face in `along`. */
function slideOf(i: number): number {
  const { c, s, sigma, kappa, rate } = robot;
  const dx = bx[i]! - robot.x;
  const dy = by[i]! - robot.y;
  const wx = c * vx[i]! + s * vy[i]! - rate * (sigma - kappa * (c * dy - s * dx));
  const wy = c * vy[i]! - s * vx[i]! - rate * kappa * (c * dx + s * dy);
  along[0] = wy * holdNx[i]! - wx * holdNy[i]!;
  return wx * holdNx[i]! + wy * holdNy[i]!;
}

/** Before the robot moves on for t seconds: where riding ball i will be. */
export function beginRide(i: number, t: number): void {
  slideOf(i);
  const { c, s } = robot;
  const dx = bx[i]! - robot.x;
  const dy = by[i]! - robot.y;
  toX[i] = c * dx + s * dy - along[0]! * t * holdNy[i]!;
  toY[i] = c * dy - s * dx + along[0]! * t * holdNx[i]!;
}

/** After it has moved: the ball has come along. */
export function endRide(i: number, t: number): void {
  roam(i, t);
  const { c, s } = robot;
  bx[i] = robot.x + c * toX[i]! - s * toY[i]!;
  by[i] = robot.y + s * toX[i]! + c * toY[i]!;
}

/**
 * Free motion took from ball i what the floor takes along the way it was on; carried through a turn it was on the middle
 * of the two ways, by `half` the turn, rad. Without this the error of a step would be as the step, not as its square.
 */
export function bendLoss(i: number, t: number, half: number): void {
  const speed = Math.sqrt(vx[i]! * vx[i]! + vy[i]! * vy[i]!);
  if (mode[i] !== ROLLING || speed === 0) return;
  const aside = (rollDecel[i]! * t * half) / speed;
  const dx = aside * vy[i]!;
  vy[i]! -= aside * vx[i]!;
  vx[i]! += dx;
  sx[i] = vx[i]!;
  sy[i] = vy[i]!;
}
