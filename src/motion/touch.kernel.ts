import { sinCos } from "../num/elementary.ts";
import type { ConvexOutline, Surroundings } from "./surroundings.ts";

/**
 * First touch of a moving robot with its surroundings by conservative advancement: a step is never longer than the
 * gap allows at its closing rate and the bound on how fast that rate can change (Mirtich 1996, with the second-order
 * term). "Progress" q is the path parameter: mm driven, or rad turned on the spot.
 * A little over 300 lines: faces, boxes and box corners are tested on one state.
 */

/** A vertex this near to a wall touches it, mm: a hundredth of the overlap the engine tolerates (0.1 mm). */
export const TOUCH_MM = 1e-3;
/** Closing rates below this count as sliding along, per unit of progress: a heading 1e-9 rad off a wall is parallel. */
export const RATE_EPS = 1e-9;
/** How far a touching vertex that moves off in a curve may have come back before it is looked at again, mm. */
const RETURN_MM = 0.02;
/** Conservative steps before a nearly tangent approach is taken as a touch; 12 are usual at the most. */
const MAX_STEPS = 80;

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
function safeStep(gap: number, rate: number, curve: number): number {
  if (curve <= 0) return rate < 0 ? gap / -rate : Number.POSITIVE_INFINITY;
  const root = Math.sqrt(rate * rate + 2 * curve * gap);
  return rate < 0 ? (2 * gap) / (root - rate) : (rate + root) / curve;
}

/** Step after which a touching vertex that leaves at `rate` ≥ 0 is back at the face at the earliest, or at most RETURN_MM behind it. */
function leavingStep(rate: number, curve: number): number {
  return Math.max((2 * rate) / curve, Math.sqrt((2 * RETURN_MM) / curve));
}

const state = { x: 0, y: 0, c: 1, s: 0 };
/** How far the search goes from the state: beyond that any answer does. In an array, so that it is not put on the heap anew at every call. */
const span = new Float64Array(1);

/**
 * Searches along the motion for at most `length`; fills `out`. Touching faces along which the robot only slides do not
 * count; one that a curve presses against gives "guided".
 */
export function findTouch(
  around: Surroundings,
  motion: Motion,
  length: number,
  out: Touch,
  ignore: Touch | null,
): void {
  state.x = motion.x;
  state.y = motion.y;
  state.c = motion.c;
  state.s = motion.s;
  out.kind = "none";
  let q = 0;
  for (let step = 0; step < MAX_STEPS; step++) {
    const left = length - q;
    let safe = testPlanes(around, motion, left, out, ignore);
    if (out.kind === "none") safe = Math.min(safe, testBoxes(around, motion, left, out, ignore));
    if (out.kind !== "none") break;
    if (safe >= left) {
      q = length;
      break;
    }
    q += safe;
    advancePose(state, motion.sigma, motion.kappa, safe);
  }
  out.q = q;
}

