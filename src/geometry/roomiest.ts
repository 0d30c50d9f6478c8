import { Delaunay } from "d3-delaunay";
import { bandRings } from "./offset.ts";
import { differenceOf, type Region, regionContains } from "./region.ts";
import type { CircleMm } from "./voronoi.ts";

/** Outlines are followed by points at most this far apart, mm. */
const SPACING_MM = 5;

/**
 * The largest circle inside a region: the emptiest place among points along its outlines, its centre within. Its centre is a
 * corner of a Voronoi cell of those points, that is the centre of a Delaunay triangle's circumcircle (Preparata and Shamos,
 * Computational Geometry, 1985, ch. 6.4; from memory). The radius found is at most r(1 − √(1 − (s/2r)²)) too large for points
 * s apart: 0.06 mm at r = 50; it is taken off.
 *
 * @returns null for a region in which nothing larger than `leastMm` fits
 */
export function roomiestCircle(region: Region, leastMm = SPACING_MM): CircleMm | null {
  const points = region.flatMap((ring) => pointsAlong(ring));
  if (points.length < 6) return null;
  const { triangles } = new Delaunay(Float64Array.from(points));
  let best: CircleMm | null = null;
  for (let t = 0; t + 2 < triangles.length; t += 3) {
    const circle = circumcircle(points, triangles[t] ?? 0, triangles[t + 1] ?? 0, triangles[t + 2] ?? 0);
    if (circle === null || circle.radiusMm <= (best?.radiusMm ?? leastMm)) continue;
    if (regionContains(region, circle.xMm, circle.yMm)) best = circle;
  }
  if (best === null) return null;
  const half = SPACING_MM / 2;
  return { ...best, radiusMm: Math.sqrt(best.radiusMm * best.radiusMm - half * half) };
}

/** The largest circles of a region one after the other, none overlapping those before it, largest first. */
export function roomiestCircles(region: Region, count: number, leastMm = SPACING_MM): readonly CircleMm[] {
  const circles: CircleMm[] = [];
  let left = region;
  while (circles.length < count) {
    const circle = roomiestCircle(left, leastMm);
    if (circle === null) break;
    circles.push(circle);
    left = differenceOf(left, bandRings([circle.xMm, circle.yMm], circle.radiusMm, "outside"));
  }
  return circles;
}

function pointsAlong(ring: readonly number[]): number[] {
  const points: number[] = [];
  for (let i = 0; i + 1 < ring.length; i += 2) {
    const x = ring[i] ?? 0;
    const y = ring[i + 1] ?? 0;
    const dx = (ring[(i + 2) % ring.length] ?? 0) - x;
    const dy = (ring[(i + 3) % ring.length] ?? 0) - y;
    const count = Math.max(1, Math.ceil(Math.sqrt(dx * dx + dy * dy) / SPACING_MM));
    for (let k = 0; k < count; k++) points.push(x + (dx * k) / count, y + (dy * k) / count);
  }
  return points;
}

function circumcircle(points: readonly number[], a: number, b: number, c: number): CircleMm | null {
  const ax = points[2 * a] ?? 0;
  const ay = points[2 * a + 1] ?? 0;
  const bx = (points[2 * b] ?? 0) - ax;
  const by = (points[2 * b + 1] ?? 0) - ay;
  const cx = (points[2 * c] ?? 0) - ax;
  const cy = (points[2 * c + 1] ?? 0) - ay;
  const twice = 2 * (bx * cy - by * cx);
  if (twice === 0) return null;
  const bb = bx * bx + by * by;
  const cc = cx * cx + cy * cy;
  const x = (cy * bb - by * cc) / twice;
  const y = (bx * cc - cx * bb) / twice;
  return { xMm: ax + x, yMm: ay + y, radiusMm: Math.sqrt(x * x + y * y) };
}
