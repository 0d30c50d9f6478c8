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
