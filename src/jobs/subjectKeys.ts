import type { Project } from "../model/project.ts";
import type { Routine } from "../model/routine.ts";

/** Gives every pair of project and routine objects a number of its own, without keeping them alive. */
export class SubjectKeys {
  readonly #keys = new WeakMap<Project, WeakMap<Routine, number>>();
  #next = 1;

  keyOf(project: Project, routine: Routine): number {
    let ofProject = this.#keys.get(project);
    if (!ofProject) {
      ofProject = new WeakMap();
      this.#keys.set(project, ofProject);
    }
    let key = ofProject.get(routine);
    if (key === undefined) {
      key = this.#next++;
      ofProject.set(routine, key);
    }
    return key;
  }
}
