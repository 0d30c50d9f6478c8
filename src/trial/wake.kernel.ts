import { SLOTS } from "../num/slots.ts";
import { halt, mode, OUT, REST, sx, sy } from "./balls.kernel.ts";
import { move, progressAt } from "./clock.kernel.ts";
import { byRobot, pairBits, stands, stirred } from "./contact.kernel.ts";
import { touchAt } from "./firstTouch.kernel.ts";
import { span } from "./impulse.kernel.ts";
import { robot } from "./robot.kernel.ts";
import { isThroughDoor } from "./walls.kernel.ts";
import { crossEdge, depthOf, holds, isHeld, onSlope, slopeAt } from "./wedge.kernel.ts";

/**
 * Which balls have to be looked at: those that move or are in lasting contact are awake; one that rests sleeps until the robot
 * comes to it.
 */

/** 1: the ball moves or is in lasting contact; 0: it rests, and the robot's first touch is known. */
export const awake = new Uint8Array(SLOTS);
/** Progress of this move at which the robot touches a resting ball. */
export const touchQ = new Float64Array(SLOTS);
/** Where balls were before the step. */
export const fromX = new Float64Array(SLOTS);
export const fromY = new Float64Array(SLOTS);

let balls = 0;

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

function firstTouch(i: number, q: number): number {
  return touchAt(i, move.pieces, move.count, q, move.stopQ);
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
