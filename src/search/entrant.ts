import { linesOf } from "../model/program.ts";
import type { Project } from "../model/project.ts";
import type { Routine } from "../model/routine.ts";
import { routineDurationS } from "../motion/duration.ts";
import type { TrialBatch } from "../trial/outcome.ts";
import type { Objective } from "./objective.ts";

/**
 * racing: may still be the best; dropped: clearly worse than another; final: its figures come from fresh trials;
 * failed: it cannot be run.
 */
export type EntrantStatus = "racing" | "dropped" | "final" | "failed";

/** A routine in a race, with all that is known of it. */
export class Entrant {
  readonly routine: Routine;
  readonly durationS: number;
  readonly fitsTime: boolean;
  status: EntrantStatus = "racing";
  /** Why it failed; "" if it did not. */
  fault = "";
  /** Scores of the race's trials 0, 1, … in order. */
  readonly scores: number[] = [];
  /** The same trials, adjoining, and the fresh ones of the final. */
  readonly raceBatches: TrialBatch[] = [];
  readonly finalBatches: TrialBatch[] = [];
  #sum = 0;
  readonly #project: Project;
  readonly #objective: Objective;

  constructor(project: Project, objective: Objective, routine: Routine) {
    this.#project = project;
    this.#objective = objective;
    this.routine = routine;
    this.durationS = routineDurationS(project.robot.drive, routine.moves);
    this.fitsTime = this.durationS <= project.rules.timeLimitS;
  }

  get id(): string {
    return this.routine.id;
  }

  /** Moves of the routine, or lines of its program: what somebody has to code. */
  get moves(): number {
    const { moves, program } = this.routine;
    return program ? linesOf(program).length : moves.length;
  }

  /** Trials of the race so far. */
  get trials(): number {
    return this.scores.length;
  }

  /** Mean score of the race's trials, 0 without any. */
  get mean(): number {
    return this.trials === 0 ? 0 : this.#sum / this.trials;
  }

  /** What its figures are made of: fresh trials where there are any. */
  get batches(): readonly TrialBatch[] {
    return this.finalBatches.length > 0 ? this.finalBatches : this.raceBatches;
  }

  /** @throws RangeError for trials that do not adjoin those before */
  add(batch: TrialBatch): void {
    if (batch.from !== this.trials)
      throw new RangeError(`${this.id}: trials from ${batch.from} after ${this.trials}`);
    this.raceBatches.push(batch);
    for (const score of this.#objective.scoresOf(batch, this.#project)) {
      this.scores.push(score);
      this.#sum += score;
    }
  }

  fail(reason: string): void {
    this.status = "failed";
    this.fault = reason;
  }
}

/** Below zero when a is to be taken before b: better mean, then fewer moves, then by id, the same everywhere. */
export function byMean(objective: Objective): (a: Entrant, b: Entrant) => number {
  return (a, b) => {
    if (a.mean !== b.mean) return objective.isBetter(a.mean, b.mean) ? -1 : 1;
    return simplestFirst(a, b);
  };
}

/** Fewest moves first, then the shorter one, then by id. */
export function simplestFirst(a: Entrant, b: Entrant): number {
  return a.moves - b.moves || a.durationS - b.durationS || (a.id < b.id ? -1 : 1);
}
