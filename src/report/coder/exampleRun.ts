import { linesOf, type Program } from "../../model/program.ts";
import type { Project } from "../../model/project.ts";
import type { Move } from "../../model/routine.ts";
import { carryLimits } from "../../plan/carryLimits.ts";
import { stepWordsTexts as t } from "../../texts/english/stepWords.ts";
import type { Recording } from "../../trial/recording.ts";
import { carryLines } from "../carryWords.ts";
import { type CoderStep, stepFrom } from "./steps.ts";
import { stepHeads, stepRow } from "./stepTable.ts";

/** What a routine that decides came to drive in one run. */
export interface ExampleRun {
  /** The moves in order, numbered from 1. */
  readonly steps: readonly CoderStep[];
  /** Of each: the line of the routine it belongs to, from 1. */
  readonly lines: readonly number[];
  readonly moves: readonly Move[];
  /** Which of the moves may have a ball in the pusher: all but those that only look or go somewhere. */
  readonly carries: readonly boolean[];
}

export function exampleRun(project: Project, program: Program, { executed, lines }: Recording): ExampleRun {
  const moves = executed ?? [];
  const written = linesOf(program);
  const lineOf = (move: number): number => lines?.[move] ?? 0;
  return {
    moves,
    steps: moves.map((move, i) => stepFrom(move, i + 1, project.robot)),
    lines: moves.map((_, i) => lineOf(i) + 1),
    carries: moves.map((_, i) => !["scan", "goTo"].includes(written[lineOf(i)]?.kind ?? "")),
  };
}

/** Where the words stand in the rows of an example. */
export const EXAMPLE_WORDS_COLUMN = 2;

/** Rows for reading: number, line of the routine, words, wheel degrees, seconds; the header first. */
export function exampleRows({ steps, lines }: ExampleRun): readonly (readonly string[])[] {
  const withLine = (cells: readonly string[], line: string): readonly string[] => [
    ...cells.slice(0, 1),
    line,
    ...cells.slice(1),
  ];
  const heads = withLine([t.heads.move, ...stepHeads().slice(1)], t.heads.step);
  return [heads, ...steps.map((step, i) => withLine(stepRow(step), String(lines[i])))];
}

/** Where a ball in the pusher could be lost in this run. */
export function exampleCarryLines(project: Project, { moves, carries }: ExampleRun): readonly string[] {
  const limits = carryLimits(project, moves).filter(({ move }) => carries[move]);
  return carryLines(limits, moves, "move");
}
