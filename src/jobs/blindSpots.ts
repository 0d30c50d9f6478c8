import type { Region } from "../geometry/region.ts";
import { roomiestCircles } from "../geometry/roomiest.ts";
import type { CircleMm } from "../geometry/voronoi.ts";

export interface BlindSpot extends CircleMm {
  readonly diameterMm: number;
}

const BLIND_SPOTS = 5;
/** Smaller circles are no spots, mm. */
const LEAST_SPOT_MM = 8;

/** The largest circles in what is not covered for balls of one size. Takes tens of milliseconds: done in a worker. */
export function blindSpotsOf(blind: Region, diameterMm: number): readonly BlindSpot[] {
  return roomiestCircles(blind, BLIND_SPOTS, LEAST_SPOT_MM).map((circle) => ({ ...circle, diameterMm }));
}
