import type { Move } from "../../model/routine.ts";
import { PI } from "../../model/units.ts";
import type { PointMm } from "../../model/zone.ts";
import type { Pose } from "../../motion/pose.ts";
import { cos, sin } from "../../num/elementary.ts";
import { arriveAt, reachPoint } from "../transfer.ts";
import type { LyingBall } from "./ballGuard.ts";
import { distanceTo } from "./fromRobot.ts";
import type { TripMaker } from "./tripMaker.ts";

/** A way between two poses that touches nothing. */
export interface Approach {
  readonly moves: readonly Move[];
  readonly timeS: number;
}

/** Points round each lying ball that a way may go by, and the most of them that are tried, nearest first. */
const RING = 8;
const MOST_VIAS = 14;
/** Ways straight on (or back) that are tried before the first turn, mm. */
const ALONG_MM = [120, 240, 360, 500, -150];

/**
 * Turn, drive, turn; where walls or lying balls are in the way, by one more point: round a ball just outside the circle of
 * the robot's tips, or over the middle of the zone. Null where none of these ways is free.
 */
export function approachTo(
  maker: TripMaker,
  from: Pose,
  to: Pose,
  lying: readonly LyingBall[],
): Approach | null {
  const { builder } = maker;
  const direct = tryWay(maker, from, lying, () => arriveAt(builder, to));
  if (direct !== null) return direct;
  let best = fromFartherBehind(maker, from, to, lying);
  for (const via of viasOf(maker, from, to, lying)) {
    const least = (distanceTo(from, via) + distanceTo(via, to)) / builder.scene.topSpeedMmPerS;
    if (best !== null && least >= best.timeS) break;
    const found = tryWay(maker, from, lying, () => reachPoint(builder, via) && arriveAt(builder, to));
    if (found !== null && (best === null || found.timeS < best.timeS)) best = found;
  }
  return best;
}

/** Beside a wall a robot can only back in, and the ball it is after is in the way of that: it backs in farther behind. */
function fromFartherBehind(
  maker: TripMaker,
  from: Pose,
  to: Pose,
  lying: readonly LyingBall[],
): Approach | null {
  const { builder } = maker;
  for (const mm of FARTHER_MM) {
    const behind = {
      xMm: to.xMm - mm * cos(to.headingRad),
      yMm: to.yMm - mm * sin(to.headingRad),
      headingRad: to.headingRad,
    };
    if (!maker.stands(behind)) break;
    const found = tryWay(maker, from, lying, () => arriveAt(builder, behind) && builder.drive(mm));
    if (found !== null) return found;
  }
  return null;
}

/** Longer run-ups that are tried, mm. */
const FARTHER_MM = [150, 300, 480];

function tryWay(
  maker: TripMaker,
  from: Pose,
  lying: readonly LyingBall[],
  drive: () => boolean,
): Approach | null {
  const { builder, guard } = maker;
  builder.rewind({ pose: from, timeS: 0, moveCount: 0, armsRad: builder.mark().armsRad });
  if (!drive() || !guard.isClear(from, builder.moves, lying)) return null;
  return { moves: [...builder.moves], timeS: builder.timeS };
}

function viasOf(maker: TripMaker, from: Pose, to: Pose, lying: readonly LyingBall[]): readonly PointMm[] {
  const { widthMm, heightMm, reach, berthMm } = maker.builder.scene;
  const room = reach.tipRadiusMm + berthMm;
  const round = lying.flatMap((ball) =>
    Array.from({ length: RING }, (_, i) => {
      const away = reach.tipRadiusMm + ball.radiusMm + berthMm;
      const angle = (2 * PI * i) / RING;
      return { xMm: ball.xMm + away * cos(angle), yMm: ball.yMm + away * sin(angle) };
    }),
  );
  const roomy = ({ xMm, yMm }: PointMm): boolean =>
    xMm > room && yMm > room && xMm < widthMm - room && yMm < heightMm - room;
  const length = (via: PointMm): number => distanceTo(from, via) + distanceTo(via, to);
  // Out of the doorway and from between balls the way begins straight on or back.
  const along = ALONG_MM.map((mm) => ({
    xMm: from.xMm + mm * cos(from.headingRad),
    yMm: from.yMm + mm * sin(from.headingRad),
  }));
  return [...along, ...round.filter(roomy), { xMm: widthMm / 2, yMm: heightMm / 2 }]
    .sort((a, b) => length(a) - length(b))
    .slice(0, MOST_VIAS);
}
