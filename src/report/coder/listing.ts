import type { Corner } from "../../model/zone.ts";
import { listingTexts as t } from "../../texts/english/listing.ts";
import { stepWordsTexts } from "../../texts/english/stepWords.ts";
import { fixed } from "../../texts/numbers.ts";
import { C, type Dialect, PYTHON } from "./dialects.ts";
import {
  FUNCTIONS,
  type FunctionName,
  functionMeaning,
  READINGS,
  type ReadingName,
  readingMeaning,
} from "./functions.ts";
import { DEG_DECIMALS, numberText, readNumber } from "./numberText.ts";
import { askedOf, questionCode } from "./questions.ts";
import { type CoderLine, type CoderStep, placedLines, type StepSheet } from "./steps.ts";
import { argumentText, namedArguments } from "./stepTable.ts";

export type ListingLanguage = "pseudo" | "python" | "c";

const INDENT = "    ";
/** Column at which remarks begin, where a call leaves room. */
const REMARK_COLUMN = 40;
const MEANING_LENGTH = 88;

/** The routine as a program, or as numbered sentences. */
export function listing(sheet: StepSheet, language: ListingLanguage): string {
  switch (language) {
    case "pseudo":
      return sentences(sheet);
    case "python":
      return program(sheet, PYTHON);
    case "c":
      return program(sheet, C);
    default:
      return language satisfies never;
  }
}

function heading({ project, routine, robot, start, durationS, steps }: StepSheet): readonly string[] {
  const count = placedLines(steps).length;
  const time = durationS === null ? t.asSensors : `${fixed(durationS, 1)} s`;
  return [`${routine.id}: ${routine.label}`, t.head(robot, project, count, time), start, t.sides];
}

/** Numbered, a block's own lines further in. */
function sentences(sheet: StepSheet): string {
  const width = String(placedLines(sheet.steps).length).length;
  const lines: string[] = [];
  const write = (steps: readonly CoderLine[], depth: number): void => {
    for (const line of steps) {
      const inward = "  ".repeat(depth);
      lines.push(`${String(line.number).padStart(width)}. ${inward}${line.words}`);
      if (line.kind === "repeat") write(line.steps, depth + 1);
      if (line.kind !== "if") continue;
      write(line.yes, depth + 1);
      if (line.no.length > 0) lines.push(`${" ".repeat(width + 2)}${inward}${stepWordsTexts.otherwise}`);
      write(line.no, depth + 1);
    }
  };
  write(sheet.steps, 0);
  return [...heading(sheet), "", ...lines].join("\n");
}

function program(sheet: StepSheet, dialect: Dialect): string {
  const { steps } = sheet;
  const { declaration } = dialect;
  return [
    ...heading(sheet).map(dialect.comment),
    dialect.comment(""),
    ...constants(sheet, dialect),
    "",
    dialect.comment(t.write),
    ...functionsIn(steps).flatMap((name) =>
      declaration(name, FUNCTIONS[name].params, "nothing", wrapped(functionMeaning(name))),
    ),
    ...readingsIn(steps).flatMap((name) =>
      declaration(name, READINGS[name].params, READINGS[name].gives, wrapped(readingMeaning(name))),
    ),
    "",
    dialect.begin,
    ...block(steps, dialect, INDENT),
    ...(dialect.close === null ? [] : [dialect.close]),
  ].join("\n");
}

/** What turns the listing's numbers into degrees of this robot's wheels, and the names of corners. */
function constants(sheet: StepSheet, { comment, constant }: Dialect): readonly string[] {
  const { gain, accelMmPerS2, steps, decides } = sheet;
  return [
    comment(t.wheelDegrees),
    comment(t.straight),
    comment(t.turn),
    comment(t.atRest(numberText(accelMmPerS2, 0))),
    comment(t.curve),
    ...(decides ? [comment(t.addUp)] : []),
    constant("WHEEL_DEG_PER_MM", numberText(gain.wheelDegPerMm, DEG_DECIMALS + 1)),
    constant("WHEEL_DEG_PER_TURN_DEG", numberText(gain.wheelDegPerTurnDeg, DEG_DECIMALS + 1)),
    constant("LEFT_FACTOR", numberText(gain.leftFactor, DEG_DECIMALS + 2)),
    constant("RIGHT_FACTOR", numberText(gain.rightFactor, DEG_DECIMALS + 2)),
    ...cornersIn(steps).map((corner, i) => constant(cornerName(corner), String(i + 1))),
  ];
}

