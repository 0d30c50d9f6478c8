import type { Parsed } from "../model/issue.ts";
import type { ProjectFile } from "../model/parse.ts";
import type { Project } from "../model/project.ts";
import type { Routine } from "../model/routine.ts";
import { nearestWord } from "../model/suggest.ts";
import { generateRoutines } from "../plan/catalogue.ts";
import { RoutineMaker } from "../plan/maker.ts";

/**
 * The routine of an id among those generated for a project; an unknown id comes back as an issue with the nearest ones.
 *
 * @param own ids of the team's own routines, which are named as well
 * @param named the project as it was named on the command line; null: not at all
 */
function findRoutine(
  project: Project,
  id: string,
  own: readonly string[],
  named: string | null,
): Parsed<Routine> {
  const found = new RoutineMaker(project).make(id);
  if (found) return { ok: true, value: found };
  const ids = generateRoutines(project).map((routine) => routine.id);
  const near = nearestIds(id, [...own, ...ids]);
  const listed = own.length === 0 ? "" : ` besides its own: ${own.join(", ")}`;
  const message = `This project has no routine of that id; \`wedgeward plan${projectWord(named)}\` lists all ${ids.length}${listed}.`;
  const issue = { code: "unknown-routine", path: "--routine", message, got: id, expected: near.join(", ") };
  return { ok: false, issues: [issue] };
}

/** The same among the team's own routines of a project file, too; those come first. */
export function routineIn(
  { project, routines }: ProjectFile,
  id: string,
  named: string | null = null,
): Parsed<Routine> {
  const own = routines.find((routine) => routine.id === id);
  if (own) return { ok: true, value: own };
  return findRoutine(
    project,
    id,
    routines.map((routine) => routine.id),
    named,
  );
}

/** A project as a word of a command, with the space before it; in quotes where a shell would cut it up. "" for none. */
export function projectWord(named: string | null): string {
  if (named === null) return "";
  return /^[\w./\\:-]+$/.test(named) ? ` ${named}` : ` "${named}"`;
}

/** The three ids most alike, best first. */
function nearestIds(id: string, ids: readonly string[]): readonly string[] {
  const nearest = nearestWord(id, ids);
  const alike = (other: string): number => commonPairs(id.toLowerCase(), other.toLowerCase());
  const ordered = [...ids].sort((a, b) => alike(b) - alike(a));
  return [...new Set([...(nearest ? [nearest] : []), ...ordered])].slice(0, 3);
}

/** Share of letter pairs that two words have in common (Dice 1945), 0 … 1. */
function commonPairs(a: string, b: string): number {
  const pairs = (word: string): Set<string> =>
    new Set(Array.from({ length: Math.max(0, word.length - 1) }, (_, i) => word.slice(i, i + 2)));
  const ofA = pairs(a);
  const ofB = pairs(b);
  if (ofA.size + ofB.size === 0) return 0;
  return (2 * [...ofA].filter((pair) => ofB.has(pair)).length) / (ofA.size + ofB.size);
}
