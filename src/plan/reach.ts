import { robotOutline } from "../model/outline.ts";
import type { Robot } from "../model/robot.ts";
import { PI, RAD_PER_DEG } from "../model/units.ts";
import type { PointMm } from "../model/zone.ts";
import { atan2, cos, sin } from "../num/elementary.ts";

/** What a pattern needs to know about a robot's outlines; robot frame, all lengths from its origin (the axle's middle), mm. */
export interface Reach {
  readonly frontMm: number;
  readonly rearMm: number;
  readonly leftMm: number;
  readonly rightMm: number;
  /** Farthest point of all, and farthest point behind the axle: the room a turn on the spot takes. */
  readonly tipRadiusMm: number;
  readonly rearRadiusMm: number;
  /** How far a robot that is turned away from a wall by the tilt reaches toward it: the room it needs to back in beside the wall. */
  readonly tiltedLeftMm: number;
  readonly tiltedRightMm: number;
  /** How far forward the ground outline goes: this much stops at the wedge's edge. */
  readonly groundFrontMm: number;
  /** How far the pusher reaches to the left and to the right (right positive), and forward. */
  readonly pusherLeftMm: number;
  readonly pusherRightMm: number;
  readonly pusherFrontMm: number;
  /** Where the deepest part of the pusher lies: the back of a U, the middle of a V; the plate itself. */
  readonly pusherBackMm: number;
  /**
   * How far from straight ahead the sides of the pusher can push inward: 0 for a plate, 90° less the half-angle of a V, 90° for
   * arms straight ahead.
   */
  readonly pusherConeRad: number;
  /** The same of the sides that meet at the back: 0 where the back is flat or there is none. */
  readonly pusherBottomRad: number;
}

/** Tilt at which a robot backs in beside a wall: less needs a longer way, more lets its rear corner swing out. */
export const TILT_RAD = 20 * RAD_PER_DEG;

/** Within this of the farthest back an edge belongs to the pusher's bottom, and so little forward still counts as straight ahead, mm. */
const BOTTOM_MM = 0.5;
const STRAIGHT_MM = 1e-6;

/** Measures both outlines of a robot. A robot without a marked pusher edge pushes with everything it has. */
export function reachOf(robot: Robot): Reach {
  const { footprint, pusherEdges, ground } = robotOutline(robot);
  const all = [...footprint, ...ground];
  const marked = pusherEdges.flatMap((edge) => [edge, (edge + 1) % footprint.length]);
  const pusher = marked.length === 0 ? footprint : footprint.filter((_, vertex) => marked.includes(vertex));
  const sides = innerSides(footprint, pusherEdges);
  const backMm = 0 - most(pusher, (p) => 0 - p.xMm);
  const atBack = sides.filter(({ backMm: at }) => at < backMm + BOTTOM_MM);
  return {
    frontMm: most(all, (p) => p.xMm),
    rearMm: most(all, (p) => 0 - p.xMm),
    leftMm: most(all, (p) => p.yMm),
    rightMm: most(all, (p) => 0 - p.yMm),
    tipRadiusMm: most(all, distance),
    rearRadiusMm: most(all, (p) => (p.xMm <= 0 ? distance(p) : 0)),
    tiltedLeftMm: most(all, (p) => cos(TILT_RAD) * p.yMm - sin(TILT_RAD) * p.xMm),
    tiltedRightMm: most(all, (p) => 0 - cos(TILT_RAD) * p.yMm - sin(TILT_RAD) * p.xMm),
    groundFrontMm: most(ground, (p) => p.xMm),
    pusherLeftMm: most(pusher, (p) => p.yMm),
    pusherRightMm: most(pusher, (p) => 0 - p.yMm),
    pusherFrontMm: most(pusher, (p) => p.xMm),
    pusherBackMm: backMm,
    pusherConeRad: sides.reduce((widest, { coneRad }) => Math.max(widest, coneRad), 0),
    pusherBottomRad: atBack.reduce((least, { coneRad }) => Math.min(least, coneRad), PI / 2) % (PI / 2),
  };
}

/** Edges of the pusher that face forward or inward: where their hind end lies, and how far from straight ahead they push. */
function innerSides(
  footprint: readonly PointMm[],
  pusherEdges: readonly number[],
): readonly { readonly backMm: number; readonly coneRad: number }[] {
  return pusherEdges.flatMap((edge) => {
    const from = footprint[edge];
    const to = footprint[(edge + 1) % footprint.length];
    if (from === undefined || to === undefined) return [];
    // Counter-clockwise: the outward normal is (dy, −dx).
    const ahead = to.yMm - from.yMm;
    const left = from.xMm - to.xMm;
    const inward = (from.yMm + to.yMm) * left <= 0;
    if (ahead < -STRAIGHT_MM || !inward) return [];
    return [{ backMm: Math.min(from.xMm, to.xMm), coneRad: Math.abs(atan2(left, Math.max(0, ahead))) }];
  });
}

function most(points: readonly PointMm[], measure: (p: PointMm) => number): number {
  return points.reduce((best, p) => Math.max(best, measure(p)), Number.NEGATIVE_INFINITY);
}

function distance(p: PointMm): number {
  return Math.sqrt(p.xMm * p.xMm + p.yMm * p.yMm);
}
