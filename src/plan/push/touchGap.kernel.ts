import { cos, sin } from "../../num/elementary.ts";

/**
 * Gap between a point and everything a robot can cover, over all its headings. For one heading the robot's origin may be
 * anywhere in a convex set Q, so that it covers F ⊕ Q, and the gap is the distance between the outline F and the
 * reflected set p − Q. Between headings the gap changes by at most `perRad` for each radian, so that a bisection of the
 * headings gives certain answers (Lipschitz bound; derived).
 */

/** A robot that may stand anywhere inside a rectangle and before an edge. Outlines flat [x0, y0, …], counter-clockwise, robot frame, mm. */
export interface Standing {
  readonly footprint: Float64Array;
  /** Convex hull of all that walls stop, and of what the wedge's edge stops; the latter empty where it stops nothing. */
  readonly hull: Float64Array;
  readonly ground: Float64Array;
  readonly width: number;
  readonly height: number;
  readonly edgeX: number;
  readonly edgeY: number;
  readonly edgeOffset: number;
  /** See spinReach. */
  readonly perRad: number;
}

const FAR = Number.POSITIVE_INFINITY;
/** p − Q: at most five corners. */
const quad = new Float64Array(12);
const clipped = new Float64Array(14);
const turned = new Float64Array(1024);

/** Gap from the point (px, py) to what the robot covers at one heading; infinite where it cannot stand at all. */
export function gapAt(robot: Standing, px: number, py: number, heading: number): number {
  const c = cos(heading);
  const s = sin(heading);
  const { hull, ground, footprint } = robot;
  let minX = FAR;
  let maxX = -FAR;
  let minY = FAR;
  let maxY = -FAR;
  for (let i = 0; i < hull.length; i += 2) {
    const x = c * hull[i]! - s * hull[i + 1]!;
    const y = s * hull[i]! + c * hull[i + 1]!;
    if (x < minX) minX = x;
    if (x > maxX) maxX = x;
    if (y < minY) minY = y;
    if (y > maxY) maxY = y;
  }
  // The origin runs from −minX to width − maxX; reflected about the point:
  const lowX = px - (robot.width - maxX);
  const highX = px + minX;
  const lowY = py - (robot.height - maxY);
  const highY = py + minY;
  if (lowX > highX || lowY > highY) return FAR;
  quad[0] = quad[6] = lowX;
  quad[1] = quad[3] = lowY;
  quad[2] = quad[4] = highX;
  quad[5] = quad[7] = highY;
  let level = -FAR;
  for (let i = 0; i < ground.length; i += 2) {
    const x = c * ground[i]! - s * ground[i + 1]!;
    const y = s * ground[i]! + c * ground[i + 1]!;
    level = Math.max(level, robot.edgeOffset - robot.edgeX * x - robot.edgeY * y);
  }
  // Allowed origins q have e·q ≥ level; for a = p − q that is e·a ≤ e·p − level.
  const corners = clip(robot.edgeX, robot.edgeY, robot.edgeX * px + robot.edgeY * py - level);
  if (corners === 0) return FAR;
  for (let i = 0; i < footprint.length; i += 2) {
    turned[i] = c * footprint[i]! - s * footprint[i + 1]!;
    turned[i + 1] = s * footprint[i]! + c * footprint[i + 1]!;
  }
  return ringsApart(clipped, corners, turned, footprint.length / 2);
}

/** Cuts the quad by e·a ≤ most into `clipped`; returns its number of corners. */
function clip(ex: number, ey: number, most: number): number {
  let n = 0;
  for (let i = 0; i < 4; i++) {
    const ax = quad[2 * i]!;
    const ay = quad[2 * i + 1]!;
    const j = (i + 1) & 3;
    const bx = quad[2 * j]!;
    const by = quad[2 * j + 1]!;
    const a = ex * ax + ey * ay - most;
    const b = ex * bx + ey * by - most;
    if (!(a > 0)) {
      clipped[2 * n] = ax;
      clipped[2 * n++ + 1] = ay;
    }
    if ((a > 0 && b < 0) || (a < 0 && b > 0)) {
      const t = a / (a - b);
      clipped[2 * n] = ax + t * (bx - ax);
      clipped[2 * n++ + 1] = ay + t * (by - ay);
    }
  }
  return n;
}

/** Distance between two rings with their insides, of n and m corners; 0 where they overlap. */
function ringsApart(p: Float64Array, n: number, q: Float64Array, m: number): number {
  if (inside(q, m, p[0]!, p[1]!) || inside(p, n, q[0]!, q[1]!)) return 0;
  let least = FAR;
  for (let i = 0; i < n; i++) {
    const i2 = i + 1 === n ? 0 : i + 1;
    for (let j = 0; j < m; j++) {
      const j2 = j + 1 === m ? 0 : j + 1;
      const d = segmentsApart2(
        p[2 * i]!,
        p[2 * i + 1]!,
        p[2 * i2]!,
        p[2 * i2 + 1]!,
        q[2 * j]!,
        q[2 * j + 1]!,
        q[2 * j2]!,
        q[2 * j2 + 1]!,
      );
      if (d < least) least = d;
      if (least === 0) return 0;
    }
  }
  return Math.sqrt(least);
}

function inside(ring: Float64Array, n: number, x: number, y: number): boolean {
  let odd = false;
  for (let i = 0, j = n - 1; i < n; j = i++) {
    const yi = ring[2 * i + 1]!;
    const yj = ring[2 * j + 1]!;
    if (yi > y === yj > y) continue;
    if (x < ((ring[2 * j]! - ring[2 * i]!) * (y - yi)) / (yj - yi) + ring[2 * i]!) odd = !odd;
  }
  return odd;
}

function segmentsApart2(
  ax: number,
  ay: number,
  bx: number,
  by: number,
  cx: number,
  cy: number,
  dx: number,
  dy: number,
): number {
  const side1 = (bx - ax) * (cy - ay) - (by - ay) * (cx - ax);
  const side2 = (bx - ax) * (dy - ay) - (by - ay) * (dx - ax);
  const side3 = (dx - cx) * (ay - cy) - (dy - cy) * (ax - cx);
  const side4 = (dx - cx) * (by - cy) - (dy - cy) * (bx - cx);
  if (((side1 > 0 && side2 < 0) || (side1 < 0 && side2 > 0)) && side3 > 0 !== side4 > 0) return 0;
  return Math.min(
    pointApart2(ax, ay, cx, cy, dx, dy),
    pointApart2(bx, by, cx, cy, dx, dy),
    pointApart2(cx, cy, ax, ay, bx, by),
    pointApart2(dx, dy, ax, ay, bx, by),
  );
}

/** Square of the distance of a point from a segment. */
function pointApart2(px: number, py: number, ax: number, ay: number, bx: number, by: number): number {
  const ex = bx - ax;
  const ey = by - ay;
  const length2 = ex * ex + ey * ey;
  let t = length2 > 0 ? ((px - ax) * ex + (py - ay) * ey) / length2 : 0;
  if (t < 0) t = 0;
  else if (t > 1) t = 1;
  const dx = px - ax - t * ex;
  const dy = py - ay - t * ey;
  return dx * dx + dy * dy;
}
