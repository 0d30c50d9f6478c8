import type { Region } from "../geometry/region.ts";
import type { CircleMm } from "../geometry/voronoi.ts";
import type { PushField } from "../plan/push/pushField.ts";
import type { HeatMap } from "../score/heatMap.ts";
import type { CarrySpot } from "./carrySpots.ts";

/** good: is touched; open: may be; bad: is not. */
export type RegionLook = "good" | "open" | "bad";

/** A map that can lie over the drawing. */
export type ZoneMap =
  /** Squares by the share of balls lost that start there. */
  | { readonly kind: "heat"; readonly map: HeatMap }
  /** Squares by the seconds it takes to push a ball home from there; crosses and blocks where that cannot be done. */
  | { readonly kind: "seconds"; readonly field: PushField }
  /** Marks along the way where a ball in the pusher can be lost. */
  | { readonly kind: "carry"; readonly spots: readonly CarrySpot[] }
  /** Hatched parts of the floor, and circles in them. */
  | {
      readonly kind: "regions";
      readonly parts: readonly { readonly look: RegionLook; readonly region: Region }[];
      readonly circles: readonly CircleMm[];
    };

/** How each look is hatched: direction on the screen, gap and width in pixels. Told apart without colour. */
export const HATCHES: Readonly<
  Record<RegionLook, { readonly directionRad: number; readonly gapPx: number; readonly widthPx: number }>
> = {
  good: { directionRad: -Math.PI / 4, gapPx: 9, widthPx: 1 },
  open: { directionRad: 0, gapPx: 7, widthPx: 1 },
  bad: { directionRad: Math.PI / 4, gapPx: 5, widthPx: 2 },
};

/** Whether a place lies in a region: even-odd over its rings. */
export function inRegion(region: Region, xMm: number, yMm: number): boolean {
  let inside = false;
  for (const ring of region) {
    for (let i = 0; i < ring.length; i += 2) {
      const j = (i + 2) % ring.length;
      const [ax, ay, bx, by] = [ring[i] ?? 0, ring[i + 1] ?? 0, ring[j] ?? 0, ring[j + 1] ?? 0];
      if (ay > yMm === by > yMm) continue;
      if (xMm < ax + ((yMm - ay) / (by - ay)) * (bx - ax)) inside = !inside;
    }
  }
  return inside;
}
