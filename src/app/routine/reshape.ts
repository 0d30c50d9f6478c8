import type { Move } from "../../model/routine.ts";
import type { PointMm } from "../../model/zone.ts";
import type { Pose } from "../../motion/pose.ts";
import { wrapAngle } from "../../num/elementary.ts";

/** Shortest stretch a drag leaves, mm: a way of no length has no direction. */
const SHORTEST_MM = 5;

/**
 * The moves after the end of a straight one has been taken to another place. The turn before it takes up the change of
 * direction and the turn after it gives it back, so that what follows keeps its directions. Without a turn before it,
 * only the length changes.
 *
 * @param at index of the straight move
 * @param start where it begins, heading included
 */
export function withEndAt(moves: readonly Move[], at: number, start: Pose, to: PointMm): readonly Move[] {
  const move = moves[at];
  if (!move || (move.kind !== "drive" && move.kind !== "toWall")) return moves;
  const back = move.distanceMm < 0;
  const [dx, dy] = [to.xMm - start.xMm, to.yMm - start.yMm];
  const before = moves[at - 1];
  const length = Math.hypot(dx, dy);
  if (before?.kind !== "turn" || length < SHORTEST_MM) {
    const along = dx * Math.cos(start.headingRad) + dy * Math.sin(start.headingRad);
    return replaced(moves, at, {
      ...move,
      distanceMm: back ? Math.min(-SHORTEST_MM, along) : Math.max(SHORTEST_MM, along),
    });
  }
  const heading = Math.atan2(dy, dx) + (back ? Math.PI : 0);
  const turnRad = wrapAngle(heading - start.headingRad);
  let next = replaced(moves, at, { ...move, distanceMm: back ? -length : length });
  next = replaced(next, at - 1, { ...before, angleRad: before.angleRad + turnRad });
  const after = moves[at + 1];
  return after?.kind === "turn"
    ? replaced(next, at + 1, { ...after, angleRad: after.angleRad - turnRad })
    : next;
}

function replaced(moves: readonly Move[], at: number, move: Move): readonly Move[] {
  return moves.map((each, index) => (index === at ? move : each));
}

/** Whole millimetres and tenths of a degree: what a person would write. */
export function tidied(move: Move): Move {
  switch (move.kind) {
    case "drive":
    case "toWall":
      return { ...move, distanceMm: Math.round(move.distanceMm) };
    case "turn":
      return { ...move, angleRad: (Math.round((move.angleRad * 1800) / Math.PI) * Math.PI) / 1800 };
    case "arc":
    case "wait":
    case "arms":
      return move;
    default:
      return move satisfies never;
  }
}
