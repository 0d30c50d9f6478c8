import type { Drive } from "../model/robot.ts";
import type { Move } from "../model/routine.ts";
import { Trapezoid } from "./trapezoid.ts";

/** Acceleration of a turn on the spot, rad/s²: both tracks speed up at the drive's acceleration, half a gauge from the middle. */
export function turnAccelRadPerS2(drive: Drive): number {
  return drive.accelMmPerS2 / (drive.gaugeMm / 2);
}

/** Fastest the axle midpoint may go so that the outer track of a curve keeps within the top speed, mm/s. */
export function curveSpeedMmPerS(drive: Drive, speedMmPerS: number, curvatureRadPerMm: number): number {
  const outer = 1 + (Math.abs(curvatureRadPerMm) * drive.gaugeMm) / 2;
  return Math.min(speedMmPerS, drive.topSpeedMmPerS / outer);
}

/** Moves shorter than this are none at all, mm or rad: nobody commands them, and a curvature over them would overflow. */
const SHORTEST_MOVE = 1e-6;

/** Commanded progress of a move: mm driven (drive, arc, toWall) or rad turned, ≥ 0. */
export function moveLength(move: Move): number {
  const length = lengthOf(move);
  return length < SHORTEST_MOVE ? 0 : length;
}

function lengthOf(move: Move): number {
  switch (move.kind) {
    case "drive":
    case "arc":
      return Math.abs(move.distanceMm);
    case "toWall":
      return Math.abs(move.distanceMm) + Math.abs(move.overrunMm);
    case "turn":
      return Math.abs(move.angleRad);
    case "wait":
    case "arms":
      return 0;
    default:
      return move satisfies never;
  }
}

/** Sets the speed profile of one commanded move; progress in mm (drive, arc, toWall) or rad (turn), always ≥ 0. */
export function setProfile(drive: Drive, move: Move, out: Trapezoid): Trapezoid {
  const length = moveLength(move);
  switch (move.kind) {
    case "drive":
    case "toWall":
      return out.set(length, Math.min(move.speedMmPerS, drive.topSpeedMmPerS), drive.accelMmPerS2);
    case "arc": {
      const curvature = length > 0 ? move.angleRad / length : 0;
      return out.set(length, curveSpeedMmPerS(drive, move.speedMmPerS, curvature), drive.accelMmPerS2);
    }
    case "turn":
      return out.set(length, Math.min(move.rateRadPerS, drive.turnRateRadPerS), turnAccelRadPerS2(drive));
    case "wait":
    case "arms":
      return out.hold(move.durationS);
    default:
      return move satisfies never;
  }
}

const scratch = new Trapezoid();

/** Seconds that one move takes, ramps included. */
export function moveDurationS(drive: Drive, move: Move): number {
  return setProfile(drive, move, scratch).durationS;
}

/** Seconds that the whole routine takes. */
export function routineDurationS(drive: Drive, moves: readonly Move[]): number {
  let sum = 0;
  for (const move of moves) sum += moveDurationS(drive, move);
  return sum;
}
