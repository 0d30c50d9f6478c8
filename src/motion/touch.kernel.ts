import { sinCos } from "../num/elementary.ts";
import type { Surroundings } from "./surroundings.ts";

/**
 * A motion, what it touches, and how far it may go without touching a face. "Progress" q is the path parameter: mm driven,
 * or rad turned on the spot.
 */

/** A vertex this near to a wall touches it, mm: a hundredth of the overlap the engine tolerates (0.1 mm). */
export const TOUCH_MM = 1e-3;
/** Closing rates below this count as sliding along, per unit of progress: a heading 1e-9 rad off a wall is parallel. */
export const RATE_EPS = 1e-9;
/** How far a touching vertex that moves off in a curve may have come back before it is looked at again, mm. */
const RETURN_MM = 0.02;

/** The motion under test. sigma: velocity along the heading per unit of progress (±1 drive, 0 turn); kappa: heading rate. */
export interface Motion {
  x: number;
  y: number;
  c: number;
  s: number;
  sigma: number;
  kappa: number;
}

/** Where and how a touch happens: (nx, ny, offset) is the face, or (nx, ny) the place of the box corner that the hull's `edge` touches, and no offset. */
export interface Touch {
  q: number;
  kind: "none" | "plane" | "guided" | "corner";
  nx: number;
  ny: number;
  offset: number;
  ground: boolean;
  edge: number;
}

export function noTouch(): Touch {
  return { q: 0, kind: "none", nx: 0, ny: 0, offset: 0, ground: false, edge: -1 };
}

export const trig = new Float64Array(2);

/** Moves `pose` on by `dq` along the motion (sigma, kappa), in place: chord formulas without cancellation. */
export function advancePose(
  pose: { x: number; y: number; c: number; s: number },
  sigma: number,
  kappa: number,
  dq: number,
): void {
  const phi = kappa * dq;
  const { c, s } = pose;
  if (phi === 0) {
    pose.x += sigma * dq * c;
    pose.y += sigma * dq * s;
    return;
  }
  sinCos(phi, trig);
  const sn = trig[0]!;
  const cs = trig[1]!;
  if (sigma !== 0) {
    const along = (sigma * sn) / kappa;
    // 1 − cos φ = sin²φ/(1 + cos φ) keeps its digits for small φ; beyond a right angle the plain form does.
    const aside = (sigma * (cs > 0 ? (sn * sn) / (1 + cs) : 1 - cs)) / kappa;
    pose.x += c * along - s * aside;
    pose.y += s * along + c * aside;
  }
  pose.c = c * cs - s * sn;
  pose.s = s * cs + c * sn;
}

/** Longest t with gap + rate·t − curve·t²/2 ≥ 0. */
export function safeStep(gap: number, rate: number, curve: number): number {
  if (curve <= 0) return rate < 0 ? gap / -rate : Number.POSITIVE_INFINITY;
  const root = Math.sqrt(rate * rate + 2 * curve * gap);
  return rate < 0 ? (2 * gap) / (root - rate) : (rate + root) / curve;
}

/** Step after which a touching vertex that leaves at `rate` ≥ 0 is back at the face at the earliest, or at most RETURN_MM behind it. */
export function leavingStep(rate: number, curve: number): number {
  return Math.max((2 * rate) / curve, Math.sqrt((2 * RETURN_MM) / curve));
}

/** Where the search for a touch is. */
export const state = { x: 0, y: 0, c: 1, s: 0 };
/** How far the search goes from the state: beyond that any answer does. In an array, so that it is not put on the heap anew at every call. */
export const span = new Float64Array(1);

/**
 * Tests one face (nx, ny, offset) against all vertices of an outline; returns the safe step or sets out.kind. Vertices that
 * touch its line beyond its ends, or slide off them, are left to its posts: at `low` and `high` along the tangent (ny, −nx),
 * from the origin.
 */
export function testFace(
  around: Surroundings,
  motion: Motion,
  ground: boolean,
  nx: number,
  ny: number,
  offset: number,
  out: Touch,
  low = Number.NEGATIVE_INFINITY,
  high = Number.POSITIVE_INFINITY,
): number {
  const outline = ground ? around.ground : around.whole;
  const { count, x: vx, y: vy } = outline;
  const { sigma, kappa } = motion;
  const { x, y, c, s } = state;
  // The face's normal in the robot frame.
  const mx = nx * c + ny * s;
  const my = -nx * s + ny * c;
  const base = nx * x + ny * y - offset;
  const left = span[0]!;
  const spin = Math.abs(kappa);
  const most = spin * (Math.abs(sigma) + spin * outline.radius);
  let safe = Number.POSITIVE_INFINITY;
  for (let i = 0; i < count; i++) {
    const a = vx[i]!;
    const b = vy[i]!;
    const gap = base + mx * a + my * b;
    const ahead = sigma - kappa * b;
    const aside = kappa * a;
    const rate = mx * ahead + my * aside;
    // Closing and curving on as now it stays clear all the way: no root needed.
    if (gap + ((rate < 0 ? rate : 0) - 0.5 * most * left) * left > TOUCH_MM) continue;
    // How fast this vertex's own circle bends: one near its middle would take hundreds of steps by the bound for all of them.
    const curve = spin * Math.sqrt(ahead * ahead + aside * aside);
    if (gap <= TOUCH_MM) {
      const place = my * a - mx * b;
      const sliding = my * sigma - kappa * (mx * a + my * b) < 0 ? -TOUCH_MM : TOUCH_MM;
      if (place < low - sliding || place > high - sliding) continue;
      if (rate < -RATE_EPS) return setTouch(out, "plane", ground, nx, ny, offset);
      if (rate <= RATE_EPS) {
        const bend = kappa * sigma * my - kappa * kappa * (mx * a + my * b);
        if (bend < 0) return setTouch(out, "guided", ground, nx, ny, offset);
      }
      if (curve > 0) safe = Math.min(safe, leavingStep(rate, curve));
    } else {
      // Stop half a touch tolerance short of contact: reached in finitely many steps, and never overlapping.
      safe = Math.min(safe, safeStep(gap - 0.5 * TOUCH_MM, rate, curve));
    }
  }
  return safe;
}

export function setTouch(
  out: Touch,
  kind: "plane" | "guided" | "corner",
  ground: boolean,
  nx: number,
  ny: number,
  offset: number,
): number {
  out.kind = kind;
  out.ground = ground;
  out.nx = nx;
  out.ny = ny;
  out.offset = offset;
  return 0;
}

/** How far the origin may come off the straight line ahead within `left`. */
export function bowOf({ sigma, kappa }: Motion, left: number): number {
  return 0.5 * Math.abs(sigma * kappa) * left * left;
}

export function isSameFace(touch: Touch, nx: number, ny: number, offset: number): boolean {
  return touch.nx === nx && touch.ny === ny && touch.offset === offset;
}
