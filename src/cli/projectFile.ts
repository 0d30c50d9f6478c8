import { readdirSync, readFileSync, statSync } from "node:fs";
import { basename, join } from "node:path";
import type { Issue, Parsed } from "../model/issue.ts";
import { type ProjectFile, parseProject, parseProjectFile } from "../model/parse.ts";
import type { Project } from "../model/project.ts";
import { nearestWord } from "../model/suggest.ts";
import { packageDirectory } from "./packageDirectory.ts";

/** Larger files are not even read: no project comes near it, and a wrong path should not fill the memory. */
const MAX_BYTES = 1_000_000;

/** Name of the project used when none is named. */
export const DEFAULT_FIELD = "usual-zone";

const fieldsDirectory = (): string => join(packageDirectory(), "fields");

/** Names of the projects that ship with the tool, the default one first. */
export function fieldNames(): readonly string[] {
  const names = readdirSync(fieldsDirectory())
    .filter((file) => file.endsWith(".json"))
    .map((file) => basename(file, ".json"))
    .sort();
  return [DEFAULT_FIELD, ...names.filter((name) => name !== DEFAULT_FIELD)];
}

/**
 * The project in a file, or the shipped one of that name; null gives the default one. A file wins over a name.
 */
export function loadProject(named: string | null): Parsed<Project> {
  const place = placeOf(named ?? DEFAULT_FIELD, named === null);
  return place.ok ? readProject(place.value) : place;
}

/** The same with the team's own routines. */
export function loadProjectFile(named: string | null): Parsed<ProjectFile> {
  const place = placeOf(named ?? DEFAULT_FIELD, named === null);
  if (!place.ok) return place;
  const text = readText(place.value);
  return text.ok ? parseProjectFile(text.value) : text;
}

/** Reads a project file; whatever is wrong, the reading included, comes back as issues. */
export function readProject(path: string): Parsed<Project> {
  const text = readText(path);
  return text.ok ? parseProject(text.value) : text;
}

function placeOf(name: string, isShipped: boolean): Parsed<string> {
  const names = fieldNames();
  const exists = statSync(name, { throwIfNoEntry: false }) !== undefined;
  if (exists && !isShipped) return { ok: true, value: name };
  if (names.includes(name)) return { ok: true, value: join(fieldsDirectory(), `${name}.json`) };
  const nearest = nearestWord(name, names);
  const remedy = nearest ? `Did you mean ${nearest}?` : "Check the path.";
  const expected = `a project file, or one of ${names.join(", ")}`;
  return bad(
    "no-such-project",
    `There is no file and no shipped project of this name. ${remedy}`,
    name,
    expected,
  );
}

/** The text of a small file a user named; whatever keeps it from being read comes back as an issue. */
export function readText(path: string): Parsed<string> {
  try {
    const { size } = statSync(path);
    if (size > MAX_BYTES) {
      const message = "The file is far too large; is it the right one?";
      return bad("too-large", message, `${size} bytes`, `at most ${MAX_BYTES} bytes`);
    }
    return { ok: true, value: new TextDecoder("utf-8", { fatal: true }).decode(readFileSync(path)) };
  } catch (fault) {
    if (fault instanceof TypeError) {
      return bad("not-utf8", "The file is no text in UTF-8; save it as such.", "other bytes", "UTF-8");
    }
    const isMissing = fault instanceof Error && "code" in fault && fault.code === "ENOENT";
    if (isMissing)
      return bad("unreadable", "There is no such file; check the path.", path, "a readable file");
    const reason = fault instanceof Error ? fault.message : String(fault);
    return bad("unreadable", "The file cannot be read; check the path.", reason, "a readable file");
  }
}

function bad(code: string, message: string, got: string, expected: string): Parsed<never> {
  const issue: Issue = { code, path: "", message, got, expected };
  return { ok: false, issues: [issue] };
}
