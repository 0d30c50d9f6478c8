import type { RobotOutline } from "../model/outline.ts";
import { SCRATCH } from "../num/slots.ts";
import { bx, by, radius, vx, vy } from "./balls.kernel.ts";

/**
 * The moving robot as the balls meet it: footprint edges in the robot frame, pose and velocity of the present instant,
 * distance from a ball to every edge, and how long nothing can touch. Touching is decided per edge (each edge is convex;
 * the footprint need not be), in the robot frame, so that its constants are computed once per design.
 * Over 300 lines: contacts and approach bounds share the edges and the robot's motion.
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
  /** Largest distance of a vertex from the robot's origin. */
  farthest: 0,
};
/** Edge k of the footprint: its start, unit direction and length, robot frame. */
export const edgeX = new Float64Array(MAX_EDGES);
export const edgeY = new Float64Array(MAX_EDGES);
export const edgeDx = new Float64Array(MAX_EDGES);
export const edgeDy = new Float64Array(MAX_EDGES);
export const edgeLen = new Float64Array(MAX_EDGES);
/** 1: the footprint turns left at the start of the edge, so that the vertex itself can be touched. */
const convex = new Uint8Array(MAX_EDGES);

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

/** Hinged arms that swing now: outward rate of their angle, rad/s, 0 while they are still; where the hinges are, robot frame. */
export const swing = { rate: 0, front: 0, hinge: 0 };

export function loadShape(outline: RobotOutline): void {
  const points = outline.footprint;
  const n = points.length;
  shape.count = n;
  shape.minX = shape.minY = Number.POSITIVE_INFINITY;
  shape.maxX = shape.maxY = Number.NEGATIVE_INFINITY;
  shape.farthest = 0;
  for (let i = 0; i < n; i++) {
    const a = points[i]!;
    const b = points[(i + 1) % n]!;
    const before = points[(i + n - 1) % n]!;
    edgeX[i] = a.xMm;
    edgeY[i] = a.yMm;
    const dx = b.xMm - a.xMm;
    const dy = b.yMm - a.yMm;
    edgeLen[i] = Math.sqrt(dx * dx + dy * dy);
    edgeDx[i] = dx / edgeLen[i]!;
    edgeDy[i] = dy / edgeLen[i]!;
    convex[i] = (a.xMm - before.xMm) * dy - (a.yMm - before.yMm) * dx > 0 ? 1 : 0;
    shape.minX = Math.min(shape.minX, a.xMm);
    shape.maxX = Math.max(shape.maxX, a.xMm);
    shape.minY = Math.min(shape.minY, a.yMm);
    shape.maxY = Math.max(shape.maxY, a.yMm);
    shape.farthest = Math.max(shape.farthest, Math.sqrt(a.xMm * a.xMm + a.yMm * a.yMm));
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
export const hitGap = new Float64Array(SCRATCH);
export const hitNx = new Float64Array(SCRATCH);
export const hitNy = new Float64Array(SCRATCH);
export const hitVx = new Float64Array(SCRATCH);
export const hitVy = new Float64Array(SCRATCH);

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
    const qx = px - edgeX[k]!;
    const qy = py - edgeY[k]!;
    const along = qx * edgeDx[k]! + qy * edgeDy[k]!;
    let nx: number;
    let ny: number;
    let gap: number;
    if (along < 0) {
      // The vertex belongs to this edge only if the edge before it does not hold the nearest point.
      if (convex[k] === 0) continue;
      const before = k === 0 ? n - 1 : k - 1;
      if (
        (px - edgeX[before]!) * edgeDx[before]! + (py - edgeY[before]!) * edgeDy[before]! <
        edgeLen[before]!
      )
        continue;
      const d2 = qx * qx + qy * qy;
      if (d2 > near * near || d2 === 0) continue;
      const d = Math.sqrt(d2);
      nx = qx / d;
      ny = qy / d;
      gap = d - r;
    } else {
      if (along > edgeLen[k]!) continue;
      // Outward normal of a counter-clockwise outline: (ey, −ex).
      const d = qx * edgeDy[k]! - qy * edgeDx[k]!;
      if (d > near || d <= 0) continue;
      nx = edgeDy[k]!;
      ny = -edgeDx[k]!;
      gap = d - r;
    }
    putHit(hits++, px, py, nx, ny, gap, r);
  }
  if (hits > 1) orderHits(i, hits);
  return hits;
}

