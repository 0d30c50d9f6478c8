import { offsetOf } from "../geometry/offset.ts";
import { differenceOf, type Region, rectangle, regionAreaMm2, unionOf } from "../geometry/region.ts";
import type { Zone } from "../model/zone.ts";
import { wedgeTriangle } from "../model/zoneFrame.ts";

/** Where the centre of a ball can lie on the floor. */
export interface Reachable {
  readonly region: Region;
  readonly areaMm2: number;
  /** By how much the true area may be smaller: the round corners around keep-outs are bounded from inside. */
  readonly excessMm2: number;
}

/**
 * The zone without a strip of the ball's radius along its walls, without the keep-outs grown by the radius (corners round),
 * without the wedge's triangle (a centre there is home already). The doorway counts as wall: a ball in it lies outside the zone.
 * The layout's margins and forbidden regions do not matter here: a ball that was pushed can come to rest there.
 */
export function reachableFloor(zone: Zone, radiusMm: number): Reachable {
  const r = radiusMm;
  const floor = rectangle(r, r, zone.widthMm - r, zone.heightMm - r);
  const wedge = wedgeTriangle(zone).flatMap(({ xMm, yMm }) => [xMm, yMm]);
  const free = differenceOf(floor, [wedge]);
  if (zone.keepOuts.length === 0) return { region: free, areaMm2: regionAreaMm2(free), excessMm2: 0 };
  const blocks = unionOf(
    zone.keepOuts.flatMap(({ xMm, yMm, widthMm, heightMm }) =>
      rectangle(xMm, yMm, xMm + widthMm, yMm + heightMm),
    ),
  );
  const region = differenceOf(free, offsetOf(blocks, r, "inside"));
  const least = differenceOf(free, offsetOf(blocks, r, "outside"));
  const areaMm2 = regionAreaMm2(region);
  return { region, areaMm2, excessMm2: areaMm2 - regionAreaMm2(least) };
}
