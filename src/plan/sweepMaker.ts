import type { Project } from "../model/project.ts";
import type { Move, Routine } from "../model/routine.ts";
import type { PointMm } from "../model/zone.ts";
import { patternTexts } from "../texts/english/pattern.ts";
import { RoutineBuilder } from "./builder.ts";
import { DIAL_NAMES, DIALS, type DialName, type Dials, dialValue } from "./dial.ts";
import { listed, percent } from "./family.ts";
import { type Frame, movesFromFrame, targetFrame } from "./frame.ts";
import { startPlaces } from "./gathering.ts";
import { gentleMoves } from "./gentle.ts";
import { pushAlong } from "./pushRun.ts";
import { idOf, type Recipe, recipeOf, usualSteps } from "./recipe.ts";
import { type Scene, sceneOf } from "./scene.ts";

/** Fewer pushes than this share of the wanted ones, and a variant does not count as its pattern any more. */
const LEAST_SHARE = 0.5;

/** The same moves as a robot's sensors let it drive them. */
export type Finish = (project: Project, moves: readonly Move[]) => readonly Move[];

/** Makes a project's blind routines one by one, by id; what they have in common is worked out once. */
export class SweepMaker {
  private readonly project: Project;
  private readonly finish: Finish | null;
  private readonly frames = new Map<boolean, Frame>();
  /** Where balls may lie. */
  private readonly places = new Map<Frame, readonly PointMm[]>();
  /** By frame and berth: many variants share one. */
  private readonly scenes = new Map<string, Scene>();

  /** @param finish changes what a robot's sensors let it do better; in the frame */
  constructor(project: Project, finish: Finish | null = null) {
    this.project = project;
    this.finish = finish;
  }

  knows(id: string): boolean {
    return recipeOf(this.project, id) !== null;
  }

  /** @returns null for an id of no recipe, or where the zone has too little room for the pattern */
  make(id: string): Routine | null {
    const recipe = recipeOf(this.project, id);
    return recipe && this.makeFrom(recipe);
  }

  private makeFrom(recipe: Recipe): Routine | null {
    const { family, variant, speedFrac } = recipe;
    if (family.needs?.fits(this.project) === false) return null;
    const dials = dialsOf(recipe);
    const scene = this.sceneFor(variant.longFirst, dials.standOffMm ?? 0);
    const planned = plannedMoves(scene, recipe, dials);
    if (planned === null) return null;
    const { leftOut } = planned;
    const gentle = gentleMoves(scene.project, planned.moves, this.placesIn(scene.frame));
    const moves = this.finish === null ? gentle : this.finish(scene.project, gentle);
    const honest = leftOut > 0 ? patternTexts.without(leftOut) : "";
    const label = listed(
      variant.label,
      patternTexts.speed(percent(speedFrac)),
      ...turnedWords(recipe),
      honest,
    );
    return {
      id: idOf(recipe),
      pattern: family.pattern,
      label: `${family.pattern}: ${label}`,
      params: { ...variant.params, ...turnedValues(recipe), speedFrac, ...(leftOut > 0 ? { leftOut } : {}) },
      moves: movesFromFrame(scene.frame, moves),
    };
  }

  private placesIn(frame: Frame): readonly PointMm[] {
    const known = this.places.get(frame) ?? startPlaces(frame.project);
    this.places.set(frame, known);
    return known;
  }

  private sceneFor(longFirst: boolean, extraBerthMm: number): Scene {
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

function plannedMoves(scene: Scene, { variant, speedFrac }: Recipe, dials: Dials): Planned | null {
  const builder = new RoutineBuilder(scene, speedFrac * scene.project.robot.drive.topSpeedMmPerS);
  const runs = variant.runs(scene, dials);
  const done = runs.filter((run) => pushAlong(builder, run)).length;
  if (done === 0 || done < LEAST_SHARE * runs.length) return null;
  return { moves: builder.moves, leftOut: runs.length - done };
}

/** Where all dials of a recipe stand. */
function dialsOf({ variant, turned }: Recipe): Dials {
  const dials: Partial<Record<DialName, number>> = {};
  for (const name of DIAL_NAMES) {
    const steps = turned[name] ?? usualSteps(variant, name);
    if (steps !== undefined) dials[name] = dialValue(name, steps);
  }
  return dials;
}

function turnedValues({ turned }: Recipe): Dials {
  return Object.fromEntries(
    Object.entries(turned).map(([name, steps]) => [name, dialValue(name as DialName, steps)]),
  );
}

function turnedWords({ turned }: Recipe): readonly string[] {
  return DIAL_NAMES.flatMap((name) => {
    const steps = turned[name];
    return steps === undefined ? [] : [DIALS[name].words(steps)];
  });
}
