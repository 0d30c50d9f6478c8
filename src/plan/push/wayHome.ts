import type { PointMm } from "../../model/zone.ts";
import type { Pose } from "../../motion/pose.ts";
import { atan2, cos, sin, wrapAngle } from "../../num/elementary.ts";
import type { RoutineBuilder } from "../builder.ts";
import { curveRate, leastCurveMm, turnsOnSpot } from "../carry.ts";
import { SPOT_SHARE } from "../carryLimits.ts";
import { beforeWedge, turnInsMm } from "../place.ts";
import { finish, LEAST_RADIUS_MM, openUp, roundCorner, SETTLE_S } from "../pushRun.ts";
import { type RoundedCorner, roundedCorners, type Waypoint } from "../rounding.ts";
import { beforeWedgeMm } from "../target.ts";
import { leaveWedge } from "../transfer.ts";
import type { LyingBall } from "./ballGuard.ts";
import { distanceTo, leftOf } from "./fromRobot.ts";
import { landsHome } from "./landing.ts";
import { GENTLE_SHARE, type TripMaker } from "./tripMaker.ts";

type Way = readonly Waypoint[];

/** Shares of the tip radius tried for the curve onto the push line; 0: on the spot. */
const TURN_IN_SHARES = [0.6, 0.3, 0];
/** Driven straight on with a ball before the turn homeward where there is no room for it at once, mm. */
const AHEAD_FIRST_MM = [0, 120, 260, 420];
/** Radii of the curves of a V, in narrowest ones that keep a ball: at 1 it would have to stand still. */
const V_RADII = [1.5, 2.2];
/** Distances from the wedge at which a V turns onto the push line, in tip radii beyond the nearest. */
const V_TURN_INS = [0, 0.5, 1, 1.5, 2, 3, 4];
/** Straight on before the first curve of a V, mm beyond where it begins. */
const V_AHEAD_MM = [0, 150, 350, 600];
/** Corners this slight need no curve, rad. */
const SLIGHT_RAD = 0.02;
/** Headings this far off the straight way home still leave a plate its ball, rad. */
const STRAIGHT_RAD = 1e-6;

/**
 * With the balls in the pusher onto the push line and against the wedge, then back off it. Returns the second at which the push
 * ends; null where no way has room, or where the balls would not be on the wedge.
 */
export function bringHome(
  maker: TripMaker,
  balls: readonly LyingBall[],
  others: readonly LyingBall[],
): number | null {
  const { builder, guard } = maker;
  const { scene } = builder;
  const from = builder.pose;
  const mark = builder.mark();
  const asideMm = balls.map((ball) => (scene.carry.holds ? 0 : leftOf(from, ball)));
  const reach = (way: Way, drive: typeof follow): number => {
    builder.rewind(mark);
    if (!drive(builder, way) || !isHome(builder, balls, asideMm)) return Number.POSITIVE_INFINITY;
    if (!guard.isClear(from, builder.moves.slice(mark.moveCount), others)) return Number.POSITIVE_INFINITY;
    return builder.timeS;
  };
  for (const way of waysHome(builder)) {
    const openS = reach(way, follow);
    const cagedS = maker.cages ? reach(way, followCaged) : Number.POSITIVE_INFINITY;
    const homeS = Math.min(openS, cagedS);
    if (homeS === Number.POSITIVE_INFINITY) continue;
    if (maker.cages && openS <= cagedS) reach(way, follow);
    const there = builder.pose;
    const count = builder.moves.length;
    leaveWedge(builder);
    if (!guard.isClear(there, builder.moves.slice(count), others)) continue;
    return homeS;
  }
  return null;
}

function follow(builder: RoutineBuilder, way: Way): boolean {
  const last = way[way.length - 1];
  if (last === undefined) return false;
  const corners = roundedCorners(way);
  return (
    faceGently(builder, way[1] ?? last) &&
    corners.every((corner) => roundCorner(builder, corner, SPOT_SHARE)) &&
    finish(builder, last, "wall")
  );
}

/** The same with closed arms: nothing is lost however fast the robot turns. They open on the push line. */
function followCaged(builder: RoutineBuilder, way: Way): boolean {
  const { pose } = builder;
  const last = way[way.length - 1];
  const next = way[1] ?? last;
  if (last === undefined || next === undefined) return false;
  // A ball that still rolls forward is met by the tips.
  if (!builder.wait(SETTLE_S) || !builder.swingArms("closed")) return false;
  const turn = wrapAngle(atan2(next.yMm - pose.yMm, next.xMm - pose.xMm) - pose.headingRad);
  if (!builder.turn(turn)) return false;
  for (const { point, turnRad, radiusMm, tangentMm } of roundedCorners(way)) {
    const curved = radiusMm >= LEAST_RADIUS_MM;
    if (!builder.drive(distanceTo(builder.pose, point) - (curved ? tangentMm : 0))) return false;
    if (!(curved ? builder.arc(radiusMm, turnRad) : builder.turn(turnRad))) return false;
  }
  return openUp(builder) && finish(builder, last, "wall");
}

