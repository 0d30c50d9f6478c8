import type { Drive } from "../../model/robot.ts";
import type { Move } from "../../model/routine.ts";
import { curveSpeedMmPerS, moveLength } from "../../motion/duration.ts";

/**
 * The speed a coder sets for a move: what was asked for, as far as the drive can give it. A short move does not reach it, its ramps
 * are too short. mm/s of the axle's middle, or rad/s of a turn; 0 for a wait.
 */
export function speedToSet(drive: Drive, move: Move): number {
  switch (move.kind) {
    case "drive":
    case "toWall":
      return Math.min(move.speedMmPerS, drive.topSpeedMmPerS);
    case "arc": {
      const length = moveLength(move);
      return curveSpeedMmPerS(drive, move.speedMmPerS, length > 0 ? move.angleRad / length : 0);
    }
    case "turn":
      return Math.min(move.rateRadPerS, drive.turnRateRadPerS);
    case "wait":
    case "arms":
      return 0;
    default:
      return move satisfies never;
  }
}
