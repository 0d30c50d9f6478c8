import type { RobotOutline } from "../model/outline.ts";
import { MAX_PIECES, PIECE, posePiece } from "../motion/path.kernel.ts";
import { advancePose } from "../motion/touch.kernel.ts";
import { bx, by, radius } from "./balls.kernel.ts";

/**
 * The moving robot as the balls meet it: footprint edges in the robot frame, pose and velocity of the present instant,
 * distance from a ball to every edge, and how long nothing can touch. Touching is decided per edge (each edge is convex;
 * the footprint need not be), in the robot frame, so that its constants are computed once per design.
 */

const MAX_EDGES = 128;

/** Gap below which a ball touches, mm: far under the 0.1 mm that an overlap may reach. */
export const TOUCH = 2e-3;

export const shape = {
  count: 0,
  /** Circle around the footprint, robot frame. */
  cx: 0,
  cy: 0,
  reach: 0,
  minX: 0,
  maxX: 0,
  minY: 0,
  maxY: 0,
};
const ax = new Float64Array(MAX_EDGES);
const ay = new Float64Array(MAX_EDGES);
const ex = new Float64Array(MAX_EDGES);
const ey = new Float64Array(MAX_EDGES);
const len = new Float64Array(MAX_EDGES);
/** 1: the footprint turns left at the start of the edge, so that the vertex itself can be touched. */
const convex = new Uint8Array(MAX_EDGES);
/** Largest distance of the two ends of an edge from the origin. */
let farthest = 0;

/** Pose and motion now: q̇ = rate of progress, q̈ its change, top the highest rate of the move. */
export const robot = {
  x: 0,
  y: 0,
  c: 1,
  s: 0,
  heading: 0,
  sigma: 0,
  kappa: 0,
  rate: 0,
  accel: 0,
  top: 0,
};

export function loadShape(outline: RobotOutline): void {
  const points = outline.footprint;
  const n = points.length;
  shape.count = n;
  shape.minX = shape.minY = Number.POSITIVE_INFINITY;
  shape.maxX = shape.maxY = Number.NEGATIVE_INFINITY;
  farthest = 0;
  for (let i = 0; i < n; i++) {
    const a = points[i]!;
    const b = points[(i + 1) % n]!;
    const before = points[(i + n - 1) % n]!;
    ax[i] = a.xMm;
    ay[i] = a.yMm;
    const dx = b.xMm - a.xMm;
    const dy = b.yMm - a.yMm;
    len[i] = Math.sqrt(dx * dx + dy * dy);
    ex[i] = dx / len[i]!;
    ey[i] = dy / len[i]!;
    convex[i] = (a.xMm - before.xMm) * dy - (a.yMm - before.yMm) * dx > 0 ? 1 : 0;
    shape.minX = Math.min(shape.minX, a.xMm);
    shape.maxX = Math.max(shape.maxX, a.xMm);
    shape.minY = Math.min(shape.minY, a.yMm);
    shape.maxY = Math.max(shape.maxY, a.yMm);
    farthest = Math.max(farthest, Math.sqrt(a.xMm * a.xMm + a.yMm * a.yMm));
  }
  shape.cx = 0.5 * (shape.minX + shape.maxX);
  shape.cy = 0.5 * (shape.minY + shape.maxY);
  shape.reach = 0;
  for (const p of points) {
    const dx = p.xMm - shape.cx;
    const dy = p.yMm - shape.cy;
    shape.reach = Math.max(shape.reach, Math.sqrt(dx * dx + dy * dy));
  }
}

/** Contacts found by `contactsOf`: gap, normal (zone frame, robot to ball) and velocity of the face there. */
export const MAX_HITS = 8;
export const hitGap = new Float64Array(MAX_HITS);
export const hitNx = new Float64Array(MAX_HITS);
export const hitNy = new Float64Array(MAX_HITS);
export const hitVx = new Float64Array(MAX_HITS);
export const hitVy = new Float64Array(MAX_HITS);

