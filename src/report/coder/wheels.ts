import type { Robot } from "../../model/robot.ts";
import type { Move } from "../../model/routine.ts";
import { moveLength } from "../../motion/duration.ts";
import { speedToSet } from "./speed.ts";

/** What turns lengths and angles into degrees of this robot's wheels, mean drift made up for. */
export interface WheelGain {
  /** Of both wheels, for a millimetre straight on. */
  readonly wheelDegPerMm: number;
  /** Of either wheel, one forward and one back, for a degree of turn on the spot. */
  readonly wheelDegPerTurnDeg: number;
  /** Distance of two tracks that do not slip and turn the robot as far as these do. */
  readonly effectiveGaugeMm: number;
  /** On a straight, by what each wheel's degrees are multiplied so that the path does not curve. */
  readonly leftFactor: number;
  readonly rightFactor: number;
}

export interface WheelTurns {
  /** Signed: negative turns backward. */
  readonly leftDeg: number;
  readonly rightDeg: number;
  /** Of the faster wheel once the ramp is over. */
  readonly wheelDegPerS: number;
}

export function wheelGain({ drive, drift }: Robot): WheelGain {
  const { distanceScaleMean, turnScaleMean, curvatureMeanRadPerMm } = drift.systematic;
  const effectiveGaugeMm = drive.gaugeMm / (1 + turnScaleMean);
  const bend = (curvatureMeanRadPerMm * effectiveGaugeMm) / 2;
  return {
    wheelDegPerMm: degreesOf(1 / (1 + distanceScaleMean), drive.wheelDiameterMm),
    wheelDegPerTurnDeg: effectiveGaugeMm / drive.wheelDiameterMm,
    effectiveGaugeMm,
    leftFactor: 1 + bend,
    rightFactor: 1 - bend,
  };
}

function degreesOf(travelMm: number, wheelDiameterMm: number): number {
  return (travelMm * 360) / (Math.PI * wheelDiameterMm);
}

/**
 * How far each wheel must turn so that the robot with its mean drift makes the move: the trial's drift (trial/drift.ts) solved for
 * what is commanded. A move to a wall is given to its very end, overrun included. null for a move on which no wheel turns.
 */
export function wheelTurns(robot: Robot, move: Move): WheelTurns | null {
  const { drive, drift } = robot;
  const { distanceScaleMean, turnScaleMean, curvatureMeanRadPerMm } = drift.systematic;
  const length = moveLength(move);
  if (length === 0) return null;
  const speed = speedToSet(drive, move);
  const turns = (forwardMm: number, angleRad: number): WheelTurns => {
    const aside = (angleRad * drive.gaugeMm) / 2;
    const leftDeg = degreesOf(forwardMm - aside, drive.wheelDiameterMm);
    const rightDeg = degreesOf(forwardMm + aside, drive.wheelDiameterMm);
    const faster = Math.max(Math.abs(leftDeg), Math.abs(rightDeg));
    return { leftDeg, rightDeg, wheelDegPerS: (faster / length) * speed };
  };
  /** Along a path of signed length that turns by the angle. */
  const along = (distanceMm: number, angleRad: number): WheelTurns => {
    const commandedMm = distanceMm / (1 + distanceScaleMean);
    const bend = angleRad / distanceMm - curvatureMeanRadPerMm;
    return turns(commandedMm, (bend * commandedMm) / (1 + turnScaleMean));
  };
  switch (move.kind) {
    case "drive":
      return along(move.distanceMm, 0);
    case "toWall":
      return along(move.distanceMm + move.overrunMm, 0);
    case "arc":
      return along(move.distanceMm, move.angleRad);
    case "turn":
      return turns(0, move.angleRad / (1 + turnScaleMean));
    case "wait":
    case "arms":
      return null;
    default:
      return move satisfies never;
  }
}
