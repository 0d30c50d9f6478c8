import type { Project } from "../model/project.ts";
import { patternTexts } from "../texts/english/pattern.ts";
import { FAMILIES } from "./families.ts";
import { idOf, recipesOf } from "./recipe.ts";
import { sensingIds } from "./sensingPlan.ts";

/** A pattern that gives no routine for a project. */
export interface MissingFamily {
  readonly pattern: string;
  /** Plain sentence. */
  readonly reason: string;
}

/** The ids a catalogue is made of; a zone may have no room for some. */
export function catalogueIds(project: Project): readonly string[] {
  return [...recipesOf(project).map(idOf), ...sensingIds(project)];
}

/** @param present patterns of which the zone has a routine */
export function missingFamilies(present: ReadonlySet<string>): readonly MissingFamily[] {
  const reason = patternTexts.noRoom;
  return FAMILIES.filter(({ pattern }) => !present.has(pattern)).map(({ pattern, needs }) => ({
    pattern,
    reason: needs?.reason ?? reason,
  }));
}
