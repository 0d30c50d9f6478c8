import type { Project } from "../model/project.ts";
import { DIALS, type Turned } from "./dial.ts";
import { FAMILIES } from "./families.ts";
import { fittingFamilies, percent, type Variant } from "./family.ts";
import { idOf, type Recipe, recipesOf, speedsOf, turnedRecipe, usualSteps } from "./recipe.ts";

/** Speeds tried between the slowest and the fastest of the settings, both included. */
const SPEEDS = 5;
/** How far spacings lie from the usual one, in steps. */
const SPACING_STEPS = [-12, 12];

/**
 * Ids of all the routines a search starts from: the catalogue, every variant at more speeds, and those with lanes, laps
 * or rounds also closer together and farther apart. A zone may have no room for some. Each id once, the catalogue's first.
 */
export function candidateIds(project: Project): readonly string[] {
  const usual = recipesOf(project);
  const speeds = speedsOf(project).map(percent);
  const speedsBetween = evenPercents(Math.min(...speeds), Math.max(...speeds));
  const more = fittingFamilies(FAMILIES, project).flatMap((family) =>
    family.variants.flatMap((variant): readonly Recipe[] => {
      const at = { family, variant, speedFrac: 1, turned: {} };
      return [
        ...speedsBetween.map((speed) => turnedRecipe(at, speed, {})),
        ...spacings(variant).flatMap((turned) => speeds.map((speed) => turnedRecipe(at, speed, turned))),
      ];
    }),
  );
  return [...new Set([...usual, ...more].map(idOf))];
}

function evenPercents(low: number, high: number): readonly number[] {
  return Array.from({ length: SPEEDS }, (_, i) => Math.round(low + ((high - low) * i) / (SPEEDS - 1)));
}

function spacings(variant: Variant): readonly Turned[] {
  const usual = usualSteps(variant, "spacingFrac");
  if (usual === undefined) return [];
  const { low, high } = DIALS.spacingFrac;
  return SPACING_STEPS.map((steps) => usual + steps)
    .filter((steps) => steps >= low && steps <= high)
    .map((spacingFrac) => ({ spacingFrac }));
}
