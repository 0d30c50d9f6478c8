import type { PointMm, Zone } from "../model/zone.ts";

/** A place or a shift in CSS pixels of the drawing, y down. */
export interface PointPx {
  readonly x: number;
  readonly y: number;
}

/** Free space around the zone, CSS pixels: room for wall labels and the scale bar. */
export interface MarginPx {
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
}

/** A drawing whose shorter side is no longer than this is drawn as it is, CSS pixels. */
const PLAIN_PX = 900;
const MOST_ZOOM = 2.5;

/** How much larger labels, lines and marks are drawn: with the drawing, on screens that nobody sits nearer to. */
export function zoomOf(widthPx: number, heightPx: number): number {
  return Math.min(MOST_ZOOM, Math.max(1, Math.min(widthPx, heightPx) / PLAIN_PX));
}

/**
 * Millimetres to pixels: the one place that knows the scale and that the screen's y runs down.
 * Everything else in view/ asks it.
 */
export class Viewport {
  readonly widthPx: number;
  readonly heightPx: number;
  readonly scalePxPerMm: number;
  readonly #originPx: PointPx;

  /**
   * Fits the zone, centred, into a canvas of the given CSS size less the margin. The scale is the same in both
   * directions and at least 0.01 px/mm, so that a canvas that is not laid out yet (0 × 0) still gives finite numbers.
   */
  constructor(zone: Pick<Zone, "widthMm" | "heightMm">, widthPx: number, heightPx: number, margin: MarginPx) {
    const freeWidth = widthPx - margin.left - margin.right;
    const freeHeight = heightPx - margin.top - margin.bottom;
    this.widthPx = widthPx;
    this.heightPx = heightPx;
    this.scalePxPerMm = Math.max(0.01, Math.min(freeWidth / zone.widthMm, freeHeight / zone.heightMm));
    const spareWidth = freeWidth - zone.widthMm * this.scalePxPerMm;
    const spareHeight = freeHeight - zone.heightMm * this.scalePxPerMm;
    this.#originPx = {
      x: margin.left + spareWidth / 2,
      y: heightPx - margin.bottom - spareHeight / 2,
    };
  }

  /** A length. */
  px(lengthMm: number): number {
    return lengthMm * this.scalePxPerMm;
  }

  x(xMm: number): number {
    return this.#originPx.x + xMm * this.scalePxPerMm;
  }

  y(yMm: number): number {
    return this.#originPx.y - yMm * this.scalePxPerMm;
  }

  /** A place in the zone. */
  point(point: PointMm): PointPx {
    return { x: this.x(point.xMm), y: this.y(point.yMm) };
  }

  /** A place in a frame of its own (the robot's), to be moved and turned by the scene graph. */
  local(point: PointMm): PointPx {
    return { x: point.xMm * this.scalePxPerMm, y: -point.yMm * this.scalePxPerMm };
  }

  /** Counter-clockwise radians to the scene graph's clockwise ones. */
  rotation(headingRad: number): number {
    return -headingRad;
  }
}

/**
 * Viewports of a drawing that is zoomed by `zoomOf`.
 *
 * @param size of the drawing on the page, CSS pixels
 * @param margin as it is without zoom
 * @returns `scene` for what is drawn, in the scene's own pixels; `page` for what is laid over it, in CSS pixels
 */
export function zoomedViewports(
  zone: Pick<Zone, "widthMm" | "heightMm">,
  { widthPx, heightPx }: { readonly widthPx: number; readonly heightPx: number },
  { left, right, top, bottom }: MarginPx,
): { readonly scene: Viewport; readonly page: Viewport } {
  const zoom = zoomOf(widthPx, heightPx);
  const margin = { left: zoom * left, right: zoom * right, top: zoom * top, bottom: zoom * bottom };
  return {
    scene: new Viewport(zone, widthPx / zoom, heightPx / zoom, { left, right, top, bottom }),
    page: new Viewport(zone, widthPx, heightPx, margin),
  };
}
