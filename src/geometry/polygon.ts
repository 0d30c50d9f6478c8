/**
 * Simple polygons as the model's checks need them. Vertices in mm, first not repeated, any orientation unless said.
 */

/** Structurally the model's own point: geometry lies below the model and cannot import it. */
export interface PointMm {
  readonly xMm: number;
  readonly yMm: number;
}

export type Polygon = readonly PointMm[];

export interface BoxMm {
  readonly minXMm: number;
  readonly minYMm: number;
  readonly maxXMm: number;
  readonly maxYMm: number;
}

/** Twice the signed area of triangle abc, mm²: positive when c lies left of the line from a to b. */
export function turn(a: PointMm, b: PointMm, c: PointMm): number {
  return (b.xMm - a.xMm) * (c.yMm - a.yMm) - (b.yMm - a.yMm) * (c.xMm - a.xMm);
}

/** Area in mm², positive for counter-clockwise vertices (shoelace formula; de Berg et al., Computational Geometry). 0 for fewer than 3. */
export function signedArea(polygon: Polygon): number {
  const origin = polygon[0];
  if (origin === undefined) return 0;
  let twice = 0;
  // Measured from the first vertex, so that a small outline far from the origin keeps its digits.
  for (let i = 1; i + 1 < polygon.length; i++) {
    twice += turn(origin, polygon[i] ?? origin, polygon[i + 1] ?? origin);
  }
  return twice / 2;
}

/** Axis-parallel bounding box; infinite and inverted (min > max) for no vertices. */
export function boundingBox(polygon: Polygon): BoxMm {
  let minXMm = Infinity;
  let minYMm = Infinity;
  let maxXMm = -Infinity;
  let maxYMm = -Infinity;
  for (const { xMm, yMm } of polygon) {
    minXMm = Math.min(minXMm, xMm);
    minYMm = Math.min(minYMm, yMm);
    maxXMm = Math.max(maxXMm, xMm);
    maxYMm = Math.max(maxYMm, yMm);
  }
  return { minXMm, minYMm, maxXMm, maxYMm };
}

/**
 * Whether the outline is one closed curve without self-contact: at least 3 vertices, no edge of length 0, no fold,
 * no two edges that cross or touch other than neighbours at their shared vertex. n² edge pairs: meant for outlines of some tens of vertices.
 */
export function isSimple(polygon: Polygon): boolean {
  const count = polygon.length;
  if (count < 3) return false;
  for (let i = 0; i < count; i++) {
    const [a, b] = edgeOf(polygon, i);
    if (a.xMm === b.xMm && a.yMm === b.yMm) return false;
    const [, c] = edgeOf(polygon, i + 1);
    if (foldsBack(a, b, c)) return false;
    for (let j = i + 2; j < count; j++) {
      // The last edge ends where the first begins: neighbours.
      if (i === 0 && j === count - 1) continue;
      const [d, e] = edgeOf(polygon, j);
      if (segmentsTouch(a, b, d, e)) return false;
    }
  }
  return true;
}

/** Vertices of the convex hull, counter-clockwise, without those inside a straight edge (Andrew's monotone chain, Inf. Proc. Letters 9, 1979). */
export function convexHull(points: Polygon): Polygon {
  const sorted = [...points].sort((a, b) => a.xMm - b.xMm || a.yMm - b.yMm);
  const lower = halfHull(sorted);
  const upper = halfHull(sorted.reverse());
  // Both chains hold both ends; when all points are alike, they are the one point.
  return lower.length < 2 ? lower : [...lower.slice(0, -1), ...upper.slice(0, -1)];
}

/** Whether the point is inside or on the boundary of a simple polygon. Even–odd ray crossing (Shimrat, Comm. ACM 5, 1962). */
export function pointInPolygon(point: PointMm, polygon: Polygon): boolean {
  let inside = false;
  for (let i = 0; i < polygon.length; i++) {
    const [a, b] = edgeOf(polygon, i);
    if (turn(a, b, point) === 0 && inBox(point, a, b)) return true;
    // Half-open in y, so that a ray through a vertex counts it once.
    if (a.yMm > point.yMm === b.yMm > point.yMm) continue;
    const upward = b.yMm > a.yMm;
    if (turn(a, b, point) > 0 === upward) inside = !inside;
  }
  return inside;
}

