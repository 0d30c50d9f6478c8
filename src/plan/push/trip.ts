import type { Move } from "../../model/routine.ts";
import { PI } from "../../model/units.ts";
import type { PointMm } from "../../model/zone.ts";
import type { Pose } from "../../motion/pose.ts";
import { atan2, cos, sin, wrapAngle } from "../../num/elementary.ts";
import type { RoutineBuilder } from "../builder.ts";
import { curveRate } from "../carry.ts";
import { beforeWedge, turnInsMm } from "../place.ts";
import { carryOn, finish, roundCorner } from "../pushRun.ts";
import { roundedCorners } from "../rounding.ts";
import { beforeWedgeMm } from "../target.ts";
import { leaveWedge } from "../transfer.ts";
import type { BallGuard, LyingBall } from "./ballGuard.ts";

/** A trip as it could be driven from its start pose: balls picked up one after another, brought to the wedge, robot backed off. */
export interface Trip {
  /** Numbers of the balls in the order they are met. */
  readonly balls: readonly number[];
  readonly start: Pose;
  readonly moves: readonly Move[];
  readonly end: Pose;
  readonly timeS: number;
  /** Seconds from the start until the push has ended on the wedge. */
  readonly homeS: number;
}

/** Driven on after a ball is in its seat, so that it surely is, mm. */
const SEAT_MM = 15;
/**
 * Turns on the spot with a ball just picked up are made at this share of the rate at which it would stay if it lay still:
 * it does not yet. Of 153 planned balls (usual zone, no drift) 135 came home at 1, 148 at 0.6, 151 at 0.45.
 */
const GENTLE_SHARE = 0.45;
/** A pusher that holds nothing takes further balls only straight ahead: least distance from its ends, in radii. */
const SWATH_MARGIN_RADII = 0.5;
/** Shares of the tip radius tried for the curve onto the push line; 0: on the spot. */
const TURN_IN_SHARES = [0.6, 0.3, 0];

/** What all trips of a plan share. */
export interface TripMaker {
  readonly builder: RoutineBuilder;
  readonly guard: BallGuard;
  /** How far ahead of the axle a ball rides, mm. */
  readonly seatMm: number;
  /** How far to the side a ball may lie that the pusher still takes in, mm. */
  readonly catchMm: number;
  /** Whether the robot has room at a pose, clearance included. */
  readonly stands: (pose: Pose) => boolean;
}

/**
 * Builds a trip from a start pose that has its first ball straight ahead. Null where something is in the way: walls, the wedge,
 * balls that are not part of it, or a ball that would be touched before its turn.
 *
 * @param lying all balls on the floor, those of the trip included
 */
export function tripFrom(
  maker: TripMaker,
  start: Pose,
  balls: readonly LyingBall[],
  lying: readonly LyingBall[],
): Trip | null {
  const { builder } = maker;
  builder.rewind({ pose: start, timeS: 0, moveCount: 0, armsRad: builder.mark().armsRad });
  const others = lying.filter((ball) => !balls.includes(ball));
  for (const [i, ball] of balls.entries()) {
    const later = balls.slice(i + 1);
    if (!pickUp(maker, ball, i > 0, [...others, ...later])) return null;
  }
  const home = bringHome(maker, others);
  if (home === null) return null;
  return {
    balls: balls.map((ball) => ball.index),
    start,
    moves: [...builder.moves],
    end: builder.pose,
    timeS: builder.timeS,
    homeS: home,
  };
}

/** Turns gently toward a ball (not before the first, which the start pose faces) and drives until it is in its seat. */
function pickUp(maker: TripMaker, ball: LyingBall, loaded: boolean, avoided: readonly LyingBall[]): boolean {
  const { builder, guard, seatMm } = maker;
  const { carry, reach } = builder.scene;
  const toward = atan2(ball.yMm - builder.pose.yMm, ball.xMm - builder.pose.xMm);
  const turn = wrapAngle(toward - builder.pose.headingRad);
  if (loaded && !carry.holds) {
    // A plate takes what lies in its way, and cannot turn.
    const aside = sin(turn) * distanceTo(builder.pose, ball);
    const half = Math.min(reach.pusherLeftMm, reach.pusherRightMm) - SWATH_MARGIN_RADII * ball.radiusMm;
    if (Math.abs(aside) > half || Math.abs(turn) > PI / 2) return false;
    return true;
  }
  const from = builder.pose;
  const before = builder.moves.length;
  if (loaded && !builder.turn(turn, GENTLE_SHARE * curveRate(carry, 0))) return false;
  // While it turns, and up to a ball's width before the seat, the robot must not touch the ball it is after.
  if (loaded && !guard.isClear(from, builder.moves.slice(before), [...avoided, ball])) return false;
  const way = aheadOf(builder.pose, ball) - seatMm + SEAT_MM;
  if (way < 0) return false;
  const pose = builder.pose;
  const at = builder.moves.length;
  return carryOn(builder, way) && guard.isClear(pose, builder.moves.slice(at), avoided);
}

