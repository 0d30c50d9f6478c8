import type { Issue } from "../model/issue.ts";

/** Every issue with its place, what is wrong and how to mend it, what was found, what is allowed. */
export function issuesText(source: string, issues: readonly Issue[]): string {
  const head = `${source}: ${issues.length} ${issues.length === 1 ? "thing" : "things"} to mend`;
  const lines = issues.flatMap(({ path, message, got, expected }) => [
    `  ${path === "" ? "" : `${path}: `}${message}`,
    `      found ${got}; allowed: ${expected}`,
  ]);
  return [head, ...lines].join("\n");
}