/** Puts the contact that closes fastest first, so that a mirror image is resolved as its mirror image. */
function orderHits(i: number, hits: number): void {
  for (let h = 1; h < hits; h++) {
    for (let g = h; g > 0 && hitRate(i, g) < hitRate(i, g - 1); g--) {
      swap(hitGap, g);
      swap(hitNx, g);
      swap(hitNy, g);
      swap(hitVx, g);
      swap(hitVy, g);
    }
  }
}

function hitRate(i: number, h: number): number {
  return (vx[i]! - hitVx[h]!) * hitNx[h]! + (vy[i]! - hitVy[h]!) * hitNy[h]!;
}

/** Exchanges an entry with the one before it. */
export function swap(values: Float64Array, at: number): void {
  const kept = values[at]!;
  values[at] = values[at - 1]!;
  values[at - 1] = kept;
}

function putHit(h: number, px: number, py: number, nx: number, ny: number, gap: number, r: number): void {
  const { c, s, sigma, kappa, rate } = robot;
  const qx = px - nx * (r + gap);
  const qy = py - ny * (r + gap);
  let ux = rate * (sigma - kappa * qy);
  let uy = rate * kappa * qx;
  if (swing.rate !== 0 && qx > swing.front) {
    // What lies ahead of the hinges is an arm; the two turn opposite ways.
    const turn = qy > 0 ? swing.rate : -swing.rate;
    ux -= turn * (qy > 0 ? qy - swing.hinge : qy + swing.hinge);
    uy += turn * (qx - swing.front);
  }
  hitGap[h] = gap;
  hitNx[h] = c * nx - s * ny;
  hitNy[h] = s * nx + c * ny;
  hitVx[h] = c * ux - s * uy;
  hitVy[h] = s * ux + c * uy;
}

/** Longest t with gap + rate·t − curve·t²/2 ≥ 0, curve ≥ 0. */
export function safeTime(gap: number, rate: number, curve: number): number {
  if (curve <= 1e-12) return rate < 0 ? gap / -rate : Number.POSITIVE_INFINITY;
  const root = Math.sqrt(rate * rate + 2 * curve * gap);
  return rate < 0 ? (2 * gap) / (root - rate) : (rate + root) / curve;
}

/** Smallest t > 0 with gap + rate·t + bend·t²/2 = 0, +∞ if none. */
export function hitTime(gap: number, rate: number, bend: number): number {
  if (bend > -1e-12 && bend < 1e-12) return rate < 0 ? gap / -rate : Number.POSITIVE_INFINITY;
  const disc = rate * rate - 2 * bend * gap;
  if (disc < 0) return Number.POSITIVE_INFINITY;
  const root = Math.sqrt(disc);
  // The form without cancellation for an approaching ball; else the later root of a ball that is bent back.
  if (rate < 0) return (2 * gap) / (root - rate);
  return bend < 0 ? (rate + root) / -bend : Number.POSITIVE_INFINITY;
}

/** Bound on the acceleration of any part of the robot now, mm/s². */
export function partAccel(): number {
  const { sigma, kappa, accel, top } = robot;
  const spin = kappa < 0 ? -kappa : kappa;
  return (
    ((accel < 0 ? -accel : accel) + top * top * spin) * ((sigma < 0 ? -sigma : sigma) + spin * shape.farthest)
  );
}

/** Set by `safeFor`: the ball stays in touch with the robot. Set by `wallTime`, `pairTime`: it closes on something it touches. */
export const found = { lasting: false, closing: false };
/** Pairs that part slower than this stay in contact, mm/s: they would meet again within a few steps. */
export const LASTING = 2;
/** Pairs nearer than this, mm, and closing or parting slower than SLOW, mm/s, are left to the contact step: a ball in the corner of two faces is on one and next to the other. */
export const NEAR = 0.3;
const SLOW = 10;
/** How deep a ball may come in, mm, where bounds tell when: a fifth of the overlap that is allowed. Ending short of the touch instead took up to five more steps a touch. */
const GIVE_MM = 0.02;

