import type { BallKind } from "../model/ball.ts";
import type { Drive } from "../model/robot.ts";
import { GRAVITY_MM_PER_S2, PI, RAD_PER_DEG } from "../model/units.ts";
import { atan2, cos, sin } from "../num/elementary.ts";
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
  /** How far from straight ahead the pusher can push, rad: 90° for arms straight ahead, 90° less its half-angle for a V. */
  readonly coneRad: number;
}

/** Share of the depth that the estimates may use up, so that a bump does not lose the ball. */
const MARGIN = 0.7;
/**
 * A pusher whose sides stand less straight than this is a V: what it carries slides out along a side in a turn on the spot,
 * however slow. Arms keep it by their length; 60° is half-way between usual arms (10° to 20° outward) and usual scoops.
 */
const ARMS_RAD = 60 * RAD_PER_DEG;
/** Share of the cone that curves may use up. */
const CONE_MARGIN = 0.85;

/**
 * Share of the rate of arms at which a V turns where it loses its ball at any rate: the slower, the nearer it lies afterwards.
 * Against 1, two hook patterns of pillar-zone.json, 300 trials each: 0.6 brings home 0.04 ± 0.03 and 0.00 ± 0.09 balls more, 0.45 as much.
 */
const LOSING_SHARE = 0.6;

export function carryOf(reach: Reach, drive: Drive, balls: readonly BallKind[]): Carry {
  const radius = balls.reduce((most, ball) => Math.max(most, ball.diameterMm / 2), 0);
  // In the bottom of a V a ball touches both sides.
  const seatMm = reach.pusherBackMm + radius / cos(reach.pusherBottomRad);
  const depthMm = reach.pusherFrontMm - seatMm;
  return {
    holds: depthMm > 0,
    depthMm: Math.max(0, depthMm),
    seatMm,
    halfWidthMm: Math.max(0, Math.max(reach.pusherLeftMm, reach.pusherRightMm) - radius),
    ballDecelMmPerS2: balls.reduce(
      (least, ball) => Math.min(least, ball.rollingResistance * GRAVITY_MM_PER_S2),
      GRAVITY_MM_PER_S2,
    ),
    robotDecelMmPerS2: drive.accelMmPerS2,
    coneRad: reach.pusherConeRad,
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
  const rate = Math.min(
    Math.sqrt((MARGIN * ballDecelMmPerS2) / seatMm),
    brakingSpeed(carry) / Math.sqrt(outer * outer + seatMm * seatMm),
  );
  if (turnsOnSpot(carry)) return rate;
  if (radiusMm <= leastCurveMm(carry)) return LOSING_SHARE * rate;
  return Math.min(rate, coneSpeed(carry, radiusMm, CONE_MARGIN * carry.coneRad) / radiusMm);
}

/** What a pusher holds can be carried through turns on the spot. A V needs curves: see leastCurveMm. */
export function turnsOnSpot(carry: Carry): boolean {
  return carry.holds && carry.coneRad >= ARMS_RAD;
}

/**
 * Radius of the narrowest curve through which a V keeps its ball at all, however slow, mm; 0 for arms. The ball needs a push toward
 * the curve's centre, which a side gives only within the cone about the way ahead: tan(cone) = seat/radius.
 */
export function leastCurveMm(carry: Carry): number {
  if (turnsOnSpot(carry)) return 0;
  const cone = CONE_MARGIN * carry.coneRad;
  return cone < 1e-6 ? Number.POSITIVE_INFINITY : (carry.seatMm * cos(cone)) / sin(cone);
}

/**
 * Speed of the axle up to which a V keeps its ball through a curve, mm/s: atan(d/R) + atan(v_b²/(R_b·a)) = cone, with the ball at d
 * ahead of the axle, a its loss of speed, R_b = √(R² + d²) and v_b = v·R_b/R (references: rolling ball in a V, mechanics;
 * checked in tests/published/carry). 0 where the curve is narrower than leastCurveMm.
 *
 * @param coneRad what the curve may use up of the cone
 */
export function coneSpeed({ seatMm, ballDecelMmPerS2 }: Carry, radiusMm: number, coneRad: number): number {
  const left = coneRad - atan2(seatMm, radiusMm);
  if (left <= 0) return 0;
  if (left >= PI / 2) return Number.POSITIVE_INFINITY;
  const outer = Math.sqrt(radiusMm * radiusMm + seatMm * seatMm);
  return (Math.sqrt((sin(left) / cos(left)) * outer * ballDecelMmPerS2) * radiusMm) / outer;
}
