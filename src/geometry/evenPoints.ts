import { GeometryError } from "./error.ts";

/**
 * Lloyd's iteration: points that fill a region evenly. Each point moves to the middle of the samples nearest to it, until nothing moves
 * any more or the rounds are over; a point that has no sample of its own stays. The region is given by its samples, so it may have any
 * shape. Cost: samples × points × rounds.
 *
 * @param samples flat [x0, y0, …], evenly over the region
 * @param start flat [x0, y0, …], where the points begin
 * @returns flat, as many as began; not necessarily inside a region that is not convex
 * @throws GeometryError 'no-points'
 * Source: Lloyd, IEEE Trans. Inf. Theory 28 (1982) 129–137. Checked in tests/published/practice.
 */
export function evenPoints(samples: Float64Array, start: readonly number[], rounds: number): Float64Array {
  if (samples.length === 0) throw new GeometryError("no-points", "a region without samples");
  const points = Float64Array.from(start);
  const count = points.length / 2;
  const sums = new Float64Array(3 * count);
  for (let round = 0; round < rounds; round++) {
    sums.fill(0);
    for (let i = 0; i < samples.length; i += 2) {
      const x = samples[i] ?? 0;
      const y = samples[i + 1] ?? 0;
      const nearest = nearestPoint(points, x, y);
      sums[3 * nearest] = (sums[3 * nearest] ?? 0) + x;
      sums[3 * nearest + 1] = (sums[3 * nearest + 1] ?? 0) + y;
      sums[3 * nearest + 2] = (sums[3 * nearest + 2] ?? 0) + 1;
    }
    let moved = false;
    for (let k = 0; k < count; k++) {
      const size = sums[3 * k + 2] ?? 0;
      if (size === 0) continue;
      const x = (sums[3 * k] ?? 0) / size;
      const y = (sums[3 * k + 1] ?? 0) / size;
      if (x !== points[2 * k] || y !== points[2 * k + 1]) moved = true;
      points[2 * k] = x;
      points[2 * k + 1] = y;
    }
    if (!moved) break;
  }
  return points;
}

/** Index of the point nearest to (x, y); of several, the first. @param points flat, at least one */
export function nearestPoint(points: Float64Array, x: number, y: number): number {
  let best = 0;
  let least = Number.POSITIVE_INFINITY;
  for (let k = 0; 2 * k < points.length; k++) {
    const dx = (points[2 * k] ?? 0) - x;
    const dy = (points[2 * k + 1] ?? 0) - y;
    const square = dx * dx + dy * dy;
    if (square < least) {
      least = square;
      best = k;
    }
  }
  return best;
}
