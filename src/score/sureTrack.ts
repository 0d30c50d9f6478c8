import { hingedArms } from "../model/arms.ts";
import type { Project } from "../model/project.ts";
import type { Move } from "../model/routine.ts";
import { type CoursePiece, nominalCourse } from "../motion/course.ts";
import { moveLength } from "../motion/duration.ts";
import { type Surroundings, surroundingsOf } from "../motion/surroundings.ts";
import { motionOf } from "../motion/walker.ts";
import { cos, sin } from "../num/elementary.ts";
import { type Face, facesOf } from "./clearance.ts";
import type { DriftBounds } from "./driftBounds.ts";
import {
  errorAfter,
  isExact,
  largest,
  type Motion,
  type MoveError,
  type PoseError,
  rangeOf,
  Symbols,
  sumOf,
} from "./poseError.ts";
import { freeOrGrazing, withoutMemory } from "./sureFree.ts";
import { arrival } from "./sureWall.ts";

/** A stretch of the nominal path, and how far the real one can be from it. */
export interface Stretch {
  readonly piece: CoursePiece;
  readonly motion: Motion;
  readonly lengthMm: number;
  readonly move: MoveError;
  /** At its start. */
  readonly error: PoseError;
  /** A wall may have turned the robot straight or held it back on the way: nobody knows when. */
  readonly isLoose: boolean;
  /** At its end, where a wall takes errors away; null: what `errorAfter` gives. */
  readonly arrived: PoseError | null;
}

/** Why nothing can be promised from a move on. */
export type TrackEnd = "may-hit" | "may-not-reach" | "slanting-stop" | "arms-swing";

export interface SureTrack {
  readonly startError: PoseError;
  readonly stretches: readonly Stretch[];
  /** null: the whole routine can be followed. */
  readonly endsAt: { readonly move: number; readonly reason: TrackEnd } | null;
}

/**
 * Follows the routine's nominal path and bounds the pose error along it, for every drift within the bounds. Beside a wall that
 * runs along the path a robot that drifts into it is turned along and goes on: its error stays within the same limits. A
 * square-up takes the error of heading and of the distance from that wall away. Where the robot might run into something in another
 * way, or not reach the wall it is meant to reach, the track ends: nothing is promised from there on.
 */
export function sureTrack(project: Project, moves: readonly Move[], bounds: DriftBounds): SureTrack {
  const around = surroundingsOf(project.zone, project.robot);
  const setting = { project, around, faces: facesOf(around), bounds, symbols: new Symbols() };
  const { symbols } = setting;
  const pieces = nominalCourse(project, moves).pieces;
  let error: PoseError = {
    x: symbols.fresh(bounds.startMm),
    y: symbols.fresh(bounds.startMm),
    heading: symbols.fresh(bounds.startRad),
    restMm: 0,
    restRad: 0,
  };
  const startError = error;
  const stretches: Stretch[] = [];
  let leaning: Face | null = null;
  for (const [index, command] of moves.entries()) {
    // The pusher is another one from here on.
    if (command.kind === "arms" && hingedArms(project.robot) !== null) {
      return { startError, stretches, endsAt: { move: index, reason: "arms-swing" } };
    }
    const own = pieces.filter((piece) => piece.move === index);
    const step: Followed | TrackEnd = follow(setting, command, own, error, leaning);
    if (typeof step === "string") return { startError, stretches, endsAt: { move: index, reason: step } };
    stretches.push(...step.stretches);
    error = step.error;
    if (command.kind !== "wait") leaning = step.leaning;
  }
  return { startError, stretches, endsAt: null };
}

export interface TrackSetting {
  readonly project: Project;
  readonly around: Surroundings;
  readonly faces: readonly Face[];
  readonly bounds: DriftBounds;
  readonly symbols: Symbols;
}

export interface Followed {
  readonly stretches: readonly Stretch[];
  readonly error: PoseError;
  /** The face that it was driven against. */
  readonly leaning: Face | null;
}

