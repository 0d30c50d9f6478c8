import type { Move } from "../model/routine.ts";
import { degreesWords, millimetresWords } from "./lengthWords.ts";

/** One move in plain words, units included. */
export function moveWords(move: Move): string {
  switch (move.kind) {
    case "drive":
      return `${way(move.distanceMm)} ${millimetresWords(Math.abs(move.distanceMm))}`;
    case "turn":
      return `turn ${side(move.angleRad)} ${degreesWords(Math.abs(move.angleRad))} on the spot`;
    case "arc":
      return `curve ${side(move.angleRad)} ${degreesWords(Math.abs(move.angleRad))} over ${millimetresWords(Math.abs(move.distanceMm))}${move.distanceMm < 0 ? ", backward" : ""}`;
    case "toWall":
      return `${way(move.distanceMm)} to the wall: ${millimetresWords(Math.abs(move.distanceMm))}, then push on ${millimetresWords(Math.abs(move.overrunMm))}`;
    case "wait":
      return `wait ${move.durationS.toFixed(1)} s`;
    case "arms":
      return `${move.to === "open" ? "open" : "close"} the arms: ${move.durationS.toFixed(1)} s`;
    default:
      return move satisfies never;
  }
}

function way(distanceMm: number): string {
  return distanceMm < 0 ? "back up" : "drive";
}

function side(angleRad: number): string {
  return angleRad < 0 ? "right" : "left";
}
