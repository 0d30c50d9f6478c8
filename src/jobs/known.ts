import type { Project } from "../model/project.ts";
import type { Routine } from "../model/routine.ts";
import { sideOf } from "../model/sensor.ts";
import { SweepMaker } from "../plan/sweepMaker.ts";
import { planTrial, type TrialOptions, type TrialPlan } from "../trial/plan.ts";
import type { Subject } from "./protocol.ts";

const NOTHING = { pilotOf: () => null, guideOf: () => null };

/**
 * What a worker keeps of a subject: itself, and whatever was derived from it when first asked for. The code for routines that
 * decide on the way is fetched with the first of them.
 */
export class Known {
  readonly subject: Subject;
  #plan: Promise<TrialPlan> | null = null;
  #knowing: Promise<TrialPlan> | null = null;
  #sweeps: Promise<SweepMaker> | null = null;

  constructor(subject: Subject) {
    this.subject = subject;
  }

  /** @throws Error when the subject is a project alone */
  get routine(): Routine {
    const { routine } = this.subject;
    if (routine === null) throw new Error("this task is about a routine, and none was given");
    return routine;
  }

  get plan(): Promise<TrialPlan> {
    this.#plan ??= this.#compiled({});
    return this.#plan;
  }

  /** The plan of a robot that knows its own place all along, so that it drives as it is told, and every ball's. */
  get knowing(): Promise<TrialPlan> {
    this.#knowing ??= this.#compiled({ perfect: true, drift: false });
    return this.#knowing;
  }

  /** The project's routines of these ids; what they have in common is worked out once. */
  async make(ids: readonly string[]): Promise<readonly (Routine | null)[]> {
    const { project } = this.subject;
    this.#sweeps ??= sweepsFor(project);
    const sweeps = await this.#sweeps;
    if (ids.every((id) => sweeps.knows(id))) return ids.map((id) => sweeps.make(id));
    const { RoutineMaker } = await import("../plan/maker.ts");
    const maker = new RoutineMaker(project);
    return ids.map((id) => (sweeps.knows(id) ? sweeps : maker).make(id));
  }

  async #compiled(options: TrialOptions): Promise<TrialPlan> {
    const { project } = this.subject;
    const { routine } = this;
    if (!decides(routine)) return planTrial(project, routine, options, NOTHING);
    const { compileTrial } = await import("../trial/compile.ts");
    return compileTrial(project, routine, options);
  }
}

/** What it does depends on readings. */
function decides({ program, moves }: Routine): boolean {
  return program !== undefined || moves.some((move) => "beside" in move);
}

/** Steering by a wall is fetched for robots that can look to a side. */
async function sweepsFor(project: Project): Promise<SweepMaker> {
  if (project.robot.sensors.every((sensor) => sideOf(sensor) === 0)) return new SweepMaker(project);
  const { besideMoves } = await import("../plan/beside.ts");
  return new SweepMaker(project, besideMoves);
}
