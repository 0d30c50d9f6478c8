import type { Zone } from "../model/zone.ts";
import { boxOf, doorwayParts, wedgeEdge } from "../motion/obstacles.ts";
import { SCRATCH } from "../num/slots.ts";
import { bx, by, mode, ROLLING, radius, vx, vy } from "./balls.kernel.ts";
import { found, hitTime, safeTime, swap, TOUCH } from "./robot.kernel.ts";
import { depthOf, edgeDepth, lipBlocks, onWedge, wedge } from "./wedge.kernel.ts";

/**
 * What stands still around a ball: three whole walls, the doorway wall with its gap and posts, keep-out blocks, and for
 * a ball that cannot climb it the lip of the wedge.
 */

const MAX_FACES = 4;
const MAX_BOXES = 64;

let faces = 0;
const faceNx = new Float64Array(MAX_FACES);
const faceNy = new Float64Array(MAX_FACES);
const faceLevel = new Float64Array(MAX_FACES);

let boxes = 0;
const minX = new Float64Array(MAX_BOXES);
const maxX = new Float64Array(MAX_BOXES);
const minY = new Float64Array(MAX_BOXES);
const maxY = new Float64Array(MAX_BOXES);

/** The doorway wall: inward normal, level, and the gap along the wall. */
export const door = { nx: 0, ny: 0, level: 0, from: 0, to: 0 };

export function loadWalls(zone: Zone): void {
  const { widthMm: w, heightMm: h } = zone;
  const all = [
    { wall: "left", nx: 1, ny: 0, level: 0 },
    { wall: "right", nx: -1, ny: 0, level: -w },
    { wall: "bottom", nx: 0, ny: 1, level: 0 },
    { wall: "top", nx: 0, ny: -1, level: -h },
  ];
  faces = 0;
  for (const { wall, nx, ny, level } of all) {
    if (wall === zone.doorway.wall) {
      door.nx = nx;
      door.ny = ny;
      door.level = level;
      continue;
    }
    faceNx[faces] = nx;
    faceNy[faces] = ny;
    faceLevel[faces++] = level;
  }
  door.from = zone.doorway.centreMm - zone.doorway.widthMm / 2;
  door.to = zone.doorway.centreMm + zone.doorway.widthMm / 2;
  boxes = 0;
  for (const box of [...doorwayParts(zone), ...zone.keepOuts.map(boxOf)].slice(0, MAX_BOXES)) {
    minX[boxes] = box.minX;
    maxX[boxes] = box.maxX;
    minY[boxes] = box.minY;
    maxY[boxes++] = box.maxY;
  }
  const edge = wedgeEdge(zone);
  wedge.nx = -edge.nx;
  wedge.ny = -edge.ny;
  wedge.level = -edge.offset;
}

export const MAX_WALL_HITS = 6;
export const wallGap = new Float64Array(SCRATCH);
export const wallNx = new Float64Array(SCRATCH);
export const wallNy = new Float64Array(SCRATCH);

/** Standing faces within TOUCH of ball i; returns how many. Normals point to the ball. */
export function wallsTouching(i: number): number {
  const x = bx[i]!;
  const y = by[i]!;
  const r = radius[i]!;
  let hits = 0;
  for (let k = 0; k < faces; k++) {
    const gap = faceNx[k]! * x + faceNy[k]! * y - faceLevel[k]! - r;
    if (gap <= TOUCH) {
      wallGap[hits] = gap;
      wallNx[hits] = faceNx[k]!;
      wallNy[hits++] = faceNy[k]!;
    }
  }
  for (let k = 0; k < boxes && hits < MAX_WALL_HITS - 1; k++) {
    const dx = x < minX[k]! ? x - minX[k]! : x > maxX[k]! ? x - maxX[k]! : 0;
    const dy = y < minY[k]! ? y - minY[k]! : y > maxY[k]! ? y - maxY[k]! : 0;
    const d2 = dx * dx + dy * dy;
    const near = r + TOUCH;
    if (d2 > near * near || d2 === 0) continue;
    const d = Math.sqrt(d2);
    wallGap[hits] = d - r;
    wallNx[hits] = dx / d;
    wallNy[hits++] = dy / d;
  }
  if (lipBlocks[i] === 1 && onWedge[i] === 0) {
    const gap = edgeDepth[i]! - depthOf(i);
    if (gap <= TOUCH) {
      wallGap[hits] = gap;
      wallNx[hits] = -wedge.nx;
      wallNy[hits++] = -wedge.ny;
    }
  }
  if (hits > 1) orderHits(i, hits);
  return hits;
}

/** Puts the face that the ball closes on fastest first, whichever wall it is. */
function orderHits(i: number, hits: number): void {
  const rate = (h: number): number => vx[i]! * wallNx[h]! + vy[i]! * wallNy[h]!;
  for (let h = 1; h < hits; h++) {
    for (let g = h; g > 0 && rate(g) < rate(g - 1); g--) {
      swap(wallGap, g);
      swap(wallNx, g);
      swap(wallNy, g);
    }
  }
}

