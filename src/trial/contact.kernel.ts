import { MAX_BALLS } from "../model/project.ts";
import { SCRATCH, SLOTS } from "../num/slots.ts";
import {
  ballFriction,
  bx,
  by,
  inHand,
  mass,
  mode,
  OUT,
  REST,
  ROLLING,
  radius,
  robotBounce,
  robotFriction,
  wallBounce,
  wallFriction,
} from "./balls.kernel.ts";
import { face, give, pressFace, span, strikeBalls, strikeFace } from "./impulse.kernel.ts";
import { contactsOf, hitGap, hitNx, hitNy, hitVx, hitVy, robot, TOUCH } from "./robot.kernel.ts";
import { MAX_WALL_HITS, wallGap, wallNx, wallNy, wallsTouching } from "./walls.kernel.ts";

/**
 * Puts right what a step left overlapping: sweeps over robot, balls and walls in this order, position and velocity
 * together, restitution in the first sweep only. Remembers every contact for the jam rule.
 */

const MAX_SWEEPS = 30;
/** As many more, in which what leans on walls gives way as far as they let it, get a ball out from between faces at 4.6°, the narrowest that let it go (jam.kernel.ts): each takes off 0.6 % of what overlaps. */
const MORE_SWEEPS = 1000;
/** Overlap that may stay, mm. */
const SLOP = 5e-3;
/** Closing speed that may stay, mm/s: over a ride step it closes 0.05 mm, half the overlap that is allowed. */
const SLOW = 0.5;
/** Overlap that makes the step be taken back, mm. */
const TOO_DEEP = 0.05;

/** Contacts of the last resolution, per ball: pushing normals of the robot, normals of what stands. */
export const MAX_PUSHES = 4;
export const pushes = new Uint8Array(SLOTS);
export const pushNx = new Float64Array(MAX_BALLS * MAX_PUSHES);
export const pushNy = new Float64Array(MAX_BALLS * MAX_PUSHES);
export const stands = new Uint8Array(SLOTS);
export const standNx = new Float64Array(MAX_BALLS * MAX_WALL_HITS);
export const standNy = new Float64Array(MAX_BALLS * MAX_WALL_HITS);
/** 1: the robot touches the ball. */
export const byRobot = new Uint8Array(SLOTS);
/** Normal of the face that touches ball i, if it is the only one, in the robot's frame. */
export const holdNx = new Float64Array(SLOTS);
export const holdNy = new Float64Array(SLOTS);
/** 1: the ball was moved or struck in this resolution. */
export const stirred = new Uint8Array(SLOTS);
/** Bit j of entry i: balls i and j touch. */
export const pairBits = new Uint16Array(SLOTS);

/** A face that advances slower than this does not push, mm/s. */
const PUSH_EPS = 1e-6;

let dirty = false;
/** [deepest overlap of the sweep, mm]; an array for the same reason as `face`. */
const deep = new Float64Array(SCRATCH);

/** Resolves all contacts of the `n` balls. Returns the deepest overlap left, mm. */
export function resolve(n: number): number {
  return sweeps(n, 0, MAX_SWEEPS);
}

/** Goes on where `resolve` has left something too deep that nothing holds. */
export function resolveOn(n: number): number {
  return sweeps(n, MAX_SWEEPS, MORE_SWEEPS);
}

function sweeps(n: number, from: number, to: number): number {
  const leaning = from > 0;
  for (let sweep = from; sweep < to; sweep++) {
    dirty = false;
    deep[0] = 0;
    let several = false;
    for (let i = 0; i < n; i++) if (mode[i] !== OUT) meetRobot(i, sweep === 0);
    for (let i = 0; i < n; i++) {
      if (mode[i] === OUT) continue;
      pairBits[i] = 0;
    }
    for (let i = 1; i < n; i++) {
      if (mode[i] === OUT) continue;
      for (let j = 0; j < i; j++) {
        if (mode[j] === OUT || (mode[i] === REST && mode[j] === REST && !stirred[i] && !stirred[j])) continue;
        meetBall(j, i, sweep === 0, leaning);
      }
    }
    for (let i = 0; i < n; i++) {
      if (mode[i] === OUT) continue;
      if (mode[i] !== REST || stirred[i] || byRobot[i]) meetWalls(i, sweep === 0);
      let contacts = stands[i]! + byRobot[i]!;
      if (pairBits[i]) contacts++;
      if (contacts > 1 || (pairBits[i]! & (pairBits[i]! - 1)) !== 0) several = true;
    }
    if (!dirty || (!several && sweep > 0)) break;
    if (!several && sweep === 0 && deep[0]! < SLOP) break;
  }
  return deep[0]!;
}

export function isTooDeep(overlap: number): boolean {
  return overlap > TOO_DEEP;
}

export function clearContacts(n: number): void {
  for (let i = 0; i < n; i++) {
    pushes[i] = stands[i] = byRobot[i] = stirred[i] = 0;
    pairBits[i] = 0;
  }
}

