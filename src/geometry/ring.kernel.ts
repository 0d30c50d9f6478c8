/**
 * A closed polygon as flat numbers [x0, y0, x1, y1, …], mm, first vertex not repeated. Counter-clockwise: filled;
 * clockwise: a hole.
 */
export type Ring = readonly number[];

/** Signed area, mm²: positive for counter-clockwise vertices (shoelace formula). 0 for fewer than 3 vertices. */
export function ringAreaMm2(ring: Ring): number {
  const n = ring.length;
  if (n < 6) return 0;
  // Measured from the first vertex, so that a small ring far from the origin keeps its digits.
  const x0 = ring[0]!;
  const y0 = ring[1]!;
  let twice = 0;
  for (let i = 2; i + 3 < n; i += 2) {
    twice += (ring[i]! - x0) * (ring[i + 3]! - y0) - (ring[i + 2]! - x0) * (ring[i + 1]! - y0);
  }
  return twice / 2;
}

/** Length of the closed outline, mm. */
export function ringLengthMm(ring: Ring): number {
  const n = ring.length;
  if (n < 4) return 0;
  let sum = 0;
  let px = ring[n - 2]!;
  let py = ring[n - 1]!;
  for (let i = 0; i < n; i += 2) {
    const dx = ring[i]! - px;
    const dy = ring[i + 1]! - py;
    sum += Math.sqrt(dx * dx + dy * dy);
    px = ring[i]!;
    py = ring[i + 1]!;
  }
  return sum;
}

/** Whether a ray from (x, y) toward growing x crosses the ring an odd number of times. Points on the outline may fall on either side. */
export function ringCrossesOddly(ring: Ring, x: number, y: number): boolean {
  const n = ring.length;
  let odd = false;
  let px = ring[n - 2] ?? 0;
  let py = ring[n - 1] ?? 0;
  for (let i = 0; i < n; i += 2) {
    const qx = ring[i]!;
    const qy = ring[i + 1]!;
    if (py > y !== qy > y && x < px + ((y - py) / (qy - py)) * (qx - px)) odd = !odd;
    px = qx;
    py = qy;
  }
  return odd;
}

/** The same ring run through the other way round. */
export function ringReversed(ring: Ring): Ring {
  const out: number[] = [];
  for (let i = ring.length - 2; i >= 0; i -= 2) out.push(ring[i]!, ring[i + 1]!);
  return out;
}

/** Flat polyline or ring of the robot's frame, placed in the zone at (x, y) with the heading's cosine and sine. */
export function placed(flat: readonly number[], x: number, y: number, c: number, s: number): number[] {
  const out: number[] = [];
  for (let i = 0; i < flat.length; i += 2) {
    const px = flat[i]!;
    const py = flat[i + 1]!;
    out.push(x + c * px - s * py, y + s * px + c * py);
  }
  return out;
}
