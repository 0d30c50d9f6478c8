import type { Project } from "../model/project.ts";
import { DIAL_NAMES, type DialName, stepsOf, type Turned, turnedCode, turnedFromCode } from "./dial.ts";
import { FAMILIES } from "./families.ts";
import { type Family, fittingFamilies, percent, type Variant } from "./family.ts";

/** One routine to be made: a variant of a pattern, driven at a share of the top speed, with some dials turned. */
export interface Recipe {
  readonly family: Family;
  readonly variant: Variant;
  readonly speedFrac: number;
  /** Only dials that are away from their usual place. */
  readonly turned: Turned;
}

/** Between the id of the usual routine and the dials that are turned: "herd-all-c0-v80-at-s83-w12". */
const TURNED_MARK = "-at-";

const VARIANTS: ReadonlyMap<string, Pick<Recipe, "family" | "variant">> = new Map(
  FAMILIES.flatMap((family) =>
    family.variants.map((variant) => [`${family.id}-${variant.code}`, { family, variant }] as const),
  ),
);

export function idOf({ family, variant, speedFrac, turned }: Recipe): string {
  const dials = turnedCode(turned);
  const usual = `${family.id}-${variant.code}-v${percent(speedFrac)}`;
  return dials === "" ? usual : `${usual}${TURNED_MARK}${dials}`;
}

/** The recipe of an id, for any speed and any dials that its pattern has; null for an id of none. */
export function recipeOf(project: Project, id: string): Recipe | null {
  const [usual = "", code, ...more] = id.split(TURNED_MARK);
  const [, name = "", speed = ""] = usual.match(/^(.+)-v([1-9]\d?|100)$/) ?? [];
  const known = VARIANTS.get(name);
  if (known === undefined || more.length > 0) return null;
  const turned = code === undefined ? {} : turnedFromCode(code);
  if (turned === null) return null;
  const speedFrac = speedsOf(project).find((frac) => percent(frac) === Number(speed)) ?? Number(speed) / 100;
  const recipe: Recipe = { ...known, speedFrac, turned: reallyTurned(known.variant, turned) };
  // A dial that the pattern does not have, or one at its usual place, belongs to no routine's id.
  return idOf(recipe) === id ? recipe : null;
}

/** A recipe with its dials turned to whole steps; the speed in percent. */
export function turnedRecipe(recipe: Recipe, speedPercent: number, turned: Turned): Recipe {
  const { family, variant } = recipe;
  return { family, variant, speedFrac: speedPercent / 100, turned: reallyTurned(variant, turned) };
}

/** Where a variant's dials stand usually, in steps; undefined for a dial that it does not have. */
export function usualSteps({ dials, extraBerthMm }: Variant, name: DialName): number | undefined {
  const value = name === "standOffMm" ? extraBerthMm : dials?.[name];
  return value === undefined ? undefined : stepsOf(name, value);
}

/** Every recipe of the catalogue, pattern by pattern, in the order in which routines are listed. */
export function recipesOf(project: Project): readonly Recipe[] {
  const speeds = speedsOf(project);
  return fittingFamilies(FAMILIES, project).flatMap((family) =>
    family.variants.flatMap((variant) =>
      speeds.map((speedFrac) => ({ family, variant, speedFrac, turned: {} })),
    ),
  );
}

/** The settings' speeds, each once, slowest first. */
export function speedsOf(project: Project): readonly number[] {
  return [...new Set(project.settings.speedFracs)].sort((a, b) => a - b);
}

function reallyTurned(variant: Variant, turned: Turned): Turned {
  const entries = DIAL_NAMES.flatMap((name) => {
    const steps = turned[name];
    const usual = usualSteps(variant, name);
    return steps === undefined || usual === undefined || steps === usual ? [] : [[name, steps] as const];
  });
  return Object.fromEntries(entries);
}
