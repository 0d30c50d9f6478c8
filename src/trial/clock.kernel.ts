import type { PathTracer } from "../motion/path.kernel.ts";
import { AT_END, PIECE } from "../motion/trace.kernel.ts";
import { Trapezoid } from "../motion/trapezoid.ts";
import { SCRATCH } from "../num/slots.ts";
import { robot } from "./robot.kernel.ts";

/**
 * The move under way: its planned pieces, its speed profile, and where the robot is stopped. Progress of the real motion
 * is `scale` times the commanded one (drift); it never passes `stopQ` (a wall, or a jam), while the clock runs on.
 */
export const move = {
  index: 0,
  startS: 0,
  scale: 1,
  stopQ: 0,
  pieces: new Float64Array(0),
  count: 0,
};
export const profile = new Trapezoid();

const at = new Float64Array(SCRATCH);

/** Starts a move whose path has been planned. */
export function startMove(planner: PathTracer, index: number, startS: number, scale: number): void {
  move.index = index;
  move.startS = startS;
  move.scale = scale;
  move.stopQ = planner.stopQ;
  move.pieces = planner.pieces;
  move.count = planner.count;
}

export function progressAt(t: number): number {
  const q = profile.distanceAt(t) * move.scale;
  return q < move.stopQ - AT_END ? q : move.stopQ;
}

/** Second of the move at which progress reaches q (≤ stopQ). */
export function timeOf(q: number): number {
  return move.scale > 0 ? profile.timeAt(q / move.scale) : profile.durationS;
}

/** Progress at the end of the piece that holds q. */
export function pieceEnd(q: number): number {
  for (let k = 0; k < move.count; k++) {
    const end = move.pieces[k * PIECE + 1]!;
    if (end > q + AT_END) return end;
  }
  return Number.POSITIVE_INFINITY;
}

/** Puts the robot where it is t seconds into the move, with its velocity. */
export function setRobot(planner: PathTracer, t: number): void {
  const q = progressAt(t);
  if (move.count > 0) {
    planner.poseAt(q, at);
    robot.x = at[0]!;
    robot.y = at[1]!;
    robot.c = at[2]!;
    robot.s = at[3]!;
    robot.heading = at[4]!;
    robot.sigma = at[5]!;
    robot.kappa = at[6]!;
  }
  if (q >= move.stopQ || move.count === 0) {
    freeze();
    return;
  }
  robot.rate = profile.speedAt(t) * move.scale;
  robot.top = profile.peak * move.scale;
  const ramp = t < profile.rampS ? 1 : t >= profile.durationS - profile.rampS ? -1 : 0;
  robot.accel = ramp * profile.accel * move.scale;
}

/**
 * Gives the robot, t seconds into the move, the velocity with which it came there, on the piece and toward the stop that
 * were under way at progress `from`: a ball that it pushed until it stopped has been pushed until then.
 */
export function setArrival(t: number, from: number, sigma: number, kappa: number): void {
  robot.sigma = sigma;
  robot.kappa = kappa;
  robot.rate = from < move.stopQ ? profile.speedAt(t) * move.scale : 0;
}

/** The robot stands. */
export function freeze(): void {
  robot.rate = 0;
  robot.accel = 0;
  robot.top = 0;
}

/** End of the ramp phase that holds t. */
export function phaseEnd(t: number): number {
  if (t < profile.rampS) return profile.rampS;
  const down = profile.durationS - profile.rampS;
  return t < down ? down : profile.durationS;
}
