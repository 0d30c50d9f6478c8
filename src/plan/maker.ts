import type { Project } from "../model/project.ts";
import type { Move, Routine } from "../model/routine.ts";
import { RoutineBuilder } from "./builder.ts";
import { FAMILIES } from "./families.ts";
import { counted, type Family, percent, type Variant } from "./family.ts";
import { type Frame, movesFromFrame, targetFrame } from "./frame.ts";
import { pushAlong } from "./pushRun.ts";
import { type Scene, sceneOf } from "./scene.ts";

/** Fewer pushes than this share of the wanted ones, and a variant does not count as its pattern any more. */
const LEAST_SHARE = 0.5;

/** One routine to be made: a variant of a pattern, driven at a share of the top speed. */
export interface Recipe {
  readonly family: Family;
  readonly variant: Variant;
  readonly speedFrac: number;
}

export function idOf({ family, variant, speedFrac }: Recipe): string {
  return `${family.id}-${variant.code}-v${percent(speedFrac)}`;
}

/** Every recipe of the catalogue, pattern by pattern, in the order in which routines are listed. */
export function recipesOf(project: Project): readonly Recipe[] {
  const speeds = speedsOf(project);
  return FAMILIES.flatMap((family) =>
    family.variants.flatMap((variant) => speeds.map((speedFrac) => ({ family, variant, speedFrac }))),
  );
}

function speedsOf(project: Project): readonly number[] {
  return [...new Set(project.settings.speedFracs)].sort((a, b) => a - b);
}

/** Makes a project's routines one by one, by id; what they have in common is worked out once. */
export class RoutineMaker {
  private readonly project: Project;
  private readonly recipes: ReadonlyMap<string, Recipe>;
  private readonly frames = new Map<boolean, Frame>();
  /** By frame and berth: many variants share one. */
  private readonly scenes = new Map<string, Scene>();

  constructor(project: Project) {
    this.project = project;
    this.recipes = new Map(recipesOf(project).map((recipe) => [idOf(recipe), recipe]));
  }

  /** @returns null for an id of no recipe, or where the zone has too little room for the pattern */
  make(id: string): Routine | null {
    const recipe = this.recipes.get(id);
    return recipe ? this.makeFrom(recipe) : null;
  }

  private makeFrom(recipe: Recipe): Routine | null {
    const { family, variant, speedFrac } = recipe;
    const scene = this.sceneFor(variant);
    const planned = plannedMoves(scene, variant, speedFrac);
    if (planned === null) return null;
    const { moves, leftOut } = planned;
    const honest = leftOut > 0 ? `, without ${counted(leftOut, "push", "pushes")} that had no room` : "";
    return {
      id: idOf(recipe),
      pattern: family.pattern,
      label: `${family.pattern}: ${variant.label}, ${percent(speedFrac)} % speed${honest}`,
      params: { ...variant.params, speedFrac, ...(leftOut > 0 ? { leftOut } : {}) },
      moves: movesFromFrame(scene.frame, moves),
    };
  }

  private sceneFor({ longFirst, extraBerthMm }: Variant): Scene {
    const key = `${longFirst} ${extraBerthMm}`;
    const known = this.scenes.get(key);
    if (known !== undefined) return known;
    const frame = this.frames.get(longFirst) ?? targetFrame(this.project, longFirst);
    this.frames.set(longFirst, frame);
    const scene = sceneOf(frame, extraBerthMm);
    this.scenes.set(key, scene);
    return scene;
  }
}

interface Planned {
  readonly moves: readonly Move[];
  /** Pushes of the variant that found no room. */
  readonly leftOut: number;
}

function plannedMoves(scene: Scene, variant: Variant, speedFrac: number): Planned | null {
  const builder = new RoutineBuilder(scene, speedFrac * scene.project.robot.drive.topSpeedMmPerS);
  const runs = variant.runs(scene);
  const done = runs.filter((run) => pushAlong(builder, run)).length;
  if (done === 0 || done < LEAST_SHARE * runs.length) return null;
  return { moves: builder.moves, leftOut: runs.length - done };
}
