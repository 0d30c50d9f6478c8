import { issueTexts as t } from "../texts/english/issue.ts";
import { type Findings, noun } from "./findings.ts";
import type { JsonValue } from "./json.ts";
import { COORDINATE_MM } from "./limits.ts";
import { type Fields, fieldsOf } from "./reader.ts";
import {
  DECISION_KINDS,
  type Decision,
  type DecisionInputs,
  EMPTY_RECORD,
  type PracticeEntry,
  type TeamRecord,
} from "./record.ts";

/** Longest table of measurements: some thousand tests. */
export const MAX_TABLE_LENGTH = 60_000;
export const MAX_PRACTICE = 1000;
export const MAX_DECISIONS = 60;
export const MAX_WORDS = 2000;
const MAX_FIGURES = 40;
const MAX_PLACES = 40;
const MAX_ID_LENGTH = 300;
const MAX_TITLE_LENGTH = 200;
const MAX_HOME = { min: 0, max: MAX_PLACES, unit: "", whole: true } as const;
const TIME_S = { min: 0, max: 3600, unit: "s" } as const;
const SEED = { min: 0, max: Number.MAX_SAFE_INTEGER, unit: "", whole: true } as const;
const TRIALS = { min: 0, max: 1_000_000, unit: "", whole: true } as const;

/** Reads project and routines that a decision carries along. */
export type ReadInputs = (fields: Fields) => Pick<DecisionInputs, "project" | "routines">;

/** What a team wrote down, under the key "record" of a project file; all of it may be left out. */
export function parseRecord(fields: Fields, findings: Findings, readInputs: ReadInputs): TeamRecord {
  if (!fields.has("record")) return EMPTY_RECORD;
  const record = fields.child("record", "optional");
  const list = <T>(key: string, max: number, read: (value: JsonValue, path: string) => T): readonly T[] =>
    record.list(key, { max }).map((value, i) => read(value, `${record.pathOf(key)}[${i}]`));
  const measurements = longText(record, "measurements", MAX_TABLE_LENGTH);
  const practice = list("practice", MAX_PRACTICE, (value, path) => parseEntry(value, path, findings));
  const decisions = list("decisions", MAX_DECISIONS, (value, path) =>
    parseDecision(value, path, findings, readInputs),
  );
  record.done();
  return { measurements, practice, decisions };
}

/** Tabs and carriage returns come with what is pasted from a spreadsheet; a file keeps them apart by other means. */
function longText(fields: Fields, key: string, maxLength: number): string {
  return fields.text(key, { maxLength, fallback: "", lines: true });
}

function parseEntry(value: JsonValue, path: string, findings: Findings): PracticeEntry {
  const fields = fieldsOf(value, path, findings);
  const entry: PracticeEntry = {
    routine: fields.text("routine", { maxLength: MAX_ID_LENGTH }),
    placement: fields.list("placement", { max: MAX_PLACES, required: true }).map((place, i) => {
      const at = fieldsOf(place, `${fields.pathOf("placement")}[${i}]`, findings);
      const point = { xMm: at.number("xMm", COORDINATE_MM), yMm: at.number("yMm", COORDINATE_MM) };
      at.done();
      return point;
    }),
    hard: fields.flag("hard", false),
    home: fields.has("home") ? fields.number("home", MAX_HOME) : null,
    timeS: fields.has("timeS") ? fields.number("timeS", TIME_S) : null,
    loss: fields.text("loss", { maxLength: 40, fallback: "" }),
    day: fields.text("day", { maxLength: 40, fallback: "" }),
    note: fields.text("note", { maxLength: MAX_WORDS, fallback: "" }),
  };
  fields.done();
  return entry;
}

function parseDecision(value: JsonValue, path: string, findings: Findings, readInputs: ReadInputs): Decision {
  const fields = fieldsOf(value, path, findings);
  const decision: Decision = {
    date: dateOf(fields, findings),
    kind: fields.choice("kind", DECISION_KINDS) ?? "comparison",
    title: fields.text("title", { maxLength: MAX_TITLE_LENGTH }),
    figures: fields
      .list("figures", { max: MAX_FIGURES })
      .map((figure, i) => sentence(figure, `${fields.pathOf("figures")}[${i}]`, findings)),
    reason: fields.text("reason", { maxLength: MAX_WORDS, fallback: "", lines: true }),
    inputs: parseInputs(fields.child("inputs", "required"), readInputs),
  };
  fields.done();
  return decision;
}

function parseInputs(fields: Fields, readInputs: ReadInputs): DecisionInputs {
  const own = readInputs(fields.child("project", "required"));
  const other = fields.has("otherProject") ? readInputs(fields.child("otherProject", "required")) : null;
  const inputs: DecisionInputs = {
    project: own.project,
    routines: [...own.routines, ...(other?.routines ?? [])],
    ...(other === null ? {} : { otherProject: other.project }),
    ...(fields.has("change") ? { change: fields.text("change", { maxLength: MAX_ID_LENGTH }) } : {}),
    measurements: longText(fields, "measurements", MAX_TABLE_LENGTH),
    seed: fields.number("seed", SEED),
    trials: fields.number("trials", TRIALS),
  };
  fields.done();
  return inputs;
}

function sentence(value: JsonValue, path: string, findings: Findings): string {
  if (typeof value === "string" && value.length <= MAX_WORDS) return value;
  const [got, expected] = [noun(value), t.aText(MAX_WORDS)];
  findings.add({ code: "wrong-type", path, message: t.sentence, got, expected });
  return "";
}

function dateOf(fields: Fields, findings: Findings): string {
  const text = fields.text("date", { maxLength: 10 });
  if (/^\d{4}-(0[1-9]|1[0-2])-(0[1-9]|[12]\d|3[01])$/.test(text) || text === "") return text;
  const [path, expected] = [fields.pathOf("date"), t.aDate("2031-04-09")];
  findings.add({ code: "bad-date", path, message: t.badDate, got: `"${text}"`, expected });
  return text;
}
