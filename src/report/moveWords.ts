import type { Beside, Move } from "../model/routine.ts";
import { moveTexts } from "../texts/english/move.ts";
import { lengthText } from "../texts/lengths.ts";
import { fixed } from "../texts/numbers.ts";
import { degreesWords } from "./lengthWords.ts";

/** One move in plain words, units included. */
export function moveWords(move: Move): string {
  switch (move.kind) {
    case "drive":
      return besideWords(moveTexts.drive(move.distanceMm < 0, size(move.distanceMm)), move.beside);
    case "turn":
      return moveTexts.turn(move.angleRad < 0, degreesWords(Math.abs(move.angleRad)));
    case "arc": {
      const { angleRad, distanceMm } = move;
      return moveTexts.arc(angleRad < 0, degreesWords(Math.abs(angleRad)), size(distanceMm), distanceMm < 0);
    }
    case "toWall":
      return besideWords(
        moveTexts.toWall(move.distanceMm < 0, size(move.distanceMm), size(move.overrunMm)),
        move.beside,
      );
    case "wait":
      return moveTexts.wait(fixed(move.durationS, 1));
    case "arms":
      return moveTexts.arms(move.to === "open", fixed(move.durationS, 1));
    default:
      return move satisfies never;
  }
}

/** A way that keeps its distance from a wall says so. */
function besideWords(way: string, beside: Beside | undefined): string {
  return beside === undefined ? way : moveTexts.beside(way, beside.sensor + 1, size(beside.readsMm));
}

function size(lengthMm: number): string {
  return lengthText(Math.abs(lengthMm));
}
