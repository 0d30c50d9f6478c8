import { PI } from "../model/units.ts";
import type { PointMm } from "../model/zone.ts";
import { leastCurveMm } from "./carry.ts";
import type { Waypoint } from "./rounding.ts";
import type { Scene } from "./scene.ts";

/**
 * Places that patterns are made of; frame of frame.ts. A robot that heads for the target corner along a wall has the
 * wall y = 0 on its left and the wall x = 0 on its right; along the far walls on its way there it is the same.
 */

/** Headings in which the robot's back is square to a far wall: to x = width, to y = height. */
export const FROM_FAR_X_RAD = PI;
export const FROM_FAR_Y_RAD = -PI / 2;

/**
 * The two mirror halves of a plan: side "x" runs along x (far wall x = width first, then the closing wall y = 0, walls
 * on the left), side "y" along y (far wall y = height, then the closing wall x = 0, walls on the right).
 */
export type Side = "x" | "y";

/** Coordinates of one side: `along` its closing wall measured from the target corner, `aside` from that wall. */
export function onSide(side: Side, along: number, aside: number): PointMm {
  return side === "x" ? { xMm: along, yMm: aside } : { xMm: aside, yMm: along };
}

export function waypoint(side: Side, along: number, aside: number, radiusMm = 0): Waypoint {
  return { ...onSide(side, along, aside), radiusMm };
}

/** Length of the side's closing wall, and of the far wall across its end. */
export function lengthMm(scene: Scene, side: Side): number {
  return side === "x" ? scene.widthMm : scene.heightMm;
}

export function breadthMm(scene: Scene, side: Side): number {
  return side === "x" ? scene.heightMm : scene.widthMm;
}

/** How far the robot reaches toward the walls of a side. */
export function flankMm(scene: Scene, side: Side): number {
  return side === "x" ? scene.reach.leftMm : scene.reach.rightMm;
}

/** Distance of the robot's axis from a wall of the side that it runs along; it can back in there at a tilt. */
export function besideMm(scene: Scene, side: Side): number {
  const { reach, berthMm } = scene;
  const tilted = side === "x" ? reach.tiltedLeftMm : reach.tiltedRightMm;
  return Math.max(flankMm(scene, side), tilted) + berthMm;
}

/** Distance of the axle from a wall behind it. */
export function behindMm(scene: Scene): number {
  return scene.reach.rearMm + scene.berthMm;
}

/** As near to the far corner as the robot can turn between the two headings along the far walls. */
export function homeOf(scene: Scene): PointMm {
  const { reach, berthMm, widthMm, heightMm } = scene;
  const room = Math.max(reach.rearRadiusMm, reach.leftMm, reach.rightMm) + berthMm;
  return { xMm: widthMm - room, yMm: heightMm - room };
}

/** Farther from a wall than this the robot can turn on the spot as it likes. */
export function roomyMm(scene: Scene): number {
  return scene.reach.tipRadiusMm + scene.berthMm;
}

export function pusherWidthMm(scene: Scene): number {
  return scene.reach.pusherLeftMm + scene.reach.pusherRightMm;
}

/** How much farther out a front tip swings in a curve than it reaches on a straight. */
export function overhangMm(scene: Scene, side: Side, radiusMm: number): number {
  const outer = radiusMm + flankMm(scene, side);
  const { frontMm } = scene.reach;
  return Math.sqrt(outer * outer + frontMm * frontMm) - outer;
}

/** How much wider than the narrowest curve that keeps its ball (there at no speed at all) those of a V are. */
const WIDER = 1.3;

/** Radius of a curve with balls in the pusher, mm: so many tip radii, for a V at least what keeps them. */
export function curveMm({ reach, carry }: Scene, tipRadii: number): number {
  const least = carry.holds ? leastCurveMm(carry) : 0;
  return Math.max(tipRadii * reach.tipRadiusMm, WIDER * least);
}

/** Point on the push line, `beforeMm` in front of the wedge's edge, `asideMm` to the left of a robot that faces it. */
export function beforeWedge(scene: Scene, beforeMm: number, asideMm = 0): PointMm {
  const { aim, nx, ny } = scene.target;
  // Left of the heading (−nx, −ny) is (ny, −nx).
  return { xMm: aim.xMm + beforeMm * nx + asideMm * ny, yMm: aim.yMm + beforeMm * ny - asideMm * nx };
}

/** Distances in front of the wedge at which a push may turn onto the push line, the nearest first: each leaves a stretch of straight push. */
export function turnInsMm(scene: Scene): readonly number[] {
  const { reach, ballDiameterMm } = scene;
  const least = reach.groundFrontMm + reach.tipRadiusMm / 2 + ballDiameterMm;
  return [0, 0.2, 0.4, 0.7, 1, 1.4].map((share) => least + share * reach.tipRadiusMm);
}

/** `from` … `to` in equal steps of at most `step`, both ends included. */
export function evenly(from: number, to: number, step: number): readonly number[] {
  const count = Math.max(1, Math.ceil(Math.abs(to - from) / step - 1e-9));
  return Array.from({ length: count + 1 }, (_, i) => from + ((to - from) * i) / count);
}

/** How many laps or rounds, each a step farther in, it takes from the walls to the middle of the zone. */
export function roundsToMiddle(scene: Scene, stepMm: number): number {
  const half = Math.min(scene.widthMm, scene.heightMm) / 2;
  const outermost =
    Math.max(scene.reach.leftMm, scene.reach.rightMm) + scene.berthMm + pusherWidthMm(scene) / 2;
  return Math.max(1, Math.ceil((half - outermost) / stepMm - 1e-9));
}
