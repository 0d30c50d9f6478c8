import type { Project } from "../model/project.ts";
import type { Drive } from "../model/robot.ts";
import type { Move } from "../model/routine.ts";
import { cos, sin } from "../num/elementary.ts";
import type { CoursePiece } from "./course.ts";
import { moveLength, setProfile } from "./duration.ts";
import { entryPose } from "./entry.ts";
import { PathPlanner, PIECE, posePiece } from "./path.kernel.ts";
import type { Pose } from "./pose.ts";
import { surroundingsOf } from "./surroundings.ts";
import { Trapezoid } from "./trapezoid.ts";

/** Longest stretch tried when the free way ahead is asked for, mm: longer than any zone's diagonal. */
const FAR_MM = 1e5;

export interface WalkedMove {
  readonly pieces: readonly Omit<CoursePiece, "move">[];
  /** The robot met a wall, a keep-out or the wedge. */
  readonly touched: boolean;
  /** It ended pressed against it; `flush`: with a face flat on it. */
  readonly stalled: boolean;
  readonly flush: boolean;
}

/** Motion of a move as the planner wants it: velocity sign, heading change per unit of progress, length. */
export function motionOf(move: Move): { sigma: number; kappa: number; length: number } {
  const length = moveLength(move);
  switch (move.kind) {
    case "drive":
      return { sigma: move.distanceMm < 0 ? -1 : 1, kappa: 0, length };
    case "toWall":
      return { sigma: move.distanceMm + move.overrunMm < 0 ? -1 : 1, kappa: 0, length };
    case "arc":
      return { sigma: move.distanceMm < 0 ? -1 : 1, kappa: length > 0 ? move.angleRad / length : 0, length };
    case "turn":
      return { sigma: 0, kappa: move.angleRad < 0 ? -1 : 1, length };
    case "wait":
      return { sigma: 0, kappa: 0, length };
    default:
      return move satisfies never;
  }
}

/** Follows moves without drift, one at a time, from the entry pose (or any other); patterns build their routines with it. */
export class Walker {
  pose: Pose;
  timeS = 0;
  private readonly planner: PathPlanner;
  private readonly drive: Drive;
  private readonly profile = new Trapezoid();
  private readonly at = new Float64Array(7);

  constructor(project: Project, from: Pose = entryPose(project.zone, project.robot)) {
    this.pose = from;
    this.drive = project.robot.drive;
    this.planner = new PathPlanner(surroundingsOf(project.zone, project.robot), project.robot.drive);
  }

  /** Free way in mm before the robot touches anything when it drives straight on (`sign` 1) or back (−1). */
  freeWayMm(sign: 1 | -1): number {
    const { xMm, yMm, headingRad } = this.pose;
    this.planner.plan(xMm, yMm, cos(headingRad), sin(headingRad), headingRad, sign, 0, FAR_MM);
    return this.planner.touched ? (this.planner.count > 0 ? this.firstTouchQ() : 0) : FAR_MM;
  }

  private firstTouchQ(): number {
    const { pieces, count } = this.planner;
    return count > 0 && pieces[9] === 0 ? (pieces[1] ?? 0) : 0;
  }

  /** Runs one move and returns the path it took. */
  advance(move: Move): WalkedMove {
    const { planner, profile, at } = this;
    const { xMm, yMm, headingRad } = this.pose;
    const { sigma, kappa, length } = motionOf(move);
    setProfile(this.drive, move, profile);
    planner.plan(xMm, yMm, cos(headingRad), sin(headingRad), headingRad, sigma, kappa, length);
    const pieces = Array.from({ length: planner.count }, (_, i) => this.piece(i));
    planner.poseAt(length, at);
    this.pose = { xMm: at[0] ?? xMm, yMm: at[1] ?? yMm, headingRad: at[4] ?? headingRad };
    this.timeS += profile.durationS;
    return { pieces, touched: planner.touched, stalled: planner.stalled, flush: planner.flush };
  }

  private piece(i: number): Omit<CoursePiece, "move"> {
    const { pieces } = this.planner;
    const [q0 = 0, q1 = 0] = pieces.subarray(i * PIECE, i * PIECE + 2);
    const from = this.poseOn(i, q0);
    const to = this.poseOn(i, q1);
    const [, , , , , , , sigma = 0, kappa = 0] = pieces.subarray(i * PIECE, i * PIECE + PIECE);
    const angleRad = kappa * (q1 - q0);
    const radius = kappa === 0 ? 0 : sigma / kappa;
    return {
      kind: kappa === 0 ? "line" : "rotation",
      from,
      to,
      centreXMm: kappa === 0 ? 0 : from.xMm - radius * sin(from.headingRad),
      centreYMm: kappa === 0 ? 0 : from.yMm + radius * cos(from.headingRad),
      angleRad,
      startS: this.timeS + this.profile.timeAt(q0),
      endS: this.timeS + this.profile.timeAt(q1),
    };
  }

  private poseOn(i: number, q: number): Pose {
    posePiece(this.planner.pieces, i * PIECE, q, this.at);
    const [xMm = 0, yMm = 0, , , headingRad = 0] = this.at;
    return { xMm, yMm, headingRad };
  }
}
