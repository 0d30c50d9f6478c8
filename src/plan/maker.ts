import type { Project } from "../model/project.ts";
import type { Routine } from "../model/routine.ts";
import { besideMoves } from "./beside.ts";
import { makeSensing } from "./sensing.ts";
import { SweepMaker } from "./sweepMaker.ts";

/** Makes a project's routines one by one, by id, blind ones and those that sense. */
export class RoutineMaker {
  private readonly project: Project;
  private readonly sweeps: SweepMaker;

  constructor(project: Project) {
    this.project = project;
    this.sweeps = new SweepMaker(project, besideMoves);
  }

  /** @returns null for an id of no recipe, or where the zone has too little room for the pattern */
  make(id: string): Routine | null {
    if (this.sweeps.knows(id)) return this.sweeps.make(id);
    return makeSensing(this.project, id, (project, blind) =>
      new SweepMaker(project, besideMoves).make(blind),
    );
  }
}
