import type { Corner } from "../../model/zone.ts";
import { stepWordsTexts as t } from "../../texts/english/stepWords.ts";
import { fixed } from "../../texts/numbers.ts";
import { FUNCTIONS, functionMeaning, type Param, READINGS, readingMeaning } from "./functions.ts";
import {
  DEG_DECIMALS,
  MM_DECIMALS,
  numberText,
  READABLE,
  readNumber,
  SECONDS_DECIMALS,
  SPEED_DECIMALS,
} from "./numberText.ts";
import { type Asked, askedOf, thresholdText } from "./questions.ts";
import { type CoderLine, type CoderStep, type PlacedLine, placedLines, type StepSheet } from "./steps.ts";
import { stepWords } from "./stepWords.ts";

/** Columns of the CSV file, units in their names; the call's numbers stand under the names of its params. */
const ARGUMENTS = ["mm", "extra_mm", "deg", "mm_per_s", "deg_per_s", "s"] as const;
/** More of them where ways keep their distance from a wall. */
const BESIDE_ARGUMENTS = ["by_sensor", "keep_mm"] as const;
/** The same for routines that decide: places, and the corner the wedge is taken to be in. */
const ALL_ARGUMENTS = [...ARGUMENTS, "x_mm", "y_mm", "corner"] as const;

const DECIMALS: Readonly<Record<Param, number>> = {
  mm: MM_DECIMALS,
  extra_mm: MM_DECIMALS,
  x_mm: MM_DECIMALS,
  y_mm: MM_DECIMALS,
  deg: DEG_DECIMALS,
  mm_per_s: SPEED_DECIMALS,
  deg_per_s: SPEED_DECIMALS,
  s: SECONDS_DECIMALS,
  corner: 0,
  sensor: 0,
  by_sensor: 0,
  keep_mm: MM_DECIMALS,
};

/** The text of one number of a call, rounded as its unit asks; of a corner, its name in the project file. */
export function argumentText(param: Param, value: number | Corner): string {
  return typeof value === "string" ? value : numberText(value, DECIMALS[param]);
}

/** A call's numbers with the names of their params. */
export function namedArguments({ call }: CoderStep): ReadonlyMap<Param, number | Corner> {
  const { params } = FUNCTIONS[call.name];
  return new Map(params.map((param, i) => [param, call.args[i] ?? 0]));
}

/** Spaces that a page does not swallow: how far in a line stands. */
const INWARD = "\u00A0\u00A0";

/** Rows for reading: number, words, wheel degrees, seconds; the header first. Lines of blocks stand further in. */
export function stepRows({ steps }: StepSheet): readonly (readonly string[])[] {
  return [stepHeads(), ...rowsOf(steps, 0)];
}

/** Where the words stand in such a row. */
export const WORDS_COLUMN = 1;

export function stepHeads(): readonly string[] {
  const { step, left, right } = t.heads;
  return [step, t.heads.do, left, right, "°/s", "s"];
}

function rowsOf(steps: readonly CoderLine[], depth: number): readonly (readonly string[])[] {
  const inward = INWARD.repeat(depth);
  return steps.flatMap((line) => {
    const { number, words } = line;
    if (line.kind === "do") return [stepRow(line, inward)];
    const head = [String(number), `${inward}${words}`, "", "", "", ""];
    if (line.kind === "repeat") return [head, ...rowsOf(line.steps, depth + 1)];
    const otherwise = line.no.length > 0 ? [["", `${inward}${t.otherwise}`, "", "", "", ""]] : [];
    return [head, ...rowsOf(line.yes, depth + 1), ...otherwise, ...rowsOf(line.no, depth + 1)];
  });
}

/** One step as a row under stepHeads, its numbers rounded for reading. */
export function stepRow({ number, call, wheels, durationS }: CoderStep, inward = ""): readonly string[] {
  return [
    String(number),
    `${inward}${stepWords(call, READABLE)}`,
    wheels === null ? "" : readNumber(wheels.leftDeg, 1),
    wheels === null ? "" : readNumber(wheels.rightDeg, 1),
    wheels === null ? "" : readNumber(wheels.wheelDegPerS, 0),
    durationS === null ? "" : fixed(durationS, 2),
  ];
}

/**
 * One line a step, decimal point, comma between. A routine that decides has more columns: the step whose block a line stands in and
 * on which answer, rounds at most, and what is asked (a reading, its sensor, less than what) with the answer wanted.
 */
