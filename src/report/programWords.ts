import { type Condition, type Program, type Question, type Step, straightened } from "../model/program.ts";
import { moveTexts } from "../texts/english/move.ts";
import { lengthText } from "../texts/lengths.ts";
import { plain } from "../texts/numbers.ts";
import { MM_DECIMALS, readNumber } from "./coder/numberText.ts";
import { degreesWords } from "./lengthWords.ts";
import { moveWords } from "./moveWords.ts";

/** One line of a program in plain words, without the lines inside it. */
export function lineWords(step: Step): string {
  switch (step.kind) {
    case "scan":
      return moveTexts.scan(step.angleRad < 0, degreesWords(Math.abs(step.angleRad)));
    case "fetch":
      return moveTexts.fetch(moveTexts.corners[step.corner]);
    case "goTo":
      return moveTexts.goTo(lengthText(step.xMm), lengthText(step.yMm), degreesWords(step.headingRad));
    case "repeat":
      return step.until === null
        ? moveTexts.repeat(step.atMost)
        : moveTexts.repeatUntil(step.atMost, questionWords(step.until));
    case "if":
      return moveTexts.when(questionWords(step.when));
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
  const t = moveTexts.asked;
  switch (ask.kind) {
    case "seen":
      return [t.seen, t.notSeen];
    case "holding":
      return [t.holding, t.notHolding];
    case "overWedge":
      return [t.overWedge, t.notOverWedge];
    case "bumped":
      return ask.side === "front" ? [t.bumpedFront, t.notBumpedFront] : [t.bumpedBack, t.notBumpedBack];
    case "nearer": {
      const distance = `${readNumber(ask.thanMm, MM_DECIMALS)} mm`;
      return [t.nearer(ask.sensor + 1, distance), t.notNearer(ask.sensor + 1, distance)];
    }
    case "shortOfTime":
      return [t.shortOfTime(plain(ask.belowS)), t.notShortOfTime(plain(ask.belowS))];
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
      if (step.no.length > 0) lines.push({ number: 0, depth, words: moveTexts.otherwise });
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
