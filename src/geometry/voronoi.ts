import { Delaunay } from "d3-delaunay";
import { GeometryError } from "./error.ts";
import type { BoxMm } from "./polygon.ts";

export interface CircleMm {
  readonly xMm: number;
  readonly yMm: number;
  readonly radiusMm: number;
}

/**
 * The largest circle with its centre in the box and no point inside it; it may stick out of the box. Its centre is a
 * corner of some point's Voronoi cell, clipped to the box: a Voronoi vertex, a Voronoi edge on the box's outline, or a corner
 * of the box (Preparata and Shamos, Computational Geometry, 1985, ch. 6.4; from memory). n log n.
 * Of several equally large ones, the first in the order of the points.
 *
 * @param points flat [x0, y0, …], mm, inside the box or outside it
 * @throws GeometryError 'no-points' | 'not-finite' | 'odd-length' | 'out-of-range' (a box without area)
 * Checked in tests/published/areas.
 */
export function largestEmptyCircle(points: readonly number[], box: BoxMm): CircleMm {
  checkPoints(points);
  const { minXMm, minYMm, maxXMm, maxYMm } = box;
  if (!(maxXMm > minXMm && maxYMm > minYMm)) {
    throw new GeometryError("out-of-range", "the box has no area; expected max > min");
  }
  const voronoi = new Delaunay(Float64Array.from(points)).voronoi([minXMm, minYMm, maxXMm, maxYMm]);
  let best: CircleMm = { xMm: minXMm, yMm: minYMm, radiusMm: -1 };
  for (let i = 0; i < points.length / 2; i++) {
    const px = points[2 * i] ?? 0;
    const py = points[2 * i + 1] ?? 0;
    // No cell: the cell lies outside the box, or another point lies in the same place and has it.
    for (const [x, y] of voronoi.cellPolygon(i) ?? []) {
      const radiusMm = Math.sqrt((x - px) * (x - px) + (y - py) * (y - py));
      if (radiusMm > best.radiusMm) best = { xMm: x, yMm: y, radiusMm };
    }
  }
  return best;
}

function checkPoints(points: readonly number[]): void {
  if (points.length === 0)
    throw new GeometryError("no-points", "no point bounds the circle; expected at least one");
  if (points.length % 2 !== 0) throw new GeometryError("odd-length", "points come in pairs x, y");
  if (!points.every(Number.isFinite))
    throw new GeometryError("not-finite", "a coordinate is not a finite number");
}
