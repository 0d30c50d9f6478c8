import type { Project } from "../model/project.ts";
import type { Routine } from "../model/routine.ts";
import { worstDrawn } from "./promise.ts";
import { type Placement, testPlacements } from "./testPlacements.ts";

/** One in so many proposed placements is one that the routine finds hard. */
const HARD_SHARE = 4;
/** Drawn runs among which the hard ones are looked for. */
export const HARD_TRIED = 300;

export interface Proposed {
  /** They fill the zone evenly. */
  readonly even: readonly Placement[];
  /** Those on which the routine did worst. */
  readonly hard: readonly Placement[];
}

/** How many of the placements are hard ones: a quarter, none where the layout is fixed. */
export function hardCountOf(project: Project, count: number): number {
  return project.rules.layout.kind === "fixed" ? 0 : Math.floor(count / HARD_SHARE);
}

/** Placements to practise on: most fill the zone evenly, the last quarter are those on which the routine did worst. */
export function practicePlacements(
  project: Project,
  routine: Routine,
  count: number,
  seed: number,
): Proposed {
  const hardCount = hardCountOf(project, count);
  return {
    even: testPlacements(project, count - hardCount, seed),
    hard: hardCount === 0 ? [] : worstDrawn(project, routine, { tried: HARD_TRIED, seed, count: hardCount }),
  };
}