/** With the balls in the pusher onto the push line and against the wedge, then back off it. Returns the second at which the push ends. */
function bringHome(maker: TripMaker, others: readonly LyingBall[]): number | null {
  const { builder, guard } = maker;
  const { scene } = builder;
  const from = builder.pose;
  const mark = builder.mark();
  for (const way of waysHome(builder)) {
    builder.rewind(mark);
    const corners = roundedCorners(way);
    const last = way[way.length - 1];
    if (last === undefined) continue;
    const done =
      faceGently(builder, way[1] ?? last) &&
      corners.every((corner) => roundCorner(builder, corner)) &&
      finish(builder, last, "wall");
    if (!done || beforeWedgeMm(scene.target, builder.pose) > scene.reach.frontMm + scene.clearanceMm)
      continue;
    const homeS = builder.timeS;
    if (!guard.isClear(from, builder.moves.slice(mark.moveCount), others)) continue;
    const there = builder.pose;
    const count = builder.moves.length;
    leaveWedge(builder);
    if (!guard.isClear(there, builder.moves.slice(count), others)) continue;
    return homeS;
  }
  return null;
}

type Way = Parameters<typeof roundedCorners>[0];

/** Straight on for a pusher that cannot turn with a ball; else to the push line at one of several distances. */
function waysHome(builder: RoutineBuilder): readonly Way[] {
  const { scene, pose } = builder;
  const here = { xMm: pose.xMm, yMm: pose.yMm, radiusMm: 0 };
  if (!scene.carry.holds) {
    const far = scene.widthMm + scene.heightMm;
    const ahead = {
      xMm: pose.xMm + far * cos(pose.headingRad),
      yMm: pose.yMm + far * sin(pose.headingRad),
      radiusMm: 0,
    };
    return [[here, ahead]];
  }
  const { tipRadiusMm } = scene.reach;
  return AHEAD_FIRST_MM.flatMap((aheadMm) => {
    const ahead = {
      xMm: pose.xMm + aheadMm * cos(pose.headingRad),
      yMm: pose.yMm + aheadMm * sin(pose.headingRad),
      radiusMm: 0,
    };
    const begin = aheadMm === 0 ? [here] : [here, ahead];
    return turnInsMm(scene).flatMap((turnInMm) =>
      TURN_IN_SHARES.map((share) => [
        ...begin,
        { ...beforeWedge(scene, turnInMm), radiusMm: share * tipRadiusMm },
        { ...beforeWedge(scene, 0), radiusMm: 0 },
      ]),
    );
  });
}

/** Driven straight on with a ball before the turn homeward where there is no room for it at once, mm. */
const AHEAD_FIRST_MM = [0, 120, 260, 420];

function faceGently(builder: RoutineBuilder, point: PointMm): boolean {
  const { carry } = builder.scene;
  const toward = atan2(point.yMm - builder.pose.yMm, point.xMm - builder.pose.xMm);
  const turn = wrapAngle(toward - builder.pose.headingRad);
  if (!carry.holds) return Math.abs(turn) < 1e-6;
  return builder.turn(turn, GENTLE_SHARE * curveRate(carry, 0));
}

/** How far a point is ahead of a pose, mm. */
export function aheadOf({ xMm, yMm, headingRad }: Pose, point: PointMm): number {
  return cos(headingRad) * (point.xMm - xMm) + sin(headingRad) * (point.yMm - yMm);
}

/** How far a point is to the left of a pose's line, mm. */
export function leftOf({ xMm, yMm, headingRad }: Pose, point: PointMm): number {
  return cos(headingRad) * (point.yMm - yMm) - sin(headingRad) * (point.xMm - xMm);
}

export function distanceTo(from: PointMm, to: PointMm): number {
  const dx = to.xMm - from.xMm;
  const dy = to.yMm - from.yMm;
  return Math.sqrt(dx * dx + dy * dy);
}
