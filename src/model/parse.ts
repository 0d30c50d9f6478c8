import { issueTexts as t } from "../texts/english/issue.ts";
import { checkProject } from "./check.ts";
import { checkRoutines } from "./checkRoutines.ts";
import { describe, Findings } from "./findings.ts";
import type { Parsed } from "./issue.ts";
import { type JsonValue, readJson } from "./json.ts";
import { parseBalls } from "./parseBalls.ts";
import { parseRecord } from "./parseRecord.ts";
import { MAX_NAME_LENGTH, parseRobot } from "./parseRobot.ts";
import { parseRoutines } from "./parseRoutines.ts";
import { parseRules, parseSettings, parseSpread } from "./parseRules.ts";
import { parseZone } from "./parseZone.ts";
import type { Project } from "./project.ts";
import { type Fields, fieldsOf } from "./reader.ts";
import { EMPTY_RECORD, type TeamRecord } from "./record.ts";
import type { Routine } from "./routine.ts";

/** The one version of the file format so far. */
export const FORMAT_VERSION = 1;

export const MAX_NOTE_LENGTH = 4000;

/**
 * Reads a project file. Never throws: whatever is wrong comes back as issues, all at once, each with its path, what was
 * found and what is allowed. Degrees become radians. A text that is no JSON, or of another format version, gives that issue alone.
 * The checks that need several fields at once (check.ts) are made for those parts that were read without an issue.
 */
export function parseProject(text: string): Parsed<Project> {
  const parsed = parseProjectFile(text);
  return parsed.ok ? { ok: true, value: parsed.value.project } : parsed;
}

/** What a project file holds: the project, the routines the team wrote itself, and what it wrote down. */
export interface ProjectFile {
  readonly project: Project;
  readonly routines: readonly Routine[];
  readonly record: TeamRecord;
}

/** As parseProject, with the own routines and the team's record. */
export function parseProjectFile(text: string): Parsed<ProjectFile> {
  const findings = new Findings();
  const { value, issues } = readJson(text);
  findings.addAll(issues);
  if (value === undefined) return { ok: false, issues: findings.all() };
  const fields = fieldsOf(value, "", findings);
  if (!(value instanceof Map) || !versionFits(value.get("formatVersion"), findings)) {
    return { ok: false, issues: findings.all() };
  }
  fields.number("formatVersion", { min: FORMAT_VERSION, max: FORMAT_VERSION, unit: "" });
  const file = parseParts(fields, findings, true);
  return findings.count === 0 ? { ok: true, value: file } : { ok: false, issues: findings.all() };
}

/** @param whole false for a project that a decision carries along: it has no record of its own */
function parseParts(fields: Fields, findings: Findings, whole: boolean): ProjectFile {
  const name = fields.text("name", { maxLength: MAX_NAME_LENGTH, fallback: t.unnamed.project });
  const note = fields.text("note", { maxLength: MAX_NOTE_LENGTH, fallback: "", lines: true });
  const read = <T>(parse: () => T) => readPart(findings, parse);
  const zone = read(() => parseZone(fields.child("zone", "required"), findings));
  const balls = read(() => parseBalls(fields, findings));
  const rules = read(() => parseRules(fields.child("rules", "optional"), findings));
  const robot = read(() => parseRobot(fields.child("robot", "required"), findings));
  const spread = parseSpread(fields.child("spread", "optional"));
  const settings = parseSettings(fields.child("settings", "optional"), findings);
  const routines = parseRoutines(fields, findings);
  const record = whole
    ? parseRecord(fields, findings, (inner) => parseCarried(inner, findings))
    : EMPTY_RECORD;
  fields.done();
  const project: Project = {
    name,
    note,
    zone: zone.value,
    balls: balls.value,
    rules: rules.value,
    robot: robot.value,
    spread,
    settings,
  };
  const sound = { zone: zone.sound, balls: balls.sound, rules: rules.sound, robot: robot.sound };
  const at = fields.path === "" ? "" : `${fields.path}.`;
  const unfit = robot.sound ? checkRoutines(routines, robot.value) : [];
  findings.addAll(
    [...checkProject(project, sound), ...unfit].map((issue) => ({ ...issue, path: at + issue.path })),
  );
  return { project, routines, record };
}

/** A project within a decision: like a file of its own. */
function parseCarried(fields: Fields, findings: Findings): ProjectFile {
  fields.number("formatVersion", { min: FORMAT_VERSION, max: FORMAT_VERSION, unit: "" });
  return parseParts(fields, findings, false);
}

interface Part<T> {
  readonly value: T;
  /** Read without an issue. */
  readonly sound: boolean;
}

function readPart<T>(findings: Findings, parse: () => T): Part<T> {
  const before = findings.count;
  const value = parse();
  return { value, sound: findings.count === before };
}

function versionFits(version: JsonValue | undefined, findings: Findings): boolean {
  if (version === FORMAT_VERSION) return true;
  const path = "formatVersion";
  const got = version === undefined ? t.nothing : describe(version);
  const expected = `${FORMAT_VERSION}`;
  if (version === undefined) {
    const message = t.noVersion(FORMAT_VERSION);
    findings.add({ code: "missing-key", path, message, got, expected });
  } else if (typeof version === "number" && version > FORMAT_VERSION) {
    findings.add({ code: "newer-format", path, message: t.newerVersion, got, expected });
  } else {
    const message = t.wrongVersion(FORMAT_VERSION);
    findings.add({ code: "unknown-format", path, message, got, expected });
  }
  return false;
}
