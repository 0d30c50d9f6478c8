import type { PointPx } from "./viewport.ts";

/** A stroke of a hatching. */
export interface Segment {
  readonly from: PointPx;
  readonly to: PointPx;
}

/**
 * Where the straight line { p : p·normal = offset } crosses a convex outline.
 *
 * @param outline pixels, either sense of rotation, at least 3 vertices
 * @returns the chord, or null where the line misses the outline or only touches it
 */
export function chord(outline: readonly PointPx[], normal: PointPx, offset: number): Segment | null {
  const crossings: PointPx[] = [];
  for (const [index, a] of outline.entries()) {
    const b = outline[(index + 1) % outline.length] ?? a;
    const da = a.x * normal.x + a.y * normal.y - offset;
    const db = b.x * normal.x + b.y * normal.y - offset;
    // Half-open, so that a line through a vertex crosses one of its two edges only.
    if (da < 0 === db < 0) continue;
    const share = da / (da - db);
    crossings.push({ x: a.x + share * (b.x - a.x), y: a.y + share * (b.y - a.y) });
  }
  const [from, to] = crossings;
  return from && to ? { from, to } : null;
}

/**
 * Parallel strokes that fill a convex outline.
 *
 * @param directionRad of the strokes, on the screen
 * @param gapPx between neighbouring strokes, > 0
 */
export function hatch(outline: readonly PointPx[], directionRad: number, gapPx: number): readonly Segment[] {
  const normal = { x: -Math.sin(directionRad), y: Math.cos(directionRad) };
  const offsets = outline.map((point) => point.x * normal.x + point.y * normal.y);
  const last = Math.max(...offsets);
  const strokes: Segment[] = [];
  // Multiples of the gap, not steps from the outline's edge: neighbouring outlines hatch in line.
  for (let k = Math.ceil(Math.min(...offsets) / gapPx); k * gapPx < last; k++) {
    const stroke = chord(outline, normal, k * gapPx);
    if (stroke) strokes.push(stroke);
  }
  return strokes;
}
