import type { Issue, Parsed } from "../model/issue.ts";
import { nearestWord } from "../model/suggest.ts";
import { RAD_PER_DEG } from "../model/units.ts";
import { tableTexts as t } from "../texts/english/table.ts";
import { plain } from "../texts/numbers.ts";
import { allWords, meantBy, tableWord } from "../texts/tableWords.ts";
import type { PushRun, ReboundRun, RollRun } from "./ballTests.ts";
import type { StraightRun, TurnRun } from "./robotTests.ts";
import { readSheet, type SheetRow, sheetIssue, sheetNumber } from "./sheet.ts";
import type { SquareRun } from "./squares.ts";

/** All that was measured with tape and stopwatch. */
export interface Measurements {
  readonly straights: readonly StraightRun[];
  readonly turns: readonly TurnRun[];
  readonly squaresRight: readonly SquareRun[];
  readonly squaresLeft: readonly SquareRun[];
  readonly rolls: readonly RollRun[];
  readonly pushes: readonly PushRun[];
  readonly rebounds: readonly ReboundRun[];
}

interface Column {
  readonly name: keyof typeof t.columns;
  readonly min: number;
  readonly max: number;
  /** Left out: this; undefined: it must be given. */
  readonly fallback?: number;
}

const column = (name: Column["name"], min: number, max: number, fallback?: number): Column => ({
  name,
  min,
  max,
  ...(fallback === undefined ? {} : { fallback }),
});

/** The tests and the numbers of each, in the order of the columns behind the first. */
export const TEST_COLUMNS = {
  straight: [
    column("commandedMm", 50, 20_000),
    column("measuredMm", 10, 30_000),
    column("leftOfLineMm", -10_000, 10_000, 0),
  ],
  turn: [
    column("commandedDeg", -36_000, 36_000),
    column("measuredDeg", -36_000, 36_000),
    column("turns", 1, 200, 1),
  ],
  "square-right": [
    column("sideMm", 100, 20_000),
    column("aheadMm", -5000, 5000),
    column("leftOfStartMm", -5000, 5000),
  ],
  "square-left": [
    column("sideMm", 100, 20_000),
    column("aheadMm", -5000, 5000),
    column("leftOfStartMm", -5000, 5000),
  ],
  roll: [column("rolledMm", 10, 100_000), column("rolledS", 0.1, 600)],
  push: [column("pushMmPerS", 10, 5000), column("gapMm", 0, 100_000)],
  rebound: [column("dropMm", 50, 10_000), column("reboundMm", 0, 10_000)],
} as const satisfies Record<string, readonly Column[]>;

export type TestName = keyof typeof TEST_COLUMNS;
const NAMES = Object.keys(TEST_COLUMNS) as readonly TestName[];

/**
 * Reads the table of tests: one line a test, its name first, in any of the languages, then its numbers. A first line of headings is
 * skipped. Everything that is wrong comes back at once.
 */
export function readMeasurements(text: string): Parsed<Measurements> {
  const { rows, decimalComma } = readSheet(text);
  const issues: Issue[] = [];
  const found = new Map<TestName, number[][]>(NAMES.map((name) => [name, []]));
  for (const [n, row] of rows.entries()) {
    const word = row.cells[0] ?? "";
    if (n === 0 && meantBy(word, ["test"])) continue;
    const name = meantBy(word, NAMES);
    if (!name) {
      issues.push(unknownTest(row, word));
      continue;
    }
    const numbers = readNumbers(row, name, decimalComma, issues);
    if (numbers) found.get(name)?.push(numbers);
  }
  if (rows.length === 0 || (issues.length === 0 && [...found.values()].every((list) => list.length === 0))) {
    issues.push({ code: "no-tests", path: "", message: t.noTests, got: t.nothing, expected: nameList() });
  }
  return issues.length > 0 ? { ok: false, issues } : { ok: true, value: measurements(found) };
}

/** As they are written now. */
function nameList(): string {
  return NAMES.map(tableWord).join(", ");
}

function unknownTest(row: SheetRow, word: string): Issue {
  const nearest = nearestWord(word, allWords(NAMES));
  const remedy = nearest ? t.didYouMean(nearest) : t.beginsWithTest;
  return sheetIssue(row, "unknown-test", t.noSuchTest(remedy), word, nameList());
}

