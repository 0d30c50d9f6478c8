import type { Project } from "../../src/model/project.ts";
import type { Routine } from "../../src/model/routine.ts";
import { generateRoutines } from "../../src/plan/catalogue.ts";

/** The first routine of each pattern, in the order of the list. */
export function firstOfEachPattern(routines: readonly Routine[]): readonly Routine[] {
  const patterns = [...new Set(routines.map(({ pattern }) => pattern))];
  return patterns.flatMap((pattern) => routines.find((routine) => routine.pattern === pattern) ?? []);
}

/** The first routine of the catalogue, for a figure that needs only one. */
export function firstRoutine(project: Project): Routine {
  const [first] = generateRoutines(project);
  if (first === undefined) throw new Error("the project has no routine");
  return first;
}
