import type { BallKind } from "../model/ball.ts";
import type { Drive } from "../model/robot.ts";
import { GRAVITY_MM_PER_S2 } from "../model/units.ts";
import type { Reach } from "./reach.ts";

/**
 * How a ball rides in a pusher that is deep enough to hold it (between arms, in a V). It loses speed slowly and runs on
 * when the robot brakes; in a curve it is thrown outward, that is forward, along the arms. Both must stay within the depth.
 */
export interface Carry {
  /** The pusher is deeper than a ball's radius. */
  readonly holds: boolean;
  /** Way a ball may move forward in the pusher and still be in it, mm. */
  readonly depthMm: number;
  /** Distance of a ball at the back of the pusher from the robot's axle, mm. */
  readonly seatMm: number;
  /** How far to the side a ball in the pusher may be, mm. */
  readonly halfWidthMm: number;
  /** Slowest loss of speed of a rolling ball, and the robot's braking, mm/s². */
  readonly ballDecelMmPerS2: number;
  readonly robotDecelMmPerS2: number;
}

/** Share of the depth that the estimates may use up, so that a bump does not lose the ball. */
const MARGIN = 0.7;

export function carryOf(reach: Reach, drive: Drive, balls: readonly BallKind[]): Carry {
  const radius = balls.reduce((most, ball) => Math.max(most, ball.diameterMm / 2), 0);
  const depthMm = reach.pusherFrontMm - reach.pusherBackMm - radius;
  return {
    holds: depthMm > 0,
    depthMm: Math.max(0, depthMm),
    seatMm: reach.pusherBackMm + radius,
    halfWidthMm: Math.max(0, Math.max(reach.pusherLeftMm, reach.pusherRightMm) - radius),
    ballDecelMmPerS2: balls.reduce(
      (least, ball) => Math.min(least, ball.rollingResistance * GRAVITY_MM_PER_S2),
      GRAVITY_MM_PER_S2,
    ),
    robotDecelMmPerS2: drive.accelMmPerS2,
  };
}

/** Way that a ball gains on a robot which brakes from a speed: v²/2 · (1/d − 1/a), mm. */
export function runOnMm(carry: Carry, speedMmPerS: number): number {
  const gain = 1 / carry.ballDecelMmPerS2 - 1 / carry.robotDecelMmPerS2;
  return Math.max(0, (speedMmPerS * speedMmPerS * gain) / 2);
}

/** Fastest speed from which the robot may brake without losing the ball, mm/s. */
export function brakingSpeed(carry: Carry): number {
  const runOn = runOnMm(carry, 1);
  return runOn === 0 ? Number.POSITIVE_INFINITY : Math.sqrt((MARGIN * carry.depthMm) / runOn);
}

/**
 * Fastest turning rate at which a ball stays through a curve, or a turn on the spot (radius 0), rad/s. In the turning
 * frame a ball at distance r from the axle is pushed outward by ω²r, which its rolling resistance has to hold; and when
 * the robot stops turning, a ball at the outer side of the pusher must not be faster than one that a straight may leave.
 */
export function curveRate(carry: Carry, radiusMm: number): number {
  const { ballDecelMmPerS2, seatMm, halfWidthMm } = carry;
  const outer = radiusMm + halfWidthMm;
  return Math.min(
    Math.sqrt((MARGIN * ballDecelMmPerS2) / seatMm),
    brakingSpeed(carry) / Math.sqrt(outer * outer + seatMm * seatMm),
  );
}
