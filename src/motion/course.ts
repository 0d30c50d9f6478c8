import type { Project } from "../model/project.ts";
import type { Move } from "../model/routine.ts";
import { wrapAngle } from "../num/elementary.ts";
import type { Pose } from "./pose.ts";
import { Walker } from "./walker.ts";

/** A stretch of the path: a straight line, or a rotation about a fixed point by a signed angle (centre and angle 0 for a line). */
export interface CoursePiece {
  /** Index of the move it belongs to. */
  readonly move: number;
  readonly kind: "line" | "rotation";
  readonly from: Pose;
  readonly to: Pose;
  readonly centreXMm: number;
  readonly centreYMm: number;
  readonly angleRad: number;
  readonly startS: number;
  readonly endS: number;
}

/** The path of a routine without drift, wall contacts included. */
export interface Course {
  readonly pieces: readonly CoursePiece[];
  readonly durationS: number;
  readonly moveStartS: readonly number[];
  /** Angle of hinged arms as each move begins; 0 where nothing swings. */
  readonly armsRad: readonly number[];
  readonly end: Pose;
  /** Moves other than "to the wall" during which the robot met a wall, a keep-out or the wedge. */
  readonly blockedMoves: readonly number[];
}

/** Walks the moves from the entry pose without drift. Headings of the pieces run on without wrapping. */
export function nominalCourse(project: Project, moves: readonly Move[]): Course {
  const walker = new Walker(project);
  const pieces: CoursePiece[] = [];
  const moveStartS: number[] = [];
  const armsRad: number[] = [];
  const blockedMoves: number[] = [];
  for (const [index, move] of moves.entries()) {
    moveStartS.push(walker.timeS);
    armsRad.push(walker.armsAngleRad);
    const step = walker.advance(move);
    for (const piece of walker.lastPath()) pieces.push({ move: index, ...piece });
    if (step.touched && move.kind !== "toWall") blockedMoves.push(index);
  }
  const { xMm, yMm, headingRad } = walker.pose;
  return {
    pieces,
    durationS: walker.timeS,
    moveStartS,
    armsRad,
    end: { xMm, yMm, headingRad: wrapAngle(headingRad) },
    blockedMoves,
  };
}
