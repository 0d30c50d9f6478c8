import { convexHull } from "../geometry/polygon.ts";
import { robotOutline } from "../model/outline.ts";
import { ballsOf, type Project } from "../model/project.ts";
import type { Robot } from "../model/robot.ts";
import { GRAVITY_MM_PER_S2, PI } from "../model/units.ts";
import type { PointMm } from "../model/zone.ts";
import { cos, sin } from "../num/elementary.ts";
import type { Frame } from "./frame.ts";
import { type Reach, reachOf } from "./reach.ts";
import { type Target, targetOf } from "./target.ts";

/** Everything a pattern reads: the zone in the frame, the robot's reach, the target, and what the balls put up with. */
export interface Scene {
  readonly frame: Frame;
  readonly project: Project;
  /** The same project with a robot grown by the clearance: where this one touches nothing, the real one keeps clear. */
  readonly grown: Project;
  readonly widthMm: number;
  readonly heightMm: number;
  readonly reach: Reach;
  readonly target: Target;
  readonly clearanceMm: number;
  readonly ballDiameterMm: number;
  /** Slowest a ball loses speed while it rolls, mm/s². */
  readonly ballDecelMmPerS2: number;
  /** The pusher is deep enough to keep a ball through a gentle curve. */
  readonly carries: boolean;
  /** Fastest speed from which a carried ball, when the robot stops, does not run out of the pusher, mm/s. */
  readonly carrySpeedMmPerS: number;
  /** Fastest angular rate of a curve in which a carried ball stays at the back of the pusher, rad/s. */
  readonly carryRateRadPerS: number;
}

/** Share of the steady limit used in curves, so that a bump does not lose the ball. */
const CURVE_MARGIN = 0.6;
/** Directions of the ring that grows an outline: between them the clearance is at least cos(π/8) = 92 % of the wanted one. */
const RING = 8;
/** Taken off the clearance, so that a robot placed at exactly the clearance counts as clear, mm. */
const SLACK_MM = 0.5;

export function sceneOf(frame: Frame): Scene {
  const { project } = frame;
  const { zone, robot, settings } = project;
  const balls = ballsOf(project);
  const ballDiameterMm = balls.reduce((most, ball) => Math.max(most, ball.diameterMm), 0);
  const decel = balls.reduce(
    (least, ball) => Math.min(least, ball.rollingResistance * GRAVITY_MM_PER_S2),
    GRAVITY_MM_PER_S2,
  );
  const reach = reachOf(robot);
  const depth = reach.pusherFrontMm - reach.pusherBackMm - ballDiameterMm / 2;
  return {
    frame,
    project,
    grown: { ...project, robot: grownRobot(robot, settings.clearanceMm - SLACK_MM) },
    widthMm: zone.widthMm,
    heightMm: zone.heightMm,
    reach,
    target: targetOf(zone, reach),
    clearanceMm: settings.clearanceMm,
    ballDiameterMm,
    ballDecelMmPerS2: decel,
    carries: depth > 0,
    carrySpeedMmPerS: carrySpeed(depth, decel, robot.drive.accelMmPerS2),
    carryRateRadPerS: Math.sqrt((CURVE_MARGIN * decel) / (reach.pusherBackMm + ballDiameterMm / 2)),
  };
}

/** The robot brakes in v²/2a, the ball runs v²/2d: it may gain the depth of the pusher, no more. */
function carrySpeed(depthMm: number, ballDecel: number, robotDecel: number): number {
  if (depthMm <= 0) return 0;
  const gain = 1 / ballDecel - 1 / robotDecel;
  return gain <= 0 ? Number.POSITIVE_INFINITY : Math.sqrt((2 * depthMm) / gain);
}

/** The same robot with both outlines grown by `byMm`: hull of the outline ⊕ an eight-cornered ring. */
function grownRobot(robot: Robot, byMm: number): Robot {
  const { footprint, ground } = robotOutline(robot);
  return {
    ...robot,
    shape: { kind: "polygon", outline: grownOutline([...footprint, ...ground], byMm), pusherEdges: [] },
    ground: { kind: "polygon", outline: grownOutline(ground, byMm) },
  };
}

function grownOutline(points: readonly PointMm[], byMm: number): readonly PointMm[] {
  if (byMm <= 0) return convexHull(points);
  const ring = Array.from({ length: RING }, (_, k) => (2 * PI * k) / RING);
  return convexHull(
    points.flatMap((p) =>
      ring.map((angle) => ({ xMm: p.xMm + byMm * cos(angle), yMm: p.yMm + byMm * sin(angle) })),
    ),
  );
}
