import { convexHull } from "../geometry/polygon.ts";
import { hingedArms, withArmsAt } from "../model/arms.ts";
import { robotOutline } from "../model/outline.ts";
import { ballsOf, type Project } from "../model/project.ts";
import type { Robot } from "../model/robot.ts";
import { PI } from "../model/units.ts";
import type { PointMm } from "../model/zone.ts";
import { wedgeStopsRobot } from "../motion/surroundings.ts";
import { cos, sin } from "../num/elementary.ts";
import { type Carry, carryOf } from "./carry.ts";
import type { Frame } from "./frame.ts";
import { type Reach, reachOf } from "./reach.ts";
import { type Target, targetOf } from "./target.ts";

/** Everything a pattern reads: the zone in the frame, the robot's reach, the target, and what the balls put up with. */
export interface Scene {
  readonly frame: Frame;
  readonly project: Project;
  /** The same project with a robot grown by the clearance: where this one touches nothing, the real one keeps clear. */
  readonly grown: Project;
  /** As `grown`, with hinged arms closed; null where nothing swings. */
  readonly grownClosed: Project | null;
  readonly widthMm: number;
  readonly heightMm: number;
  readonly reach: Reach;
  readonly target: Target;
  /** The wedge's edge stops the robot: it can be pushed against. */
  readonly wedgeStops: boolean;
  readonly clearanceMm: number;
  /** Gap that a pattern plans to leave beside walls: the clearance, or more where drift is to be allowed for. */
  readonly berthMm: number;
  readonly ballDiameterMm: number;
  /** Highest speed the settings allow: for ways without a ball. */
  readonly topSpeedMmPerS: number;
  readonly carry: Carry;
}

/** Directions of the ring that grows an outline: between them the clearance is at least cos(π/8) = 92 % of the wanted one. */
const RING = 8;
/** Taken off the clearance, so that a robot placed at exactly the clearance counts as clear, mm. */
const SLACK_MM = 0.5;

/** @param extraBerthMm room beside walls on top of the settings' clearance */
export function sceneOf(frame: Frame, extraBerthMm = 0): Scene {
  const { project } = frame;
  const { zone, robot, settings } = project;
  const balls = ballsOf(project);
  const reach = reachOf(robot);
  const grown = grownOf(project);
  return {
    frame,
    project,
    grown: grown.open,
    grownClosed: grown.closed,
    widthMm: zone.widthMm,
    heightMm: zone.heightMm,
    reach,
    target: targetOf(zone, reach),
    wedgeStops: wedgeStopsRobot(zone, robot),
    clearanceMm: settings.clearanceMm,
    berthMm: settings.clearanceMm + extraBerthMm,
    ballDiameterMm: balls.reduce((most, ball) => Math.max(most, ball.diameterMm), 0),
    topSpeedMmPerS: robot.drive.topSpeedMmPerS * Math.max(...settings.speedFracs),
    carry: carryOf(reach, robot.drive, balls),
  };
}

interface Grown {
  readonly open: Project;
  readonly closed: Project | null;
}

/** The same for all scenes of a project, so that what was found out about its room is found out once (guard.ts). */
function grownOf(project: Project): Grown {
  const { robot, settings } = project;
  const arms = hingedArms(robot);
  const by = (own: Robot): Project => ({
    ...project,
    robot: grownRobot(own, settings.clearanceMm - SLACK_MM),
  });
  const made = known.get(project) ?? {
    open: by(robot),
    closed: arms === null ? null : by(withArmsAt(robot, arms.closedAngleRad)),
  };
  known.set(project, made);
  return made;
}

const known = new WeakMap<Project, Grown>();

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
