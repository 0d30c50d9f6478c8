import { PI } from "../../model/units.ts";
import type { PointMm } from "../../model/zone.ts";
import type { Pose } from "../../motion/pose.ts";
import { atan2, cos, sin } from "../../num/elementary.ts";
import { turnsOnSpot } from "../carry.ts";
import type { Target } from "../target.ts";
import type { LyingBall } from "./ballGuard.ts";
import type { TripMaker } from "./tripMaker.ts";

/** Directions from which a ball may be met: every 15°. */
const HEADINGS = 24;
/** And from which it may be shoved: every 5°. */
const SHOVE_HEADINGS = 72;
/** Where in the pusher a ball is met, as shares of how far to the side it takes one in: the middle where there is room. */
const ASIDE_SHARES = [0, 0.5, -0.5, 1, -1];
/** Shortest run-up, mm. */
const SHORT_RUN_MM = 40;
/** Places along the wedge's long side that are aimed at: by a plate, which can only go straight there, and by a V. */
const EDGE_SHARES = [0.15, 0.3, 0.4, 0.5, 0.6, 0.7, 0.85];
const V_EDGE_SHARES = [0.3, 0.5, 0.7];

/** Where the robot may stand to meet a ball squarely: as far behind it as it takes to turn there without touching it, or as near as the walls make it. */
export function startsFor(maker: TripMaker, ball: LyingBall): readonly Pose[] {
  const round = headingsFor(maker, ball).flatMap((heading) => startAt(maker, ball, heading, ASIDE_SHARES));
  return turnsOnSpot(maker.builder.scene.carry) ? round : [...round, ...straightStarts(maker, ball)];
}

/**
 * Where a robot that cannot turn on the spot with a ball may stand to push it straight home: a plate toward the whole edge of the
 * wedge, a V square to it. With a ball beside the pusher's middle too: there its ends may have room at the walls.
 */
export function straightStarts(maker: TripMaker, ball: LyingBall): readonly Pose[] {
  const { carry, target } = maker.builder.scene;
  const headings = carry.holds
    ? [target.headingRad]
    : EDGE_SHARES.map((share) => towardEdge(target, ball, share));
  return headings.flatMap((heading) =>
    ASIDE_SHARES.flatMap((share) => startAt(maker, ball, heading, [share])),
  );
}

/** Where it may stand to shove a ball: all round in finer steps, for a V at all places beside its middle. */
export function shoveStarts(maker: TripMaker, ball: LyingBall): readonly Pose[] {
  const headings = allRound(SHOVE_HEADINGS);
  if (!maker.builder.scene.carry.holds) {
    return headings.flatMap((heading) => startAt(maker, ball, heading, ASIDE_SHARES));
  }
  return headings.flatMap((heading) =>
    ASIDE_SHARES.flatMap((share) => startAt(maker, ball, heading, [share])),
  );
}

function startAt(
  maker: TripMaker,
  ball: LyingBall,
  headingRad: number,
  shares: readonly number[],
): readonly Pose[] {
  const { seatMm } = maker;
  const { reach, clearanceMm } = maker.builder.scene;
  const far = reach.tipRadiusMm + ball.radiusMm + clearanceMm;
  return (
    firstWithRoom(maker, ball, headingRad, [far, (far + seatMm) / 2, seatMm + SHORT_RUN_MM], shares) ?? []
  );
}

function allRound(count: number): readonly number[] {
  return Array.from({ length: count }, (_, n) => -PI + ((n + 1) * 2 * PI) / count);
}

/** All round; for a V at the wedge as well. */
function headingsFor({ builder }: TripMaker, ball: PointMm): readonly number[] {
  const { carry, target } = builder.scene;
  const round = allRound(HEADINGS);
  if (turnsOnSpot(carry) || !carry.holds) return round;
  return [...round, ...V_EDGE_SHARES.map((share) => towardEdge(target, ball, share))];
}

/** From a ball to a place on the wedge's edge, given as a share of it. */
function towardEdge({ legXMm, legYMm }: Target, ball: PointMm, share: number): number {
  return atan2((1 - share) * legYMm - ball.yMm, share * legXMm - ball.xMm);
}

/** Beside a wall the ball is taken at the side of the pusher that is nearer to it. */
function firstWithRoom(
  maker: TripMaker,
  ball: LyingBall,
  headingRad: number,
  runs: readonly number[],
  shares: readonly number[],
): readonly [Pose] | null {
  const c = cos(headingRad);
  const s = sin(headingRad);
  for (const behind of runs) {
    for (const share of shares) {
      const aside = share * maker.catchMm;
      const start = {
        xMm: ball.xMm - behind * c + aside * s,
        yMm: ball.yMm - behind * s - aside * c,
        headingRad,
      };
      if (maker.stands(start)) return [start];
    }
  }
  return null;
}
