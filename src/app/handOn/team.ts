import type { Decision, PracticeEntry } from "../../model/record.ts";
import { projectForFile } from "../../model/serialise.ts";
import { decisionForFile, entryForFile } from "../../model/serialiseRecord.ts";
import type { Draft } from "../project/draft.svelte.ts";
import { type Form, valueAt, withValue } from "../project/form.ts";

/**
 * Reads and writes the team's record, a part of the form: kept at once, and undone with Ctrl+Z like all else. Whatever else in the
 * form is not sound, what is written here stays in it.
 */

export function measurementsOf(draft: Draft): string {
  return String(draft.at("record.measurements") ?? "");
}

export function writeMeasurements(draft: Draft, text: string): void {
  // Cells pasted from a spreadsheet are parted by tabs, which a file's text cannot hold.
  const plain = text.replaceAll("\r\n", "\n").replaceAll("\r", "\n").replaceAll("\t", ";");
  draft.edit("record.measurements", plain === "" ? undefined : plain, "record.measurements");
}

/** The practice log as it stands in the form. */
export function practiceOf(draft: Draft): readonly PracticeEntry[] {
  const listed = draft.at("record.practice");
  return (Array.isArray(listed) ? (listed as readonly Partial<PracticeEntry>[]) : []).map((entry) => ({
    routine: entry.routine ?? "",
    placement: entry.placement ?? [],
    hard: entry.hard ?? false,
    home: entry.home ?? null,
    timeS: typeof entry.timeS === "number" ? entry.timeS : null,
    loss: entry.loss ?? "",
    day: entry.day ?? "",
    note: entry.note ?? "",
  }));
}

export function addPractice(draft: Draft, entries: readonly PracticeEntry[]): void {
  draft.change((form) => appended(form, "record.practice", entries.map(entryForFile)));
}

/** Writes one thing about a run; undefined takes it out. */
export function editEntry(
  draft: Draft,
  index: number,
  key: "timeS" | "loss" | "day" | "note",
  value: number | string | undefined,
): void {
  const path = `record.practice[${index}].${key}`;
  draft.edit(path, value === "" ? undefined : value, path);
}

/** Writes down how many came home; a run that gets it without a day was mostly made today. One step of undo. */
export function editHome(draft: Draft, index: number, home: number | undefined): void {
  const path = `record.practice[${index}]`;
  draft.change((form) => {
    const next = withValue(form, `${path}.home`, home);
    const isTold = home === undefined || valueAt(form, `${path}.day`) !== undefined;
    return isTold ? next : withValue(next, `${path}.day`, today());
  });
}

/** Takes out what was proposed for a routine and not run. */
export function dropOpen(draft: Draft, routineId: string): void {
  const kept = practiceOf(draft).filter(({ routine, home }) => routine !== routineId || home !== null);
  draft.change((form) => withList(form, "record.practice", kept.map(entryForFile)));
}

export function addDecision(draft: Draft, decision: Decision): void {
  const entry = decisionForFile(decision, (project, routines): object => projectForFile(project, routines));
  draft.change((form) => appended(form, "record.decisions", [entry]));
}

export function dropDecision(draft: Draft, index: number): void {
  const listed = listAt(draft.form, "record.decisions");
  draft.change((form) =>
    withList(
      form,
      "record.decisions",
      listed.filter((_, i) => i !== index),
    ),
  );
}

function listAt(form: Form, path: string): readonly unknown[] {
  const list = valueAt(form, path);
  return Array.isArray(list) ? list : [];
}

function appended(form: Form, path: string, entries: readonly unknown[]): Form {
  return withList(form, path, [...listAt(form, path), ...entries]);
}

function withList(form: Form, path: string, list: readonly unknown[]): Form {
  return withValue(form, path, list.length === 0 ? undefined : list);
}

/** Today by this computer's calendar, "2031-04-09". */
export function today(now = new Date()): string {
  const two = (value: number): string => String(value).padStart(2, "0");
  return `${now.getFullYear()}-${two(now.getMonth() + 1)}-${two(now.getDate())}`;
}
