import type { Project } from "../model/project.ts";
import { projectForFile } from "../model/serialise.ts";

/** A field in which two projects differ, as their files hold it; "–" where one of them has no such field. */
export interface ProjectDifference {
  /** As in the file: `robot.shape.plateWidthMm`. */
  readonly path: string;
  readonly from: string;
  readonly to: string;
}

/** What was changed from one project to another; names and notes do not count. In the order of the newer file, then of the older. */
export function projectDifferences(older: Project, newer: Project): readonly ProjectDifference[] {
  const [before, after] = [fieldsOf(older), fieldsOf(newer)];
  return [...new Set([...after.keys(), ...before.keys()])].flatMap((path) => {
    const [from, to] = [before.get(path) ?? NONE, after.get(path) ?? NONE];
    return from === to ? [] : [{ path, from, to }];
  });
}

const NONE = "–";

/** Every number and word of a project's file by its path. */
function fieldsOf(project: Project): ReadonlyMap<string, string> {
  const { name: _, note: __, ...rest } = projectForFile(project);
  const found = new Map<string, string>();
  const walk = (value: unknown, path: string): void => {
    if (Array.isArray(value)) for (const [i, item] of value.entries()) walk(item, `${path}[${i}]`);
    else if (typeof value === "object" && value !== null)
      for (const [key, item] of Object.entries(value)) walk(item, path === "" ? key : `${path}.${key}`);
    else found.set(path, String(value));
  };
  walk(rest, "");
  return found;
}

/** "robot.shape.plateWidthMm: 180 → 200" */
export function differenceText({ path, from, to }: ProjectDifference): string {
  return `${path}: ${from} → ${to}`;
}
