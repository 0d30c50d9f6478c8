import type { Issue, Parsed } from "../model/issue.ts";
import { parsePlacement } from "../model/parsePlacement.ts";
import { ballsOf, type Project } from "../model/project.ts";
import type { Routine } from "../model/routine.ts";
import { nearestWord } from "../model/suggest.ts";
import { numberTexts } from "../texts/english/number.ts";
import { tableTexts as t } from "../texts/english/table.ts";
import { plain } from "../texts/numbers.ts";
import { allWords, meantBy, tableWord } from "../texts/tableWords.ts";
import { LOSS_REASONS, type LossReason } from "../trial/outcome.ts";
import type { Attempt } from "./assess.ts";
import { promiseOf, successChance } from "./promise.ts";
import { readSheet, type SheetRow, sheetIssue, sheetNumber } from "./sheet.ts";
import type { Placement } from "./testPlacements.ts";

/** A practice run that was made on the real floor. */
export interface PracticeRun {
  readonly placement: Placement;
  /** How many balls came home. */
  readonly home: number;
  /** null: not taken. */
  readonly timeS: number | null;
  /** Why balls were lost; "" for none or not told. */
  readonly loss: LossReason | "";
  /** On which day, by a date or any name; "" for not told. */
  readonly day: string;
  readonly note: string;
}

const LONGEST_S = 3600;
const LONGEST_NOTE = 400;
const LONGEST_DAY = 40;

/** Headings of the table of runs: one pair of columns a ball, then what happened. */
export function runHeadings(balls: number): readonly string[] {
  const places = Array.from({ length: balls }, (_, i) => [t.ballX(i + 1), t.ballY(i + 1)]).flat();
  return [tableWord("run"), ...places, t.ballsHome, t.seconds, tableWord("loss"), tableWord("day"), t.note];
}

/** The table to fill in, or filled in; semicolons, so that a comma may be a decimal one. */
export function runTable(placements: readonly Placement[], runs: readonly PracticeRun[] = []): string {
  const balls = placements[0]?.length ?? runs[0]?.placement.length ?? 0;
  const done = runs.map(({ placement, home, timeS, loss, day, note }) => [
    ...coordinates(placement),
    String(home),
    timeS === null ? "" : numberCell(timeS),
    loss === "" ? "" : tableWord(loss),
    day,
    note,
  ]);
  const open = placements.map((placement) => [...coordinates(placement), "", "", "", "", ""]);
  const lines = [...done, ...open].map((cells, i) => [String(i + 1), ...cells]);
  return `${[runHeadings(balls), ...lines].map((cells) => cells.join(";")).join("\n")}\n`;
}

function coordinates(placement: Placement): readonly string[] {
  return placement.flatMap(({ xMm, yMm }) => [numberCell(xMm), numberCell(yMm)]);
}

/** As a spreadsheet of people who speak so takes it for a number. */
function numberCell(value: number): string {
  return String(value).replace(".", numberTexts.decimalMark);
}

/**
 * Reads a table of practice runs as `runTable` writes it, in any of the languages. Runs without a number of balls home have not been made and are left
 * out. Everything that is wrong comes back at once, by line.
 */
export function readRuns(text: string, project: Project): Parsed<readonly PracticeRun[]> {
  const { rows, decimalComma } = readSheet(text);
  const issues: Issue[] = [];
  const runs: PracticeRun[] = [];
  let has: Columns = { loss: false, day: false };
  for (const [n, row] of rows.entries()) {
    if (n === 0 && meantBy(row.cells[0] ?? "", ["run"])) {
      // Tables written before there were such columns do not have them.
      const named = (word: "loss" | "day") => row.cells.some((cell) => meantBy(cell, [word]));
      has = { loss: named("loss"), day: named("day") };
      continue;
    }
    const run = readRun(row, project, { decimalComma, has }, issues);
    if (run !== null) runs.push(run);
  }
  if (runs.length === 0 && issues.length === 0) {
    issues.push({ code: "no-runs", path: "", message: t.noRuns, got: t.nothing, expected: t.oneRun });
  }
  return issues.length > 0 ? { ok: false, issues } : { ok: true, value: runs };
}

/** Which of the columns that came later a table has. */
interface Columns {
  readonly loss: boolean;
  readonly day: boolean;
}

function readRun(
  row: SheetRow,
  project: Project,
  { decimalComma, has }: { readonly decimalComma: boolean; readonly has: Columns },
  issues: Issue[],
): PracticeRun | null {
  const balls = ballsOf(project).length;
  const at = 2 * balls;
  const [homeCell = "", timeCell = "", ...behind] = row.cells.slice(1 + at);
  const [lossCell = "", ...further] = has.loss ? behind : ["", ...behind];
  const [day = "", ...rest] = has.day ? further : ["", ...further];
  if (homeCell === "") return null;
  const before = issues.length;
  const number = (cell: string, message: string, min: number, max: number): number => {
    const value = sheetNumber(cell, decimalComma);
    if (value >= min && value <= max) return value;
    issues.push(sheetIssue(row, "bad-number", message, cell, t.number(plain(min), plain(max))));
    return min;
  };
  const numbers = row.cells.slice(1, 1 + at).map((cell) => number(cell, t.hereShouldBe.place, 0, 20_000));
  const placement = Array.from({ length: balls }, (_, i) => ({
    xMm: numbers[2 * i] ?? 0,
    yMm: numbers[2 * i + 1] ?? 0,
  }));
  const home = number(homeCell, t.hereShouldBe.home, 0, balls);
  if (!Number.isInteger(home)) {
    issues.push(sheetIssue(row, "not-whole", t.homeOrNot, homeCell, t.whole));
  }
  const timeS = timeCell === "" ? null : number(timeCell, t.hereShouldBe.seconds, 0, LONGEST_S);
  const loss = lossOf(row, lossCell, issues);
  if (issues.length > before) return null;
  const laid = parsePlacement(JSON.stringify(placement), project);
  if (!laid.ok) {
    for (const { code, path, message, got, expected } of laid.issues) {
      const told = path ? t.ofBall(ballOf(path), message) : message;
      issues.push(sheetIssue(row, code, told, got, expected));
    }
    return null;
  }
  const note = rest.join(" ").trim().slice(0, LONGEST_NOTE);
  return { placement, home, timeS, loss, day: day.slice(0, LONGEST_DAY), note };
}

function lossOf(row: SheetRow, cell: string, issues: Issue[]): LossReason | "" {
  const found = meantBy(cell, LOSS_REASONS);
  if (found !== undefined || cell === "") return found ?? "";
  const nearest = nearestWord(cell, allWords(LOSS_REASONS));
  const remedy = nearest ? t.didYouMean(nearest) : t.leaveEmpty;
  const expected = LOSS_REASONS.map(tableWord).join(", ");
  issues.push(sheetIssue(row, "unknown-loss", t.noSuchLoss(remedy), cell, expected));
  return "";
}

/** "[2].xMm" is of ball 3. */
function ballOf(path: string): string {
  const index = /^\[(\d+)\]/.exec(path)?.[1];
  return index === undefined ? "?" : String(Number(index) + 1);
}

/** Each run beside what the model promises for its placement. */
export function attemptsOf(
  project: Project,
  routine: Routine,
  runs: readonly PracticeRun[],
  options: { readonly runs: number; readonly seed: number },
): readonly Attempt[] {
  return runs.map(({ placement, home, day }) => ({
    promised: successChance(promiseOf(project, routine, placement, options)),
    succeeded: home === placement.length,
    day,
  }));
}
