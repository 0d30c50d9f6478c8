import type { Ring } from "../geometry/ring.kernel.ts";
import { cos, sin } from "../num/elementary.ts";
import { errorAfter, headingSize, largest, type PoseError, rangeOf, reach } from "./poseError.ts";
import type { Stretch } from "./sureTrack.ts";

/** Spacing of the places at which the error along a run is looked at, mm. */
const GRID_MM = 10;

/** The part of a pusher that lies across the way: from its outermost corner on one side to that on the other. */
interface Bar {
  /** How far its corners lie ahead of the origin, mm. */
  readonly back: number;
  readonly front: number;
  /** Lateral ends, left positive. */
  readonly right: number;
  readonly left: number;
}

/** Limits of one place along a run. */
interface Slice {
  readonly error: PoseError;
  /** A ball between these, left of the path positive, is passed by the bar and not beside it. */
  readonly right: number;
  readonly left: number;
}

/**
 * Ball centres that a straight run surely pushes through its pusher: they begin ahead of the pusher's foremost corner and end
 * behind its rearmost one, whatever the drift, and in between they are never beside its ends. A path from one side of an unbroken bar
 * to the other, within the bar's width, crosses it. So an error along the way costs nothing but at both ends, and the
 * error across narrows the strip as it grows: width w, error ε0 and heading error d leave w − 2(ε0 + L·tan d).
 *
 * @param chain the pusher's polyline, flat, robot's frame
 * @returns rings in the zone's frame, counter-clockwise
 * Source: the lane formula of guaranteed coverage, as in tests/published/sureLanes.
 */
export function sureRun(stretch: Stretch, chain: readonly number[], radiusMm: number): readonly Ring[] {
  const { motion, lengthMm, piece } = stretch;
  if (piece.kind !== "line" || motion.sigma === 0 || lengthMm === 0) return [];
  const bar = barOf(chain, motion.sigma, radiusMm);
  const count = Math.ceil(lengthMm / GRID_MM);
  const step = lengthMm / count;
  const slices = Array.from({ length: count + 1 }, (_, j) => sliceAt(stretch, bar, j * step, step));
  const first = slices[0]?.error;
  const last = stretch.arrived ?? slices.at(-1)?.error;
  if (first === undefined || last === undefined) return [];
  const slack = Math.max(...slices.map(({ error }) => shiftAlong(stretch, bar, error)));
  const from = bar.front + endShift(stretch, bar, first, 1);
  const to = lengthMm + bar.back - endShift(stretch, bar, last, -1);
  if (!(to > from)) return [];
  const cells = Math.max(1, Math.ceil((to - from) / step));
  const h = (to - from) / cells;
  const edges = Array.from({ length: cells + 1 }, (_, k) => {
    const u = from + k * h;
    // A cell's width more on both sides: then the limits at both ends of a cell hold all through it.
    const low = Math.floor((u - bar.front - slack - h) / step);
    const high = Math.ceil((u - bar.back + slack + h) / step);
    const near = slices.slice(Math.max(0, low), Math.max(0, high) + 1);
    const seen = near.length > 0 ? near : slices.slice(-1);
    return {
      u,
      right: Math.max(...seen.map((slice) => slice.right)),
      left: Math.min(...seen.map((slice) => slice.left)),
    };
  });
  return ringsOf(edges, stretch);
}

function barOf(chain: readonly number[], sigma: number, radiusMm: number): Bar {
  let rightmost = 0;
  let leftmost = 0;
  const lateral = (i: number): number => sigma * (chain[2 * i + 1] ?? 0);
  const count = chain.length / 2;
  for (let i = 1; i < count; i++) {
    if (lateral(i) < lateral(rightmost)) rightmost = i;
    if (lateral(i) > lateral(leftmost)) leftmost = i;
  }
  let back = Number.POSITIVE_INFINITY;
  let front = Number.NEGATIVE_INFINITY;
  for (let i = Math.min(rightmost, leftmost); i <= Math.max(rightmost, leftmost); i++) {
    const ahead = sigma * (chain[2 * i] ?? 0);
    back = Math.min(back, ahead);
    front = Math.max(front, ahead);
  }
  return { back, front, right: lateral(rightmost) - radiusMm, left: lateral(leftmost) + radiusMm };
}

