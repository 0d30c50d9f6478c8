import type { PointMm } from "../../model/zone.ts";
import type { Pose } from "../../motion/pose.ts";
import { cos, sin } from "../../num/elementary.ts";
import { runOnMm } from "../carry.ts";
import type { Scene } from "../scene.ts";
import { beforeWedgeMm } from "../target.ts";
import type { LyingBall } from "./ballGuard.ts";

/** A ball comes to lie this much farther in than it has to, mm. */
const SURELY_MM = 5;
/** A ball in its seat may be this much nearer to a wall than its radius by rounding, mm. */
const WALL_TOL_MM = 1;

/** Share of the way that a ball runs on which is counted on. */
const RUN_ON_SHARE = 0.5;

/**
 * Whether what lies in the pusher is on the wedge when the robot has stopped there: past the slope up to a shelf (halfway up it rolls
 * back), past the edge of any other wedge, which it may run on over where nothing holds it up, and not where a wall already is.
 *
 * @param speedMmPerS from which the robot braked
 * @param asideMm how far to the left of the pusher's middle each ball rides
 */
export function landsHome(
  scene: Scene,
  pose: Pose,
  speedMmPerS: number,
  balls: readonly LyingBall[],
  asideMm: readonly number[],
): boolean {
  const { profile, lipMm, runMm } = scene.project.zone.wedge;
  const slopeMm = profile === "shelf" ? runMm : 0;
  const onMm = slopeMm > 0 || lipMm > 0 ? 0 : RUN_ON_SHARE * runOnMm(scene.carry, speedMmPerS);
  const across = -(scene.target.nx * cos(pose.headingRad) + scene.target.ny * sin(pose.headingRad));
  return balls.every((ball, i) => {
    const seat = inSeat(scene, pose, asideMm[i] ?? 0);
    const wholly = scene.project.rules.delivered === "centre" ? 0 : ball.radiusMm;
    const least = Math.max(slopeMm, wholly) + SURELY_MM;
    const room = Math.min(seat.xMm, seat.yMm);
    return (
      beforeWedgeMm(scene.target, seat) - Math.max(0, across) * onMm <= -least &&
      room >= ball.radiusMm - WALL_TOL_MM
    );
  });
}

function inSeat({ carry }: Scene, { xMm, yMm, headingRad }: Pose, asideMm: number): PointMm {
  const [c, s] = [cos(headingRad), sin(headingRad)];
  return { xMm: xMm + c * carry.seatMm - s * asideMm, yMm: yMm + s * carry.seatMm + c * asideMm };
}
