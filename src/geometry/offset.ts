import { type ArcStyle, arcStepRad, type Bound } from "./arc.ts";
import { GeometryError } from "./error.ts";
import { bandOutlines, rawOffset } from "./offset.kernel.ts";
import { type Region, unionOf, woundPositively } from "./region.ts";
import type { Ring } from "./ring.kernel.ts";

/** How far a straight piece may stray from the arc it stands for, mm. */
export const ARC_TOLERANCE_MM = 0.05;

/** Offsets below this change nothing on the grid, mm. */
const SMALLEST_OFFSET_MM = 0.0005;

/**
 * All points within a distance of the region (positive: it grows, corners become round), or all points of the region
 * farther than that from its outside (negative: it shrinks, inner corners become round).
 *
 * @param region as every operation returns it: outlines counter-clockwise, holes clockwise, none crossing
 * @param bound inside: a part of the true result; outside: it contains the true result. Both but for the rounding to
 *   the grid (region.ts), and nowhere farther from it than the tolerance
 * @throws GeometryError 'not-finite'
 * Source: Steiner's formula for convex outlines checks it in tests/published/areas.
 */
export function offsetOf(
  region: Region,
  distanceMm: number,
  bound: Bound,
  toleranceMm: number = ARC_TOLERANCE_MM,
): Region {
  if (!Number.isFinite(distanceMm))
    throw new GeometryError("not-finite", `offset ${distanceMm} mm; expected a number`);
  if (Math.abs(distanceMm) < SMALLEST_OFFSET_MM) return unionOf(region);
  const step = arcStepRad(Math.abs(distanceMm), toleranceMm);
  // Shrinking, the arcs bound what is taken away: the styles change places.
  const style: ArcStyle = (bound === "inside") === distanceMm > 0 ? "inscribed" : "circumscribed";
  return woundPositively(region.map((ring) => rawOffset(ring, distanceMm, step, style)));
}

/**
 * All points within a distance of a polyline, as one counter-clockwise ring per straight piece, for unionOf;
 * a single point gives a disc.
 *
 * @param flat [x0, y0, x1, y1, …], mm, at least one point
 */
export function bandRings(
  flat: readonly number[],
  radiusMm: number,
  bound: Bound,
  toleranceMm: number = ARC_TOLERANCE_MM,
): Ring[] {
  if (radiusMm < SMALLEST_OFFSET_MM) return [];
  const step = arcStepRad(radiusMm, toleranceMm);
  const style: ArcStyle = bound === "inside" ? "inscribed" : "circumscribed";
  return bandOutlines(flat, radiusMm, step, style);
}
