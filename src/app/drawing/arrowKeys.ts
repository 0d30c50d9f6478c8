import type { PointMm } from "../../model/zone.ts";

const WAYS: Readonly<Record<string, readonly [number, number]>> = {
  ArrowLeft: [-1, 0],
  ArrowRight: [1, 0],
  ArrowUp: [0, 1],
  ArrowDown: [0, -1],
};

/** Where an arrow key leads from a place, with Shift by the smaller step, mm; null for other keys, and beside Ctrl, Alt or Meta. */
export function arrowTo(
  event: KeyboardEvent,
  from: PointMm,
  steps: { readonly coarseMm: number; readonly fineMm: number },
): PointMm | null {
  const way = WAYS[event.key];
  if (!way || event.ctrlKey || event.metaKey || event.altKey) return null;
  const step = event.shiftKey ? steps.fineMm : steps.coarseMm;
  return { xMm: from.xMm + way[0] * step, yMm: from.yMm + way[1] * step };
}
