import { MAX_BALLS } from "../model/project.ts";
import { SLOTS } from "../num/slots.ts";
import { bx, by, robotFriction, wallFriction } from "./balls.kernel.ts";
import {
  MAX_PUSHES,
  pairBits,
  pairFriction,
  pushes,
  pushNx,
  pushNy,
  standNx,
  standNy,
  stands,
} from "./contact.kernel.ts";
import { MAX_WALL_HITS } from "./walls.kernel.ts";

/**
 * The jam rule. Two frictional contacts hold a disc when the line between them lies in both friction cones (Nguyen 1988,
 * from memory): a ball pushed along n and stopped by a face with normal o is held if n·o < −cos(2φ), φ the smaller
 * friction angle, cos(2 atan μ) = (1 − μ²)/(1 + μ²). Two stops hold it whatever the friction when −n lies between their
 * normals; a ball that is itself held is a stop.
 */

/** 1: the ball is part of a jam found by `findJam`. */
export const inJam = new Uint8Array(SLOTS);

/** Directions of a ball–ball push flatter than this do not count as stops. */
const GRAZE = 0.05;
/**
 * The least friction that the cones count with: PTFE on steel, 0.04 (howwhy.nfshost.com). Below it a ball between faces at a few degrees
 * has to leave at ten and more times the robot's speed, and how often the sweeps get it out depends on the step.
 */
const LEAST_GRIP = 0.04;
const MAX_STOPS = MAX_WALL_HITS + MAX_BALLS;
/** Normals of what stops a ball; one row per ball in the chain. */
const stopX = new Float64Array(MAX_STOPS * MAX_BALLS);
const stopY = new Float64Array(MAX_STOPS * MAX_BALLS);

function cosTwice(friction: number): number {
  const mu = friction < LEAST_GRIP ? LEAST_GRIP : friction;
  return (1 - mu * mu) / (1 + mu * mu);
}

/** Looks at all contacts of the last resolution; marks jammed balls; true if there is a jam. */
export function findJam(n: number): boolean {
  let any = false;
  for (let i = 0; i < n; i++) inJam[i] = 0;
  for (let i = 0; i < n; i++) {
    if (pushes[i] === 0 || (stands[i] === 0 && pairBits[i] === 0)) continue;
    for (let h = 0; h < pushes[i]!; h++) {
      const at = i * MAX_PUSHES + h;
      if (isHeld(i, pushNx[at]!, pushNy[at]!, robotFriction[i]!, 1 << i, 0)) any = true;
    }
    if (pushes[i]! > 1 && isPinched(i)) any = true;
  }
  return any;
}

/** Ball i, pushed along (nx, ny) by something of friction `grip` against it, cannot get away. `visited`: bits of the balls already in the chain; `row`: MAX_STOPS × its length. */
function isHeld(i: number, nx: number, ny: number, grip: number, visited: number, row: number): boolean {
  let stops = row;
  let held = false;
  const wall = -cosTwice(Math.min(grip, wallFriction[i]!));
  for (let h = 0; h < stands[i]!; h++) {
    const ox = standNx[i * MAX_WALL_HITS + h]!;
    const oy = standNy[i * MAX_WALL_HITS + h]!;
    if (nx * ox + ny * oy < wall) held = true;
    stopX[stops] = ox;
    stopY[stops++] = oy;
  }
  for (let j = 0; pairBits[i]! >> j; j++) {
    if (((pairBits[i]! >> j) & 1) === 0 || ((visited >> j) & 1) === 1) continue;
    const dx = bx[j]! - bx[i]!;
    const dy = by[j]! - by[i]!;
    const d = Math.sqrt(dx * dx + dy * dy);
    const mx = dx / d;
    const my = dy / d;
    const push = nx * mx + ny * my;
    const between = pairFriction(i, j);
    if (push < GRAZE || !isHeld(j, mx, my, between, visited | (1 << j), row + MAX_STOPS)) continue;
    if (push > cosTwice(Math.min(grip, between))) held = true;
    stopX[stops] = -mx;
    stopY[stops++] = -my;
  }
  for (let a = row + 1; a < stops && !held; a++) {
    for (let b = row; b < a; b++)
      if (isBetween(-nx, -ny, stopX[a]!, stopY[a]!, stopX[b]!, stopY[b]!)) held = true;
  }
  if (held) inJam[i] = 1;
  return held;
}

/** Two faces of the robot push the ball against one that stands. */
function isPinched(i: number): boolean {
  let pinched = false;
  for (let h = 0; h < stands[i]!; h++) {
    const ox = -standNx[i * MAX_WALL_HITS + h]!;
    const oy = -standNy[i * MAX_WALL_HITS + h]!;
    for (let a = 1; a < pushes[i]!; a++) {
      for (let b = 0; b < a; b++) {
        const pa = i * MAX_PUSHES + a;
        const pb = i * MAX_PUSHES + b;
        if (isBetween(ox, oy, pushNx[pa]!, pushNy[pa]!, pushNx[pb]!, pushNy[pb]!)) pinched = true;
      }
    }
  }
  if (pinched) inJam[i] = 1;
  return pinched;
}

/** (x, y) = a·p + b·q with a, b ≥ 0: strictly between two directions less than 180° apart. */
function isBetween(x: number, y: number, px: number, py: number, qx: number, qy: number): boolean {
  const det = px * qy - py * qx;
  if (Math.abs(det) < 1e-9) return false;
  const a = (x * qy - y * qx) / det;
  const b = (px * y - py * x) / det;
  return a >= -1e-9 && b >= -1e-9;
}
