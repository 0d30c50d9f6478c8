import { checkProject } from "../model/check.ts";
import type { Issue, Parsed } from "../model/issue.ts";
import { ballsOf, type Project } from "../model/project.ts";
import type { PointMm } from "../model/zone.ts";
import { withPlacement } from "../search/variant.ts";

const PAIR = /^(\d+(?:\.\d+)?),(\d+(?:\.\d+)?)$/;

/** The project with its balls laid as `--at` says, "x,y:x,y" in mm, one pair a ball; what is wrong with it comes back as issues. */
export function projectAt(project: Project, text: string): Parsed<Project> {
  const count = ballsOf(project).length;
  const pairs = text.split(":").map((pair) => PAIR.exec(pair));
  const positions = pairs.flatMap((match): PointMm[] =>
    match ? [{ xMm: Number(match[1]), yMm: Number(match[2]) }] : [],
  );
  if (positions.length !== pairs.length || positions.length !== count) {
    const message = "Give one place for each ball, in mm from the lower left corner.";
    const expected = `${count} pairs like 120,340, with : between them`;
    return { ok: false, issues: [flagIssue("bad-placement", message, text, expected)] };
  }
  const laid = withPlacement(project, positions);
  const issues = checkProject(laid).map((issue) => ({ ...issue, path: "--at" }));
  return issues.length === 0 ? { ok: true, value: laid } : { ok: false, issues };
}

function flagIssue(code: string, message: string, got: string, expected: string): Issue {
  return { code, path: "--at", message, got, expected };
}
