import { zoneIssueTexts as t } from "../texts/english/zoneIssue.ts";
import { checkBalls } from "./checkBalls.ts";
import { checkEntry } from "./checkEntry.ts";
import { checkZone } from "./checkZone.ts";
import type { Issue } from "./issue.ts";
import type { Project } from "./project.ts";
import { withWedgeIn } from "./wedgeCorner.ts";
import type { Corner } from "./zone.ts";

const PATH = "rules.wedgeCorners";

/** Whether the wedge may be in each of the listed corners. Call it for a project that is sound with its wedge where the zone says. */
export function checkCorners(project: Project): readonly Issue[] {
  const { wedgeCorners } = project.rules;
  if (wedgeCorners.length === 0) return [];
  const own = project.zone.wedge.corner;
  const issues: Issue[] = [];
  const twice = wedgeCorners.filter((corner, i) => wedgeCorners.indexOf(corner) < i);
  if (twice.length > 0) {
    const message = t.cornerTwice;
    issues.push({
      code: "repeated-corner",
      path: PATH,
      message,
      got: twice.join(", "),
      expected: t.cornerOnce,
    });
  }
  if (!wedgeCorners.includes(own)) {
    issues.push({
      code: "corner-not-listed",
      path: PATH,
      message: t.cornerMissing,
      got: wedgeCorners.join(", "),
      expected: t.among(own),
    });
  }
  return [
    ...issues,
    ...wedgeCorners.flatMap((corner, i) => (corner === own ? [] : checkCorner(project, corner, i))),
  ];
}

/** The first thing that would be wrong with the wedge there, in the words of the check that found it. */
function checkCorner(project: Project, corner: Corner, i: number): readonly Issue[] {
  const moved = withWedgeIn(project, corner);
  const zone = checkZone(moved.zone);
  const entry = zone.length > 0 ? zone : checkEntry(moved.zone, moved.robot);
  const [first] = entry.length > 0 ? entry : checkBalls(moved);
  if (first === undefined) return [];
  const message = t.cornerImpossible(first.message);
  const { got, expected } = first;
  return [
    { code: "corner-impossible", path: `${PATH}[${i}]`, message, got: `${first.path}: ${got}`, expected },
  ];
}
