import { atan2, sinCos } from "../num/elementary.ts";
import type { FaceSpan } from "./face.kernel.ts";
import type { ConvexOutline } from "./surroundings.ts";
import { type Motion, RATE_EPS, TOUCH_MM, type Touch, trig } from "./touch.kernel.ts";

/**
 * A robot that leans with a vertex on the face it touches: which vertex that is, and how far it may turn so. Vertices are
 * given in the robot frame, mm; angles in rad; `pose` holds the commanded motion, per mm or rad of progress.
 */

/** Longest rotation of one piece, rad: the yaw rule is looked at again at every piece. */
export const PIVOT_STEP_RAD = 0.07;
/** Lever arms below this never turn the robot, mm. */
export const MIN_LEVER_MM = 1;
/** How far the vertex may stray from the face within a piece, mm (twice that at worst): within the overlap that is allowed, 0.1 mm. */
export const STRAY_MM = 0.03;
/** Vertices within this of the face count as touching when a push is resolved, mm. */
const FLUSH_MM = 4 * TOUCH_MM;

/** Distance of the vertex (a, b) from the face, mm. */
function gapAt({ nx, ny, offset }: Touch, pose: Motion, a: number, b: number): number {
  return nx * (pose.x + pose.c * a - pose.s * b) + ny * (pose.y + pose.s * a + pose.c * b) - offset;
}

/** Place of the vertex (a, b) along the face, mm, on the tangent (ny, −nx). */
export function placeOn(touch: Touch, pose: Motion, a: number, b: number): number {
  return originOn(touch, pose) + leverAt(touch, pose.c, pose.s, a, b);
}

/** Lever arm of the face's push at the vertex (a, b) of a robot that heads along (c, s), mm. */
export function leverAt(touch: Touch, c: number, s: number, a: number, b: number): number {
  return (touch.ny * c - touch.nx * s) * a - (touch.nx * c + touch.ny * s) * b;
}

/** Place of the origin along the face, mm, on the tangent (ny, −nx). */
function originOn({ nx, ny }: Touch, pose: Motion): number {
  return ny * pose.x - nx * pose.y;
}

/**
 * Fills `out` with the stretch of the face, from place to place on its tangent, along which the robot's vertices lie on it.
 * Empty (from +∞ to −∞) if none does.
 */
export function restingOn(touch: Touch, pose: Motion, outline: ConvexOutline, out: FaceSpan): void {
  out.low = Number.POSITIVE_INFINITY;
  out.high = Number.NEGATIVE_INFINITY;
  for (let i = 0; i < outline.count; i++) {
    const a = outline.x[i]!;
    const b = outline.y[i]!;
    if (gapAt(touch, pose, a, b) > FLUSH_MM) continue;
    const place = placeOn(touch, pose, a, b);
    out.low = Math.min(out.low, place);
    out.high = Math.max(out.high, place);
  }
}

/** Lever arm at which the face, from `span.low` to `span.high`, pushes on the vertex (a, b), or on the edge beside it from the face's end. */
function leverWithin(touch: Touch, pose: Motion, span: FaceSpan, a: number, b: number): number {
  const lever = leverAt(touch, pose.c, pose.s, a, b);
  const origin = originOn(touch, pose);
  return Math.min(span.high - origin, Math.max(span.low - origin, lever));
}

/**
 * Vertex that stays on the face when the robot turns: of all that press on it, the one with the smallest lever. Where a vertex
 * lies beyond the end of the face, it is that end which presses. −1: it is held flush, or moves off by itself.
 */
export function pressing(touch: Touch, pose: Motion, outline: ConvexOutline, span: FaceSpan): number {
  let best = -1;
  let bestLever = Number.POSITIVE_INFINITY;
  let left = false;
  let right = false;
  for (let i = 0; i < outline.count; i++) {
    const a = outline.x[i]!;
    const b = outline.y[i]!;
    if (gapAt(touch, pose, a, b) > FLUSH_MM) continue;
    const lever = leverWithin(touch, pose, span, a, b);
    if (lever > 0) left = true;
    else right = true;
    if (Math.abs(lever) < bestLever) {
      bestLever = Math.abs(lever);
      best = i;
    }
  }
  return left && right ? -1 : best;
}