/** Features of the footprint within TOUCH of ball i; returns how many. */
export function contactsOf(i: number): number {
  const dx = bx[i]! - robot.x;
  const dy = by[i]! - robot.y;
  const { c, s } = robot;
  const px = c * dx + s * dy;
  const py = -s * dx + c * dy;
  const r = radius[i]!;
  const near = r + TOUCH;
  if (px > shape.maxX + near || px < shape.minX - near || py > shape.maxY + near || py < shape.minY - near)
    return 0;
  let hits = 0;
  const n = shape.count;
  for (let k = 0; k < n && hits < MAX_HITS; k++) {
    const qx = px - ax[k]!;
    const qy = py - ay[k]!;
    const along = qx * ex[k]! + qy * ey[k]!;
    let nx: number;
    let ny: number;
    let gap: number;
    if (along < 0) {
      // The vertex belongs to this edge only if the edge before it does not hold the nearest point.
      if (convex[k] === 0) continue;
      const before = k === 0 ? n - 1 : k - 1;
      if ((px - ax[before]!) * ex[before]! + (py - ay[before]!) * ey[before]! < len[before]!) continue;
      const d2 = qx * qx + qy * qy;
      if (d2 > near * near || d2 === 0) continue;
      const d = Math.sqrt(d2);
      nx = qx / d;
      ny = qy / d;
      gap = d - r;
    } else {
      if (along > len[k]!) continue;
      // Outward normal of a counter-clockwise outline: (ey, −ex).
      const d = qx * ey[k]! - qy * ex[k]!;
      if (d > near || d <= 0) continue;
      nx = ey[k]!;
      ny = -ex[k]!;
      gap = d - r;
    }
    putHit(hits++, px, py, nx, ny, gap, r);
  }
  return hits;
}

function putHit(h: number, px: number, py: number, nx: number, ny: number, gap: number, r: number): void {
  const { c, s, sigma, kappa, rate } = robot;
  const qx = px - nx * (r + gap);
  const qy = py - ny * (r + gap);
  const ux = rate * (sigma - kappa * qy);
  const uy = rate * kappa * qx;
  hitGap[h] = gap;
  hitNx[h] = c * nx - s * ny;
  hitNy[h] = s * nx + c * ny;
  hitVx[h] = c * ux - s * uy;
  hitVy[h] = s * ux + c * uy;
}

/** Longest t with gap + rate·t − curve·t²/2 ≥ 0. */
export function safeTime(gap: number, rate: number, curve: number): number {
  if (curve <= 1e-12) return rate < 0 ? gap / -rate : Number.POSITIVE_INFINITY;
  const root = Math.sqrt(rate * rate + 2 * curve * gap);
  return rate < 0 ? (2 * gap) / (root - rate) : (rate + root) / curve;
}

/** Set by `safeFor`: a touching pair that stays in touch (closing or resting at less than LASTING). */
export const found = { lasting: false };
/** Pairs that part slower than this stay in contact, mm/s: they would meet again within a few steps. */
export const LASTING = 2;

/**
 * Time within which a ball at (px, py), moving with (ux, uy), all in the robot frame, cannot come into touch with any
 * edge. `rate`, `accel`, `top` describe the robot's progress; `curveBall` bounds the ball's acceleration.
 */
export function safeFor(
  px: number,
  py: number,
  ux: number,
  uy: number,
  r: number,
  rate: number,
  accel: number,
  top: number,
  curveBall: number,
  limit: number,
): number {
  const { sigma, kappa } = robot;
  const spin = Math.abs(kappa);
  const drive = Math.abs(sigma);
  const curve =
    curveBall + Math.abs(accel) * (drive + spin * farthest) + top * top * spin * (drive + spin * farthest);
  found.lasting = false;
  const ox = px - shape.cx;
  const oy = py - shape.cy;
  const o = Math.sqrt(ox * ox + oy * oy);
  const wide = o - shape.reach - r;
  if (wide > TOUCH) {
    const closing =
      (ux * ox + uy * oy) / o - (rate * (sigma * ox + kappa * (shape.cx * oy - shape.cy * ox))) / o;
    const t = safeTime(wide, closing, curve);
    if (t >= limit) return t;
  }
  let safe = limit;
  const n = shape.count;
  for (let k = 0; k < n; k++) {
    const qx = px - ax[k]!;
    const qy = py - ay[k]!;
    let along = qx * ex[k]! + qy * ey[k]!;
    along = along < 0 ? 0 : along > len[k]! ? len[k]! : along;
    const dx = qx - along * ex[k]!;
    const dy = qy - along * ey[k]!;
    const d = Math.sqrt(dx * dx + dy * dy);
    const gap = d - r;
    const nx = dx / d;
    const ny = dy / d;
    // Both ends of the edge, since the faster one decides in a turn.
    const e = k + 1 === n ? 0 : k + 1;
    let face = rate * (sigma * nx + kappa * (ax[k]! * ny - ay[k]! * nx));
    if (kappa !== 0) {
      const other = rate * (sigma * nx + kappa * (ax[e]! * ny - ay[e]! * nx));
      if (other > face) face = other;
    }
    const closing = ux * nx + uy * ny - face;
    if (gap <= TOUCH) {
      const here = ux * nx + uy * ny - rate * (sigma * nx + kappa * ((px - dx) * ny - (py - dy) * nx));
      if (here < LASTING) {
        found.lasting = true;
        continue;
      }
      const t = curve > 0 ? (2 * here) / curve : Number.POSITIVE_INFINITY;
      if (t < safe) safe = t;
      continue;
    }
    const t = safeTime(gap - 0.5 * TOUCH, closing, curve);
    if (t < safe) safe = t;
  }
  return safe;
}

