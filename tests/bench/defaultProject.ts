import text from "../../fields/usual-zone.json?raw";
import { parseProject } from "../../src/model/parse.ts";
import type { Project } from "../../src/model/project.ts";

/** The project the figures are about: drift, spread, spin and wedge on. */
export function defaultProject(): Project {
  const parsed = parseProject(text);
  if (!parsed.ok) throw new Error(JSON.stringify(parsed.issues));
  return parsed.value;
}
