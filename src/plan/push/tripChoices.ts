import type { PointMm } from "../../model/zone.ts";
import type { Pose } from "../../motion/pose.ts";
import { turnsOnSpot } from "../carry.ts";
import { beforeWedgeMm } from "../target.ts";
import type { LyingBall } from "./ballGuard.ts";
import { aheadOf, distanceTo, leftOf } from "./fromRobot.ts";
import { shoveStarts, startsFor } from "./starts.ts";
import { tripFrom } from "./trip.ts";
import type { TripMaker } from "./tripMaker.ts";

/** A trip that may be tried: which balls, in which order, from where; no trip is shorter than `leastS`. */
export interface TripChoice {
  readonly id: number;
  readonly balls: readonly LyingBall[];
  /** Bits of the balls' places in the list of all. */
  readonly bits: number;
  readonly start: Pose;
  readonly leastS: number;
  /** The ball is first shoved to where it can be brought home from: where nothing simpler does. */
  readonly shoves: boolean;
}

/**
 * Balls carried together at most: a third knocks the others out. Of 40 layouts of the usual zone, without drift, 1 / 2 / 3 together
 * brought home 102 of 103 / 101 of 104 / 88 of 104 planned balls in 32.1 / 24.0 / 21.4 s.
 */
const MOST_TOGETHER = 2;

/**
 * All trips worth a look: every group of up to two balls in every order, met from every direction that has room. A ball for which
 * a pusher that cannot turn with it has no straight way home is shoved to where it has one.
 */
export function tripChoices(maker: TripMaker, balls: readonly LyingBall[]): readonly TripChoice[] {
  const choices: TripChoice[] = [];
  for (const group of groupsOf(balls.map((_, i) => i))) {
    const members = group.flatMap((i) => balls[i] ?? []);
    const [first] = members;
    if (first === undefined) continue;
    const bits = group.reduce((sum, i) => sum | (1 << i), 0);
    const straight = startsFor(maker, first);
    const shoves =
      members.length === 1 &&
      !turnsOnSpot(maker.builder.scene.carry) &&
      straight.every((start) => tripFrom(maker, start, members, members) === null);
    for (const start of shoves ? shoveStarts(maker, first) : straight) {
      const leastS = leastTime(maker, start, members);
      choices.push({ id: choices.length, balls: members, bits, start, leastS, shoves });
    }
  }
  return choices;
}

function groupsOf(indices: readonly number[]): readonly (readonly number[])[] {
  const groups: (readonly number[])[] = [];
  const grow = (group: readonly number[]): void => {
    if (group.length > 0) groups.push(group);
    if (group.length === MOST_TOGETHER) return;
    for (const i of indices) if (!group.includes(i)) grow([...group, i]);
  };
  grow([]);
  return groups;
}

/**
 * Trips that begin where the robot stands, straight on: the only ones where a ball lies right in front of it.
 */
export function tripsAhead(
  maker: TripMaker,
  pose: Pose,
  choices: readonly TripChoice[],
): readonly TripChoice[] {
  const seen = new Set<string>();
  return choices.flatMap((choice) => {
    const [first] = choice.balls;
    const order = choice.balls.map((ball) => ball.index).join(" ");
    if (first === undefined || choice.shoves || seen.has(order)) return [];
    seen.add(order);
    if (Math.abs(leftOf(pose, first)) > maker.catchMm || aheadOf(pose, first) < maker.seatMm) return [];
    return [{ ...choice, id: -1 - choice.id, start: pose, leastS: leastTime(maker, pose, choice.balls) }];
  });
}

/**
 * No trip takes less: straight from ball to ball and on to the wedge, at full speed, without a turn. Where the robot picks a ball
 * up it stands a seat away from it, on whichever side, so that each ball shortens its way by two seats at most.
 */
export function leastTime(maker: TripMaker, start: Pose, balls: readonly LyingBall[]): number {
  const { scene } = maker.builder;
  // What a plate takes along it need not drive up to.
  const met = scene.carry.holds ? balls : balls.slice(0, 1);
  let way = 0;
  let at: PointMm = start;
  for (const ball of met) {
    way += distanceTo(at, ball);
    at = ball;
  }
  const shorter = 2 * met.length * maker.seatMm + scene.reach.frontMm + scene.clearanceMm;
  return Math.max(0, way + Math.max(0, beforeWedgeMm(scene.target, at)) - shorter) / scene.topSpeedMmPerS;
}

/** No trip that takes this ball along is home sooner after its start: from where the robot first touches it to the wedge. */
export function leastWithBall({ builder }: TripMaker, ball: LyingBall): number {
  const { reach, clearanceMm, target, topSpeedMmPerS } = builder.scene;
  const near = reach.tipRadiusMm + ball.radiusMm + reach.frontMm + clearanceMm;
  return Math.max(0, beforeWedgeMm(target, ball) - near) / topSpeedMmPerS;
}
