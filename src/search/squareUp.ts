import type { Project } from "../model/project.ts";
import type { Move, Routine } from "../model/routine.ts";
import { Walker } from "../motion/walker.ts";
import { changeTexts } from "../texts/english/change.ts";
import type { Changed } from "./change.ts";

/** Shorter pushes are no runs, mm. */
const LEAST_RUN_MM = 100;
/** A nominal heading that changes by more means a wall at a slant: the robot would come out another way, rad. */
const SQUARE_RAD = 1e-6;

/**
 * The routine with one more square-up, before the last long push for which that is possible: the robot backs up to the wall
 * behind it, pushes on until it is flush, and drives out again by as much. Only where that wall is square to the way, the robot
 * turns flush on it, and the routine does not square up there already.
 */
export function squareUpOnce(project: Project, routine: Routine): Changed {
  const last = chances(project, routine.moves).at(-1);
  if (last === undefined) return { reason: changeTexts.noChance };
  const title = changeTexts.squareUpBefore(last.index + 1);
  return { project, routine: { ...routine, moves: withChances(routine.moves, [last]) }, title };
}

/** The same before every long push for which it is possible; only where there are several. */
export function squareUpAlways(project: Project, routine: Routine): Changed {
  const all = chances(project, routine.moves);
  if (all.length < 2) return { reason: all.length === 0 ? changeTexts.noChance : changeTexts.onlyOneChance };
  const title = changeTexts.squareUpTimes(all.length);
  return { project, routine: { ...routine, moves: withChances(routine.moves, all) }, title };
}

/** Moves to put in before the move of an index. */
interface Chance {
  readonly index: number;
  readonly moves: readonly Move[];
}

function chances(project: Project, moves: readonly Move[]): readonly Chance[] {
  return runStarts(project, moves).flatMap(({ index, run, walker }): Chance[] => {
    const wayMm = walker.freeWayMm(-1);
    const { headingRad } = walker.pose;
    const { speedMmPerS } = run;
    const overrunMm = -project.settings.overrunMm;
    const back: Move = { kind: "toWall", distanceMm: -wayMm, overrunMm, speedMmPerS };
    const { touched, flush } = walker.advance(back);
    if (!touched || !flush || Math.abs(walker.pose.headingRad - headingRad) > SQUARE_RAD) return [];
    return [{ index, moves: [back, { kind: "drive", distanceMm: wayMm, speedMmPerS }] }];
  });
}

function withChances(moves: readonly Move[], taken: readonly Chance[]): readonly Move[] {
  return moves.flatMap((move, index) => [
    ...(taken.find((chance) => chance.index === index)?.moves ?? []),
    move,
  ]);
}

interface RunStart {
  readonly index: number;
  readonly run: Extract<Move, { readonly kind: "drive" | "toWall" }>;
  /** The robot before the push. */
  readonly walker: Walker;
}

function runStarts(project: Project, moves: readonly Move[]): readonly RunStart[] {
  const walker = new Walker(project);
  const starts: RunStart[] = [];
  for (const [index, move] of moves.entries()) {
    const before = moves[index - 1];
    const isSquare = before?.kind === "toWall" || index === 0;
    if ((move.kind === "toWall" || move.kind === "drive") && move.distanceMm >= LEAST_RUN_MM && !isSquare) {
      starts.push({ index, run: move, walker: new Walker(project, walker.pose) });
    }
    walker.advance(move);
  }
  return starts;
}
