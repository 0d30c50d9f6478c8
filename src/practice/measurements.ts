import type { Issue, Parsed } from "../model/issue.ts";
import { nearestWord } from "../model/suggest.ts";
import { RAD_PER_DEG } from "../model/units.ts";
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
  readonly name: string;
  readonly min: number;
  readonly max: number;
  /** Left out: this; undefined: it must be given. */
  readonly fallback?: number;
}

const column = (name: string, min: number, max: number, fallback?: number): Column => ({
  name,
  min,
  max,
  ...(fallback === undefined ? {} : { fallback }),
});

/** The tests and the numbers of each, in the order of the columns behind the first; also what the help prints. */
export const TEST_COLUMNS = {
  straight: [
    column("commanded mm", 50, 20_000),
    column("measured mm", 10, 30_000),
    column("mm to the left of the line", -10_000, 10_000, 0),
  ],
  turn: [
    column("commanded ° in all, left positive", -36_000, 36_000),
    column("measured ° in all", -36_000, 36_000),
    column("how many turns in a row", 1, 200, 1),
  ],
  "square-right": [
    column("side mm", 100, 20_000),
    column("mm ahead of the start", -5000, 5000),
    column("mm to the left of the start", -5000, 5000),
  ],
  "square-left": [
    column("side mm", 100, 20_000),
    column("mm ahead of the start", -5000, 5000),
    column("mm to the left of the start", -5000, 5000),
  ],
  roll: [column("mm until it stopped", 10, 100_000), column("seconds until it stopped", 0.1, 600)],
  push: [column("speed mm/s", 10, 5000), column("gap mm between pusher and ball", 0, 100_000)],
  rebound: [column("drop mm", 50, 10_000), column("rebound mm", 0, 10_000)],
} as const satisfies Record<string, readonly Column[]>;

export type TestName = keyof typeof TEST_COLUMNS;
const NAMES = Object.keys(TEST_COLUMNS) as readonly TestName[];

/**
 * Reads the table of tests: one line a test, its name first, then its numbers. A first line of headings is skipped. Everything that is
 * wrong comes back at once.
 */
export function readMeasurements(text: string): Parsed<Measurements> {
  const { rows, decimalComma } = readSheet(text);
  const issues: Issue[] = [];
  const found = new Map<TestName, number[][]>(NAMES.map((name) => [name, []]));
  for (const [n, row] of rows.entries()) {
    const word = (row.cells[0] ?? "").toLowerCase();
    if (n === 0 && word === "test") continue;
    const name = NAMES.find((each) => each === word);
    if (!name) {
      issues.push(unknownTest(row, word));
      continue;
    }
    const numbers = readNumbers(row, name, decimalComma, issues);
    if (numbers) found.get(name)?.push(numbers);
  }
  if (rows.length === 0 || (issues.length === 0 && [...found.values()].every((list) => list.length === 0))) {
    const message = "There is no test in this table; each line begins with the name of one.";
    issues.push({ code: "no-tests", path: "", message, got: "nothing", expected: NAMES.join(", ") });
  }
  return issues.length > 0 ? { ok: false, issues } : { ok: true, value: measurements(found) };
}

function unknownTest(row: SheetRow, word: string): Issue {
  const nearest = nearestWord(word, NAMES);
  const remedy = nearest ? `Did you mean ${nearest}?` : "Each line begins with the name of a test.";
  return sheetIssue(row, "unknown-test", `There is no such test. ${remedy}`, word, NAMES.join(", "));
}

function readNumbers(row: SheetRow, name: TestName, decimalComma: boolean, issues: Issue[]): number[] | null {
  const before = issues.length;
  const columns: readonly Column[] = TEST_COLUMNS[name];
  const numbers = columns.map(({ name: what, min, max, fallback }, i) => {
    const cell = row.cells[i + 1] ?? "";
    if (cell === "" && fallback !== undefined) return fallback;
    const value = sheetNumber(cell, decimalComma);
    if (value >= min && value <= max) return value;
    const expected = `${what}: a number from ${min} to ${max}`;
    issues.push(
      sheetIssue(row, "bad-number", `Column ${i + 2} of a ${name} test must hold a number.`, cell, expected),
    );
    return min;
  });
  const surplus = row.cells.slice(columns.length + 1).filter((cell) => cell !== "");
  if (surplus.length > 0) {
    const expected = columns.map(({ name: what }) => what).join(", ");
    issues.push(
      sheetIssue(
        row,
        "surplus-cell",
        "There are more columns than the test has.",
        surplus.join(" "),
        expected,
      ),
    );
  }
  const [first = 0, second = 0] = numbers;
  if (issues.length === before && name === "turn" && !(first * second > 0)) {
    const message = "Commanded and measured turn must go the same way and not be 0.";
    issues.push(
      sheetIssue(row, "bad-turn", message, `${first} and ${second}`, "two angles of the same sign"),
    );
  }
  if (issues.length === before && name === "rebound" && second >= first) {
    const message = "A ball cannot come back as high as it was dropped from.";
    issues.push(sheetIssue(row, "bad-rebound", message, `${second} mm`, `less than ${first} mm`));
  }
  return issues.length === before ? numbers : null;
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
