import { bx, by, mode, OUT, radius } from "./balls.kernel.ts";

/**
 * Distance from (x, y) to the nearest ball of this worker's world within a cone, as they lie now; see faceDistance (motion/faces.kernel).
 * `ahead`: how far ball i is off its place, x and y by turns.
 */
export function ballDistance(
  balls: number,
  ahead: Float64Array,
  x: number,
  y: number,
  c: number,
  s: number,
  ch: number,
  sh: number,
): number {
  let best = Number.POSITIVE_INFINITY;
  for (let i = 0; i < balls; i++) {
    if (mode[i] === OUT) continue;
    const dx = bx[i]! + ahead[2 * i]! - x;
    const dy = by[i]! + ahead[2 * i + 1]! - y;
    const px = c * dx + s * dy;
    const py = c * dy - s * dx;
    const r = radius[i]!;
    const aside = py < 0 ? -py : py;
    const d2 = px * px + py * py;
    if (px > 0 && aside * ch <= px * sh) {
      best = Math.min(best, Math.sqrt(d2) - r);
      continue;
    }
    // Along the nearer side of the cone: the ball is met there, or not at all.
    const along = px * ch + aside * sh;
    const off2 = d2 - along * along;
    if (along > 0 && off2 < r * r) best = Math.min(best, along - Math.sqrt(r * r - off2));
  }
  return best < 0 ? 0 : best;
}
