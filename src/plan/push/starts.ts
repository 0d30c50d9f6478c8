import { PI } from "../../model/units.ts";
import type { PointMm } from "../../model/zone.ts";
import type { Pose } from "../../motion/pose.ts";
import { atan2, cos, sin } from "../../num/elementary.ts";
import { turnsOnSpot } from "../carry.ts";
import type { LyingBall } from "./ballGuard.ts";
import type { TripMaker } from "./tripMaker.ts";

/** Directions from which a ball may be met: every 15°. */
const HEADINGS = 24;
/** Where in the pusher a ball is met, as shares of how far to the side it takes one in: the middle where there is room. */
const ASIDE_SHARES = [0, 0.5, -0.5, 1, -1];
/** Shortest run-up, mm. */
const SHORT_RUN_MM = 40;
/** Places along the wedge's long side that are aimed at: by a plate, which can only go straight there, and by a V. */
const EDGE_SHARES = [0.15, 0.3, 0.4, 0.5, 0.6, 0.7, 0.85];
const V_EDGE_SHARES = [0.3, 0.5, 0.7];

/** Where the robot may stand to meet a ball squarely: as far behind it as it takes to turn there without touching it, or as near as the walls make it. */
export function startsFor(maker: TripMaker, ball: LyingBall): readonly Pose[] {
  const { seatMm } = maker;
  const { reach, clearanceMm } = maker.builder.scene;
  const far = reach.tipRadiusMm + ball.radiusMm + clearanceMm;
  return headingsFor(maker, ball).flatMap((headingRad) => {
    return firstWithRoom(maker, ball, headingRad, [far, (far + seatMm) / 2, seatMm + SHORT_RUN_MM]) ?? [];
  });
}

/** All round; where the robot cannot turn on the spot with a ball, straight at the wedge as well. */
function headingsFor({ builder }: TripMaker, ball: PointMm): readonly number[] {
  const { carry, target } = builder.scene;
  const round = Array.from({ length: HEADINGS }, (_, n) => -PI + ((n + 1) * 2 * PI) / HEADINGS);
  if (turnsOnSpot(carry)) return round;
  const straight = (carry.holds ? V_EDGE_SHARES : EDGE_SHARES).map((share) =>
    atan2((1 - share) * target.legYMm - ball.yMm, share * target.legXMm - ball.xMm),
  );
  return [...round, ...straight];
}

/** Beside a wall the ball is taken at the side of the pusher that is nearer to it. */
function firstWithRoom(
  maker: TripMaker,
  ball: LyingBall,
  headingRad: number,
  runs: readonly number[],
): Pose | null {
  const c = cos(headingRad);
  const s = sin(headingRad);
  for (const behind of runs) {
    for (const share of ASIDE_SHARES) {
      const aside = share * maker.catchMm;
      const start = {
        xMm: ball.xMm - behind * c + aside * s,
        yMm: ball.yMm - behind * s - aside * c,
        headingRad,
      };
      if (maker.stands(start)) return start;
    }
  }
  return null;
}
