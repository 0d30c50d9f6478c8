import type { Room } from "./room.ts";

/**
 * How far a robot or a ball may go straight before it meets a keep-out: separating axes of two convex shapes of which one
 * moves (Gottschalk, Lin, Manocha 1996 for the axes; the moving form is derived). A robot counts as its hull, as in the engine.
 */

/** An overlap this small is a touch, mm. */
const TOUCH_MM = 1e-6;

/**
 * Way of the hull from (x, y) along direction d of the room until it meets a rectangle; −1 where it overlaps one already,
 * `mostMm` where it meets none.
 *
 * @param rects four numbers each: minX, minY, maxX, maxY
 */
export function hullFreeWay(
  room: Room,
  rects: Float64Array,
  x: number,
  y: number,
  d: number,
  mostMm: number,
): number {
  const c = room.cos[d]!;
  const s = room.sin[d]!;
  let free = mostMm;
  for (let at = 0; at < rects.length; at += 4) {
    const way = meetRect(room, rects, at, x, y, c, s);
    if (way < 0) return -1;
    if (way < free) free = way;
  }
  return free;
}

const span = { enter: 0, leave: 0, overlaps: true };

/** Takes one axis into account: `gap` between the shapes (negative: they overlap on it by −gap), closing at `rate`. */
function takeAxis(gap: number, rate: number): void {
  if (gap > -TOUCH_MM) {
    span.overlaps = false;
    // Apart, or touching and sliding along: they never meet on this axis unless it closes.
    if (rate <= 1e-12) span.leave = Number.NEGATIVE_INFINITY;
    else if (gap / rate > span.enter) span.enter = gap / rate;
  } else if (rate < 0) {
    span.leave = Math.min(span.leave, gap / rate);
  }
}

function meetRect(
  room: Room,
  rects: Float64Array,
  at: number,
  x: number,
  y: number,
  c: number,
  s: number,
): number {
  const { hull } = room;
  let minX = Number.POSITIVE_INFINITY;
  let maxX = Number.NEGATIVE_INFINITY;
  let minY = Number.POSITIVE_INFINITY;
  let maxY = Number.NEGATIVE_INFINITY;
  for (let i = 0; i < hull.count; i++) {
    const px = x + c * hull.x[i]! - s * hull.y[i]!;
    const py = y + s * hull.x[i]! + c * hull.y[i]!;
    if (px < minX) minX = px;
    if (px > maxX) maxX = px;
    if (py < minY) minY = py;
    if (py > maxY) maxY = py;
  }
  span.enter = 0;
  span.leave = Number.POSITIVE_INFINITY;
  span.overlaps = true;
  takeAxis(rects[at]! - maxX, c);
  takeAxis(minX - rects[at + 2]!, -c);
  takeAxis(rects[at + 1]! - maxY, s);
  takeAxis(minY - rects[at + 3]!, -s);
  for (let i = 0; i < hull.count; i++) {
    const wx = c * hull.normalX[i]! - s * hull.normalY[i]!;
    const wy = s * hull.normalX[i]! + c * hull.normalY[i]!;
    const nearX = wx > 0 ? rects[at]! : rects[at + 2]!;
    const nearY = wy > 0 ? rects[at + 1]! : rects[at + 3]!;
    const level = hull.normalX[i]! * hull.x[i]! + hull.normalY[i]! * hull.y[i]!;
    takeAxis(wx * (nearX - x) + wy * (nearY - y) - level, wx * c + wy * s);
  }
  if (span.enter >= span.leave) return Number.POSITIVE_INFINITY;
  return span.overlaps ? -1 : span.enter;
}

/** Way of a disc's centre from (x, y) along (c, s) until the disc meets a rectangle; −1 where it overlaps one already. */
export function discFreeWay(
  rects: Float64Array,
  radius: number,
  x: number,
  y: number,
  c: number,
  s: number,
  mostMm: number,
): number {
  let free = mostMm;
  for (let at = 0; at < rects.length; at += 4) {
    const minX = rects[at]!;
    const minY = rects[at + 1]!;
    const maxX = rects[at + 2]!;
    const maxY = rects[at + 3]!;
    const dx = Math.max(minX - x, 0, x - maxX);
    const dy = Math.max(minY - y, 0, y - maxY);
    if (dx * dx + dy * dy < (radius - TOUCH_MM) * (radius - TOUCH_MM)) return -1;
    free = Math.min(free, rayBox(x, y, c, s, minX - radius, minY, maxX + radius, maxY));
    free = Math.min(free, rayBox(x, y, c, s, minX, minY - radius, maxX, maxY + radius));
    for (let k = 0; k < 4; k++) {
      free = Math.min(free, rayCircle(x, y, c, s, k & 1 ? maxX : minX, k & 2 ? maxY : minY, radius));
    }
  }
  return free;
}

function rayBox(
  x: number,
  y: number,
  c: number,
  s: number,
  minX: number,
  minY: number,
  maxX: number,
  maxY: number,
): number {
  let enter = 0;
  let leave = Number.POSITIVE_INFINITY;
  if (Math.abs(c) < 1e-12) {
    if (x <= minX + TOUCH_MM || x >= maxX - TOUCH_MM) return leave;
  } else {
    enter = Math.max(enter, ((c > 0 ? minX : maxX) - x) / c);
    leave = Math.min(leave, ((c > 0 ? maxX : minX) - x) / c);
  }
  if (Math.abs(s) < 1e-12) {
    if (y <= minY + TOUCH_MM || y >= maxY - TOUCH_MM) return Number.POSITIVE_INFINITY;
  } else {
    enter = Math.max(enter, ((s > 0 ? minY : maxY) - y) / s);
    leave = Math.min(leave, ((s > 0 ? maxY : minY) - y) / s);
  }
  return enter < leave - TOUCH_MM ? enter : Number.POSITIVE_INFINITY;
}

function rayCircle(x: number, y: number, c: number, s: number, px: number, py: number, r: number): number {
  const dx = px - x;
  const dy = py - y;
  const ahead = dx * c + dy * s;
  const aside2 = dx * dx + dy * dy - ahead * ahead;
  const inside2 = r * r - aside2;
  if (ahead <= 0 || inside2 <= 0) return Number.POSITIVE_INFINITY;
  return Math.max(0, ahead - Math.sqrt(inside2));
}
