import type { PointMm } from "../model/zone.ts";
import { RAD_PER_DEG } from "../model/units.ts";
import { cos, sin } from "../num/elementary.ts";
import type { PushRun } from "./pushRun.ts";
import type { Scene } from "./scene.ts";

/**
 * The straight pushes that patterns are made of; frame of frame.ts. In it a robot that heads for the target corner
 * along a wall has the wall y = 0 on its left and the wall x = 0 on its right, and the far walls the same way.
 */

/** Angle at which a robot closes in on a wall after a curve: its tip then stays this little ahead of the rest. */
const EASE_RAD = 5 * RAD_PER_DEG;

/** Distance of the robot's axis from a wall on its left or right that it runs along. */
export function besideLeftMm(scene: Scene): number {
  return scene.reach.leftMm + scene.clearanceMm;
}

export function besideRightMm(scene: Scene): number {
  return scene.reach.rightMm + scene.clearanceMm;
}

/** Distance of the axle from a wall behind it. */
export function behindMm(scene: Scene): number {
  return scene.reach.rearMm + scene.clearanceMm;
}

export function pusherWidthMm(scene: Scene): number {
  return scene.reach.pusherLeftMm + scene.reach.pusherRightMm;
}

/** `from` … `to` in equal steps of at most `step`, both ends included. */
export function evenly(from: number, to: number, step: number): readonly number[] {
  const count = Math.max(1, Math.ceil(Math.abs(to - from) / step - 1e-9));
  return Array.from({ length: count + 1 }, (_, i) => from + ((to - from) * i) / count);
}

/** Lane in direction −x at height y, from the far wall x = width to whatever stops it. */
export function laneAt(scene: Scene, yMm: number, options: Partial<PushRun> = {}): PushRun {
  return {
    points: [
      { xMm: scene.widthMm - behindMm(scene), yMm },
      { xMm: 0, yMm },
    ],
    radiusMm: 0,
    backUp: true,
    squareUp: false,
    end: "wall",
    retreat: "along",
    ...options,
  };
}

/** Heights of lanes in direction −x that cover the zone from the far wall y = height down to the closing wall y = 0. */
export function laneHeights(scene: Scene, spacing: number): readonly number[] {
  const top = scene.heightMm - besideRightMm(scene);
  return evenly(top, besideLeftMm(scene), spacing * pusherWidthMm(scene));
}

/** Along the closing wall y = 0 into the corner. */
export function closingRunX(scene: Scene, squareUp: boolean): PushRun {
  return laneAt(scene, besideLeftMm(scene), { squareUp, retreat: "off" });
}

/** Along the closing wall x = 0 into the corner. */
export function closingRunY(scene: Scene, squareUp: boolean): PushRun {
  const xMm = besideRightMm(scene);
  return {
    points: [
      { xMm, yMm: scene.heightMm - behindMm(scene) },
      { xMm, yMm: 0 },
    ],
    radiusMm: 0,
    backUp: true,
    squareUp,
    end: "wall",
    retreat: "off",
  };
}

/** Point on the push line, `beforeMm` in front of the wedge's edge, `asideMm` to the left of a robot that faces it. */
export function beforeWedge(scene: Scene, beforeMm: number, asideMm = 0): PointMm {
  const { aim, nx, ny } = scene.target;
  // Left of the heading (−nx, −ny) is (ny, −nx).
  return { xMm: aim.xMm + beforeMm * nx + asideMm * ny, yMm: aim.yMm + beforeMm * ny - asideMm * nx };
}

/** Axle distance from the wedge's edge at which the last, square stretch of a push begins. */
export function squareLengthMm(scene: Scene): number {
  return scene.reach.groundFrontMm + scene.reach.tipRadiusMm;
}

/** Square onto the wedge from close by: brings in what lies in front of its edge. */
export function cornerPush(scene: Scene, asideMm: number): PushRun {
  const before = squareLengthMm(scene) + scene.reach.tipRadiusMm;
  return {
    points: [beforeWedge(scene, before, asideMm), beforeWedge(scene, 0, asideMm)],
    radiusMm: 0,
    backUp: false,
    squareUp: false,
    end: "wall",
    retreat: "off",
  };
}

export interface HookOptions {
  /** How much farther from both walls than right beside them. */
  readonly insetMm: number;
  readonly radiusMm: number;
  readonly squareUp: boolean;
  /** wall: on along the closing wall; square: leaves it for a square push onto the wedge. */
  readonly end: "wall" | "square";
}

/** Down the far wall x = width, round the corner, along the closing wall y = 0 into the target corner. All walls on the left. */
export function hookX(scene: Scene, options: HookOptions): PushRun {
  const { insetMm, radiusMm } = options;
  const beside = besideLeftMm(scene);
  const start = { xMm: scene.widthMm - beside - insetMm, yMm: scene.heightMm - behindMm(scene) };
  const second = beside + insetMm + overhang(scene.reach.leftMm, scene.reach.frontMm, radiusMm);
  const corner = { xMm: start.xMm, yMm: second };
  const points = [start, corner];
  if (options.end === "wall") {
    const near = beside + poke(scene.reach.leftMm, scene.reach.frontMm) + insetMm;
    points.push(...easedIn(corner.xMm - radiusMm, second, near).map(([xMm, yMm]) => ({ xMm, yMm })));
  } else points.push(beforeWedge(scene, squareLengthMm(scene)), beforeWedge(scene, 0));
  return hookRun(points, options);
}

/** Along the far wall y = height, round the corner, down the closing wall x = 0 into the target corner. All walls on the right. */
export function hookY(scene: Scene, options: HookOptions): PushRun {
  const { insetMm, radiusMm } = options;
  const beside = besideRightMm(scene);
  const start = { xMm: scene.widthMm - behindMm(scene), yMm: scene.heightMm - beside - insetMm };
  const second = beside + insetMm + overhang(scene.reach.rightMm, scene.reach.frontMm, radiusMm);
  const corner = { xMm: second, yMm: start.yMm };
  const points = [start, corner];
  if (options.end === "wall") {
    const near = beside + poke(scene.reach.rightMm, scene.reach.frontMm) + insetMm;
    points.push(...easedIn(corner.yMm - radiusMm, second, near).map(([yMm, xMm]) => ({ xMm, yMm })));
  } else points.push(beforeWedge(scene, squareLengthMm(scene)), beforeWedge(scene, 0));
  return hookRun(points, options);
}

function hookRun(points: readonly PointMm[], options: HookOptions): PushRun {
  const { radiusMm, squareUp } = options;
  return { points, radiusMm, backUp: true, squareUp, end: "wall", retreat: "off" };
}

/** How much farther out the front tip swings in a curve than it reaches on a straight. */
export function overhang(sideMm: number, frontMm: number, radiusMm: number): number {
  const outer = radiusMm + sideMm;
  return Math.sqrt(outer * outer + frontMm * frontMm) - outer;
}

/** The same for a robot turned toward the wall by the easing angle. */
function poke(sideMm: number, frontMm: number): number {
  return frontMm * sin(EASE_RAD) + sideMm * cos(EASE_RAD) - sideMm;
}

/** From `along` at distance `from` gently in to distance `to` of a wall, then beside it to 0, as [along, aside]. */
function easedIn(along: number, from: number, to: number): readonly (readonly [number, number])[] {
  if (to >= from) return [[0, from]];
  const length = ((from - to) * cos(EASE_RAD)) / sin(EASE_RAD);
  return [
    [along, from],
    [along - length, to],
    [0, to],
  ];
}
