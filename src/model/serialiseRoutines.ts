import { degFromRad } from "./degrees.ts";
import type { Beside, Move, Routine } from "./routine.ts";
import { programForFile } from "./serialiseProgram.ts";

/** Own routines as they stand in a project file; see parseRoutines. */
export function routinesForFile(routines: readonly Routine[]) {
  return routines.map(({ id, label, params, moves, program }) => ({
    id,
    label,
    ...(typeof params.from === "string" ? { from: params.from } : {}),
    moves: moves.map(moveForFile),
    ...(program === undefined ? {} : { program: programForFile(program) }),
  }));
}

/** One move with its angles in degrees. */
export function moveForFile(move: Move) {
  switch (move.kind) {
    case "drive":
      return {
        kind: move.kind,
        distanceMm: move.distanceMm,
        speedMmPerS: move.speedMmPerS,
        ...besideForFile(move.beside),
      };
    case "turn":
      return {
        kind: move.kind,
        angleDeg: degFromRad(move.angleRad),
        rateDegPerS: degFromRad(move.rateRadPerS),
      };
    case "arc":
      return {
        kind: move.kind,
        distanceMm: move.distanceMm,
        angleDeg: degFromRad(move.angleRad),
        speedMmPerS: move.speedMmPerS,
      };
    case "toWall":
      return {
        kind: move.kind,
        distanceMm: move.distanceMm,
        overrunMm: move.overrunMm,
        speedMmPerS: move.speedMmPerS,
        ...besideForFile(move.beside),
      };
    case "wait":
      return { kind: move.kind, durationS: move.durationS };
    case "arms":
      return { kind: move.kind, to: move.to, durationS: move.durationS };
    default:
      return move satisfies never;
  }
}

/** Sensors are counted from 1 in files. */
function besideForFile(beside: Beside | undefined) {
  return beside && { beside: { sensor: beside.sensor + 1, readsMm: beside.readsMm } };
}
