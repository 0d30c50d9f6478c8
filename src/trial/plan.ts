import type { BallKind } from "../model/ball.ts";
import { type RobotOutline, robotOutline } from "../model/outline.ts";
import { ballsOf, type Project } from "../model/project.ts";
import type { Move, Routine } from "../model/routine.ts";
import { type BumpSensor, sensorOf } from "../model/sensor.ts";
import { withWedgeIn } from "../model/wedgeCorner.ts";
import type { PointMm } from "../model/zone.ts";
import { type ArmSwing, armSwingOf } from "../motion/arms.ts";
import { entryPose } from "../motion/entry.ts";
import { PathTracer } from "../motion/path.kernel.ts";
import type { Pose } from "../motion/pose.ts";
import { surroundingsOf } from "../motion/surroundings.ts";
import { motionOf, Walker } from "../motion/walker.ts";
import { DriftDrawer } from "./drift.ts";
import type { SideGuide } from "./guide.ts";
import { GyroDrawer } from "./gyro.ts";
import type { Pilot } from "./pilot.ts";
import { PlacementDrawer } from "./placement.ts";

export interface TrialOptions {
  /** Draw drift and start pose error; default true. */
  readonly drift?: boolean;
  /** Draw friction, rolling resistance and restitution within the project's spread; default true. */
  readonly spread?: boolean;
  /** Step for lasting contact, s; default: the engine's (see tests/bench convergence). */
  readonly contactStepS?: number;
  /** The robot knows its own place and that of every ball: an upper bound for what sensing can do. Programs only. */
  readonly perfect?: boolean;
  /** The same placement in every trial instead of drawn ones. */
  readonly placement?: readonly PointMm[];
}

/** A project and a routine made ready to run: everything that does not change from trial to trial. */
export interface TrialPlan {
  readonly project: Project;
  readonly routine: Routine;
  readonly kinds: readonly BallKind[];
  readonly points: readonly number[];
  readonly outline: RobotOutline;
  readonly entry: Pose;
  readonly planner: PathTracer;
  /** Arms that swing; null where nothing does. */
  readonly arms: ArmSwing | null;
  readonly motions: readonly { readonly sigma: number; readonly kappa: number; readonly length: number }[];
  readonly drift: DriftDrawer;
  readonly placements: PlacementDrawer;
  readonly spread: boolean;
  readonly contactStepS: number | null;
  readonly placement: readonly PointMm[] | null;
  /** Decides on the way; null: the list of moves is all there is. */
  readonly pilot: Pilot | null;
  /** Steers by it; null: turns by the encoders. */
  readonly gyro: GyroDrawer | null;
  /** Keeps the distance from walls in moves that say so; null: they are driven as they are commanded. */
  readonly guide: SideGuide | null;
  /** Believed heading after each move of the list, for a robot that steers by a gyro; unwrapped. */
  readonly headings: readonly number[];
  /** Sides whose bumper tells at once that a drive to the wall is over. */
  readonly bumps: { readonly front: boolean; readonly back: boolean };
  /** The same with the wedge in each of the corners it may be in; empty where the corner is known. */
  readonly byCorner: readonly TrialPlan[];
}

/** Makes what decides, and what steers by a wall, on the way in a project; null if nothing does. */
export interface TrialParts {
  readonly pilotOf: (project: Project) => Pilot | null;
  readonly guideOf: (project: Project) => SideGuide | null;
}

/** All of a plan but the code that decides and steers on the way, which most lists of moves do without. */
export function planTrial(
  project: Project,
  routine: Routine,
  options: TrialOptions,
  parts: TrialParts,
): TrialPlan {
  const { sensors } = project.robot;
  const drifts = options.drift ?? true;
  const gyro = drifts ? sensorOf(sensors, "gyro") : undefined;
  const bump = (side: BumpSensor["side"]) =>
    sensors.some((each) => each.kind === "bump" && each.side === side);
  const corners = project.rules.wedgeCorners;
  return {
    project,
    routine,
    kinds: ballsOf(project),
    points: project.balls.flatMap((group) => Array.from({ length: group.count }, () => group.points)),
    outline: robotOutline(project.robot),
    entry: entryPose(project.zone, project.robot),
    planner: new PathTracer(surroundingsOf(project.zone, project.robot), project.robot.drive),
    arms: armSwingOf(project.zone, project.robot),
    motions: routine.moves.map(motionOf),
    drift: new DriftDrawer(project.robot.drift, drifts),
    placements: new PlacementDrawer(project),
    spread: options.spread ?? true,
    contactStepS: options.contactStepS ?? null,
    placement: options.placement ?? null,
    pilot: parts.pilotOf(project),
    gyro: gyro === undefined ? null : new GyroDrawer(gyro),
    guide: drifts ? parts.guideOf(project) : null,
    headings: gyro === undefined || routine.program !== undefined ? [] : headingsOf(project, routine.moves),
    bumps: { front: bump("front"), back: bump("back") },
    byCorner: corners.map((corner) => planTrial(withWedgeIn(project, corner), routine, options, parts)),
  };
}

/** Believed heading after each move. */
export function headingsOf(project: Project, moves: readonly Move[]): readonly number[] {
  const walker = new Walker(project);
  return moves.map((move) => {
    walker.advance(move);
    return walker.pose.headingRad;
  });
}