function block(steps: readonly CoderLine[], dialect: Dialect, indent: string): readonly string[] {
  if (steps.length === 0) return dialect.nothing === null ? [] : [`${indent}${dialect.nothing}`];
  return steps.flatMap((line) => lineCode(line, dialect, indent));
}

function lineCode(line: CoderLine, dialect: Dialect, indent: string): readonly string[] {
  const inner = indent + INDENT;
  const close = dialect.close === null ? [] : [`${indent}${dialect.close}`];
  const remarked = (code: string, text: string): string =>
    `${`${indent}${code}`.padEnd(REMARK_COLUMN)}  ${dialect.remark(text)}`;
  switch (line.kind) {
    case "do":
      return [remarked(dialect.call(line.call.name, argumentsOf(line)), remark(line))];
    case "repeat": {
      const { number, until } = line;
      const leave = until === null ? [] : dialect.leave(questionCode(until, dialect), INDENT);
      return [
        remarked(dialect.rounds(`round_${number}`, line.atMost), String(number)),
        ...leave.map((code) => `${inner}${code}`),
        ...block(line.steps, dialect, inner),
        ...close,
      ];
    }
    case "if": {
      const { number, when, yes, no } = line;
      return [
        remarked(dialect.branch(questionCode(when, dialect)), String(number)),
        ...block(yes, dialect, inner),
        ...(no.length === 0 ? [] : [`${indent}${dialect.otherwise}`, ...block(no, dialect, inner)]),
        ...close,
      ];
    }
    default:
      return line satisfies never;
  }
}

function argumentsOf(step: CoderStep): readonly string[] {
  return [...namedArguments(step)].map(([param, value]) =>
    typeof value === "string" ? cornerName(value) : argumentText(param, value),
  );
}

/** What the code itself does not say: the step's number and its wheels. */
function remark({ number, wheels }: CoderStep): string {
  if (wheels === null) return String(number);
  return t.wheels(number, readNumber(wheels.leftDeg, 1), readNumber(wheels.rightDeg, 1));
}

/** Lines of at most so many characters, broken between words. */
function wrapped(text: string): readonly string[] {
  const lines: string[] = [];
  for (const word of text.split(" ")) {
    const last = lines.at(-1);
    if (last === undefined || last.length + 1 + word.length > MEANING_LENGTH) lines.push(word);
    else lines[lines.length - 1] = `${last} ${word}`;
  }
  return lines;
}

function cornerName(corner: Corner): string {
  return corner.toUpperCase().replace("-", "_");
}

function functionsIn(steps: readonly CoderLine[]): readonly FunctionName[] {
  const called = new Set(placedLines(steps).map(({ line }) => (line.kind === "do" ? line.call.name : null)));
  return (Object.keys(FUNCTIONS) as FunctionName[]).filter((name) => called.has(name));
}

function readingsIn(steps: readonly CoderLine[]): readonly ReadingName[] {
  const asked = new Set(
    placedLines(steps).flatMap(({ line }) => {
      if (line.kind === "if") return [askedOf(line.when).reading];
      return line.kind === "repeat" && line.until !== null ? [askedOf(line.until).reading] : [];
    }),
  );
  return (Object.keys(READINGS) as ReadingName[]).filter((name) => asked.has(name));
}

/** In the order in which they first come up. */
function cornersIn(steps: readonly CoderLine[]): readonly Corner[] {
  const named = placedLines(steps).flatMap(({ line }) =>
    line.kind === "do" ? line.call.args.filter((arg) => typeof arg === "string") : [],
  );
  return [...new Set(named)];
}
