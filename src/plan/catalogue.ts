import type { Project } from "../model/project.ts";
import type { Move, Routine } from "../model/routine.ts";
import { RoutineBuilder } from "./builder.ts";
import { CARRIED_LANES } from "./carriedLanes.ts";
import { CLOSING_LANES } from "./closingLanes.ts";
import { DIAGONAL } from "./diagonal.ts";
import { counted, type Family, percent, type Variant } from "./family.ts";
import { FAN } from "./fan.ts";
import { type Frame, movesFromFrame, targetFrame } from "./frame.ts";
import { HERD } from "./herd.ts";
import { MIXTURE } from "./mixture.ts";
import { pushAlong } from "./pushRun.ts";
import { RINGS_IN, RINGS_OUT, WALL_LOOP } from "./rings.ts";
import { type Scene, sceneOf } from "./scene.ts";
import { TO_AND_FRO } from "./toAndFro.ts";

/** Every pattern, in the order they are listed. */
export const FAMILIES: readonly Family[] = [
  HERD,
  FAN,
  RINGS_IN,
  RINGS_OUT,
  CARRIED_LANES,
  CLOSING_LANES,
  TO_AND_FRO,
  DIAGONAL,
  MIXTURE,
  WALL_LOOP,
];

/** Fewer pushes than this share of the wanted ones, and a variant does not count as its pattern any more. */
const LEAST_SHARE = 0.5;

/** A pattern that gives no routine for a project. */
export interface MissingFamily {
  readonly pattern: string;
  /** Plain sentence. */
  readonly reason: string;
}

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
  const scenes = new SceneShelf(project);
  const seen = new Set<string>();
  const routines: Routine[] = [];
  const missing: MissingFamily[] = [];
  for (const family of FAMILIES) {
    const made = routinesOf(family, project, scenes);
    if (made.length === 0) {
      const reason = "The robot has no room for enough of its pushes in this zone.";
      missing.push({ pattern: family.pattern, reason });
    }
    for (const routine of made) {
      const print = JSON.stringify(routine.moves);
      if (!seen.has(print)) routines.push(routine);
      seen.add(print);
    }
  }
  return { routines, missing };
}

function routinesOf(family: Family, project: Project, scenes: SceneShelf): readonly Routine[] {
  const speeds = [...new Set(project.settings.speedFracs)].sort((a, b) => a - b);
  return family.variants.flatMap((variant) =>
    speeds.flatMap((speedFrac) => {
      const scene = scenes.get(variant);
      const planned = plannedMoves(scene, variant, speedFrac);
      if (planned === null) return [];
      const { moves, leftOut } = planned;
      const honest = leftOut > 0 ? `, without ${counted(leftOut, "push", "pushes")} that had no room` : "";
      const routine: Routine = {
        id: `${family.id}-${variant.code}-v${percent(speedFrac)}`,
        pattern: family.pattern,
        label: `${family.pattern}: ${variant.label}, ${percent(speedFrac)} % speed${honest}`,
        params: { ...variant.params, speedFrac, ...(leftOut > 0 ? { leftOut } : {}) },
        moves: movesFromFrame(scene.frame, moves),
      };
      return [routine];
    }),
  );
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

/** Scenes by frame and berth: many variants share one. */
class SceneShelf {
  private readonly project: Project;
  private readonly frames = new Map<boolean, Frame>();
  private readonly scenes = new Map<string, Scene>();

  constructor(project: Project) {
    this.project = project;
  }

  get({ longFirst, extraBerthMm }: Variant): Scene {
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
