import { issueTexts as t } from "../texts/english/issue.ts";
import { hingedArms } from "./arms.ts";
import type { Issue } from "./issue.ts";
import type { Program, Step } from "./program.ts";
import type { Robot } from "./robot.ts";
import type { Move, Routine } from "./routine.ts";

/** What own routines ask of a robot that cannot do it. */
export function checkRoutines(routines: readonly Routine[], robot: Robot): readonly Issue[] {
  if (hingedArms(robot)) return [];
  return routines.flatMap(({ moves, program }, i) => {
    const path = `routines[${i}]`;
    const places = [...armsMoves(moves, `${path}.moves`), ...armsSteps(program ?? [], `${path}.program`)];
    return places.map(armsWithoutHinges);
  });
}

function armsWithoutHinges(path: string): Issue {
  return {
    code: "arms-without-hinges",
    path,
    message: t.noArms,
    got: t.armsMove,
    expected: t.possibleMoves,
  };
}

function armsMoves(moves: readonly Move[], path: string): readonly string[] {
  return moves.flatMap(({ kind }, i) => (kind === "arms" ? [`${path}[${i}]`] : []));
}

function armsSteps(program: Program, path: string): readonly string[] {
  return program.flatMap((step, i) => armsIn(step, `${path}[${i}]`));
}

function armsIn(step: Step, path: string): readonly string[] {
  if (step.kind === "arms") return [path];
  if (step.kind === "repeat") return armsSteps(step.steps, `${path}.steps`);
  if (step.kind === "if") return [...armsSteps(step.yes, `${path}.yes`), ...armsSteps(step.no, `${path}.no`)];
  return [];
}
