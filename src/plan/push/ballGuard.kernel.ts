import { sinCos } from "../../num/elementary.ts";

/**
 * Least distance between a moving convex outline and a point that stays. Seen from the robot the point runs along a line or
 * a circle; the circle is followed in chords that stray less than 0.1 mm.
 */

const STRAY_MM = 0.1;
const trig = new Float64Array(2);

/**
 * @param hull flat [x0, y0, …], counter-clockwise, robot frame, mm
 * @param ahead, left the point in the robot frame at the start, mm
 * @param sigma, kappa velocity (±1, or 0 on the spot) and heading change per unit of progress
 * @returns distance in mm, 0 inside; may stop at the first value below `enough`
 */
export function leastGap(
  hull: Float64Array,
  ahead: number,
  left: number,
  sigma: number,
  kappa: number,
  length: number,
  enough: number,
): number {
  if (kappa === 0) return chordGap(hull, ahead, left, ahead - sigma * length, left);
  // In the robot frame the point turns by −κ per unit about the centre of the robot's own circle.
  const centre = sigma / kappa;
  const radius = Math.sqrt(ahead * ahead + (left - centre) * (left - centre));
  const angle = Math.abs(kappa) * length;
  const chords = Math.max(1, Math.ceil(angle / Math.sqrt((8 * STRAY_MM) / Math.max(radius, 1))));
  sinCos((-kappa * length) / chords, trig);
  const s = trig[0]!;
  const c = trig[1]!;
  let x = ahead;
  let y = left - centre;
  let least = Number.POSITIVE_INFINITY;
  for (let i = 0; i < chords; i++) {
    const nx = c * x - s * y;
    const ny = s * x + c * y;
    least = Math.min(least, chordGap(hull, x, y + centre, nx, ny + centre) - STRAY_MM);
    if (least < enough) return least;
    x = nx;
    y = ny;
  }
  return least;
}

/** Distance between a segment and a convex outline with its inside. */
function chordGap(hull: Float64Array, ax: number, ay: number, bx: number, by: number): number {
  let enter = 0;
  let leave = 1;
  let least = Number.POSITIVE_INFINITY;
  const n = hull.length;
  for (let i = 0; i < n; i += 2) {
    const j = i + 2 === n ? 0 : i + 2;
    const px = hull[i]!;
    const py = hull[i + 1]!;
    const ex = hull[j]! - px;
    const ey = hull[j + 1]! - py;
    // Inside is to the left of every edge.
    const a = ex * (ay - py) - ey * (ax - px);
    const b = ex * (by - py) - ey * (bx - px);
    if (a < 0 && b < 0) leave = -1;
    else if (a < 0) enter = Math.max(enter, a / (a - b));
    else if (b < 0) leave = Math.min(leave, a / (a - b));
    least = Math.min(
      least,
      toSegment2(ax, ay, px, py, ex, ey),
      toSegment2(bx, by, px, py, ex, ey),
      toSegment2(px, py, ax, ay, bx - ax, by - ay),
    );
  }
  return enter <= leave ? 0 : Math.sqrt(least);
}

function toSegment2(x: number, y: number, px: number, py: number, ex: number, ey: number): number {
  const length2 = ex * ex + ey * ey;
  let t = length2 > 0 ? ((x - px) * ex + (y - py) * ey) / length2 : 0;
  if (t < 0) t = 0;
  else if (t > 1) t = 1;
  const dx = x - px - t * ex;
  const dy = y - py - t * ey;
  return dx * dx + dy * dy;
}