/** Distance from a point to a simple polygon, mm; 0 inside and on the boundary. */
export function distanceToPolygon(point: PointMm, polygon: Polygon): number {
  if (pointInPolygon(point, polygon)) return 0;
  let least = Infinity;
  for (let i = 0; i < polygon.length; i++) {
    const [a, b] = edgeOf(polygon, i);
    least = Math.min(least, distanceToSegment(point, a, b));
  }
  return least;
}

/** Whether two simple polygons have a point in common (touching counts). */
export function polygonsTouch(p: Polygon, q: Polygon): boolean {
  const [firstP, firstQ] = [p[0], q[0]];
  if (firstP === undefined || firstQ === undefined) return false;
  if (pointInPolygon(firstP, q) || pointInPolygon(firstQ, p)) return true;
  return p.some((_, i) => {
    const [a, b] = edgeOf(p, i);
    return q.some((_, j) => segmentsTouch(a, b, ...edgeOf(q, j)));
  });
}

function edgeOf(polygon: Polygon, index: number): readonly [PointMm, PointMm] {
  const origin = { xMm: 0, yMm: 0 };
  const from = polygon[index % polygon.length] ?? origin;
  const to = polygon[(index + 1) % polygon.length] ?? origin;
  return [from, to];
}

function halfHull(sorted: Polygon): PointMm[] {
  const chain: PointMm[] = [];
  for (const point of sorted) {
    for (;;) {
      const [a, b] = [chain.at(-2), chain.at(-1)];
      const repeated = b?.xMm === point.xMm && b.yMm === point.yMm;
      if (!repeated && (a === undefined || b === undefined || turn(a, b, point) > 0)) break;
      chain.pop();
    }
    chain.push(point);
  }
  return chain;
}

function foldsBack(a: PointMm, b: PointMm, c: PointMm): boolean {
  const along = (b.xMm - a.xMm) * (c.xMm - b.xMm) + (b.yMm - a.yMm) * (c.yMm - b.yMm);
  return turn(a, b, c) === 0 && along <= 0;
}

function segmentsTouch(a: PointMm, b: PointMm, c: PointMm, d: PointMm): boolean {
  const ca = turn(c, d, a);
  const cb = turn(c, d, b);
  const ac = turn(a, b, c);
  const ad = turn(a, b, d);
  if (opposite(ca, cb) && opposite(ac, ad)) return true;
  return (
    (ca === 0 && inBox(a, c, d)) ||
    (cb === 0 && inBox(b, c, d)) ||
    (ac === 0 && inBox(c, a, b)) ||
    (ad === 0 && inBox(d, a, b))
  );
}

function opposite(s: number, t: number): boolean {
  return (s > 0 && t < 0) || (s < 0 && t > 0);
}

function inBox(p: PointMm, a: PointMm, b: PointMm): boolean {
  return (
    p.xMm >= Math.min(a.xMm, b.xMm) &&
    p.xMm <= Math.max(a.xMm, b.xMm) &&
    p.yMm >= Math.min(a.yMm, b.yMm) &&
    p.yMm <= Math.max(a.yMm, b.yMm)
  );
}

function distanceToSegment(p: PointMm, a: PointMm, b: PointMm): number {
  const dx = b.xMm - a.xMm;
  const dy = b.yMm - a.yMm;
  const length2 = dx * dx + dy * dy;
  const share = length2 === 0 ? 0 : ((p.xMm - a.xMm) * dx + (p.yMm - a.yMm) * dy) / length2;
  const t = Math.max(0, Math.min(1, share));
  const x = a.xMm + t * dx - p.xMm;
  const y = a.yMm + t * dy - p.yMm;
  return Math.sqrt(x * x + y * y);
}
