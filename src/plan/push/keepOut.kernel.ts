import type { ConvexOutline } from "../../motion/surroundings.ts";

/**
 * How far a robot or a ball may go straight before it meets a keep-out: separating axes of two convex shapes of which one
 * moves (Gottschalk, Lin, Manocha 1996 for the axes; the moving form is derived). A robot counts as its hull, as in the engine.
 */

/** An overlap this small is a touch, mm. */
const TOUCH_MM = 1e-6;
/** Closing in more slowly than this is not at all. */
const STILL = 1e-12;

/** What is cut out of a line: open, empty where low ≥ high. */
export interface Span {
  low: number;
  high: number;
}

const span: Span = { low: 0, high: 0 };

/** The directions a robot faces, and its hull. */
export interface Facing {
  readonly cos: Float64Array;
  readonly sin: Float64Array;
  readonly hull: ConvexOutline;
}

/**
 * The keep-outs as the robot's origin sees them, one convex obstacle for each direction it may face: on every axis the gap is
 * a·x + b·y + level, the robot overlaps where all gaps are negative, and driving closes them at a rate of their own.
 */
export class HullBlocks {
  private readonly axes: number;
  private readonly rects: number;
  private readonly a: Float64Array;
  private readonly b: Float64Array;
  private readonly level: Float64Array;
  private readonly rate: Float64Array;

  /** @param rects four numbers each: minX, minY, maxX, maxY */
  constructor({ cos, sin, hull }: Facing, rects: Float64Array) {
    this.axes = 4 + hull.count;
    this.rects = rects.length / 4;
    const size = cos.length * this.rects * this.axes;
    this.a = new Float64Array(size);
    this.b = new Float64Array(size);
    this.level = new Float64Array(size);
    this.rate = new Float64Array(size);
    for (let d = 0; d < cos.length; d++) {
      for (let at = 0; at < this.rects; at++) this.build(hull, rects, d, at, cos[d]!, sin[d]!);
    }
  }

  private build(hull: ConvexOutline, rects: Float64Array, d: number, at: number, c: number, s: number): void {
    let minX = Number.POSITIVE_INFINITY;
    let maxX = Number.NEGATIVE_INFINITY;
    let minY = Number.POSITIVE_INFINITY;
    let maxY = Number.NEGATIVE_INFINITY;
    let i = (d * this.rects + at) * this.axes + 4;
    const axis = (n: number, a: number, b: number, level: number): void => {
      this.a[n] = a;
      this.b[n] = b;
      this.level[n] = level;
      this.rate[n] = -(a * c + b * s);
    };
    for (let v = 0; v < hull.count; v++, i++) {
      const px = c * hull.x[v]! - s * hull.y[v]!;
      const py = s * hull.x[v]! + c * hull.y[v]!;
      minX = Math.min(minX, px);
      maxX = Math.max(maxX, px);
      minY = Math.min(minY, py);
      maxY = Math.max(maxY, py);
      const wx = c * hull.normalX[v]! - s * hull.normalY[v]!;
      const wy = s * hull.normalX[v]! + c * hull.normalY[v]!;
      const nearX = wx > 0 ? rects[4 * at]! : rects[4 * at + 2]!;
      const nearY = wy > 0 ? rects[4 * at + 1]! : rects[4 * at + 3]!;
      axis(
        i,
        -wx,
        -wy,
        wx * nearX + wy * nearY - hull.normalX[v]! * hull.x[v]! - hull.normalY[v]! * hull.y[v]!,
      );
    }
    const first = i - this.axes;
    axis(first, -1, 0, rects[4 * at]! - maxX);
    axis(first + 1, 1, 0, minX - rects[4 * at + 2]!);
    axis(first + 2, 0, -1, rects[4 * at + 1]! - maxY);
    axis(first + 3, 0, 1, minY - rects[4 * at + 3]!);
  }

  /** Way of the robot's origin from (x, y) straight on in direction d until it meets a keep-out; −1 where it overlaps one, `mostMm` where it meets none. */
  freeWay(d: number, x: number, y: number, mostMm: number): number {
    let free = mostMm;
    for (let at = 0; at < this.rects; at++) {
      const way = this.wayTo((d * this.rects + at) * this.axes, x, y);
      if (way < 0) return -1;
      if (way < free) free = way;
    }
    return free;
  }

  private wayTo(first: number, x: number, y: number): number {
    const { a, b, level, rate } = this;
    let enter = 0;
    let leave = Number.POSITIVE_INFINITY;
    let overlaps = true;
    for (let i = first; i < first + this.axes; i++) {
      const gap = a[i]! * x + b[i]! * y + level[i]!;
      const closing = rate[i]!;
      if (gap > -TOUCH_MM) {
        overlaps = false;
        // Apart, or touching and sliding along: they never meet on this axis unless it closes.
        if (closing <= STILL) return Number.POSITIVE_INFINITY;
        if (gap / closing > enter) enter = gap / closing;
      } else if (closing < 0 && gap / closing < leave) leave = gap / closing;
    }
    if (enter >= leave) return Number.POSITIVE_INFINITY;
    return overlaps ? -1 : enter;
  }

  /** Where on the line at y the robot's origin would overlap keep-out `at`, facing direction d. The result is overwritten by the next call. */
  row(d: number, at: number, y: number): Span {
    const { a, b, level } = this;
    span.low = Number.NEGATIVE_INFINITY;
    span.high = Number.POSITIVE_INFINITY;
    const first = (d * this.rects + at) * this.axes;
    for (let i = first; i < first + this.axes; i++) {
      const rest = -TOUCH_MM - b[i]! * y - level[i]!;
      const ax = a[i]!;
      if (ax > STILL) span.high = Math.min(span.high, rest / ax);
      else if (ax < -STILL) span.low = Math.max(span.low, rest / ax);
      else if (rest <= 0) span.high = Number.NEGATIVE_INFINITY;
    }
    return span;
  }
}

/** Where on the line at y a disc's centre would overlap the rectangle at `at`. The result is overwritten by the next call. */
export function discRow(rects: Float64Array, at: number, radius: number, y: number): Span {
  const reach = radius - TOUCH_MM;
  const off = Math.max(rects[at + 1]! - y, 0, y - rects[at + 3]!);
  const half = reach > off ? Math.sqrt(reach * reach - off * off) : Number.NEGATIVE_INFINITY;
  span.low = rects[at]! - half;
  span.high = rects[at + 2]! + half;
  return span;
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
