import type { Move } from "../model/routine.ts";
import type { PointMm } from "../model/zone.ts";
import type { Course } from "../motion/course.ts";
import type { CarryLimit } from "../plan/carryLimits.ts";
import { courseWay } from "./courseWay.ts";

/** Where on the way a ball in the pusher can be lost. */
export interface CarrySpot extends CarryLimit {
  /** A turn on the spot: speeds are rad/s. */
  readonly onSpot: boolean;
  /** The stretch in which it happens, at least one point. */
  readonly way: readonly PointMm[];
}

/** A stretch shorter than this could hardly be seen, mm. */
const LEAST_WAY_MM = 40;

/**
 * Puts limits on the course they are of: a ball that runs on leaves in the stretch in which the robot brakes, v²/2a before the
 * move's end; one that is thrown out, anywhere in the turn.
 */
export function carrySpots(
  limits: readonly CarryLimit[],
  moves: readonly Move[],
  course: Course,
  decelMmPerS2: number,
): readonly CarrySpot[] {
  return limits.flatMap((limit) => {
    const whole = course.pieces.filter(({ move }) => move === limit.move).flatMap(courseWay);
    if (whole.length === 0) return [];
    const brakingMm = Math.max(LEAST_WAY_MM, (limit.reached * limit.reached) / (2 * decelMmPerS2));
    const way = limit.why === "brakes" ? endOf(whole, brakingMm) : whole;
    return [{ ...limit, onSpot: moves[limit.move]?.kind === "turn", way }];
  });
}

/** The spots within reach of a place, nearest first. */
export function spotsNear(spots: readonly CarrySpot[], at: PointMm, reachMm: number): readonly CarrySpot[] {
  return spots
    .map((spot) => ({ spot, awayMm: awayFrom(spot.way, at) }))
    .filter(({ awayMm }) => awayMm <= reachMm)
    .sort((a, b) => a.awayMm - b.awayMm || a.spot.move - b.spot.move)
    .map(({ spot }) => spot);
}

/** The last stretch of a way. */
function endOf(way: readonly PointMm[], lengthMm: number): readonly PointMm[] {
  const kept: PointMm[] = [];
  let leftMm = lengthMm;
  for (let i = way.length - 1; i >= 0; i--) {
    const to = way[i];
    const from = way[i - 1];
    if (!to) continue;
    kept.unshift(to);
    if (!from) break;
    const stepMm = distance(from, to);
    if (stepMm >= leftMm) {
      const share = stepMm === 0 ? 0 : leftMm / stepMm;
      kept.unshift({
        xMm: to.xMm + share * (from.xMm - to.xMm),
        yMm: to.yMm + share * (from.yMm - to.yMm),
      });
      break;
    }
    leftMm -= stepMm;
  }
  return kept;
}

function awayFrom(way: readonly PointMm[], at: PointMm): number {
  const alone = way.length === 1 && way[0] ? distance(way[0], at) : Number.POSITIVE_INFINITY;
  return way.slice(1).reduce((nearest, to, i) => Math.min(nearest, fromSegment(way[i] ?? to, to, at)), alone);
}

function fromSegment(a: PointMm, b: PointMm, at: PointMm): number {
  const [dx, dy] = [b.xMm - a.xMm, b.yMm - a.yMm];
  const square = dx * dx + dy * dy;
  const along = square === 0 ? 0 : ((at.xMm - a.xMm) * dx + (at.yMm - a.yMm) * dy) / square;
  const share = Math.min(1, Math.max(0, along));
  return distance({ xMm: a.xMm + share * dx, yMm: a.yMm + share * dy }, at);
}

function distance(a: PointMm, b: PointMm): number {
  return Math.sqrt((a.xMm - b.xMm) ** 2 + (a.yMm - b.yMm) ** 2);
}