/** Tests one face (nx, ny, offset) against all vertices of an outline; returns the safe step or sets out.kind. */
function testFace(
  around: Surroundings,
  motion: Motion,
  ground: boolean,
  nx: number,
  ny: number,
  offset: number,
  out: Touch,
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
  const curve = Math.abs(kappa * sigma) + kappa * kappa * outline.radius;
  let safe = Number.POSITIVE_INFINITY;
  for (let i = 0; i < count; i++) {
    const a = vx[i]!;
    const b = vy[i]!;
    const gap = base + mx * a + my * b;
    const rate = mx * (sigma - kappa * b) + my * kappa * a;
    // Closing and curving on as now it stays clear all the way: no root needed.
    if (gap + ((rate < 0 ? rate : 0) - 0.5 * curve * left) * left > TOUCH_MM) continue;
    if (gap <= TOUCH_MM) {
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

function setTouch(
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

function testPlanes(
  around: Surroundings,
  motion: Motion,
  left: number,
  out: Touch,
  ignore: Touch | null,
): number {
  let safe = Number.POSITIVE_INFINITY;
  const { planes } = around;
  const bow = bowOf(motion, left);
  for (let k = 0; k < planes.length; k++) {
    const plane = planes[k]!;
    const ground = plane.stops === "ground";
    if (ignore !== null && isSameFace(ignore, plane.nx, plane.ny, plane.offset)) continue;
    const radius = ground ? around.ground.radius : around.whole.radius;
    const clear = plane.nx * state.x + plane.ny * state.y - plane.offset - radius;
    const toward = motion.sigma * (plane.nx * state.c + plane.ny * state.s) * left;
    if (clear + (toward < 0 ? toward : 0) > bow) continue;
    span[0] = left;
    safe = Math.min(safe, testFace(around, motion, ground, plane.nx, plane.ny, plane.offset, out));
    if (out.kind !== "none") return 0;
  }
  return safe;
}

/** How far the origin may come off the straight line ahead within `left`. */
function bowOf({ sigma, kappa }: Motion, left: number): number {
  return 0.5 * Math.abs(sigma * kappa) * left * left;
}

export function isSameFace(touch: Touch, nx: number, ny: number, offset: number): boolean {
  return touch.nx === nx && touch.ny === ny && touch.offset === offset;
}

function testBoxes(
  around: Surroundings,
  motion: Motion,
  left: number,
  out: Touch,
  ignore: Touch | null,
): number {
  let safe = Number.POSITIVE_INFINITY;
  const { boxes } = around;
  const reach = around.whole.radius + bowOf(motion, left);
  const aheadX = motion.sigma * state.c * left;
  const aheadY = motion.sigma * state.s * left;
  const minX = state.x - reach + (aheadX < 0 ? aheadX : 0);
  const maxX = state.x + reach + (aheadX > 0 ? aheadX : 0);
  const minY = state.y - reach + (aheadY < 0 ? aheadY : 0);
  const maxY = state.y + reach + (aheadY > 0 ? aheadY : 0);
  for (let k = 0; k < boxes.length; k++) {
    const box = boxes[k]!;
    if (minX > box.maxX || maxX < box.minX || minY > box.maxY || maxY < box.minY) continue;
    span[0] = left;
    safe = Math.min(safe, testBox(around, motion, box, out, ignore));
    if (out.kind !== "none") return 0;
  }
  return safe;
}

const gaps = new Float64Array(4);

/** Separating axes of hull and box: the axis with the widest gap bounds the distance from below. */
function testBox(
  around: Surroundings,
  motion: Motion,
  box: { minX: number; minY: number; maxX: number; maxY: number },
  out: Touch,
  ignore: Touch | null,
): number {
  const { whole } = around;
  let minX = Number.POSITIVE_INFINITY;
  let maxX = Number.NEGATIVE_INFINITY;
  let minY = Number.POSITIVE_INFINITY;
  let maxY = Number.NEGATIVE_INFINITY;
  for (let i = 0; i < whole.count; i++) {
    const px = state.x + state.c * whole.x[i]! - state.s * whole.y[i]!;
    const py = state.y + state.s * whole.x[i]! + state.c * whole.y[i]!;
    minX = Math.min(minX, px);
    maxX = Math.max(maxX, px);
    minY = Math.min(minY, py);
    maxY = Math.max(maxY, py);
  }
  gaps[0] = minX - box.maxX;
  gaps[1] = box.minX - maxX;
  gaps[2] = minY - box.maxY;
  gaps[3] = box.minY - maxY;
  let face = 0;
  for (let f = 1; f < 4; f++) if (gaps[f]! > gaps[face]!) face = f;
  const edge = widestEdge(around, box);
  if (edge.gap > gaps[face]! + TOUCH_MM) return testCorner(around, motion, box, edge.index, out, ignore);
  const nx = face === 0 ? 1 : face === 1 ? -1 : 0;
  const ny = face === 2 ? 1 : face === 3 ? -1 : 0;
  const offset = face === 0 ? box.maxX : face === 1 ? -box.minX : face === 2 ? box.maxY : -box.minY;
  if (ignore !== null && isSameFace(ignore, nx, ny, offset)) return Number.POSITIVE_INFINITY;
  return testFace(around, motion, false, nx, ny, offset, out);
}

const widest = { index: 0, gap: 0 };

/** The hull edge whose outward side keeps the box farthest away. */
function widestEdge(
  around: Surroundings,
  box: { minX: number; minY: number; maxX: number; maxY: number },
): typeof widest {
  const { whole } = around;
  widest.gap = Number.NEGATIVE_INFINITY;
  for (let i = 0; i < whole.count; i++) {
    const wx = state.c * whole.normalX[i]! - state.s * whole.normalY[i]!;
    const wy = state.s * whole.normalX[i]! + state.c * whole.normalY[i]!;
    const nearX = wx > 0 ? box.minX : box.maxX;
    const nearY = wy > 0 ? box.minY : box.maxY;
    const level = whole.normalX[i]! * whole.x[i]! + whole.normalY[i]! * whole.y[i]!;
    const gap = wx * (nearX - state.x) + wy * (nearY - state.y) - level;
    if (gap > widest.gap) {
      widest.gap = gap;
      widest.index = i;
    }
  }
  return widest;
}

/** A box corner against hull edge `i`: the corner moves in the robot frame. */
function testCorner(
  around: Surroundings,
  motion: Motion,
  box: { minX: number; minY: number; maxX: number; maxY: number },
  i: number,
  out: Touch,
  ignore: Touch | null,
): number {
  const { whole } = around;
  const ex = whole.normalX[i]!;
  const ey = whole.normalY[i]!;
  const level = ex * whole.x[i]! + ey * whole.y[i]!;
  let safe = Number.POSITIVE_INFINITY;
  for (let k = 0; k < 4; k++) {
    const cornerX = k & 1 ? box.minX : box.maxX;
    const cornerY = k & 2 ? box.minY : box.maxY;
    if (ignore !== null && ignore.kind === "corner" && ignore.nx === cornerX && ignore.ny === cornerY)
      continue;
    const dx = cornerX - state.x;
    const dy = cornerY - state.y;
    const px = state.c * dx + state.s * dy;
    const py = -state.s * dx + state.c * dy;
    const gap = ex * px + ey * py - level;
    const rate = -ex * (motion.sigma - motion.kappa * py) - ey * motion.kappa * px;
    const far = Math.sqrt(px * px + py * py);
    const curve = 2 * Math.abs(motion.kappa * motion.sigma) + motion.kappa * motion.kappa * far;
    if (gap <= TOUCH_MM) {
      if (rate < -RATE_EPS && !passes(whole, i, px, py, motion)) {
        out.edge = i;
        return setTouch(out, "corner", false, cornerX, cornerY, Number.NaN);
      }
      if (curve > 0) safe = Math.min(safe, leavingStep(rate, curve));
    } else {
      safe = Math.min(safe, safeStep(gap - 0.5 * TOUCH_MM, rate, curve));
    }
  }
  return safe;
}

/** Whether a box corner at an end of hull edge `i` slides off it: past the vertex, away from the neighbouring edge. */
function passes(whole: ConvexOutline, i: number, px: number, py: number, { sigma, kappa }: Motion): boolean {
  for (let turn = 1; turn < whole.count; turn += whole.count - 2) {
    const j = (i + turn) % whole.count;
    const ex = whole.normalX[j]!;
    const ey = whole.normalY[j]!;
    if (ex * (px - whole.x[j]!) + ey * (py - whole.y[j]!) < -TOUCH_MM) continue;
    if (-ex * (sigma - kappa * py) - ey * kappa * px >= -RATE_EPS) return true;
  }
  return false;
}