/** Vertex that the commanded curve presses hardest on the face although the robot drives away from it; −1: none. */
export function trailing(touch: Touch, pose: Motion, outline: ConvexOutline, span: FaceSpan): number {
  const away = pose.sigma * (touch.nx * pose.c + touch.ny * pose.s);
  let best = -1;
  let least = -RATE_EPS;
  for (let i = 0; i < outline.count; i++) {
    const a = outline.x[i]!;
    const b = outline.y[i]!;
    if (gapAt(touch, pose, a, b) > FLUSH_MM) continue;
    const own = away + pose.kappa * leverWithin(touch, pose, span, a, b);
    if (own >= least) continue;
    least = own;
    best = i;
  }
  return best;
}

/** How fast the vertex (a, b) slides along the face, to growing places, when the robot turns at `kappa`. */
export function slideSpeed(touch: Touch, pose: Motion, a: number, b: number, kappa: number): number {
  const along = touch.ny * pose.c - touch.nx * pose.s;
  const ahead = touch.nx * (pose.c * a - pose.s * b) + touch.ny * (pose.s * a + pose.c * b);
  return pose.sigma * along - kappa * ahead;
}

/** Puts the vertex (a, b) exactly on the face: takes back the touch tolerance, or what an interrupted piece strayed. */
export function restOn(touch: Touch, pose: Motion, a: number, b: number): void {
  const gap = gapAt(touch, pose, a, b);
  pose.x -= gap * touch.nx;
  pose.y -= gap * touch.ny;
}

/** Curvature at which the vertex (a, b) slides along the face halfway through a piece of length dq that begins with curvature `first`. */
export function slidingCurve(
  touch: Touch,
  pose: Motion,
  a: number,
  b: number,
  first: number,
  dq: number,
): number {
  sinCos(0.5 * first * dq, trig);
  const c = pose.c * trig[1]! - pose.s * trig[0]!;
  const s = pose.s * trig[1]! + pose.c * trig[0]!;
  return (-pose.sigma * (touch.nx * c + touch.ny * s)) / leverAt(touch, c, s, a, b);
}

/**
 * Angle that one piece may turn so that the vertex (a, b), on its arc, strays little from the face: chord·angle/8. No
 * further than to where the heading lies along the face, so that the chord is at most twice what the rate at the start gives.
 */
export function straightAngle(
  touch: Touch,
  pose: Motion,
  a: number,
  b: number,
  rate: number,
  lever: number,
): number {
  const along = touch.nx * pose.s - touch.ny * pose.c;
  const ahead = touch.nx * (pose.c * a - pose.s * b) + touch.ny * (pose.s * a + pose.c * b);
  const travel = Math.abs(pose.sigma * along - (rate / lever) * ahead) + 1e-9;
  const even = Math.sqrt(Math.abs((8 * STRAY_MM * rate) / (lever * travel)));
  return Math.min(PIVOT_STEP_RAD, even, -rate / (Math.abs(along) + 1e-9));
}

/** Angle to turn in direction `turn` until the commanded curve takes the vertex (a, b) off the face, which it closes on at `own` < 0 now. */
export function leavingAngle(
  touch: Touch,
  pose: Motion,
  a: number,
  b: number,
  own: number,
  turn: number,
): number {
  const along = touch.ny * pose.c - touch.nx * pose.s;
  const into = touch.nx * pose.c + touch.ny * pose.s;
  // What it closes at goes as own·cos φ + gain·sin φ.
  const gain = pose.sigma * along - pose.kappa * (into * a + along * b);
  return atan2(-own, gain * turn);
}

/** Angle ≥ 0 to turn in direction `turn` until the next edge of the hull lies on the face. */
export function flushAngle(
  touch: Touch,
  pose: Motion,
  outline: ConvexOutline,
  vertex: number,
  turn: number,
): number {
  // Turning counter-clockwise brings the edge before the vertex onto the wall, clockwise the one after it.
  const edge = turn > 0 ? (vertex + outline.count - 1) % outline.count : vertex;
  const ex = outline.normalX[edge]!;
  const ey = outline.normalY[edge]!;
  const wx = pose.c * ex - pose.s * ey;
  const wy = pose.s * ex + pose.c * ey;
  const cross = wx * -touch.ny - wy * -touch.nx;
  const dot = wx * -touch.nx + wy * -touch.ny;
  return Math.max(0, turn * atan2(cross, dot));
}
