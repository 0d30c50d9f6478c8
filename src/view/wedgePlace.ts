import type { PointMm, Wedge, Zone } from "../model/zone.ts";
import { isRight, isUpper } from "../motion/obstacles.ts";
import { drawingTexts } from "../texts/english/drawing.ts";
import { lengthText } from "../texts/lengths.ts";

/** The wedge's triangle in the zone frame. */
export interface WedgePlace {
  /** The right angle, in the zone's corner. */
  readonly corner: PointMm;
  /** Ends of the long side: on the lower or upper wall, and on the left or right wall. */
  readonly onX: PointMm;
  readonly onY: PointMm;
  /** From the long side to the corner, mm. */
  readonly depthMm: number;
}

export function wedgePlace(zone: Pick<Zone, "widthMm" | "heightMm" | "wedge">): WedgePlace {
  const { corner, legXMm, legYMm } = zone.wedge;
  const at = { xMm: isRight(corner) ? zone.widthMm : 0, yMm: isUpper(corner) ? zone.heightMm : 0 };
  return {
    corner: at,
    onX: { xMm: at.xMm + (isRight(corner) ? -legXMm : legXMm), yMm: at.yMm },
    onY: { xMm: at.xMm, yMm: at.yMm + (isUpper(corner) ? -legYMm : legYMm) },
    depthMm: (legXMm * legYMm) / Math.sqrt(legXMm * legXMm + legYMm * legYMm),
  };
}

/** Distance from the long side over which the wedge rises or falls, mm. */
export function slopeRunMm(wedge: Wedge, depthMm: number): number {
  return wedge.profile === "shelf" ? Math.min(wedge.runMm, depthMm) : depthMm;
}

/** The cross-section from the long side to the corner: [distance, height], mm; the first point is the lip's foot. */
export function wedgeSection(wedge: Wedge, depthMm: number): readonly (readonly [number, number])[] {
  if (wedge.profile === "flat") {
    return [
      [0, 0],
      [depthMm, 0],
    ];
  }
  const run = slopeRunMm(wedge, depthMm);
  return [
    [0, 0],
    [0, wedge.lipMm],
    [run, wedge.riseMm],
    [depthMm, wedge.riseMm],
  ];
}

/**
 * Distances from the long side at which a line is drawn along it, like height lines on a map: the same step of height
 * between neighbours, so that close lines mean steep. Empty for a flat mark.
 */
export function heightLinesMm(wedge: Wedge, depthMm: number, count: number): readonly number[] {
  const change = wedge.riseMm - wedge.lipMm;
  if (wedge.profile === "flat" || change === 0) return [];
  const run = slopeRunMm(wedge, depthMm);
  return Array.from(
    { length: count },
    (_, k) => (run * (k + 1)) / (count + (wedge.profile === "shelf" ? 0 : 1)),
  );
}

/** The wedge's shape in plain words, heights included. */
export function wedgeWords(wedge: Wedge): string {
  const t = drawingTexts.profile;
  const lip = wedge.lipMm > 0 ? t.lip(lengthText(wedge.lipMm, 1)) : "";
  const end = lengthText(wedge.riseMm, 1);
  switch (wedge.profile) {
    case "flat":
      return t.flat;
    case "ramp":
    case "shelf":
    case "tray":
      return t[wedge.profile](lip, end);
    default:
      return wedge.profile satisfies never;
  }
}