function follow(
  setting: TrackSetting,
  command: Move,
  pieces: readonly CoursePiece[],
  error: PoseError,
  leaning: Face | null,
): Followed | TrackEnd {
  const move = moveError(setting, command);
  const exact = isExact(error) && isStill(move.scale) && isStill(move.bend);
  const [piece, ...others] = pieces;
  if (piece === undefined) {
    // A wait; or a robot that stands at the wall already, which is then held there.
    const stays = command.kind === "wait" || moveLength(command) === 0 || exact;
    return stays ? { stretches: [], error, leaning } : "slanting-stop";
  }
  if (exact) {
    const stretches = pieces.map((each) => plainStretch(each, command, move, error));
    return { stretches, error, leaning: null };
  }
  if (others.length > 0) return "slanting-stop";
  const stretch = plainStretch(piece, command, move, error);
  const behind = leaning !== null && drivesOff(stretch, leaning) ? leaning : null;
  if (command.kind === "toWall") return arrival(setting, stretch, command, behind);
  if (stretch.lengthMm < moveLength(command) - 1e-6) return "may-hit";
  const end = errorAfter(error, stretch.motion, move, stretch.lengthMm);
  const meets = freeOrGrazing(setting, stretch, [behind]);
  if (meets === "blocked") return "may-hit";
  if (meets === "free") return { stretches: [stretch], error: end, leaning: null };
  const loose = { ...stretch, isLoose: true, error: withoutMemory(setting.symbols, [error]) };
  const after = errorAfter(loose.error, stretch.motion, move, stretch.lengthMm);
  return {
    stretches: [loose],
    error: withoutMemory(setting.symbols, [loose.error, after]),
    leaning: null,
  };
}

/** Heading changes on the way off a wall below this keep every corner from coming nearer to it. */
const MOST_SWING = 0.5;
const LEAST_OFF = 0.9;

/** Whether a robot that leans on a face leaves it with every corner. */
function drivesOff({ motion, piece, move }: Stretch, face: Face): boolean {
  if (piece.kind !== "line" || motion.sigma === 0) return false;
  const off = motion.sigma * (face.nx * cos(motion.headingRad) + face.ny * sin(motion.headingRad));
  return off > LEAST_OFF && largest(rangeOf(move.bend)) * FARTHEST_MM < MOST_SWING;
}

/** No corner of a robot lies farther from its origin, mm. */
const FARTHEST_MM = 2500;

function isStill(form: readonly number[]): boolean {
  return form.every((value) => value === 0);
}

function plainStretch(piece: CoursePiece, command: Move, move: MoveError, error: PoseError): Stretch {
  const { sigma } = motionOf(command);
  const dx = piece.to.xMm - piece.from.xMm;
  const dy = piece.to.yMm - piece.from.yMm;
  const chord = Math.sqrt(dx * dx + dy * dy);
  const radius = Math.sqrt(
    (piece.from.xMm - piece.centreXMm) * (piece.from.xMm - piece.centreXMm) +
      (piece.from.yMm - piece.centreYMm) * (piece.from.yMm - piece.centreYMm),
  );
  const turn = Math.abs(piece.angleRad);
  const lengthMm = piece.kind === "line" ? chord : sigma === 0 ? turn : turn * radius;
  const kappa = piece.kind === "line" || lengthMm === 0 ? 0 : piece.angleRad / lengthMm;
  return {
    piece,
    motion: { headingRad: piece.from.headingRad, sigma, kappa },
    lengthMm,
    move,
    error,
    isLoose: false,
    arrived: null,
  };
}

/** What a move can stray by: the forms of trial/drift with limits for spreads. */
function moveError({ bounds, symbols }: TrackSetting, command: Move): MoveError {
  const { sigma, kappa, length } = motionOf(command);
  if (command.kind === "wait" || length === 0) return { scale: [0], bend: [0] };
  if (command.kind === "turn") {
    const share = bounds.moveTurnFrac * length;
    const own = Math.sqrt(share * share + bounds.moveTurnRad * bounds.moveTurnRad) / length;
    const scale = sumOf([1, symbols.shared(2, bounds.turnScale)], [1, symbols.fresh(own)]);
    return { scale: [0], bend: sumOf([kappa, scale]) };
  }
  const bend = sumOf(
    [1, symbols.shared(3, bounds.curvatureRadPerMm, sigma)],
    [1, symbols.fresh(bounds.moveCurvatureRadPerMm)],
    [kappa, symbols.shared(2, bounds.turnScale)],
  );
  const own = symbols.fresh(bounds.moveDistanceFrac);
  return { scale: sumOf([1, symbols.shared(1, bounds.distanceScale)], [1, own]), bend };
}
