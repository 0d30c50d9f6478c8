import type { Project } from "../model/project.ts";
import type { Routine } from "../model/routine.ts";
import { catalogueIds, type MissingFamily, missingFamilies } from "./catalogueIds.ts";
import { RoutineMaker } from "./maker.ts";

export interface Catalogue {
  readonly routines: readonly Routine[];
  readonly missing: readonly MissingFamily[];
}

/** The routines of all patterns for a project; see `makeCatalogue`. */
export function generateRoutines(project: Project): readonly Routine[] {
  return makeCatalogue(project).routines;
}

/**
 * All routines the patterns give for a project, and the patterns that give none. Every routine is feasible without
 * drift: only "to the wall" touches anything. A variant of which a push has no room is made without that push; one of
 * which too little is left, or which would repeat another's moves, is left out. Time limits are not looked at.
 * Order and ids depend on the project alone; mirrored projects give the same ids and mirrored moves.
 */
export function makeCatalogue(project: Project): Catalogue {
  const maker = new RoutineMaker(project);
  return catalogueOf(catalogueIds(project).map((id) => maker.make(id)));
}

/** The catalogue of what was made for its ids, in their order. */
export function catalogueOf(made: readonly (Routine | null)[]): Catalogue {
  const seen = new Set<string>();
  const present = new Set<string>();
  const routines: Routine[] = [];
  for (const routine of made) {
    if (routine === null) continue;
    present.add(routine.pattern);
    // A program is what its lines are, not what it drives when it sees nothing.
    const print = JSON.stringify(routine.program ?? routine.moves);
    if (!seen.has(print)) routines.push(routine);
    seen.add(print);
  }
  return { routines, missing: missingFamilies(present) };
}
