import type { PointMm } from "../model/zone.ts";
import { cos, sin } from "../num/elementary.ts";
import type { Mark, RoutineBuilder } from "./builder.ts";
import { brakingSpeed, curveRate, runOnMm } from "./carry.ts";
import { direction, distance, type RoundedCorner, roundedCorners, type Waypoint } from "./rounding.ts";
import { beforeWedgeMm } from "./target.ts";
import { arriveAt, leaveWedge, retrace } from "./transfer.ts";

/** One push through the zone. Patterns are lists of these. */
export interface PushRun {
  /**
   * Ways to do it, the best first: polylines with rounded corners, at least two points each. The robot's origin starts
   * at the first, facing the second. The first way that has room is taken.
   */
  readonly ways: readonly (readonly Waypoint[])[];
  /** Back up from the start as far as the clearance allows, so that nothing behind it is left out. */
  readonly backUp: boolean;
  /** Headings in which the robot backs into the wall behind the start and squares up, before it takes the heading of the run. */
  readonly squareUps: readonly number[];
  /** How it ends: against a wall or the wedge, or at the last point. */
  readonly end: "wall" | "stop";
  /** Afterwards only off the wall, or all the way back as it came: along what is swept, so that nothing is pushed away. */
  readonly retreat: "off" | "back";
  /** Hinged arms close around what they carry before each corner and open after it, on the push line for the last time. */
  readonly cage?: boolean;
}

/** Walls farther behind a start than this are not used, in tip radii. */
const BEHIND_REACH = 2;
/** Curves sharper than this are turned on the spot instead, mm. */
export const LEAST_RADIUS_MM = 40;
/** Driven on slowly after a carried ball has come to rest ahead, so that it is surely back in the pusher, mm. */
export const CATCH_UP_MM = 40;

/** A push that turns the robot by more than this has not ended against the wall but been turned away, rad. */
const STEADY_RAD = 0.05;

/** On a shorter stretch between two corners the arms stay closed, mm. */
const OPEN_FROM_MM = 80;

/** Time in which carried balls come to rest after a turn, s. */
export const SETTLE_S = 0.5;

/** Drives to the start, does the push and comes off the wall. False, and nothing done, where no way has room. */
export function pushAlong(builder: RoutineBuilder, run: PushRun): boolean {
  const before = builder.mark();
  let at = "";
  let there = false;
  for (const way of run.ways) {
    const [first, second] = way;
    if (first === undefined || second === undefined) continue;
    const headingRad = direction(first, second);
    // Most ways of a run share their start: it is driven to once.
    const place = `${first.xMm} ${first.yMm} ${headingRad}`;
    if (place !== at) {
      builder.rewind(before);
      there = start(builder, run, first, headingRad);
      at = place;
    }
    if (there && followAndRetreat(builder, run, way)) return true;
  }
  builder.rewind(before);
  return false;
}

/** The push itself from its start, which is driven to before, and off the wall. False, and nothing done, where it has no room. */
export function followAndRetreat(builder: RoutineBuilder, run: PushRun, way: readonly Waypoint[]): boolean {
  const mark = builder.mark();
  return builder.attempt(() => follow(builder, run, way) && retreat(builder, run, mark));
}

function start(builder: RoutineBuilder, run: PushRun, point: PointMm, headingRad: number): boolean {
  for (const squareRad of run.squareUps) squareUpAt(builder, point, squareRad);
  if (!arriveAt(builder, { ...point, headingRad })) return false;
  if (!run.backUp) return true;
  const backMm = builder.freeWayMm(-1) - builder.scene.clearanceMm;
  if (backMm > 0 && backMm < BEHIND_REACH * builder.scene.reach.tipRadiusMm) builder.drive(-backMm);
  return true;
}

/** Where the robot cannot do it (no wall there, or the doorway), it is left out. */
function squareUpAt(builder: RoutineBuilder, point: PointMm, headingRad: number): void {
  builder.attempt(() => {
    const there = arriveAt(builder, { ...point, headingRad });
    if (!there || !builder.squareUp(BEHIND_REACH * builder.scene.reach.tipRadiusMm)) return false;
    const { xMm, yMm } = builder.pose;
    return builder.drive((point.xMm - xMm) * cos(headingRad) + (point.yMm - yMm) * sin(headingRad));
  });
}

function follow(builder: RoutineBuilder, run: PushRun, way: readonly Waypoint[]): boolean {
  const last = way[way.length - 1];
  if (last === undefined) return false;
  return (
    roundedCorners(way).every(
      (corner) => (run.cage === true && roundCaged(builder, corner)) || roundCorner(builder, corner),
    ) &&
    openUp(builder) &&
    finish(builder, last, run.end)
  );
}

