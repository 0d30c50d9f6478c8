import { PI, RAD_PER_DEG } from "../model/units.ts";
import type { PointMm } from "../model/zone.ts";
import type { Pose } from "../motion/pose.ts";
import { atan2, cos, sin, wrapAngle } from "../num/elementary.ts";
import type { Mark, RoutineBuilder } from "./builder.ts";
import { beforeWedgeMm } from "./target.ts";
import { faceWithRoom } from "./turnRoom.ts";

/** A point counts as reached within this, mm. */
const THERE_MM = 1;
/** Angles away from the wanted heading from which a start beside a wall is backed into, in the order tried. */
const BACKING_RAD = [0, 20, -20, 45, -45, 90, -90].map((deg) => deg * RAD_PER_DEG);
/** Sine of the angle under which two lines must cross to be driven as a corner. */
const LEAST_CROSSING = 0.3;
/** Lengths of that backing, in tip radii. */
const BACKING_LENGTHS = [0.6, 1.2, 2];

/** Turns toward a point and drives there, or turns its back to it and reverses: whichever needs the smaller turn. */
export function reachPoint(builder: RoutineBuilder, point: PointMm): boolean {
  return builder.attempt(() => {
    // A turn may have to make room first; then the direction has changed and is taken anew.
    for (let round = 0; round < 3; round++) {
      const dx = point.xMm - builder.pose.xMm;
      const dy = point.yMm - builder.pose.yMm;
      const distance = Math.sqrt(dx * dx + dy * dy);
      if (distance < THERE_MM) return true;
      const toward = atan2(dy, dx);
      const backward = Math.abs(wrapAngle(toward - builder.pose.headingRad)) > PI / 2;
      const straight = (back: boolean) =>
        builder.attempt(
          () => builder.face(back ? toward + PI : toward) && builder.drive(back ? -distance : distance),
        );
      if (straight(backward) || straight(!backward)) return true;
      if (!faceWithRoom(builder, backward ? toward + PI : toward)) return false;
    }
    return false;
  });
}

/**
 * Drives to a pose without touching anything: straight there and a turn on the spot; where a wall leaves no room for
 * that turn, to a place in front of it and back in, straight or at an angle.
 */
export function arriveAt(builder: RoutineBuilder, pose: Pose): boolean {
  const { widthMm, heightMm } = builder.scene;
  const middle = { xMm: widthMm / 2, yMm: heightMm / 2 };
  return (
    arriveDirectly(builder, pose) ||
    builder.attempt(() => reachPoint(builder, middle) && arriveDirectly(builder, pose))
  );
}

function arriveDirectly(builder: RoutineBuilder, pose: Pose): boolean {
  const straight = () => reachPoint(builder, pose) && builder.face(pose.headingRad);
  if (quicker(builder, straight, () => roundCorner(builder, pose))) return true;
  const { tipRadiusMm } = builder.scene.reach;
  for (const share of BACKING_LENGTHS) {
    for (const aside of BACKING_RAD) {
      if (backInto(builder, pose, pose.headingRad + aside, share * tipRadiusMm)) return true;
    }
  }
  return false;
}

/** Does whichever of two ways takes less time; false where neither can be done. */
function quicker(builder: RoutineBuilder, one: () => boolean, other: () => boolean): boolean {
  const before = builder.mark();
  const timeOf = (way: () => boolean) => (builder.attempt(way) ? builder.timeS : Number.POSITIVE_INFINITY);
  const oneS = timeOf(one);
  builder.rewind(before);
  const otherS = timeOf(other);
  if (otherS < oneS) return true;
  builder.rewind(before);
  return Number.isFinite(oneS) && builder.attempt(one);
}

/** Straight on (or back) to the line of the wanted pose, one turn onto it, and along it to the pose. */
function roundCorner(builder: RoutineBuilder, pose: Pose): boolean {
  const { xMm, yMm, headingRad } = builder.pose;
  const [c, s] = [cos(pose.headingRad), sin(pose.headingRad)];
  const across = c * sin(headingRad) - s * cos(headingRad);
  if (Math.abs(across) < LEAST_CROSSING) return false;
  // Distance of the pose's line from here, to the left of its heading.
  const aside = c * (pose.yMm - yMm) - s * (pose.xMm - xMm);
  return builder.attempt(() => {
    if (!builder.drive(aside / across) || !builder.face(pose.headingRad)) return false;
    return builder.drive((pose.xMm - builder.pose.xMm) * c + (pose.yMm - builder.pose.yMm) * s);
  });
}

/**
 * Stops `lengthMm` ahead of the pose along a heading, backs into it, and turns to the wanted heading. The last turn is
 * made a little ahead of the pose, where the rear corners have room to swing.
 */
function backInto(builder: RoutineBuilder, pose: Pose, headingRad: number, lengthMm: number): boolean {
  const { rearRadiusMm, rearMm } = builder.scene.reach;
  const aheadMm = headingRad === pose.headingRad ? 0 : rearRadiusMm - rearMm;
  const last = {
    xMm: pose.xMm + aheadMm * cos(pose.headingRad),
    yMm: pose.yMm + aheadMm * sin(pose.headingRad),
  };
  const before = {
    xMm: last.xMm + lengthMm * cos(headingRad),
    yMm: last.yMm + lengthMm * sin(headingRad),
  };
  return builder.attempt(
    () =>
      reachPoint(builder, before) &&
      builder.face(headingRad) &&
      builder.drive(-lengthMm) &&
      builder.face(pose.headingRad) &&
      builder.drive(-aheadMm),
  );
}

/**
 * Backs straight off the wedge until a turn cannot sweep a delivered ball down again: the circle of the tips keeps a
 * ball's diameter off its edge. Backs as far as it can where the room is less.
 */
export function leaveWedge(builder: RoutineBuilder): void {
  const { target, reach, ballDiameterMm, clearanceMm } = builder.scene;
  const { headingRad } = builder.pose;
  const wanted = reach.tipRadiusMm + ballDiameterMm / 2;
  const rate = -(target.nx * cos(headingRad) + target.ny * sin(headingRad));
  const missing = wanted - beforeWedgeMm(target, builder.pose);
  if (missing <= 0 || rate <= 0.1) return;
  const room = builder.freeWayMm(-1) - clearanceMm;
  const backMm = Math.min(missing / rate, room);
  if (backMm > 0) builder.drive(-backMm);
}

/**
 * Back along everything done since the mark, last move first, at the highest speed: nothing is carried. Refused where
 * the robot squared up on the way: there it did not go as far as commanded.
 */
export function retrace(builder: RoutineBuilder, since: Mark): boolean {
  const done = builder.moves.slice(since.moveCount).reverse();
  if (done.some((move, i) => i > 0 && move.kind === "toWall")) return false;
  return builder.attempt(() =>
    done.every((move) => {
      // Only the last move is one "to the wall", and pushing on did not take it any farther.
      const length = move.kind === "toWall" ? Math.abs(move.distanceMm) : 0;
      return builder.undo(move, length, builder.scene.topSpeedMmPerS);
    }),
  );
}
