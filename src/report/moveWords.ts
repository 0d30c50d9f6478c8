import type { Move } from "../model/routine.ts";
import { moveTexts } from "../texts/english/move.ts";
import { lengthText } from "../texts/lengths.ts";
import { fixed } from "../texts/numbers.ts";
import { degreesWords } from "./lengthWords.ts";

/** One move in plain words, units included. */
export function moveWords(move: Move): string {
  switch (move.kind) {
    case "drive":
      return moveTexts.drive(move.distanceMm < 0, size(move.distanceMm));
    case "turn":
      return moveTexts.turn(move.angleRad < 0, degreesWords(Math.abs(move.angleRad)));
    case "arc": {
      const { angleRad, distanceMm } = move;
      return moveTexts.arc(angleRad < 0, degreesWords(Math.abs(angleRad)), size(distanceMm), distanceMm < 0);
    }
    case "toWall":
      return moveTexts.toWall(move.distanceMm < 0, size(move.distanceMm), size(move.overrunMm));
    case "wait":
      return moveTexts.wait(fixed(move.durationS, 1));
    case "arms":
      return moveTexts.arms(move.to === "open", fixed(move.durationS, 1));
    default:
      return move satisfies never;
  }
}

function size(lengthMm: number): string {
  return lengthText(Math.abs(lengthMm));
}
