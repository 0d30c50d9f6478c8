import type { Routine } from "../model/routine.ts";
import { RoutineMaker } from "../plan/maker.ts";
import { compileTrial, type TrialPlan } from "../trial/compile.ts";
import type { Subject } from "./protocol.ts";

/** What a worker keeps of a subject: itself, and whatever was derived from it when first asked for. */
export class Known {
  readonly subject: Subject;
  #plan: TrialPlan | null = null;
  #knowing: TrialPlan | null = null;
  #maker: RoutineMaker | null = null;

  constructor(subject: Subject) {
    this.subject = subject;
  }

  /** @throws Error when the subject is a project alone */
  get routine(): Routine {
    const { routine } = this.subject;
    if (routine === null) throw new Error("this task is about a routine, and none was given");
    return routine;
  }

  get plan(): TrialPlan {
    this.#plan ??= compileTrial(this.subject.project, this.routine);
    return this.#plan;
  }

  /** The plan of a robot that knows its own place and every ball's. */
  get knowing(): TrialPlan {
    this.#knowing ??= compileTrial(this.subject.project, this.routine, { perfect: true });
    return this.#knowing;
  }

  /** Makes the project's routines; what they have in common is worked out once. */
  get maker(): RoutineMaker {
    this.#maker ??= new RoutineMaker(this.subject.project);
    return this.#maker;
  }
}