/** Unit vectors along and to the left of the way driven. */
function axesOf({ motion }: Stretch): { ux: number; uy: number } {
  return { ux: motion.sigma * cos(motion.headingRad), uy: motion.sigma * sin(motion.headingRad) };
}

function sliceAt(stretch: Stretch, bar: Bar, q: number, step: number): Slice {
  const error = errorAfter(stretch.error, stretch.motion, stretch.move, q);
  const { ux, uy } = axesOf(stretch);
  const tilt = headingSize(error);
  const farthest = Math.max(Math.abs(bar.back), Math.abs(bar.front));
  // Where a wall may have turned the robot straight, its heading error is anything from none to all.
  const aheads = stretch.isLoose ? [bar.back, 0, bar.front] : [bar.back, bar.front];
  const ranges = aheads.map((ahead) => reach(error, -uy, ux, ahead));
  const bend = largest(rangeOf(stretch.move.bend));
  const between = (bend * step * step) / 8;
  const second = (width: number): number =>
    (farthest * tilt * tilt * tilt) / 6 + (Math.abs(width) * tilt * tilt) / 2 + between;
  return {
    error,
    right: bar.right + Math.max(...ranges.map(({ high }) => high)) + second(bar.right),
    left: bar.left + Math.min(...ranges.map(({ low }) => low)) - second(bar.left),
  };
}

function widthOf(bar: Bar): number {
  return Math.max(Math.abs(bar.right), Math.abs(bar.left));
}

/** How far ahead or behind the bar can be at a ball, seen along the path, mm. */
function shiftAlong(stretch: Stretch, bar: Bar, error: PoseError): number {
  const { ux, uy } = axesOf(stretch);
  const tilt = headingSize(error);
  const farthest = Math.max(Math.abs(bar.back), Math.abs(bar.front));
  return largest(reach(error, ux, uy, 0)) + widthOf(bar) * tilt + farthest * tilt * tilt;
}

/** How much nearer to the middle of the run a ball must lie than without drift, to begin ahead (side 1) or end behind (−1). */
function endShift(stretch: Stretch, bar: Bar, error: PoseError, side: 1 | -1): number {
  const { ux, uy } = axesOf(stretch);
  const tilt = headingSize(error);
  const along = reach(error, ux, uy, 0);
  const across = largest(reach(error, -uy, ux, 0));
  const farthest = Math.max(Math.abs(bar.back), Math.abs(bar.front));
  const shift = side === 1 ? along.high : -along.low;
  return shift + (widthOf(bar) + across + farthest * tilt) * tilt + farthest * tilt * tilt;
}

interface Edge {
  readonly u: number;
  readonly right: number;
  readonly left: number;
}

/** Strips between neighbouring edges that leave any width, joined where they follow one another. */
function ringsOf(edges: readonly Edge[], stretch: Stretch): readonly Ring[] {
  const rings: Ring[] = [];
  let open: Edge[] = [];
  const close = (): void => {
    if (open.length >= 2) rings.push(ringOf(open, stretch));
    open = [];
  };
  for (const edge of edges) {
    if (edge.left > edge.right) open.push(edge);
    else close();
  }
  close();
  return rings;
}

function ringOf(edges: readonly Edge[], stretch: Stretch): Ring {
  const { ux, uy } = axesOf(stretch);
  const { xMm, yMm } = stretch.piece.from;
  const ring: number[] = [];
  const put = (u: number, v: number): void => {
    ring.push(xMm + u * ux - v * uy, yMm + u * uy + v * ux);
  };
  for (const { u, right } of edges) put(u, right);
  for (const { u, left } of [...edges].reverse()) put(u, left);
  return ring;
}
