import type { Move } from "../../model/routine.ts";
import { PI } from "../../model/units.ts";
import type { Pose } from "../../motion/pose.ts";
import { atan2, sin, wrapAngle } from "../../num/elementary.ts";
import { curveRate, turnsOnSpot } from "../carry.ts";
import { carryOn } from "../pushRun.ts";
import type { LyingBall } from "./ballGuard.ts";
import { aheadOf, distanceTo } from "./fromRobot.ts";
import { GENTLE_SHARE, type TripMaker } from "./tripMaker.ts";
import { bringHome } from "./wayHome.ts";

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
/** A pusher that holds nothing takes further balls only straight ahead: least distance from its ends, in radii. */
const SWATH_MARGIN_RADII = 0.5;

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
  const home = bringHome(maker, balls, others);
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
  const turns = turnsOnSpot(carry);
  if (loaded && !turns) {
    // A plate takes what lies in its way, and a V what lies within its catch: neither can turn on the spot.
    const aside = sin(turn) * distanceTo(builder.pose, ball);
    const half = Math.min(reach.pusherLeftMm, reach.pusherRightMm) - SWATH_MARGIN_RADII * ball.radiusMm;
    if (Math.abs(aside) > half || Math.abs(turn) > PI / 2) return false;
    if (!carry.holds) return true;
  }
  const from = builder.pose;
  const before = builder.moves.length;
  if (loaded && turns && !builder.turn(turn, GENTLE_SHARE * curveRate(carry, 0))) return false;
  // While it turns, and up to a ball's width before the seat, the robot must not touch the ball it is after.
  if (loaded && turns && !guard.isClear(from, builder.moves.slice(before), [...avoided, ball])) return false;
  const way = aheadOf(builder.pose, ball) - seatMm + SEAT_MM;
  if (way < 0) return !turns && loaded;
  const pose = builder.pose;
  const at = builder.moves.length;
  return carryOn(builder, way) && guard.isClear(pose, builder.moves.slice(at), avoided);
}
