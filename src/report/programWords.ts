import { type Condition, type Program, type Question, type Step, straightened } from "../model/program.ts";
import { MM_DECIMALS, numberText } from "./coder/numberText.ts";
import { degreesWords, millimetresWords } from "./lengthWords.ts";
import { moveWords } from "./moveWords.ts";

export const CORNER_WORDS = {
  "lower-left": "lower left",
  "lower-right": "lower right",
  "upper-left": "upper left",
  "upper-right": "upper right",
} as const;

/** One line of a program in plain words, without the lines inside it. */
export function lineWords(step: Step): string {
  switch (step.kind) {
    case "scan":
      return `look around: turn ${step.angleRad < 0 ? "right" : "left"} ${degreesWords(Math.abs(step.angleRad))} and note every ball`;
    case "fetch":
      return `fetch the noted ball that takes least time and push it home (corner ${CORNER_WORDS[step.corner]})`;
    case "goTo":
      return `drive to x ${millimetresWords(step.xMm)}, y ${millimetresWords(step.yMm)}, facing ${degreesWords(step.headingRad)}`;
    case "repeat":
      return `repeat, at most ${step.atMost} times${step.until === null ? "" : `, until ${questionWords(step.until)}`}`;
    case "if":
      return `if ${questionWords(step.when)}`;
    default:
      return moveWords(step);
  }
}

/** A question as it stands after "if" or "until". */
export function questionWords({ ask, not }: Question): string {
  const [yes, no] = answersOf(ask);
  return not ? no : yes;
}

function answersOf(ask: Condition): readonly [string, string] {
  switch (ask.kind) {
    case "seen":
      return ["a ball is noted", "no ball is noted"];
    case "holding":
      return ["a ball is in the pusher", "no ball is in the pusher"];
    case "overWedge":
      return ["the floor below is the wedge", "the floor below is plain"];
    case "bumped":
      return [`the ${ask.side} has run into something`, `the ${ask.side} has run into nothing`];
    case "nearer": {
      const distance = `${numberText(ask.thanMm, MM_DECIMALS)} mm`;
      return [
        `distance sensor ${ask.sensor + 1} reads less than ${distance}`,
        `distance sensor ${ask.sensor + 1} reads ${distance} or more`,
      ];
    }
    case "shortOfTime":
      return [`less than ${ask.belowS} s are left`, `${ask.belowS} s or more are left`];
    default:
      return ask satisfies never;
  }
}

export interface ProgramLine {
  /** From 1, as losses name it; 0 for a line that only says "otherwise". */
  readonly number: number;
  /** Blocks it is in. */
  readonly depth: number;
  readonly words: string;
}

/** A program as numbered, indented lines. */
export function programLines(program: Program): readonly ProgramLine[] {
  const lines: ProgramLine[] = [];
  let number = 0;
  const write = (steps: readonly Step[], depth: number): void => {
    for (const step of steps.map(straightened)) {
      number++;
      lines.push({ number, depth, words: lineWords(step) });
      if (step.kind === "repeat") write(step.steps, depth + 1);
      if (step.kind !== "if") continue;
      write(step.yes, depth + 1);
      if (step.no.length > 0) lines.push({ number: 0, depth, words: "otherwise" });
      write(step.no, depth + 1);
    }
  };
  write(program, 0);
  return lines;
}

/** The same as text, two spaces for each block. */
export function programText(program: Program): string {
  const lines = programLines(program);
  const width = String(lines.length).length;
  return lines
    .map(({ number, depth, words }) => {
      const label = number === 0 ? "" : String(number);
      return `${label.padStart(width)}  ${"  ".repeat(depth)}${words}`;
    })
    .join("\n");
}
