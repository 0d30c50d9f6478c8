import type { Project } from "../model/project.ts";
import { DIAL_NAMES, DIALS, type DialName } from "../plan/dial.ts";
import { percent } from "../plan/family.ts";
import { idOf, type Recipe, recipeOf, speedsOf, turnedRecipe, usualSteps } from "../plan/recipe.ts";
import type { Point } from "./simplex.ts";

interface Axis {
  readonly dial: DialName | "speed";
  /** In steps; high > low. */
  readonly low: number;
  readonly high: number;
}

/**
 * What can be varied about one routine without making it another one, as a box with sides from 0 to 1: its speed between
 * the slowest and the fastest of the settings, and the dials of its pattern around their usual places.
 */
export class Tuning {
  readonly #recipe: Recipe;
  readonly #axes: readonly Axis[];

  private constructor(recipe: Recipe, axes: readonly Axis[]) {
    this.#recipe = recipe;
    this.#axes = axes;
  }

  /** @returns null for a routine that no pattern made, or one of which nothing can be varied */
  static of(project: Project, id: string): Tuning | null {
    const recipe = recipeOf(project, id);
    if (recipe === null) return null;
    const speeds = speedsOf(project).map(percent);
    const axes: readonly Axis[] = [
      { dial: "speed", low: Math.min(...speeds), high: Math.max(...speeds) },
      ...DIAL_NAMES.flatMap((dial) => {
        const usual = usualSteps(recipe.variant, dial);
        if (usual === undefined) return [];
        const { low, high, reach } = DIALS[dial];
        return [{ dial, low: Math.max(low, usual - reach), high: Math.min(high, usual + reach) }];
      }),
    ];
    const free = axes.filter(({ low, high }) => high > low);
    return free.length === 0 ? null : new Tuning(recipe, free);
  }

  get dimensions(): number {
    return this.#axes.length;
  }

  /** Where the routine itself lies. */
  get start(): Point {
    return this.#axes.map(({ dial, low, high }) => {
      const steps = dial === "speed" ? percent(this.#recipe.speedFrac) : this.#stepsOf(dial);
      return Math.min(1, Math.max(0, (steps - low) / (high - low)));
    });
  }

  /** Id of the routine nearest to a point, in whole steps. */
  idAt(point: Point): string {
    let speed = percent(this.#recipe.speedFrac);
    const turned: Partial<Record<DialName, number>> = { ...this.#recipe.turned };
    for (const [i, { dial, low, high }] of this.#axes.entries()) {
      const steps = Math.round(low + (point[i] ?? 0) * (high - low));
      if (dial === "speed") speed = steps;
      else turned[dial] = steps;
    }
    return idOf(turnedRecipe(this.#recipe, speed, turned));
  }

  #stepsOf(dial: DialName): number {
    return this.#recipe.turned[dial] ?? usualSteps(this.#recipe.variant, dial) ?? 0;
  }
}