/**
 * Arguments of `safeFor`: place, velocity and acceleration of the ball in the robot frame, its radius, the limit, and the gap
 * below which a slowly closing pair counts as touching already; then whether the
 * ball is free to follow its acceleration (1) or carried, and a place for the answer.
 * In an array, since numbers handed to a function that is not inlined are put on the heap one by one.
 */
export const probe = new Float64Array(11);
export const FREE = 9;
export const SAFE = 10;

/**
 * Time within which the ball in `probe`, at (px, py), moving with (ux, uy) and accelerating with (gx, gy), all in the robot frame, cannot
 * come into touch with any edge, put into probe[SAFE]; at most `limit`. Along the fixed direction from the nearest point of an edge to the
 * ball, the edge advances by no more than its faster end does: gap + closing·t + bend·t²/2 stays ≥ 0 until the root, with
 * the ramp in `bend` exactly and turning by a bound. A ball that is carried brakes less than freely: only a pull
 * toward the edge counts. For a free ball before a face that goes straight on the root is the touch itself; else the step
 * may end GIVE_MM too late.
 */
export function safeFor(): void {
  const px = probe[0]!;
  const py = probe[1]!;
  const ux = probe[2]!;
  const uy = probe[3]!;
  const gx = probe[4]!;
  const gy = probe[5]!;
  const r = probe[6]!;
  const limit = probe[7]!;
  const near = probe[8]!;
  const free = probe[FREE]! === 1;
  const { sigma, kappa, rate, accel, top } = robot;
  const spin = kappa < 0 ? -kappa : kappa;
  const turning = top * top * spin * ((sigma < 0 ? -sigma : sigma) + spin * shape.farthest);
  found.lasting = false;
  const ox = px - shape.cx;
  const oy = py - shape.cy;
  const o = Math.sqrt(ox * ox + oy * oy);
  const wide = o - shape.reach - r;
  if (wide > TOUCH) {
    const face = (sigma * ox + kappa * (shape.cx * oy - shape.cy * ox)) / o;
    const pull = (gx * ox + gy * oy) / o;
    const bend = (pull < 0 ? pull : 0) - accel * face - turning;
    const closing = (ux * ox + uy * oy) / o - rate * face;
    if (wide + (closing < 0 ? closing * limit : 0) + (bend < 0 ? 0.5 * bend * limit * limit : 0) > 0) {
      probe[SAFE] = limit;
      return;
    }
  }
  let safe = limit;
  const n = shape.count;
  const omega = rate * kappa;
  // Velocity in the turning robot frame, where the edges stand still.
  const wx = ux - rate * sigma + omega * py;
  const wy = uy - omega * px;
  const span = spin * top > TURN_SPAN_RAD / TURN_SPAN_S ? TURN_SPAN_RAD / (spin * top) : TURN_SPAN_S;
  const swing = turnBound(px, py, wx, wy, gx, gy, span);
  const give = near > 0 && (swing > 0 || !free) ? GIVE_MM : -0.5 * TOUCH;
  // Edges farther than ball and robot can come together within the limit are passed over without a root.
  const lever = (sigma < 0 ? -sigma : sigma) + spin * shape.farthest;
  const ramp = accel < 0 ? -accel : accel;
  const own = Math.sqrt(gx * gx + gy * gy);
  const travel =
    swing > 0 && limit > span
      ? limit * (Math.sqrt(ux * ux + uy * uy) + rate * lever) +
        0.5 * limit * limit * (own + ramp * lever + turning)
      : // In the robot's frame, where the edges stand still; not turning (or next to it), its parts go alike.
        limit * (Math.sqrt(wx * wx + wy * wy) + (swing > 0 ? 0 : 2 * rate * spin * shape.farthest)) +
        0.5 * limit * limit * (swing > 0 ? swing : own + ramp * lever + turning);
  const reach = r + TOUCH + travel;
  const reach2 = reach * reach;
  for (let k = 0; k < n; k++) {
    const qx = px - edgeX[k]!;
    const qy = py - edgeY[k]!;
    let along = qx * edgeDx[k]! + qy * edgeDy[k]!;
    along = along < 0 ? 0 : along > edgeLen[k]! ? edgeLen[k]! : along;
    const dx = qx - along * edgeDx[k]!;
    const dy = qy - along * edgeDy[k]!;
    const d2 = dx * dx + dy * dy;
    if (d2 > reach2) continue;
    const d = Math.sqrt(d2);
    const gap = d - r;
    const nx = dx / d;
    const ny = dy / d;
    const un = ux * nx + uy * ny;
    let face = sigma * nx;
    if (kappa !== 0) {
      // Both ends of the edge, since the faster one decides in a turn.
      const e = k + 1 === n ? 0 : k + 1;
      const one = kappa * (edgeX[k]! * ny - edgeY[k]! * nx);
      const two = kappa * (edgeX[e]! * ny - edgeY[e]! * nx);
      face += one > two ? one : two;
    }
    const pull = gx * nx + gy * ny;
    const bend = (free || pull < 0 ? pull : 0) - accel * face - turning;
    if (gap > TOUCH) {
      const slow = wx * nx + wy * ny;
      if (gap < near && slow > -SLOW && slow < SLOW) {
        found.lasting = true;
        continue;
      }
      const closing = un - rate * face;
      // Even closing and bending as now it stays clear for as long as is asked: no root needed.
      if (gap + (closing < 0 ? closing * safe : 0) + (bend < 0 ? 0.5 * bend * safe * safe : 0) > -give)
        continue;
      let t = hitTime(gap + give, closing, bend);
      if (t < safe && t < span && swing > 0) {
        const inFrame = safeTime(gap + give, wx * nx + wy * ny, swing);
        t = inFrame < span ? (inFrame > t ? inFrame : t) : span;
      }
      if (t < safe) safe = t;
      continue;
    }
    const parting = un - rate * (sigma * nx + kappa * ((px - dx) * ny - (py - dy) * nx));
    if (parting < -LASTING) {
      // An impact, whatever other edges rest against the ball.
      found.lasting = false;
      probe[SAFE] = 0;
      return;
    }
    if (parting < LASTING) {
      found.lasting = true;
      continue;
    }
    // In a turn another part of the edge may come round to the ball: only the turning frame tells when.
    const back = swing > 0 ? Math.min((2 * parting) / swing, span) : (2 * parting) / -bend;
    if (back > 0 && back < safe) safe = back;
  }
  probe[SAFE] = safe;
}

