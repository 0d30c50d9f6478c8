import type { Segment } from "./hatch.ts";
import type { PointPx } from "./viewport.ts";

/**
 * Cuts a polyline into dashes; the pattern runs on around corners.
 *
 * @param dashPx, gapPx lengths along the line, > 0
 */
export function dashes(line: readonly PointPx[], dashPx: number, gapPx: number): readonly Segment[] {
  const pieces: Segment[] = [];
  const period = dashPx + gapPx;
  let travelled = 0;
  for (let i = 1; i < line.length; i++) {
    const from = line[i - 1];
    const to = line[i];
    if (!from || !to) continue;
    const length = Math.sqrt((to.x - from.x) ** 2 + (to.y - from.y) ** 2);
    if (length === 0) continue;
    const at = (distance: number): PointPx => ({
      x: from.x + (distance / length) * (to.x - from.x),
      y: from.y + (distance / length) * (to.y - from.y),
    });
    for (let k = Math.floor(travelled / period); k * period < travelled + length; k++) {
      const start = Math.max(0, k * period - travelled);
      const end = Math.min(length, k * period + dashPx - travelled);
      if (end > start) pieces.push({ from: at(start), to: at(end) });
    }
    travelled += length;
  }
  return pieces;
}
