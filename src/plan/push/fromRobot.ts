import type { PointMm } from "../../model/zone.ts";
import type { Pose } from "../../motion/pose.ts";
import { cos, sin } from "../../num/elementary.ts";

/** How far a point is ahead of a pose, mm. */
export function aheadOf({ xMm, yMm, headingRad }: Pose, point: PointMm): number {
  return cos(headingRad) * (point.xMm - xMm) + sin(headingRad) * (point.yMm - yMm);
}

/** How far a point is to the left of a pose's line, mm. */
export function leftOf({ xMm, yMm, headingRad }: Pose, point: PointMm): number {
  return cos(headingRad) * (point.yMm - yMm) - sin(headingRad) * (point.xMm - xMm);
}

export function distanceTo(from: PointMm, to: PointMm): number {
  const dx = to.xMm - from.xMm;
  const dy = to.yMm - from.yMm;
  return Math.sqrt(dx * dx + dy * dy);
}