/** The bound in the turning frame holds for a turn of so much, rad, and for so long, s: the longer, the looser it is. */
const TURN_SPAN_RAD = 0.04;
const TURN_SPAN_S = 0.1;

/**
 * Bound on the acceleration of a ball in the turning robot frame over T seconds: its own, centrifugal ω²p, Coriolis
 * 2ωw, and the frame's; 0 where the robot does not turn. With C for the bound, |w| grows to |w| + CT
 * and |p| to |p| + |w|T + CT²/2, which is solved for C.
 */
function turnBound(
  px: number,
  py: number,
  wx: number,
  wy: number,
  gx: number,
  gy: number,
  T: number,
): number {
  const { sigma, kappa, accel, top } = robot;
  const spin = (kappa < 0 ? -kappa : kappa) * top;
  if (spin < 1e-3) return 0;
  const w = Math.sqrt(wx * wx + wy * wy);
  const far = Math.sqrt(px * px + py * py);
  const ramp = accel < 0 ? -accel : accel;
  const frame = (sigma === 0 ? 0 : ramp + top * spin) + ramp * (kappa < 0 ? -kappa : kappa) * far;
  const own = Math.sqrt(gx * gx + gy * gy);
  return (
    (own + frame + spin * spin * (far + w * T) + 2 * spin * w) / (1 - 2 * spin * T - spin * spin * T * T)
  );
}
