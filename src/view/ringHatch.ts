import type { Region } from "../geometry/region.ts";
import type { Segment } from "./hatch.ts";
import type { Viewport } from "./viewport.ts";

/**
 * Parallel strokes that fill a region, holes left out: on every line the places where it crosses an outline are paired
 * up in their order (even-odd rule).
 *
 * @param region flat rings [x0, y0, …], mm
 * @param directionRad of the strokes, on the screen
 * @param gapPx between neighbouring strokes, > 0
 */
export function hatchRegion(
  region: Region,
  viewport: Viewport,
  directionRad: number,
  gapPx: number,
): readonly Segment[] {
  const [c, s] = [Math.cos(directionRad), Math.sin(directionRad)];
  /** Crossings by line: distances along it. */
  const lines = new Map<number, number[]>();
  for (const ring of region) {
    for (let i = 0; i < ring.length; i += 2) {
      const j = (i + 2) % ring.length;
      const a = { x: viewport.x(ring[i] ?? 0), y: viewport.y(ring[i + 1] ?? 0) };
      const b = { x: viewport.x(ring[j] ?? 0), y: viewport.y(ring[j + 1] ?? 0) };
      const [across, along] = [c * a.y - s * a.x, c * a.x + s * a.y];
      const [acrossTo, alongTo] = [c * b.y - s * b.x, c * b.x + s * b.y];
      if (across === acrossTo) continue;
      const [low, high] = [Math.min(across, acrossTo), Math.max(across, acrossTo)];
      // Half-open, so that a line through a corner crosses one of its two edges only.
      for (let k = Math.ceil(low / gapPx); k * gapPx < high; k++) {
        const share = (k * gapPx - across) / (acrossTo - across);
        const crossings = lines.get(k) ?? [];
        crossings.push(along + share * (alongTo - along));
        lines.set(k, crossings);
      }
    }
  }
  return [...lines].flatMap(([k, crossings]) => {
    crossings.sort((p, q) => p - q);
    const at = (along: number) => ({ x: c * along - s * k * gapPx, y: s * along + c * k * gapPx });
    return Array.from({ length: Math.floor(crossings.length / 2) }, (_, i) => ({
      from: at(crossings[2 * i] ?? 0),
      to: at(crossings[2 * i + 1] ?? 0),
    }));
  });
}