function readNumbers(row: SheetRow, name: TestName, decimalComma: boolean, issues: Issue[]): number[] | null {
  const before = issues.length;
  const columns: readonly Column[] = TEST_COLUMNS[name];
  const numbers = columns.map(({ name: what, min, max, fallback }, i) => {
    const cell = row.cells[i + 1] ?? "";
    if (cell === "" && fallback !== undefined) return fallback;
    const value = sheetNumber(cell, decimalComma);
    if (value >= min && value <= max) return value;
    const expected = t.cell(t.columns[what], t.number(plain(min), plain(max)));
    issues.push(sheetIssue(row, "bad-number", t.badCell(i + 2, tableWord(name)), cell, expected));
    return min;
  });
  const surplus = row.cells.slice(columns.length + 1).filter((cell) => cell !== "");
  if (surplus.length > 0) {
    const expected = columns.map(({ name: what }) => t.columns[what]).join(", ");
    issues.push(sheetIssue(row, "surplus-cell", t.surplus, surplus.join(" "), expected));
  }
  const [first = 0, second = 0] = numbers;
  if (issues.length === before && name === "turn" && !(first * second > 0)) {
    const got = t.and(plain(first), plain(second));
    issues.push(sheetIssue(row, "bad-turn", t.sameWay, got, t.sameSign));
  }
  if (issues.length === before && (name === "turn" || name === "straight") && isFarOff(first, second)) {
    issues.push(farOffIssue(row, name, first, second));
  }
  if (issues.length === before && name === "rebound" && second >= first) {
    issues.push(sheetIssue(row, "bad-rebound", t.tooHigh, `${plain(second)} mm`, t.lessThanMm(plain(first))));
  }
  return issues.length === before ? numbers : null;
}

/** By more than a project may hold as its mean drift, so that a slip of the pen is likelier than such a robot. */
function isFarOff(commanded: number, measured: number): boolean {
  return measured / commanded < 0.5 || measured / commanded > 1.5;
}

/** Whoever measures what a turn is short of, or a way in cm, would otherwise get a robot that hardly turns or drives. */
function farOffIssue(row: SheetRow, name: "turn" | "straight", commanded: number, measured: number): Issue {
  const isTurn = name === "turn";
  const [low, high] = commanded > 0 ? [0.5, 1.5] : [1.5, 0.5];
  const expected = t.fromTo(plain(low * commanded), plain(high * commanded), isTurn ? "°" : "mm");
  const message = isTurn ? t.leftOver(plain(measured), plain(commanded - measured)) : t.farOff;
  return sheetIssue(row, "far-off", message, `${plain(measured)} ${isTurn ? "°" : "mm"}`, expected);
}

function measurements(found: ReadonlyMap<TestName, readonly number[][]>): Measurements {
  const rows = <T>(name: TestName, make: (numbers: readonly number[]) => T): readonly T[] =>
    (found.get(name) ?? []).map(make);
  const square = ([sideMm = 0, aheadMm = 0, leftMm = 0]: readonly number[]): SquareRun => ({
    sideMm,
    aheadMm,
    leftMm,
  });
  return {
    straights: rows("straight", ([commandedMm = 0, measuredMm = 0, leftMm = 0]) => ({
      commandedMm,
      measuredMm,
      leftMm,
    })),
    turns: rows("turn", ([commanded = 0, measured = 0, turns = 1]) => ({
      commandedRad: commanded * RAD_PER_DEG,
      measuredRad: measured * RAD_PER_DEG,
      turns: Math.round(turns),
    })),
    squaresRight: rows("square-right", square),
    squaresLeft: rows("square-left", square),
    rolls: rows("roll", ([distanceMm = 0, timeS = 1]) => ({ distanceMm, timeS })),
    pushes: rows("push", ([speedMmPerS = 0, gapMm = 0]) => ({ speedMmPerS, gapMm })),
    rebounds: rows("rebound", ([dropMm = 1, reboundMm = 0]) => ({ dropMm, reboundMm })),
  };
}
