import type { PointMm, Zone } from "../model/zone.ts";
import { atan2 } from "../num/elementary.ts";
import type { Reach } from "./reach.ts";

/** Where and in which direction the last push of a ball goes; frame of frame.ts (target corner at the origin). */
export interface Target {
  /** Aimed at on the wedge's long side, where both ends of the pusher are equally far from their walls. */
  readonly aim: PointMm;
  /** Unit normal of the long side, away from the corner. */
  readonly nx: number;
  readonly ny: number;
  /** Heading of a push square to the long side. */
  readonly headingRad: number;
  /** Where the long side meets the closing walls: (legX, 0) and (0, legY). */
  readonly legXMm: number;
  readonly legYMm: number;
}

/**
 * The push line of a robot. With its ground outline at the wedge's edge the pusher is `depth` beyond it; the tips then
 * are at the aim shifted by ± half a width along the edge and −depth along the normal. Equal gaps to both walls fix the shift.
 */
export function targetOf(zone: Zone, reach: Reach): Target {
  const { legXMm: a, legYMm: b } = zone.wedge;
  const length = Math.sqrt(a * a + b * b);
  const depth = Math.max(0, reach.frontMm - reach.groundFrontMm);
  // Heading toward the corner, the left side of the robot points to the wall y = 0's end of the edge.
  const left = reach.leftMm;
  const right = reach.rightMm;
  const shift = ((length * (b - a)) / 2 - left * b + right * a + depth * (b - a)) / (a + b);
  return {
    aim: { xMm: a / 2 + (shift * a) / length, yMm: b / 2 - (shift * b) / length },
    nx: b / length,
    ny: a / length,
    headingRad: atan2(-a, -b),
    legXMm: a,
    legYMm: b,
  };
}

/** Distance of a point from the wedge's long side, mm: positive on the floor. */
export function beforeWedgeMm(target: Target, point: PointMm): number {
  const { nx, ny, legXMm } = target;
  return (point.xMm - legXMm) * nx + point.yMm * ny;
}
