import type { Project } from "../model/project.ts";
import type { Move } from "../model/routine.ts";
import type { PointMm } from "../model/zone.ts";
import { motionOf } from "../motion/walker.ts";
import { compileTrial } from "./compile.ts";
import { runTrial } from "./run.ts";

/** Neither drift nor spread draws anything from it. */
const ANY_SEED = 0;

/**
 * Which balls of a placement are home after some moves, by a trial without drift or spread: the engine's own verdict on what
 * was planned by simpler rules. Not to be called from inside a trial.
 *
 * @returns one flag per ball; must be asked with the wedge in the project's own corner
 */
export function homeAfter(
  project: Project,
  placement: readonly PointMm[],
): (moves: readonly Move[]) => readonly boolean[] {
  const routine = { id: "", pattern: "", label: "", params: {}, moves: [] };
  const known = { ...project, rules: { ...project.rules, wedgeCorners: [] } };
  const plan = compileTrial(known, routine, { drift: false, spread: false, placement });
  return (moves) =>
    runTrial({ ...plan, routine: { ...routine, moves }, motions: moves.map(motionOf) }, ANY_SEED, 0)
      .delivered;
}