export function stepCsv({ steps, decides }: StepSheet): string {
  const wheels = ["left_wheel_deg", "right_wheel_deg", "wheel_deg_per_s", "seconds"];
  const all = placedLines(steps);
  const columns: readonly Param[] = [
    ...(decides ? ALL_ARGUMENTS : ARGUMENTS),
    ...(all.some(({ line }) => line.kind === "do" && isBeside(line)) ? BESIDE_ARGUMENTS : []),
  ];
  const header = decides
    ? ["step", "inside", "on", "do", ...columns, ...QUESTION_COLUMNS, ...wheels]
    : ["step", "do", ...columns, ...wheels];
  const lines = all.map((placed) => (decides ? decidingCells(placed, columns) : plainCells(placed, columns)));
  return [header, ...lines].map((cells) => cells.join(",")).join("\n");
}

const QUESTION_COLUMNS = ["at_most", "ask", "sensor", "less_than", "wanted"] as const;

function isBeside({ call }: CoderStep): boolean {
  return call.name === "drive_beside" || call.name === "drive_to_wall_beside";
}

function plainCells({ line }: PlacedLine, columns: readonly Param[]): readonly string[] {
  return line.kind === "do"
    ? [String(line.number), line.call.name, ...argumentCells(line, columns), ...wheelCells(line)]
    : [];
}

function decidingCells({ line, inside, branch }: PlacedLine, columns: readonly Param[]): readonly string[] {
  const place = [String(line.number), inside === 0 ? "" : String(inside), branch];
  const none = columns.map(() => "");
  switch (line.kind) {
    case "do":
      return [
        ...[...place, line.call.name, ...argumentCells(line, columns)],
        ...[...QUESTION_COLUMNS.map(() => ""), ...wheelCells(line)],
      ];
    case "repeat": {
      const asked = line.until === null ? ["", "", "", ""] : askedCells(askedOf(line.until));
      return [...place, "repeat", ...none, String(line.atMost), ...asked, "", "", "", ""];
    }
    case "if":
      return [...place, "if", ...none, "", ...askedCells(askedOf(line.when)), "", "", "", ""];
    default:
      return line satisfies never;
  }
}

function askedCells(asked: Asked): readonly string[] {
  const { reading, sensor, wanted } = asked;
  return [reading, sensor === null ? "" : String(sensor), thresholdText(asked), wanted];
}

function argumentCells(step: CoderStep, columns: readonly Param[]): readonly string[] {
  const args = namedArguments(step);
  return columns.map((param) => (args.has(param) ? argumentText(param, args.get(param) ?? 0) : ""));
}

function wheelCells({ wheels, durationS }: CoderStep): readonly string[] {
  return [
    ...(wheels === null
      ? ["", "", ""]
      : [
          numberText(wheels.leftDeg, DEG_DECIMALS),
          numberText(wheels.rightDeg, DEG_DECIMALS),
          numberText(wheels.wheelDegPerS, SPEED_DECIMALS),
        ]),
    durationS === null ? "" : numberText(durationS, SECONDS_DECIMALS),
  ];
}

/** The sheet as plain JSON; numbers in full, blocks inside one another. Only what is there to be read is in the language spoken now. */
export function stepJson(sheet: StepSheet): object {
  return {
    ...sheet,
    functions: withMeanings(FUNCTIONS, functionMeaning),
    ...(sheet.decides ? { readings: withMeanings(READINGS, readingMeaning) } : {}),
    steps: sheet.steps.map(lineJson),
  };
}

function withMeanings<N extends string>(
  known: Readonly<Record<N, object>>,
  meaningOf: (name: N) => string,
): object {
  const names = Object.keys(known) as N[];
  return Object.fromEntries(names.map((name) => [name, { ...known[name], meaning: meaningOf(name) }]));
}

function lineJson(line: CoderLine): object {
  const { number, words } = line;
  switch (line.kind) {
    case "do": {
      const { call, wheels, durationS } = line;
      return {
        number,
        words,
        call: call.name,
        args: Object.fromEntries(namedArguments(line)),
        wheels,
        durationS,
      };
    }
    case "repeat": {
      const { atMost, until } = line;
      const asked = until === null ? null : askedOf(until);
      return { number, words, repeat: { atMost, until: asked }, steps: line.steps.map(lineJson) };
    }
    case "if":
      return {
        ...{ number, words, if: askedOf(line.when) },
        ...{ yes: line.yes.map(lineJson), no: line.no.map(lineJson) },
      };
    default:
      return line satisfies never;
  }
}
