import type { PointMm } from "../../model/zone.ts";
import type { Pose } from "../../motion/pose.ts";
import { cos, sin, wrapAngle } from "../../num/elementary.ts";
import { runOnMm } from "../carry.ts";
import { beforeWedgeMm } from "../target.ts";
import { approachTo } from "./approach.ts";
import type { LyingBall } from "./ballGuard.ts";
import { aheadOf, leftOf } from "./fromRobot.ts";
import { straightStarts } from "./starts.ts";
import { type Trip, tripFrom } from "./trip.ts";
import type { TripMaker } from "./tripMaker.ts";

/** How far a ball is shoved, mm. */
const LENGTHS_MM = [60, 140, 240, 360, 500, 700];
/** So slowly that it comes to rest a finger's breadth ahead of the pusher, mm/s: 120 mm/s lets a light ball run on 22 mm. */
const SHOVE_MM_PER_S = 120;
/** Backed off a ball that was let go of before anything else, mm: at least this, and until it is out of the pusher by the gap. */
const OFF_MM = 30;
const GAP_MM = 12;
/** Balls that are let go of keep this much off walls and wedge, mm: what the estimate may be off. */
const ROOM_MM = 3;
/** It is taken home in directions this near to the push line, rad. */
const ASIDE_RAD = 1.4;

/**
 * A trip in two parts, for a pusher that cannot turn with a ball: it is shoved to another place, left there, and brought home
 * from another side. The quickest of all lengths and sides; null where there is none.
 *
 * @param balls the one that is shoved
 */
export function tripByShove(
  maker: TripMaker,
  start: Pose,
  balls: readonly LyingBall[],
  lying: readonly LyingBall[],
): Trip | null {
  const [ball] = balls;
  if (ball === undefined) return null;
  const others = lying.filter((each) => each !== ball);
  let best: Trip | null = null;
  for (const lengthMm of lengthsFor(maker, start, ball)) {
    const shoved = shove(maker, start, ball, lengthMm, others);
    if (shoved === null) break;
    const trip = homeAfterShove(maker, shoved, others, best?.homeS ?? Number.POSITIVE_INFINITY);
    if (trip !== null) best = trip;
  }
  return best;
}

/** A V shoves a ball onto the push line: from there it goes straight home. A plate has straight ways home from many places. */
function lengthsFor({ builder }: TripMaker, start: Pose, ball: LyingBall): readonly number[] {
  const { carry, target } = builder.scene;
  if (!carry.holds) return LENGTHS_MM;
  const across = sin(target.headingRad - start.headingRad);
  if (Math.abs(across) < LEAST_CROSSING) return [];
  const { aim, headingRad } = target;
  // How far ahead the push line is crossed, and how far from there to where the ball is met and runs on to.
  const aside = sin(headingRad) * (aim.xMm - start.xMm) - cos(headingRad) * (aim.yMm - start.yMm);
  const speed = Math.min(SHOVE_MM_PER_S, builder.speedMmPerS);
  const lengthMm = aside / across - aheadOf(start, ball) - runOnMm(carry, speed);
  return lengthMm > 0 ? [lengthMm] : [];
}

/** Sine of the angle under which a shove must cross the push line. */
const LEAST_CROSSING = 0.2;

/** What a shove comes to: the trip's first part, and the ball where it then lies. */
interface Shoved {
  readonly first: Trip;
  readonly ball: LyingBall;
}

function shove(
  maker: TripMaker,
  start: Pose,
  ball: LyingBall,
  lengthMm: number,
  others: readonly LyingBall[],
): Shoved | null {
  const { builder, guard, seatMm } = maker;
  builder.rewind({ pose: start, timeS: 0, moveCount: 0, armsRad: builder.mark().armsRad });
  const speed = Math.min(SHOVE_MM_PER_S, builder.speedMmPerS);
  if (!builder.drive(aheadOf(start, ball) - seatMm + lengthMm, speed)) return null;
  const aheadMm = seatMm + runOnMm(builder.scene.carry, speed);
  const asideMm = builder.scene.carry.holds ? 0 : leftOf(start, ball);
  const there = { ...ball, ...pointFrom(builder.pose, aheadMm, asideMm) };
  if (!backOff(maker, there) || !guard.isClear(start, builder.moves, others)) return null;
  if (!hasRoomFor(maker, there)) return null;
  const first = {
    balls: [ball.index],
    start,
    moves: [...builder.moves],
    end: builder.pose,
    timeS: builder.timeS,
    homeS: builder.timeS,
  };
  return { first, ball: there };
}

function homeAfterShove(
  maker: TripMaker,
  { first, ball }: Shoved,
  others: readonly LyingBall[],
  beforeS: number,
): Trip | null {
  const { headingRad } = maker.builder.scene.target;
  const lying = [...others, ball];
  let best: Trip | null = null;
  let soonest = beforeS;
  for (const start of straightStarts(maker, ball)) {
    if (Math.abs(wrapAngle(start.headingRad - headingRad)) > ASIDE_RAD) continue;
    const second = tripFrom(maker, start, [ball], lying);
    if (second === null || first.timeS + second.homeS >= soonest) continue;
    const way = approachTo(maker, first.end, start, lying);
    if (way === null) continue;
    const aroundS = first.timeS + way.timeS;
    if (aroundS + second.homeS >= soonest) continue;
    soonest = aroundS + second.homeS;
    best = {
      balls: first.balls,
      start: first.start,
      moves: [...first.moves, ...way.moves, ...second.moves],
      end: second.end,
      timeS: aroundS + second.timeS,
      homeS: soonest,
    };
  }
  return best;
}

/** Straight back from a ball that now lies ahead, until the robot can turn without touching it. */
function backOff({ builder }: TripMaker, ball: LyingBall): boolean {
  const inside = builder.scene.reach.frontMm + ball.radiusMm + GAP_MM - aheadOf(builder.pose, ball);
  return builder.drive(-Math.max(OFF_MM, inside));
}

/** Whether walls and wedge leave a ball room to lie there. */
function hasRoomFor({ builder }: TripMaker, ball: LyingBall): boolean {
  const { widthMm, heightMm, target } = builder.scene;
  const room = ball.radiusMm + ROOM_MM;
  const inner = Math.min(ball.xMm, ball.yMm, widthMm - ball.xMm, heightMm - ball.yMm);
  return inner >= room && beforeWedgeMm(target, ball) >= room;
}

function pointFrom({ xMm, yMm, headingRad }: Pose, aheadMm: number, asideMm: number): PointMm {
  const [c, s] = [cos(headingRad), sin(headingRad)];
  return { xMm: xMm + c * aheadMm - s * asideMm, yMm: yMm + s * aheadMm + c * asideMm };
}
