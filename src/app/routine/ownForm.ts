import type { Move, Routine } from "../../model/routine.ts";
import { moveForFile } from "../../model/serialiseRoutines.ts";
import { type Form, valueAt, withValue } from "../project/form.ts";

/** How the list of own routines in a project's form is changed. Places count from 0. */

/** "own-3": the first number nobody has. */
export function freeId(taken: readonly string[]): string {
  for (let n = 1; ; n++) if (!taken.includes(`own-${n}`)) return `own-${n}`;
}

/** A copy of a routine at the end of the list, to be changed. @param from id of the generated routine it goes back to */
export function withCopy(form: Form, routine: Routine, id: string, label: string, from: string): Form {
  const copy = { id, label: label.slice(0, 300), from, moves: routine.moves.map(moveForFile) };
  const list = valueAt(form, "routines");
  return withValue(form, "routines", [...(Array.isArray(list) ? list : []), copy]);
}

function withMoves(
  form: Form,
  routine: number,
  change: (moves: readonly unknown[]) => readonly unknown[],
): Form {
  const path = `routines[${routine}].moves`;
  const moves = valueAt(form, path);
  return withValue(form, path, change(Array.isArray(moves) ? moves : []));
}

export function withMoveInserted(form: Form, routine: number, at: number, move: Move): Form {
  return withMoves(form, routine, (moves) => [...moves.slice(0, at), moveForFile(move), ...moves.slice(at)]);
}

export function withMoveDoubled(form: Form, routine: number, at: number): Form {
  return withMoves(form, routine, (moves) => [...moves.slice(0, at + 1), ...moves.slice(at)]);
}

export function withoutMove(form: Form, routine: number, at: number): Form {
  return withMoves(form, routine, (moves) => moves.filter((_, index) => index !== at));
}

/** @param by −1 for earlier, 1 for later; at the ends nothing changes */
export function withMoveShifted(form: Form, routine: number, at: number, by: -1 | 1): Form {
  return withMoves(form, routine, (moves) => {
    const to = at + by;
    if (to < 0 || to >= moves.length) return moves;
    const next = [...moves];
    [next[at], next[to]] = [next[to], next[at]];
    return next;
  });
}
