import type { Project } from "../model/project.ts";
import type { Drive } from "../model/robot.ts";
import type { Move } from "../model/routine.ts";
import { cos, sin } from "../num/elementary.ts";
import { type ArmSwing, armSwingOf } from "./arms.ts";
import type { CoursePiece } from "./course.ts";
import { moveLength, setProfile } from "./duration.ts";
import { entryPose } from "./entry.ts";
import { PathTracer } from "./path.kernel.ts";
import type { Pose } from "./pose.ts";
import { surroundingsOf } from "./surroundings.ts";
import { PIECE, posePiece } from "./trace.kernel.ts";
import { Trapezoid } from "./trapezoid.ts";

/** Longest stretch tried when the free way ahead is asked for, mm: longer than any zone's diagonal. */
const FAR_MM = 1e5;

export interface WalkedMove {
  /** The robot met a wall, a keep-out or the wedge. */
  readonly touched: boolean;
  /** It ended pressed against it; `flush`: with a face flat on it. */
  readonly stalled: boolean;
  readonly flush: boolean;
}

/** Motion of a move as the tracer wants it: velocity sign, heading change per unit of progress, length. */
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
    case "arms":
      return { sigma: 0, kappa: 0, length };
    default:
      return move satisfies never;
  }
}

/** Follows moves without drift, one at a time, from the entry pose (or any other); patterns build their routines with it. */
export class Walker {
  pose: Pose;
  timeS = 0;
  private readonly planner: PathTracer;
  private readonly drive: Drive;
  private readonly profile = new Trapezoid();
  private readonly at = new Float64Array(7);
  private readonly swing: ArmSwing | null;
  private armsRad: number;

  constructor(project: Project, from: Pose = entryPose(project.zone, project.robot)) {
    this.pose = from;
    this.drive = project.robot.drive;
    this.planner = new PathTracer(surroundingsOf(project.zone, project.robot), project.robot.drive);
    this.swing = armSwingOf(project.zone, project.robot);
    this.armsRad = this.swing?.arms.openAngleRad ?? 0;
  }

  /** Angle of hinged arms; 0 where nothing swings. */
  get armsAngleRad(): number {
    return this.armsRad;
  }

  set armsAngleRad(angleRad: number) {
    if (this.swing === null || angleRad === this.armsRad) return;
    this.armsRad = angleRad;
    this.planner.around = this.swing.surroundings(angleRad);
  }

  /** Free way in mm before the robot touches anything when it drives straight on (`sign` 1) or back (−1). */
  freeWayMm(sign: 1 | -1): number {
    return this.freeLength(sign, 0, FAR_MM);
  }

  /** Whether the move touches nothing from here. */
  isClear(move: Move): boolean {
    const { sigma, kappa, length } = motionOf(move);
    return this.freeLength(sigma, kappa, length) === length;
  }

  private freeLength(sigma: number, kappa: number, length: number): number {
    const { xMm, yMm, headingRad } = this.pose;
    return this.planner.freeLength(xMm, yMm, cos(headingRad), sin(headingRad), sigma, kappa, length);
  }

  /** Runs one move. */
  advance(move: Move): WalkedMove {
    const { planner, profile, at } = this;
    const { xMm, yMm, headingRad } = this.pose;
    const { sigma, kappa, length } = motionOf(move);
    setProfile(this.drive, move, profile);
    planner.plan(xMm, yMm, cos(headingRad), sin(headingRad), headingRad, sigma, kappa, length);
    planner.poseAt(length, at);
    this.pose = { xMm: at[0] ?? xMm, yMm: at[1] ?? yMm, headingRad: at[4] ?? headingRad };
    this.timeS += profile.durationS;
    const held = move.kind === "arms" && this.swingArms(move);
    return { touched: planner.touched || held, stalled: planner.stalled || held, flush: planner.flush };
  }

  /** Where the arms can swing as far as they are asked to. */
  swingsFreely(move: Extract<Move, { readonly kind: "arms" }>): boolean {
    return this.swing === null || !this.swing.after(move, this.pose, this.armsRad).blocked;
  }

  /** True where something stopped the arms. */
  private swingArms(move: Extract<Move, { readonly kind: "arms" }>): boolean {
    if (this.swing === null) return false;
    const { toRad, blocked } = this.swing.after(move, this.pose, this.armsRad);
    this.armsAngleRad = toRad;
    return blocked;
  }

  /** The path of the move that was run last, in pieces. */
  lastPath(): readonly Omit<CoursePiece, "move">[] {
    return Array.from({ length: this.planner.count }, (_, i) => this.piece(i));
  }

  private piece(i: number): Omit<CoursePiece, "move"> {
    const { pieces } = this.planner;
    const [q0 = 0, q1 = 0] = pieces.subarray(i * PIECE, i * PIECE + 2);
    const from = this.poseOn(i, q0);
    const to = this.poseOn(i, q1);
    const [, , , , , , , sigma = 0, kappa = 0] = pieces.subarray(i * PIECE, i * PIECE + PIECE);
    const angleRad = kappa * (q1 - q0);
    const radius = kappa === 0 ? 0 : sigma / kappa;
    const startS = this.timeS - this.profile.durationS;
    return {
      kind: kappa === 0 ? "line" : "rotation",
      from,
      to,
      centreXMm: kappa === 0 ? 0 : from.xMm - radius * sin(from.headingRad),
      centreYMm: kappa === 0 ? 0 : from.yMm + radius * cos(from.headingRad),
      angleRad,
      startS: startS + this.profile.timeAt(q0),
      endS: startS + this.profile.timeAt(q1),
    };
  }

  private poseOn(i: number, q: number): Pose {
    posePiece(this.planner.pieces, i * PIECE, q, this.at);
    const [xMm = 0, yMm = 0, , , headingRad = 0] = this.at;
    return { xMm, yMm, headingRad };
  }
}
