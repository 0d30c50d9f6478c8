import type { Project } from "../model/project.ts";
import type { Routine } from "../model/routine.ts";

/** Stands for the routine where there is none. */
const NO_ROUTINE = {};

/** Gives every pair of project and routine objects a number of its own, without keeping them alive. */
export class SubjectKeys {
  readonly #keys = new WeakMap<Project, WeakMap<object, number>>();
  #next = 1;

  keyOf(project: Project, routine: Routine | null): number {
    let ofProject = this.#keys.get(project);
    if (!ofProject) {
      ofProject = new WeakMap();
      this.#keys.set(project, ofProject);
    }
    let key = ofProject.get(routine ?? NO_ROUTINE);
    if (key === undefined) {
      key = this.#next++;
      ofProject.set(routine ?? NO_ROUTINE, key);
    }
    return key;
  }
}
