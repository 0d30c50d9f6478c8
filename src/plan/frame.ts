import type { Project } from "../model/project.ts";
import type { Move } from "../model/routine.ts";
import { PI } from "../model/units.ts";
import type { Corner, Zone } from "../model/zone.ts";
import type { Pose } from "../motion/pose.ts";
import { mirroredProject, transposedProject } from "./mirror.ts";

/**
 * The frame in which every pattern is written once: the target corner is the origin, the two closing walls are the
 * axes, the far walls are x = width and y = height. The robot is reflected with the zone.
 */
export interface Frame {
  /** The project as seen in the frame: its wedge is in the lower left corner. */
  readonly project: Project;
  /** An odd number of reflections led here: left and right turns are swapped. */
  readonly flipped: boolean;
  /** The frame's x axis runs along the longer side of the zone (or along x in a square). */
  readonly longFirst: boolean;
}

const X_FIRST: Readonly<Record<Corner, boolean>> = {
  "lower-left": false,
  "lower-right": true,
  "upper-left": false,
  "upper-right": true,
};

const Y_FIRST: Readonly<Record<Corner, boolean>> = {
  "lower-left": false,
  "lower-right": false,
  "upper-left": true,
  "upper-right": true,
};

/** The frame whose x axis runs along the longer (`longFirst`) or the shorter side of the zone. */
export function targetFrame(project: Project, longFirst: boolean): Frame {
  const { corner } = project.zone.wedge;
  let seen = project;
  let flipped = false;
  if (X_FIRST[corner]) {
    seen = mirroredProject(seen);
    flipped = !flipped;
  }
  if (Y_FIRST[corner]) {
    seen = transposedProject(mirroredProject(transposedProject(seen)));
    flipped = !flipped;
  }
  if (seen.zone.widthMm >= seen.zone.heightMm !== longFirst) {
    seen = transposedProject(seen);
    flipped = !flipped;
  }
  return { project: seen, flipped, longFirst };
}

/** A place of the real zone as seen in the frame; the heading comes out unwrapped. */
export function poseInFrame(frame: Frame, zone: Zone, pose: Pose): Pose {
  let { xMm, yMm, headingRad } = pose;
  const { corner } = zone.wedge;
  if (X_FIRST[corner]) {
    xMm = zone.widthMm - xMm;
    headingRad = PI - headingRad;
  }
  if (Y_FIRST[corner]) {
    yMm = zone.heightMm - yMm;
    headingRad = 0 - headingRad;
  }
  if (zone.widthMm >= zone.heightMm === frame.longFirst) return { xMm, yMm, headingRad };
  return { xMm: yMm, yMm: xMm, headingRad: PI / 2 - headingRad };
}

/** The way back: a place of the frame in the real zone. */
export function poseFromFrame(frame: Frame, zone: Zone, pose: Pose): Pose {
  let { xMm, yMm, headingRad } = pose;
  const { corner } = zone.wedge;
  if (zone.widthMm >= zone.heightMm !== frame.longFirst) {
    [xMm, yMm] = [yMm, xMm];
    headingRad = PI / 2 - headingRad;
  }
  if (Y_FIRST[corner]) {
    yMm = zone.heightMm - yMm;
    headingRad = 0 - headingRad;
  }
  if (X_FIRST[corner]) {
    xMm = zone.widthMm - xMm;
    headingRad = PI - headingRad;
  }
  return { xMm, yMm, headingRad };
}

/** Moves planned in the frame, as the real robot has to run them. */
export function movesFromFrame(frame: Frame, moves: readonly Move[]): readonly Move[] {
  if (!frame.flipped) return moves;
  return moves.map((move) =>
    move.kind === "turn" || move.kind === "arc" ? { ...move, angleRad: 0 - move.angleRad } : move,
  );
}
