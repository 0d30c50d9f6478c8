import type { PointMm } from "../../model/zone.ts";
import type { Scaled } from "../drawing/handle.ts";

/** What a sheet shows: a rectangle of lengths, in millimetres or, for a photo as it was taken, in its own points. */
export interface Extent {
  readonly left: number;
  readonly right: number;
  readonly low: number;
  readonly high: number;
}

export interface SheetView extends Scaled {
  /** The place under a pixel of the sheet. */
  place(xPx: number, yPx: number): PointMm;
}

/** Free space around the extent, px. */
const MARGIN_PX = 28;

/** Shows an extent as large as it fits into a sheet, made larger `zoom` times around a centre. */
export function sheetView(
  extent: Extent,
  centre: PointMm,
  zoom: number,
  widthPx: number,
  heightPx: number,
): SheetView {
  const fit = Math.min(
    (widthPx - 2 * MARGIN_PX) / (extent.right - extent.left),
    (heightPx - 2 * MARGIN_PX) / (extent.high - extent.low),
  );
  const scale = Math.max(0.001, fit) * zoom;
  const originX = widthPx / 2 - centre.xMm * scale;
  const originY = heightPx / 2 + centre.yMm * scale;
  return {
    scalePxPerMm: scale,
    x: (xMm) => originX + xMm * scale,
    y: (yMm) => originY - yMm * scale,
    place: (xPx, yPx) => ({ xMm: (xPx - originX) / scale, yMm: (originY - yPx) / scale }),
  };
}

export function extentOf(points: readonly PointMm[]): Extent {
  const xs = points.map(({ xMm }) => xMm);
  const ys = points.map(({ yMm }) => yMm);
  return { left: Math.min(...xs), right: Math.max(...xs), low: Math.min(...ys), high: Math.max(...ys) };
}

export function middleOf({ left, right, low, high }: Extent): PointMm {
  return { xMm: (left + right) / 2, yMm: (low + high) / 2 };
}
