import type { Move } from "../../model/routine.ts";
import { PI } from "../../model/units.ts";
import type { PointMm } from "../../model/zone.ts";
import { moveDurationS } from "../../motion/duration.ts";
import type { Pose } from "../../motion/pose.ts";
import { cos, sin, wrapAngle } from "../../num/elementary.ts";
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
  const { builder, guard } = maker;
  // All ways end there.
  if (!guard.canStand(to, lying)) return null;
  const direct = tryWay(maker, from, lying, [() => arriveAt(builder, to)]);
  if (direct !== null) return direct;
  let best = fromFartherBehind(maker, from, to, lying);
  for (const via of viasOf(maker, from, to, lying)) {
    if (best !== null && leastByWay(maker, from, via, to) >= best.timeS) continue;
    const found = tryWay(maker, from, lying, [() => reachPoint(builder, via), () => arriveAt(builder, to)]);
    if (found !== null && (best === null || found.timeS < best.timeS)) best = found;
  }
  return best;
}

/** No way by a point takes less: it stops there, and all its turns are on the spot. */
function leastByWay({ builder }: TripMaker, from: Pose, via: PointMm, to: Pose): number {
  const { drive } = builder.scene.project.robot;
  const drivenS = (distanceMm: number): number =>
    moveDurationS(drive, { kind: "drive", distanceMm, speedMmPerS: drive.topSpeedMmPerS });
  const angleRad = wrapAngle(to.headingRad - from.headingRad);
  const turnedS = moveDurationS(drive, { kind: "turn", angleRad, rateRadPerS: drive.turnRateRadPerS });
  return turnedS + drivenS(distanceTo(from, via)) + drivenS(distanceTo(via, to)) - NEAR_S;
}

/** What a way may be quicker for ending a millimetre before a point, and there not turning the last of its angle, s. */
const NEAR_S = 0.05;

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
    const found = tryWay(maker, from, lying, [() => arriveAt(builder, behind), () => builder.drive(mm)]);
    if (found !== null) return found;
  }
  return null;
}

/** Longer run-ups that are tried, mm. */
const FARTHER_MM = [150, 300, 480];

/** Does the stretches one after the other; null where one has no room, or would touch a ball. */
function tryWay(
  maker: TripMaker,
  from: Pose,
  lying: readonly LyingBall[],
  stretches: readonly (() => boolean)[],
): Approach | null {
  const { builder, guard } = maker;
  builder.rewind({ pose: from, timeS: 0, moveCount: 0, armsRad: builder.mark().armsRad });
  for (const drive of stretches) {
    const { pose } = builder;
    const done = builder.moves.length;
    if (!drive() || !guard.isClear(pose, builder.moves.slice(done), lying)) return null;
  }
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
