import { GRAVITY_MM_PER_S2 } from "../model/units.ts";
import { type Estimate, meanOf } from "./estimate.ts";

/** A ball that was given a push and rolled until it stopped: tape measure and stopwatch. */
export interface RollRun {
  readonly distanceMm: number;
  readonly timeS: number;
}

/** The robot pushes a ball at a steady speed, stops, and the ball rolls on: the gap between pusher and ball in the end. */
export interface PushRun {
  readonly speedMmPerS: number;
  readonly gapMm: number;
}

/** A ball dropped on a hard floor; both heights to the ball's underside. */
export interface ReboundRun {
  readonly dropMm: number;
  readonly reboundMm: number;
}

/** c = a/g with a = 2S/T² of a ball that slows evenly to a stop. Source: oxfordcroquet.com (Plummer; Nel). Checked in tests/published/ballTests. */
export function rollCoefficient({ distanceMm, timeS }: RollRun): number {
  return (2 * distanceMm) / (timeS * timeS) / GRAVITY_MM_PER_S2;
}

/**
 * c of a ball pushed at v: it rolls v²/(2cg), while the robot needs v²/(2a) to stop; the gap is the difference.
 *
 * @param accelMmPerS2 how the robot brakes
 */
export function pushCoefficient({ speedMmPerS, gapMm }: PushRun, accelMmPerS2: number): number {
  const square = speedMmPerS * speedMmPerS;
  return square / (2 * GRAVITY_MM_PER_S2 * (gapMm + square / (2 * accelMmPerS2)));
}

/** e = √(rebound/drop). Source: the ball standards of several sports, see tests/published/ball-presets. */
export function reboundRestitution({ dropMm, reboundMm }: ReboundRun): number {
  return Math.sqrt(reboundMm / dropMm);
}

/** From both kinds of tests; null for fewer than two in all. */
export function fitRolling(
  rolls: readonly RollRun[],
  pushes: readonly PushRun[],
  accelMmPerS2: number,
): Estimate | null {
  return meanOf([
    ...rolls.map(rollCoefficient),
    ...pushes.map((push) => pushCoefficient(push, accelMmPerS2)),
  ]);
}

export function fitRestitution(rebounds: readonly ReboundRun[]): Estimate | null {
  return meanOf(rebounds.map(reboundRestitution));
}
