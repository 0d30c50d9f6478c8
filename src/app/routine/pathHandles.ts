import type { Routine } from "../../model/routine.ts";
import { moveForFile } from "../../model/serialiseRoutines.ts";
import type { Course } from "../../motion/course.ts";
import { drawingTexts } from "../../texts/english/drawing.ts";
import { lengthText } from "../../texts/lengths.ts";
import type { Handle } from "../drawing/handle.ts";
import { withValue } from "../project/form.ts";
import { tidied, withEndAt } from "./reshape.ts";

/**
 * What can be dragged of an own routine: the ends of its straight moves.
 * @param index of the routine in the project's list
 * @param moves indices of the moves whose ends are shown
 */
export function pathHandles(
  routine: Routine,
  course: Course,
  index: number,
  moves: readonly number[],
): readonly Handle[] {
  return moves.flatMap((at): Handle[] => {
    const move = routine.moves[at];
    const pieces = course.pieces.filter((piece) => piece.move === at);
    const first = pieces[0];
    const last = pieces.at(-1);
    if (!first || !last || (move?.kind !== "drive" && move?.kind !== "toWall")) return [];
    return [
      {
        id: `move-${at}`,
        words: drawingTexts.end(at + 1, lengthText(last.to.xMm), lengthText(last.to.yMm)),
        at: last.to,
        axis: "both",
        look: "grip",
        move: (form, to) => {
          const next = withEndAt(routine.moves, at, first.from, to);
          return withValue(
            form,
            `routines[${index}].moves`,
            next.map((each, k) => moveForFile(each === routine.moves[k] ? each : tidied(each))),
          );
        },
      },
    ];
  });
}
