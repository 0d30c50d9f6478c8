import { existsSync } from "node:fs";
import type { Issue } from "../model/issue.ts";

/** What is wrong with a file to write: something is there already, and nobody's work is written over. Empty where nothing is. */
export function newFileIssues(path: string, flag: "--out" | "--keep" = "--out"): readonly Issue[] {
  if (!existsSync(path)) return [];
  const message = "There is a file of this name already; it is left as it is. Choose another name.";
  return [{ code: "file-exists", path: flag, message, got: path, expected: "a new file" }];
}