const pose = { x: 0, y: 0, c: 1, s: 0 };
const start = new Float64Array(7);

/**
 * Progress at which the robot first touches resting ball i on the planned pieces, from progress `q` on; +∞ if never.
 * Conservative advancement in units of progress (Mirtich 1996).
 */
export function touchAt(i: number, pieces: Float64Array, count: number, q: number, stopQ: number): number {
  const x = bx[i]!;
  const y = by[i]!;
  const r = radius[i]!;
  const sigma = robot.sigma;
  const kappa = robot.kappa;
  let hit = Number.POSITIVE_INFINITY;
  for (let k = 0; k < count && k < MAX_PIECES; k++) {
    const at = k * PIECE;
    const end = Math.min(pieces[at + 1]!, stopQ);
    if (end <= q) continue;
    const from = Math.max(q, pieces[at]!);
    if (from >= end) continue;
    posePiece(pieces, at, from, start);
    pose.x = start[0]!;
    pose.y = start[1]!;
    pose.c = start[2]!;
    pose.s = start[3]!;
    robot.sigma = start[5]!;
    robot.kappa = start[6]!;
    hit = touchOnPiece(x, y, r, from, end);
    if (hit < end) break;
    hit = Number.POSITIVE_INFINITY;
  }
  robot.sigma = sigma;
  robot.kappa = kappa;
  return hit;
}

/** Conservative steps before a grazing pass is taken as a touch; 15 are usual at the most. */
const MAX_ADVANCES = 100;

function touchOnPiece(x: number, y: number, r: number, from: number, end: number): number {
  let q = from;
  for (let step = 0; step < MAX_ADVANCES; step++) {
    const dx = x - pose.x;
    const dy = y - pose.y;
    const px = pose.c * dx + pose.s * dy;
    const py = -pose.s * dx + pose.c * dy;
    const safe = safeFor(px, py, 0, 0, r, 1, 0, 1, 0, end - q);
    // A lasting touch that the motion closes on is a touch now; one it only slides along is not.
    if (found.lasting && closesOn(px, py, r)) return q;
    const turning = Math.abs(robot.kappa);
    const dq =
      found.lasting && turning > 0 ? Math.min(safe, LEAVE_STEP / Math.max(1, turning * farthest)) : safe;
    if (q + dq >= end) return Number.POSITIVE_INFINITY;
    q += dq;
    advancePose(pose, robot.sigma, robot.kappa, dq);
  }
  return q;
}

/** While a touching ball is being left in a curve, progress goes on in steps of this length at the fastest point, mm. */
const LEAVE_STEP = 1;
/** Closing slower than this per unit of progress is sliding along. */
const SLIDE_RATE = 1e-7;

function closesOn(px: number, py: number, r: number): boolean {
  const { sigma, kappa } = robot;
  const n = shape.count;
  for (let k = 0; k < n; k++) {
    const qx = px - ax[k]!;
    const qy = py - ay[k]!;
    let along = qx * ex[k]! + qy * ey[k]!;
    along = along < 0 ? 0 : along > len[k]! ? len[k]! : along;
    const dx = qx - along * ex[k]!;
    const dy = qy - along * ey[k]!;
    const d = Math.sqrt(dx * dx + dy * dy);
    if (d - r > TOUCH) continue;
    const face = (sigma * dx + kappa * ((px - dx) * dy - (py - dy) * dx)) / d;
    if (face > SLIDE_RATE) return true;
  }
  return false;
}
