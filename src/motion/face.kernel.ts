import type { Surroundings } from "./surroundings.ts";
import { isSameFace, TOUCH_MM, type Touch } from "./touch.kernel.ts";

/**
 * How far the touched face reaches. Places along it are measured on the tangent (ny, −nx), mm: with the face below the
 * robot, to the right. Walls and the wedge's edge have no ends; the faces of doorposts and keep-outs end at posts.
 */
export interface FaceSpan {
  low: number;
  high: number;
}

/**
 * Fills `out` with the ends of the touched face where the robot lies on it, from place `low` to place `high`. What several
 * boxes offer there is one face; if none does, the nearest counts.
 */
export function spanOf(
  { planes, boxes }: Surroundings,
  touch: Touch,
  low: number,
  high: number,
  out: FaceSpan,
): void {
  out.low = Number.NEGATIVE_INFINITY;
  out.high = Number.POSITIVE_INFINITY;
  const { nx, ny, offset } = touch;
  for (let k = 0; k < planes.length; k++) {
    const plane = planes[k]!;
    if (isSameFace(touch, plane.nx, plane.ny, plane.offset)) return;
  }
  let nearest = Number.POSITIVE_INFINITY;
  for (let k = 0; k < boxes.length; k++) {
    const { minX, maxX, minY, maxY } = boxes[k]!;
    if ((nx > 0 ? maxX : nx < 0 ? -minX : ny > 0 ? maxY : -minY) !== offset) continue;
    const one = ny * minX - nx * minY;
    const other = ny * maxX - nx * maxY;
    const from = Math.min(one, other);
    const to = Math.max(one, other);
    const away = Math.max(from - high, low - to, TOUCH_MM);
    if (away > nearest) continue;
    const isFirst = away < nearest;
    nearest = away;
    out.low = isFirst ? from : Math.min(out.low, from);
    out.high = isFirst ? to : Math.max(out.high, to);
  }
}

/** Way along the face that is left for a vertex at `place` that slides along it at `speed`, mm; below 0 where it lies beyond an end. */
export function leftOn({ low, high }: FaceSpan, place: number, speed: number): number {
  if (place > high + TOUCH_MM) return high - place;
  if (place < low - TOUCH_MM) return place - low;
  return speed > 0 ? high - place : speed < 0 ? place - low : Number.POSITIVE_INFINITY;
}