/**
 * The stretch up to a corner and the turn into the next one, gentle enough that carried balls stay in the pusher.
 *
 * @param spotShare of the estimated rate that a turn on the spot is made at
 */
export function roundCorner(builder: RoutineBuilder, corner: RoundedCorner, spotShare = 1): boolean {
  const { point, turnRad, radiusMm, tangentMm } = corner;
  const { carry } = builder.scene;
  const curved = radiusMm >= LEAST_RADIUS_MM;
  const rate = carry.holds ? curveRate(carry, curved ? radiusMm : 0) : Number.POSITIVE_INFINITY;
  if (!carryOn(builder, distance(builder.pose, point) - (curved ? tangentMm : 0))) return false;
  const turned = curved
    ? builder.arc(radiusMm, turnRad, Math.min(builder.speedMmPerS, rate * radiusMm))
    : builder.turn(turnRad, spotShare * rate);
  // Carried balls stay where they are and are met again: what the square-up needs is that they lie still.
  if (turned && point.squareUp) settleAndSquareUp(builder);
  return turned;
}

/**
 * The same with what is carried caged by closed arms: nothing is lost however fast the robot turns. False, and nothing done,
 * where the arms have no room to swing.
 */
function roundCaged(
  builder: RoutineBuilder,
  { point, turnRad, radiusMm, tangentMm }: RoundedCorner,
): boolean {
  const curved = radiusMm >= LEAST_RADIUS_MM;
  const straightMm = distance(builder.pose, point) - (curved ? tangentMm : 0);
  return builder.attempt(() => {
    // Where the arms would only just have opened they stay closed.
    if (straightMm > OPEN_FROM_MM && !openUp(builder)) return false;
    if (!(builder.armsAreClosed ? builder.drive(straightMm) : carryOn(builder, straightMm))) return false;
    if (!builder.swingArms("closed")) return false;
    const turned = curved ? builder.arc(radiusMm, turnRad) : builder.turn(turnRad);
    if (turned && point.squareUp) settleAndSquareUp(builder);
    return turned;
  });
}

/** Opens closed arms, once what rolls about between them after the last stop has come to rest: it would roll out. */
export function openUp(builder: RoutineBuilder): boolean {
  return !builder.armsAreClosed || (builder.wait(SETTLE_S) && builder.swingArms("open"));
}

function settleAndSquareUp(builder: RoutineBuilder): void {
  builder.attempt(() => {
    if (builder.scene.carry.holds) builder.wait(SETTLE_S);
    return builder.squareUp(BEHIND_REACH * builder.scene.reach.tipRadiusMm);
  });
}

/** A straight stretch before a curve: ends slowly enough that carried balls do not run out of the pusher. */
export function carryOn(builder: RoutineBuilder, lengthMm: number): boolean {
  const { carry } = builder.scene;
  const slow = brakingSpeed(carry);
  if (!carry.holds || builder.speedMmPerS <= slow) return builder.drive(lengthMm);
  const slowMm = runOnMm(carry, builder.speedMmPerS) + CATCH_UP_MM;
  if (lengthMm < 2 * slowMm) return builder.drive(lengthMm, slow);
  return builder.drive(lengthMm - slowMm) && builder.drive(slowMm, slow);
}

/**
 * Against the wall or the wedge; only up to it where it would turn the robot away (a corner of the robot meets it
 * first), or where the robot drives over the wedge and its tips would meet the walls beyond.
 */
export function finish(builder: RoutineBuilder, last: PointMm, end: PushRun["end"]): boolean {
  if (end === "stop") return builder.drive(distance(builder.pose, last));
  const { scene } = builder;
  const { headingRad } = builder.pose;
  const against = () => {
    if (!builder.toWall(1)) return false;
    if (Math.abs(builder.pose.headingRad - headingRad) > STEADY_RAD) return false;
    return scene.wedgeStops || beforeWedgeMm(scene.target, builder.pose) > scene.reach.frontMm;
  };
  return builder.attempt(against) || builder.driveOn();
}

function retreat(builder: RoutineBuilder, run: PushRun, mark: Mark): boolean {
  if (run.end === "stop") return true;
  const { scene } = builder;
  if (run.retreat === "back" && retrace(builder, mark)) return true;
  const { tipRadiusMm } = scene.reach;
  if (beforeWedgeMm(scene.target, builder.pose) < tipRadiusMm) {
    leaveWedge(builder);
    return true;
  }
  const room = builder.freeWayMm(-1) - scene.clearanceMm;
  const backMm = Math.min(scene.clearanceMm + scene.ballDiameterMm, room);
  if (backMm > 0) builder.drive(-backMm);
  return true;
}
