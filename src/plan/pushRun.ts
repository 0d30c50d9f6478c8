import { PI } from "../model/units.ts";
import type { PointMm } from "../model/zone.ts";
import { atan2, cos, sin, wrapAngle } from "../num/elementary.ts";
import type { RoutineBuilder } from "./builder.ts";
import type { Scene } from "./scene.ts";
import { beforeWedgeMm } from "./target.ts";
import { arriveAt, leaveWedge } from "./transfer.ts";

/** One push through the zone: along straight stretches with rounded corners. Patterns are lists of these. */
export interface PushRun {
  /** At least two; the robot's origin starts at the first, facing the second. */
  readonly points: readonly PointMm[];
  /** Radius of the corners; smaller where a stretch is too short; 0 turns on the spot. */
  readonly radiusMm: number;
  /** Back up from the start as far as the clearance allows, so that nothing behind it is left out. */
  readonly backUp: boolean;
  /** Square up on the wall behind the start, if there is one. */
  readonly squareUp: boolean;
  /** How it ends: against a wall or the wedge, or at the last point. */
  readonly end: "wall" | "stop";
  /** Afterwards only off the wall, or back along the last stretch (which is swept) to where that began. */
  readonly retreat: "off" | "along";
}

/** Walls farther behind a start than this are not used for a square-up, in tip radii. */
const SQUARE_UP_REACH = 2;
/** Curves sharper than this are turned on the spot instead, mm. */
const LEAST_RADIUS_MM = 40;
/** Driven on slowly after a carried ball has come to rest in front of the robot, so that it is surely back in the pusher, mm. */
const CATCH_UP_MM = 40;
/** A square-up or a run along the wedge may turn the robot by this much before the way back counts as another line, rad. */
const SAME_LINE_RAD = 0.03;

/** Drives to the start, does the push and comes off the wall. False, and nothing done, where any part has no room. */
export function pushAlong(builder: RoutineBuilder, run: PushRun): boolean {
  const [first, second] = run.points;
  if (first === undefined || second === undefined) return false;
  const headingRad = direction(first, second);
  return builder.attempt(() => {
    if (!arriveAt(builder, { ...first, headingRad })) return false;
    if (run.backUp) {
      const backMm = builder.freeWayMm(-1) - builder.scene.clearanceMm;
      if (backMm > 0 && backMm < SQUARE_UP_REACH * builder.scene.reach.tipRadiusMm) builder.drive(-backMm);
    }
    if (run.squareUp) builder.squareUp(SQUARE_UP_REACH * builder.scene.reach.tipRadiusMm);
    return follow(builder, run) && retreat(builder, run);
  });
}

function follow(builder: RoutineBuilder, run: PushRun): boolean {
  const { points } = run;
  for (let i = 1; i < points.length; i++) {
    const corner = points[i];
    const next = points[i + 1];
    if (corner === undefined) break;
    if (next === undefined) return finish(builder, corner, run.end);
    if (!roundCorner(builder, corner, next, run.radiusMm)) return false;
  }
  return true;
}

/** The stretch up to a corner and the curve into the next one. */
function roundCorner(builder: RoutineBuilder, corner: PointMm, next: PointMm, radiusMm: number): boolean {
  const { scene, pose } = builder;
  const turnRad = wrapAngle(direction(corner, next) - pose.headingRad);
  const before = distance(pose, corner);
  // The curve uses the stretch before it whole and half of the one after it, which may end in a curve as well.
  const room = Math.min(before, distance(corner, next) / 2);
  const half = Math.abs(turnRad) / 2;
  const tangent = half < PI / 2 - 1e-6 ? sin(half) / cos(half) : Number.POSITIVE_INFINITY;
  const radius = Math.min(radiusMm, room / tangent);
  if (radius < LEAST_RADIUS_MM) return carryOn(builder, before) && builder.face(direction(corner, next));
  const speed = Math.min(builder.speedMmPerS, curveSpeed(scene, radius));
  return carryOn(builder, before - radius * tangent) && builder.arc(radius, turnRad, speed);
}

/** Gentle enough that a carried ball stays; without a carrying pusher nothing is gained by going slowly. */
function curveSpeed(scene: Scene, radiusMm: number): number {
  return scene.carries ? scene.carryRateRadPerS * radiusMm : Number.POSITIVE_INFINITY;
}

/** A straight stretch before a curve: ends slowly enough that carried balls do not run out of the pusher. */
function carryOn(builder: RoutineBuilder, lengthMm: number): boolean {
  const { carries, carrySpeedMmPerS, ballDecelMmPerS2, project } = builder.scene;
  const speed = Math.min(builder.speedMmPerS, project.robot.drive.topSpeedMmPerS);
  if (!carries || speed <= carrySpeedMmPerS) return builder.drive(lengthMm);
  const gain = 1 / ballDecelMmPerS2 - 1 / project.robot.drive.accelMmPerS2;
  const slowMm = Math.max(0, (speed * speed * gain) / 2) + CATCH_UP_MM;
  if (lengthMm < 2 * slowMm) return builder.drive(lengthMm, carrySpeedMmPerS);
  return builder.drive(lengthMm - slowMm) && builder.drive(slowMm, carrySpeedMmPerS);
}

function finish(builder: RoutineBuilder, last: PointMm, end: PushRun["end"]): boolean {
  return end === "wall" ? builder.toWall(1) : builder.drive(distance(builder.pose, last));
}

function retreat(builder: RoutineBuilder, run: PushRun): boolean {
  if (run.end === "stop") return true;
  const { scene } = builder;
  const { tipRadiusMm } = scene.reach;
  if (beforeWedgeMm(scene.target, builder.pose) < tipRadiusMm + scene.ballDiameterMm) leaveWedge(builder);
  if (run.retreat === "along") return backAlong(builder, run);
  const room = builder.freeWayMm(-1) - scene.clearanceMm;
  const backMm = Math.min(scene.clearanceMm + scene.ballDiameterMm, room);
  if (backMm > 0) builder.drive(-backMm);
  return true;
}

function backAlong(builder: RoutineBuilder, run: PushRun): boolean {
  const from = run.points[run.points.length - 2];
  const to = run.points[run.points.length - 1];
  if (from === undefined || to === undefined) return true;
  const off = wrapAngle(builder.pose.headingRad - direction(from, to));
  if (Math.abs(off) > SAME_LINE_RAD) return true;
  if (run.squareUp && run.points.length === 2 && builder.squareUp()) return true;
  builder.drive(-distance(builder.pose, from));
  return true;
}

export function direction(from: PointMm, to: PointMm): number {
  return atan2(to.yMm - from.yMm, to.xMm - from.xMm);
}

export function distance(from: PointMm, to: PointMm): number {
  const dx = to.xMm - from.xMm;
  const dy = to.yMm - from.yMm;
  return Math.sqrt(dx * dx + dy * dy);
}
