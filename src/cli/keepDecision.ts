import { writeFileSync } from "node:fs";
import type { Issue } from "../model/issue.ts";
import type { ProjectFile } from "../model/parse.ts";
import { MAX_DECISIONS, MAX_WORDS } from "../model/parseRecord.ts";
import type { Decision, TeamRecord } from "../model/record.ts";
import { serialiseProject } from "../model/serialise.ts";
import { newFileIssues } from "./newFile.ts";

/** What a command is asked to write down; the file is a new one, so that the one before is the way back. */
export interface Keep {
  /** null: nothing is kept. */
  readonly file: string | null;
  /** Why the team decided so; "" for not told. */
  readonly note: string;
}

const TITLE_LENGTH = 200;
const MOST_FIGURES = 40;

/** What is in the way of keeping, found out before anything is run. */
export function keepIssues({ file, note }: Keep, { record }: ProjectFile): readonly Issue[] {
  if (file === null) return [];
  const full: Issue = {
    ...{ code: "too-many", path: "--keep", message: "The notebook is full; take entries out on the page." },
    ...{ got: `${record.decisions.length} entries`, expected: `fewer than ${MAX_DECISIONS}` },
  };
  const long: Issue = {
    ...{ code: "too-long", path: "--note", message: "Say it in fewer words." },
    ...{ got: `${note.length} characters`, expected: `at most ${MAX_WORDS} characters` },
  };
  return [
    ...newFileIssues(file, "--keep"),
    ...(record.decisions.length < MAX_DECISIONS ? [] : [full]),
    ...(note.length <= MAX_WORDS ? [] : [long]),
  ];
}

/**
 * Writes a project file with one more entry in its decision notebook.
 *
 * @param change what else becomes of project and record
 */
export function writeKept(
  keep: Keep,
  { project, routines, record }: ProjectFile,
  decision: Omit<Decision, "date" | "reason">,
  change: { readonly project?: ProjectFile["project"]; readonly record?: Partial<TeamRecord> } = {},
): void {
  if (keep.file === null) return;
  const entry: Decision = {
    ...decision,
    title: decision.title.slice(0, TITLE_LENGTH),
    figures: decision.figures.slice(0, MOST_FIGURES),
    date: today(),
    reason: keep.note,
  };
  const kept = { ...record, ...change.record, decisions: [...record.decisions, entry] };
  writeFileSync(keep.file, serialiseProject(change.project ?? project, routines, kept));
}

/** By this computer's calendar, "2031-04-09". */
function today(now = new Date()): string {
  const two = (value: number): string => String(value).padStart(2, "0");
  return `${now.getFullYear()}-${two(now.getMonth() + 1)}-${two(now.getDate())}`;
}
