import { readdirSync, readFileSync } from "node:fs";
import type { Issue } from "../../src/model/issue.ts";
import { parseProject } from "../../src/model/parse.ts";
import type { Project } from "../../src/model/project.ts";

const fields = new URL("../../fields/", import.meta.url);

/** Names of the shipped project files. */
export const SHIPPED = readdirSync(fields).filter((name) => name.endsWith(".json"));

export function shippedText(name: string): string {
  return readFileSync(new URL(name, fields), "utf8");
}

/** A shipped project; fails the test with all issues when the file is not sound. */
export function shippedProject(name = "usual-zone.json"): Project {
  return soundProject(shippedText(name));
}

export function soundProject(text: string): Project {
  const parsed = parseProject(text);
  if (!parsed.ok) throw new Error(JSON.stringify(parsed.issues, null, 1));
  return parsed.value;
}

export function issuesOf(text: string): readonly Issue[] {
  const parsed = parseProject(text);
  return parsed.ok ? [] : parsed.issues;
}

/** Anything JSON can hold, for tests that change files. */
// biome-ignore lint/suspicious/noExplicitAny: a file under test may hold anything
type AnyJson = any;

/** Text of a shipped file after a change of its plain JSON. */
export function changedText(change: (file: AnyJson) => void, name = "usual-zone.json"): string {
  const file: AnyJson = JSON.parse(shippedText(name));
  change(file);
  return JSON.stringify(file);
}