/** How far a touching ball may creep into what it touches before it is looked at again, mm: a tenth of the overlap that is allowed. */
export const CREEP_MM = 0.01;
/** Touching pairs that close slower than this, mm/s, or are bent together by less, mm/s², rest on each other. */
const RESTING = 1e-9;

/** Time after which a ball that touches a standing face has crept in, by its spin or what it was left with. */
function creepTime(rate: number, bend: number): number {
  if (rate > -RESTING && bend > -RESTING) return Number.POSITIVE_INFINITY;
  found.closing = true;
  return hitTime(CREEP_MM, rate, bend);
}

/**
 * What is asked about a ball: its acceleration in this phase; a bound on what a face that carries it may add or take away,
 * 0 for a free ball, whose roots are exact; a limit, above which any answer does; and the contact step. In an array, since numbers handed to
 * a function that is not inlined, or by it, are put on the heap one by one; the last place takes the answer, s.
 */
export const ask = new Float64Array(SCRATCH);
export const ASK_PUSHED = 2;
export const ASK_LIMIT = 3;
export const ASK_STEP = 4;
export const ANSWER = 5;

/** Time within which ball i meets nothing that stands. */
export function wallTime(i: number): void {
  const ax = ask[0]!;
  const ay = ask[1]!;
  const pushed = ask[ASK_PUSHED]!;
  const limit = ask[ASK_LIMIT]!;
  const x = bx[i]!;
  const y = by[i]!;
  const r = radius[i]!;
  const ux = vx[i]!;
  const uy = vy[i]!;
  let safe = Number.POSITIVE_INFINITY;
  const curve = Math.sqrt(ax * ax + ay * ay) + pushed;
  const speed = Math.sqrt(ux * ux + uy * uy);
  // What is farther than the ball can come within the limit is passed over without a root.
  const reach = r + TOUCH + speed * limit + 0.5 * curve * limit * limit;
  for (let k = 0; k < faces; k++) {
    const gap = faceNx[k]! * x + faceNy[k]! * y - faceLevel[k]! - r;
    if (gap + r > reach) continue;
    const rate = faceNx[k]! * ux + faceNy[k]! * uy;
    const bend = faceNx[k]! * ax + faceNy[k]! * ay;
    if (gap <= TOUCH) {
      safe = Math.min(safe, creepTime(rate, bend));
      continue;
    }
    const t = pushed > 0 ? safeTime(gap - 0.5 * TOUCH, rate, pushed) : hitTime(gap - 0.5 * TOUCH, rate, bend);
    if (t < safe) safe = t;
  }
  for (let k = 0; k < boxes; k++) {
    const dx = x < minX[k]! ? x - minX[k]! : x > maxX[k]! ? x - maxX[k]! : 0;
    const dy = y < minY[k]! ? y - minY[k]! : y > maxY[k]! ? y - maxY[k]! : 0;
    if (dx > reach || -dx > reach || dy > reach || -dy > reach) continue;
    const d = Math.sqrt(dx * dx + dy * dy);
    if (d === 0) continue;
    const rate = (dx * ux + dy * uy) / d;
    if (d - r <= TOUCH) {
      safe = Math.min(safe, creepTime(rate, (dx * ax + dy * ay) / d));
      continue;
    }
    // Spin or a face that carries it may speed a ball up; one that just rolls comes no nearer in a minute.
    if (mode[i] === ROLLING && pushed === 0 && d - r > speed * 60) continue;
    const t = safeTime(d - r - 0.5 * TOUCH, rate, curve);
    if (t < safe) safe = t;
  }
  if (lipBlocks[i] === 1 && onWedge[i] === 0) safe = Math.min(safe, lipTime(i));
  ask[ANSWER] = Math.min(safe, doorTime(i));
}

/** The same for a lip that stops ball i like a wall. */
function lipTime(i: number): number {
  const pushed = ask[ASK_PUSHED]!;
  const gap = edgeDepth[i]! - depthOf(i);
  const rate = -vx[i]! * wedge.nx - vy[i]! * wedge.ny;
  const bend = -ask[0]! * wedge.nx - ask[1]! * wedge.ny;
  if (gap <= TOUCH) return creepTime(rate, bend);
  return pushed > 0 ? safeTime(gap - 0.5 * TOUCH, rate, pushed) : hitTime(gap - 0.5 * TOUCH, rate, bend);
}

/** Time until the ball's centre crosses the wall line inside the gap. */
function doorTime(i: number): number {
  const gap = door.nx * bx[i]! + door.ny * by[i]! - door.level;
  const along = door.nx === 0 ? bx[i]! : by[i]!;
  if (along < door.from - radius[i]! || along > door.to + radius[i]! || gap <= 0)
    return Number.POSITIVE_INFINITY;
  const t = hitTime(gap, door.nx * vx[i]! + door.ny * vy[i]!, door.nx * ask[0]! + door.ny * ask[1]!);
  return t > 0 ? t : Number.POSITIVE_INFINITY;
}

/** Ball i is past the wall line, in the gap. */
export function isThroughDoor(i: number): boolean {
  const along = door.nx === 0 ? bx[i]! : by[i]!;
  return door.nx * bx[i]! + door.ny * by[i]! - door.level <= 0 && along > door.from && along < door.to;
}