/** Against the wedge's edge balls run on over it; where the robot only stops they have to be there already. */
function isHome(builder: RoutineBuilder, balls: readonly LyingBall[], asideMm: readonly number[]): boolean {
  const { scene, pose, moves } = builder;
  const before = beforeWedgeMm(scene.target, pose);
  if (before > scene.reach.frontMm + scene.clearanceMm) return false;
  const against =
    moves[moves.length - 1]?.kind === "toWall" && before < scene.reach.groundFrontMm + AGAINST_MM;
  return (against && scene.carry.holds) || landsHome(scene, pose, builder.speedMmPerS, balls, asideMm);
}

/** With its front this near to the edge a robot is against it, mm. */
const AGAINST_MM = 2;

/** Straight on for a plate; curves for a V; else to the push line at one of several distances. */
function waysHome(builder: RoutineBuilder): Iterable<Way> {
  const { scene, pose } = builder;
  const straight = [ahead(builder, 0), ahead(builder, scene.widthMm + scene.heightMm)];
  if (!scene.carry.holds) return [straight];
  if (turnsOnSpot(scene.carry)) return turnsHome(builder);
  const isSquare = Math.abs(wrapAngle(pose.headingRad - scene.target.headingRad)) < STRAIGHT_RAD;
  return isSquare ? [straight, ...curvesHome(builder)] : curvesHome(builder);
}

/** One at a time: mostly one of the first has room. */
function* turnsHome(builder: RoutineBuilder): Generator<Way> {
  const { scene, pose } = builder;
  const { tipRadiusMm } = scene.reach;
  const last = { ...beforeWedge(scene, 0), radiusMm: 0 };
  const turnIns = turnInsMm(scene).map((turnInMm) => beforeWedge(scene, turnInMm));
  const here = aheadFrom(pose, 0);
  for (const aheadMm of AHEAD_FIRST_MM) {
    for (const turnIn of turnIns) {
      for (const share of TURN_IN_SHARES) {
        const line = { ...turnIn, radiusMm: share * tipRadiusMm };
        yield aheadMm === 0 ? [here, line, last] : [here, aheadFrom(pose, aheadMm), line, last];
      }
    }
  }
}

/** On, a curve, straight, a curve onto the push line: all that have room for their curves, the shortest first. */
function curvesHome(builder: RoutineBuilder): readonly Way[] {
  const { scene } = builder;
  const nearest = turnInsMm(scene)[0] ?? 0;
  const narrowest = leastCurveMm(scene.carry);
  const ways = V_RADII.flatMap((share) =>
    V_AHEAD_MM.flatMap((aheadMm) =>
      V_TURN_INS.map((turnIn): Way => {
        const radiusMm = share * narrowest;
        const turnInMm = nearest + turnIn * scene.reach.tipRadiusMm;
        const line = { ...beforeWedge(scene, turnInMm), radiusMm };
        const here = ahead(builder, 0);
        return [here, onTheWay(builder, line, radiusMm, aheadMm), line, beforeWedge(scene, 0)];
      }),
    ),
  );
  return ways
    .filter((way) => roundedCorners(way).every(hasItsCurve))
    .map((way) => ({ way, mm: lengthOf(way) }))
    .sort((a, b) => a.mm - b.mm)
    .map(({ way }) => way);

  function hasItsCurve({ turnRad, radiusMm }: RoundedCorner): boolean {
    return Math.abs(turnRad) < SLIGHT_RAD || radiusMm > MIN_V_SHARE * narrowest;
  }
}

/** Curves of a V that have to shrink may do so down to this share of the narrowest. */
const MIN_V_SHARE = 1.3;

/** The corner on the line ahead from which a curve of that radius, begun after `aheadMm`, leads to a point. */
function onTheWay(builder: RoutineBuilder, to: PointMm, radiusMm: number, aheadMm: number): Waypoint {
  let cornerMm = aheadMm;
  for (let round = 0; round < 3; round++) {
    const corner = ahead(builder, cornerMm);
    const toward = atan2(to.yMm - corner.yMm, to.xMm - corner.xMm);
    const half = Math.min(Math.abs(wrapAngle(toward - builder.pose.headingRad)) / 2, WIDEST_HALF_RAD);
    cornerMm = aheadMm + (radiusMm * sin(half)) / cos(half);
  }
  return { ...ahead(builder, cornerMm), radiusMm };
}

/** Half of the sharpest turn for which a curve is laid out, rad; sharper ones have no room anyway. */
const WIDEST_HALF_RAD = 1;

function lengthOf(way: Way): number {
  let mm = 0;
  for (const [i, point] of way.entries()) {
    const next = way[i + 1] ?? point;
    const dx = next.xMm - point.xMm;
    const dy = next.yMm - point.yMm;
    mm += Math.sqrt(dx * dx + dy * dy);
  }
  return mm;
}

function ahead({ pose }: RoutineBuilder, mm: number): Waypoint {
  return aheadFrom(pose, mm);
}

function aheadFrom(pose: Pose, mm: number): Waypoint {
  return {
    xMm: pose.xMm + mm * cos(pose.headingRad),
    yMm: pose.yMm + mm * sin(pose.headingRad),
    radiusMm: 0,
  };
}

function faceGently(builder: RoutineBuilder, point: PointMm): boolean {
  const { carry } = builder.scene;
  const toward = atan2(point.yMm - builder.pose.yMm, point.xMm - builder.pose.xMm);
  const turn = wrapAngle(toward - builder.pose.headingRad);
  if (!turnsOnSpot(carry)) return Math.abs(turn) < STRAIGHT_RAD;
  return builder.turn(turn, GENTLE_SHARE * curveRate(carry, 0));
}
