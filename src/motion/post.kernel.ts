import { atan2 } from "../num/elementary.ts";
import { PIVOT_STEP_RAD, STRAY_MM } from "./leaning.kernel.ts";
import type { ConvexOutline } from "./surroundings.ts";
import type { Motion, Touch } from "./touch.kernel.ts";

/**
 * A post: a corner of a doorpost or keep-out that an edge of the robot leans on. Where it is in the robot frame, mm, and how
 * far the robot may turn about it so. Lever and rates as for a vertex on a wall; here the edge slides along the post.
 */
export interface Lean {
  /** The post in the robot frame, mm. */
  px: number;
  py: number;
  /** Lever arm of its push about the robot's origin, mm. */
  lever: number;
  /** Closing rate of the edge's distance without any turning, per unit of progress: negative when driving against the post. */
  rate: number;
  /** Distance of the post from the edge, mm: negative within the outline. */
  gap: number;
}

/** Fills `out` for the post of a touch and a robot that heads along (c, s) from (x, y). */
export function leanOn(
  touch: Touch,
  { normalX, normalY, x: vx, y: vy }: ConvexOutline,
  x: number,
  y: number,
  c: number,
  s: number,
  sigma: number,
  out: Lean,
): void {
  const dx = touch.nx - x;
  const dy = touch.ny - y;
  const ex = normalX[touch.edge]!;
  const ey = normalY[touch.edge]!;
  out.px = c * dx + s * dy;
  out.py = c * dy - s * dx;
  out.lever = ex * out.py - ey * out.px;
  out.rate = -ex * sigma;
  out.gap = ex * (out.px - vx[touch.edge]!) + ey * (out.py - vy[touch.edge]!);
}

/** Moves the robot along the edge's normal so that the post lies on the edge again. */
export function restOnPost(
  touch: Touch,
  pose: Motion,
  { normalX, normalY }: ConvexOutline,
  gap: number,
): void {
  const ex = normalX[touch.edge]!;
  const ey = normalY[touch.edge]!;
  pose.x += gap * (pose.c * ex - pose.s * ey);
  pose.y += gap * (pose.s * ex + pose.c * ey);
}

/** The lever shrinks by this share in a piece at most: as the post nears the middle, the robot turns ever faster. */
const LEVER_SHARE = 0.06;

/**
 * Progress of a piece that turns at `kappa` with the post on the edge: until the post has come to the edge's end, a side of
 * the block lies along the edge, the commanded curve takes the edge off the post, or the piece would be too coarse.
 */
export function leaningStep(
  touch: Touch,
  pose: Motion,
  outline: ConvexOutline,
  { px, py, lever, rate }: Lean,
  kappa: number,
): number {
  const ex = outline.normalX[touch.edge]!;
  const ey = outline.normalY[touch.edge]!;
  // Along the edge, counter-clockwise round the hull: the tangent is (−ey, ex).
  const speed = -ey * (kappa * py - pose.sigma) - ex * kappa * px;
  const end = speed > 0 ? (touch.edge + 1) % outline.count : touch.edge;
  const left = -ey * (outline.x[end]! - px) + ex * (outline.y[end]! - py);
  const turning = Math.abs(kappa) + 1e-12;
  const leverRate = -ex * kappa * px - ey * (kappa * py - pose.sigma);
  // Driving against the post the lever sets how fast the robot turns; it leaves where rate + κ·lever, κ as commanded, is 0.
  const even = rate < 0 ? Math.abs((LEVER_SHARE * lever) / leverRate) : Number.POSITIVE_INFINITY;
  const leaves = pose.kappa === 0 ? -1 : (-rate / pose.kappa - lever) / leverRate;
  return Math.min(
    even,
    leaves > 0 ? leaves : Number.POSITIVE_INFINITY,
    Math.abs(left) / (Math.abs(speed) + 1e-12),
    Math.sqrt((8 * STRAY_MM) / (turning * Math.abs(speed) + 1e-12)),
    Math.min(PIVOT_STEP_RAD, sideAngle(pose, ex, ey, kappa > 0 ? 1 : -1)) / turning,
  );
}

/** An edge this near to a wall's direction lies along it, rad. */
const LEVEL_RAD = 1e-9;

/** Angle > 0 to turn in direction `turn` until the edge lies along a wall of the zone's directions: all blocks stand square. */
function sideAngle(pose: Motion, ex: number, ey: number, turn: number): number {
  const wx = pose.c * ex - pose.s * ey;
  const wy = pose.s * ex + pose.c * ey;
  // Turned back by quarter turns, to within one of the next direction.
  const beyond = atan2(Math.min(Math.abs(wx), Math.abs(wy)), Math.max(Math.abs(wx), Math.abs(wy)));
  const quarter = 0.5 * Math.PI;
  // It lies along one already, to rounding, and turns off it: one that it turned into would be touched.
  if (beyond < LEVEL_RAD) return quarter;
  // Which side of the nearest direction the normal is on: towards it the angle is `beyond`, away from it what is left.
  const ahead = Math.abs(wx) >= Math.abs(wy) ? wx * wy : -wx * wy;
  return ahead * turn < 0 ? beyond : quarter - beyond;
}
