import type { Box } from "./obstacles.ts";
import type { ConvexOutline, Surroundings } from "./surroundings.ts";
import {
  bowOf,
  isSameFace,
  leavingStep,
  type Motion,
  RATE_EPS,
  safeStep,
  setTouch,
  span,
  state,
  TOUCH_MM,
  type Touch,
  testFace,
} from "./touch.kernel.ts";

/** First touch of the robot's hull with boxes, the parts of the doorway wall and keep-outs: at a face, or at a corner. */

export function testBoxes(
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
function testBox(around: Surroundings, motion: Motion, box: Box, out: Touch, ignore: Touch | null): number {
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
  if (edge.gap < gaps[face]! - TOUCH_MM) return testFace(around, motion, false, nx, ny, offset, out);
  return testAlong(around, motion, box, nx, ny, offset, edge.index, out, ignore);
}

/** A hull edge `i` lies along a face of a box: what of it is beyond an end of the face may pass that post. */
function testAlong(
  around: Surroundings,
  motion: Motion,
  box: Box,
  nx: number,
  ny: number,
  offset: number,
  i: number,
  out: Touch,
  ignore: Touch | null,
): number {
  const { whole } = around;
  // Places along the tangent (ny, −nx).
  const origin = ny * state.x - nx * state.y;
  const one = ny * box.minX - nx * box.minY;
  const other = ny * box.maxX - nx * box.maxY;
  const low = Math.min(one, other);
  const high = Math.max(one, other);
  const face = testFace(around, motion, false, nx, ny, offset, out, low - origin, high - origin);
  if (out.kind !== "none") return 0;
  const ahead = ny * state.c - nx * state.s;
  const aside = nx * state.c + ny * state.s;
  const j = (i + 1) % whole.count;
  const from = origin + ahead * whole.x[i]! - aside * whole.y[i]!;
  const to = origin + ahead * whole.x[j]! - aside * whole.y[j]!;
  let safe = face;
  for (let end = 0; end < 2 && out.kind === "none"; end++) {
    const place = end === 0 ? low : high;
    if (Math.min(from, to) > place + TOUCH_MM || Math.max(from, to) < place - TOUCH_MM) continue;
    const x = offset * nx + place * ny;
    const y = offset * ny - place * nx;
    safe = Math.min(safe, testPost(around, motion, x, y, i, out, ignore));
  }
  // What turns the robot there is told from where all of it lies on the face.
  return out.kind === "none" ? safe : setTouch(out, "plane", false, nx, ny, offset);
}

const widest = { index: 0, gap: 0 };

/** The hull edge whose outward side keeps the box farthest away. */
function widestEdge(around: Surroundings, box: Box): typeof widest {
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

/** The corners of a box against hull edge `i`. */
function testCorner(
  around: Surroundings,
  motion: Motion,
  box: Box,
  i: number,
  out: Touch,
  ignore: Touch | null,
): number {
  let safe = Number.POSITIVE_INFINITY;
  for (let k = 0; k < 4 && out.kind === "none"; k++) {
    const x = k & 1 ? box.minX : box.maxX;
    const y = k & 2 ? box.minY : box.maxY;
    safe = Math.min(safe, testPost(around, motion, x, y, i, out, ignore));
  }
  return safe;
}

/** One corner of a box against hull edge `i`: the corner moves in the robot frame. */
function testPost(
  { whole }: Surroundings,
  motion: Motion,
  x: number,
  y: number,
  i: number,
  out: Touch,
  ignore: Touch | null,
): number {
  if (ignore !== null && ignore.kind === "corner" && ignore.nx === x && ignore.ny === y)
    return Number.POSITIVE_INFINITY;
  const ex = whole.normalX[i]!;
  const ey = whole.normalY[i]!;
  const level = ex * whole.x[i]! + ey * whole.y[i]!;
  const dx = x - state.x;
  const dy = y - state.y;
  const px = state.c * dx + state.s * dy;
  const py = -state.s * dx + state.c * dy;
  const gap = ex * px + ey * py - level;
  // The corner moves against the robot, on a circle.
  const ahead = motion.sigma - motion.kappa * py;
  const aside = motion.kappa * px;
  const rate = -ex * ahead - ey * aside;
  const curve = Math.abs(motion.kappa) * Math.sqrt(ahead * ahead + aside * aside);
  if (gap > TOUCH_MM) return safeStep(gap - 0.5 * TOUCH_MM, rate, curve);
  if (rate < -RATE_EPS && !passes(whole, i, px, py, motion)) {
    out.edge = i;
    return setTouch(out, "corner", false, x, y, Number.NaN);
  }
  return curve > 0 ? leavingStep(rate, curve) : Number.POSITIVE_INFINITY;
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
