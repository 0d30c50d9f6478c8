import type { Project } from "../model/project.ts";
import type { Move, Routine } from "../model/routine.ts";
import { Walker } from "../motion/walker.ts";
import type { Changed } from "./change.ts";

/** Shorter pushes are no runs, mm. */
const LEAST_RUN_MM = 100;

/**
 * The routine with one more square-up: before its last long push the robot backs up to the wall behind it, pushes on until it
 * is flush, and drives out again by as much. Only where that wall is square to the way, and the robot turns flush on it.
 */
export function squareUpBeforeLast(project: Project, routine: Routine): Changed {
  const { moves } = routine;
  const last = lastRun(moves);
  const run = moves[last];
  if (run === undefined || (run.kind !== "toWall" && run.kind !== "drive")) {
    return { reason: "The routine ends without a long straight push." };
  }
  const before = moves[last - 1];
  if (before?.kind === "toWall" && before.distanceMm < 0) return { reason: "It squares up there already." };
  const walker = new Walker(project);
  for (const move of moves.slice(0, last)) walker.advance(move);
  const wayMm = walker.freeWayMm(-1);
  const back: Move = {
    kind: "toWall",
    distanceMm: -wayMm,
    overrunMm: -project.settings.overrunMm,
    speedMmPerS: run.speedMmPerS,
  };
  const { headingRad } = walker.pose;
  const { touched, flush } = walker.advance(back);
  // A nominal heading that changed means a wall at a slant: the robot would come out another way.
  if (!touched || !flush || Math.abs(walker.pose.headingRad - headingRad) > 1e-6) {
    return { reason: "There is no wall square behind the robot before its last push." };
  }
  const out: Move = { kind: "drive", distanceMm: wayMm, speedMmPerS: run.speedMmPerS };
  const longer = [...moves.slice(0, last), back, out, ...moves.slice(last)];
  return { project, routine: { ...routine, moves: longer } };
}

function lastRun(moves: readonly Move[]): number {
  return moves.findLastIndex(
    (move) => (move.kind === "toWall" || move.kind === "drive") && move.distanceMm >= LEAST_RUN_MM,
  );
}
