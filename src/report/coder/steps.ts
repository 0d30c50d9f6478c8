import { linesOf, type Program, type Question, type Step, straightened } from "../../model/program.ts";
import type { Project } from "../../model/project.ts";
import type { Robot } from "../../model/robot.ts";
import type { Routine } from "../../model/routine.ts";
import { moveDurationS } from "../../motion/duration.ts";
import { stepWordsTexts as t } from "../../texts/english/stepWords.ts";
import { questionWords } from "../programWords.ts";
import { type Call, callOf, type PlainStep } from "./calls.ts";
import { startWords } from "./startWords.ts";
import { stepWords } from "./stepWords.ts";
import { type WheelGain, type WheelTurns, wheelGain, wheelTurns } from "./wheels.ts";

/** One step for the coder. */
export interface CoderStep {
  readonly kind: "do";
  /** From 1, as on the drawing and as losses name it. */
  readonly number: number;
  /** In neutral words, exact: "drive forward 36 mm at 200 mm/s". */
  readonly words: string;
  readonly call: Call;
  /** null where no wheel turns, or where it depends on what was seen. */
  readonly wheels: WheelTurns | null;
  /** null where it depends on what was seen. */
  readonly durationS: number | null;
}

/** Steps to be done again and again; the question is asked before each round. */
export interface CoderRounds {
  readonly kind: "repeat";
  readonly number: number;
  readonly words: string;
  readonly atMost: number;
  readonly until: Question | null;
  readonly steps: readonly CoderLine[];
}

export interface CoderBranch {
  readonly kind: "if";
  readonly number: number;
  readonly words: string;
  readonly when: Question;
  readonly yes: readonly CoderLine[];
  readonly no: readonly CoderLine[];
}

export type CoderLine = CoderStep | CoderRounds | CoderBranch;

export interface StepSheet {
  readonly project: string;
  readonly routine: { readonly id: string; readonly label: string };
  readonly robot: string;
  /** Where and how the robot stands when the routine begins. */
  readonly start: string;
  readonly gain: WheelGain;
  /** Of each wheel, at the start and end of every move. */
  readonly accelMmPerS2: number;
  readonly steps: readonly CoderLine[];
  /** Whether the routine asks sensors or goes by what it has seen. */
  readonly decides: boolean;
  /** null where the routine decides as it goes. */
  readonly durationS: number | null;
}

/** A routine as numbered steps for the person who codes the robot, branches and sensors included. */
export function stepSheet(project: Project, routine: Routine): StepSheet {
  const { robot } = project;
  const program: Program = routine.program ?? routine.moves;
  const steps = linesFrom(program, 1, robot);
  const decides = routine.program !== undefined;
  return {
    project: project.name,
    routine: { id: routine.id, label: routine.label },
    robot: robot.name,
    start: startWords(project),
    gain: wheelGain(robot),
    accelMmPerS2: robot.drive.accelMmPerS2,
    steps,
    decides,
    durationS: decides
      ? null
      : steps.reduce((sum, step) => sum + (step.kind === "do" ? (step.durationS ?? 0) : 0), 0),
  };
}

function linesFrom(program: Program, first: number, robot: Robot): readonly CoderLine[] {
  let number = first;
  return program.map(straightened).map((step) => {
    const line = lineFrom(step, number, robot);
    number += linesOf([step]).length;
    return line;
  });
}

function lineFrom(step: Step, number: number, robot: Robot): CoderLine {
  switch (step.kind) {
    case "repeat": {
      const { atMost, until } = step;
      const words = until === null ? t.repeat(atMost) : t.repeatUntil(atMost, questionWords(until));
      return {
        kind: "repeat",
        number,
        words,
        atMost,
        until,
        steps: linesFrom(step.steps, number + 1, robot),
      };
    }
    case "if": {
      const { when } = step;
      const words = t.when(questionWords(when));
      const yes = linesFrom(step.yes, number + 1, robot);
      const no = linesFrom(step.no, number + 1 + linesOf(step.yes).length, robot);
      return { kind: "if", number, words, when, yes, no };
    }
    default:
      return stepFrom(step, number, robot);
  }
}

/** A line that is no block. */
export function stepFrom(step: PlainStep, number: number, robot: Robot): CoderStep {
  const call = callOf(robot.drive, step);
  const words = stepWords(call);
  if (step.kind === "fetch" || step.kind === "goTo")
    return { kind: "do", number, words, call, wheels: null, durationS: null };
  const { drive } = robot;
  const move =
    step.kind === "scan"
      ? ({ kind: "turn", angleRad: step.angleRad, rateRadPerS: step.rateRadPerS } as const)
      : step;
  const [wheels, durationS] = [wheelTurns(robot, move), moveDurationS(drive, move)];
  return { kind: "do", number, words, call, wheels, durationS };
}

/** A line, the block it stands in (0: none) and on which side of a branch. */
export interface PlacedLine {
  readonly line: CoderLine;
  readonly inside: number;
  readonly branch: "" | "yes" | "no";
  readonly depth: number;
}

/** All lines in the order in which they are written down. */
export function placedLines(
  steps: readonly CoderLine[],
  inside = 0,
  branch: PlacedLine["branch"] = "",
  depth = 0,
): readonly PlacedLine[] {
  return steps.flatMap((line) => [
    { line, inside, branch, depth },
    ...(line.kind === "repeat" ? placedLines(line.steps, line.number, "", depth + 1) : []),
    ...(line.kind === "if" ? placedLines(line.yes, line.number, "yes", depth + 1) : []),
    ...(line.kind === "if" ? placedLines(line.no, line.number, "no", depth + 1) : []),
  ]);
}