function meetRobot(i: number, first: boolean): void {
  const hits = contactsOf(i);
  byRobot[i] = 0;
  pushes[i] = 0;
  if (hits === 0) return;
  byRobot[i] = hits > 1 ? 2 : 1;
  holdNx[i] = robot.c * hitNx[0]! + robot.s * hitNy[0]!;
  holdNy[i] = robot.c * hitNy[0]! - robot.s * hitNx[0]!;
  for (let h = 0; h < hits; h++) {
    const nx = hitNx[h]!;
    const ny = hitNy[h]!;
    const gap = hitGap[h]!;
    const ux = hitVx[h]!;
    const uy = hitVy[h]!;
    const held = inHand[i] === 1;
    const back = held ? span[1]! : 0;
    // The push of the whole step moved the ball along the normals of the whole step, the first ones longest: as if at a third.
    if (gap < 0) shove(i, nx + (4 / 3) * back * ny, ny - (4 / 3) * back * nx, -gap);
    if (pushes[i]! < MAX_PUSHES && ux * nx + uy * ny > PUSH_EPS) {
      const at = i * MAX_PUSHES + pushes[i]!++;
      pushNx[at] = nx;
      pushNy[at] = ny;
    }
    face[0] = nx;
    face[1] = ny;
    face[2] = ux;
    face[3] = uy;
    face[4] = first && !held ? robotBounce[i]! : 0;
    face[5] = robotFriction[i]!;
    face[6] = back;
    const closing = held && mode[i] === ROLLING ? pressFace(i) : strikeFace(i);
    if (closing > 0) stirred[i] = 1;
    if (closing > SLOW) dirty = true;
  }
}

function meetWalls(i: number, first: boolean): void {
  const hits = wallsTouching(i);
  stands[i] = hits;
  for (let h = 0; h < hits; h++) {
    const nx = wallNx[h]!;
    const ny = wallNy[h]!;
    const at = i * MAX_WALL_HITS + h;
    standNx[at] = nx;
    standNy[at] = ny;
    if (wallGap[h]! < 0) shove(i, nx, ny, -wallGap[h]!);
    face[0] = nx;
    face[1] = ny;
    face[2] = face[3] = 0;
    face[4] = first ? wallBounce[i]! : 0;
    face[5] = wallFriction[i]!;
    face[6] = 0;
    const closing = strikeFace(i);
    if (closing > 0) stirred[i] = 1;
    if (closing > SLOW) dirty = true;
  }
}

/** Distance of two touching balls' centres seen from above: 2√(r₁r₂), since both stand on the floor. */
export function pairReach(i: number, j: number): number {
  return radius[i] === radius[j] ? 2 * radius[i]! : 2 * Math.sqrt(radius[i]! * radius[j]!);
}

function meetBall(i: number, j: number, first: boolean, leaning: boolean): void {
  const dx = bx[j]! - bx[i]!;
  const dy = by[j]! - by[i]!;
  const reach = pairReach(i, j);
  const d2 = dx * dx + dy * dy;
  const near = reach + TOUCH;
  if (d2 > near * near || d2 === 0) return;
  const d = Math.sqrt(d2);
  const nx = dx / d;
  const ny = dy / d;
  pairBits[i]! |= 1 << j;
  pairBits[j]! |= 1 << i;
  give[0] = leaning ? giveOf(i, -nx, -ny) : 1;
  give[1] = leaning ? giveOf(j, nx, ny) : 1;
  if (give[0] + give[1]! === 0) give[0] = give[1] = 1;
  const overlap = reach - d;
  if (overlap > 0) {
    const both = give[0]! * mass[j]! + give[1]! * mass[i]!;
    shove(i, -nx, -ny, overlap * (mass[j]! / both));
    shove(j, nx, ny, overlap * (mass[i]! / both));
  }
  const closing = strikeBalls(i, j, nx, ny, first);
  if (closing > 0) stirred[i] = stirred[j] = 1;
  if (closing > SLOW) dirty = true;
}

/** How far ball i gives way to a push along (nx, ny), once walls have put it back: sin² of the angle to the one it leans on, 0 between two. */
function giveOf(i: number, nx: number, ny: number): number {
  let most = 0;
  for (let h = 0; h < stands[i]!; h++) {
    const at = i * MAX_WALL_HITS + h;
    const into = -nx * standNx[at]! - ny * standNy[at]!;
    if (into <= 0) continue;
    most = Math.max(most, into * into);
    const across = nx * standNy[at]! - ny * standNx[at]!;
    for (let g = 0; g < h; g++) {
      const other = i * MAX_WALL_HITS + g;
      // The other wall stops what would slide off along this one.
      if (
        -nx * standNx[other]! - ny * standNy[other]! > 0 &&
        across * (nx * standNy[other]! - ny * standNx[other]!) < 0
      )
        most = 1;
    }
  }
  return 1 - most;
}

function shove(i: number, nx: number, ny: number, by_: number): void {
  bx[i]! += nx * by_;
  by[i]! += ny * by_;
  stirred[i] = 1;
  if (by_ > SLOP) dirty = true;
  if (by_ > deep[0]!) deep[0] = by_;
}

/** Friction of two balls against each other. */
export function pairFriction(i: number, j: number): number {
  return Math.sqrt(ballFriction[i]! * ballFriction[j]!);
}
