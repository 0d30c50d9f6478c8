import type { BallKind } from "../model/ball.ts";
import { type RobotOutline, robotOutline } from "../model/outline.ts";
import { ballsOf, type Project } from "../model/project.ts";
import type { Routine } from "../model/routine.ts";
import type { PointMm } from "../model/zone.ts";
import { entryPose } from "../motion/entry.ts";
import { PathTracer } from "../motion/path.kernel.ts";
import type { Pose } from "../motion/pose.ts";
import { surroundingsOf } from "../motion/surroundings.ts";
import { motionOf } from "../motion/walker.ts";
import { DriftDrawer } from "./drift.ts";
import { PlacementDrawer } from "./placement.ts";

export interface TrialOptions {
  /** Draw drift and start pose error; default true. */
  readonly drift?: boolean;
  /** Draw friction, rolling resistance and restitution within the project's spread; default true. */
  readonly spread?: boolean;
  /** Step for lasting contact, s; default: the engine's (see tests/bench convergence). */
  readonly contactStepS?: number;
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
  readonly motions: readonly { readonly sigma: number; readonly kappa: number; readonly length: number }[];
  readonly drift: DriftDrawer;
  readonly placements: PlacementDrawer;
  readonly spread: boolean;
  readonly contactStepS: number | null;
  readonly placement: readonly PointMm[] | null;
}

export function compileTrial(project: Project, routine: Routine, options: TrialOptions = {}): TrialPlan {
  return {
    project,
    routine,
    kinds: ballsOf(project),
    points: project.balls.flatMap((group) => Array.from({ length: group.count }, () => group.points)),
    outline: robotOutline(project.robot),
    entry: entryPose(project.zone, project.robot),
    planner: new PathTracer(surroundingsOf(project.zone, project.robot), project.robot.drive),
    motions: routine.moves.map(motionOf),
    drift: new DriftDrawer(project.robot.drift, options.drift ?? true),
    placements: new PlacementDrawer(project),
    spread: options.spread ?? true,
    contactStepS: options.contactStepS ?? null,
    placement: options.placement ?? null,
  };
}
