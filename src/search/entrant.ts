import { linesOf } from "../model/program.ts";
import { ballsOf, type Project } from "../model/project.ts";
import type { Routine } from "../model/routine.ts";
import { routineDurationS } from "../motion/duration.ts";
import type { Rate } from "../num/interval.ts";
import { type StressSummary, summarise } from "../score/stress.ts";
import { faultTexts } from "../texts/english/fault.ts";
import type { TrialBatch } from "../trial/outcome.ts";
import { figureOf } from "./figure.ts";
import type { Objective } from "./objective.ts";
import type { RaceAnswer } from "./raceWork.ts";

/**
 * racing: may still be the best; dropped: clearly worse than another; aside: not proved worse, but there is no time to
 * follow it; final: its figures come from fresh trials; failed: it cannot be run.
 */
export type EntrantStatus = "racing" | "dropped" | "aside" | "final" | "failed";

/** What the trials of an entrant say. */
export interface EntrantFigures {
  readonly summary: StressSummary;
  /** Mean score by the race's objective, with its interval. */
  readonly figure: Rate;
}

/** A routine in a race, with all that is known of it. */
export class Entrant {
  readonly routine: Routine;
  status: EntrantStatus = "racing";
  /** Why it failed; "" if it did not. */
  fault = "";
  /** Scores of the race's trials 0, 1, … in order. */
  readonly scores: number[] = [];
  /** The same trials, adjoining, and the fresh ones of the final. */
  readonly raceBatches: TrialBatch[] = [];
  readonly finalBatches: TrialBatch[] = [];
  #sum = 0;
  #home = 0;
  #known: { readonly batches: number; readonly figures: EntrantFigures } | null = null;
  readonly #nominalS: number;
  readonly #project: Project;
  readonly #objective: Objective;
  readonly #balls: number;

  /** @param project with its own time limit, whatever the objective looks at */
  constructor(project: Project, objective: Objective, routine: Routine) {
    this.#project = project;
    this.#objective = objective;
    this.#balls = ballsOf(project).length;
    this.routine = routine;
    this.#nominalS = routineDurationS(project.robot.drive, routine.moves);
  }

  get id(): string {
    return this.routine.id;
  }

  /** What all moves take; of a program, which decides as it goes, the mean of its trials once there are any. */
  get durationS(): number {
    if (this.routine.program === undefined) return this.#nominalS;
    return this.figures?.summary.meanTimeS ?? this.#nominalS;
  }

  get fitsTime(): boolean {
    return this.durationS <= this.#project.rules.timeLimitS;
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

  /** Share of the balls brought home in the race's trials: tells more than the score while trials are few. */
  get homeFrac(): number {
    return this.trials === 0 ? 0 : this.#home / (this.trials * this.#balls);
  }

  /** Whether its figures come from trials that had no say in the choice. */
  get isFresh(): boolean {
    return this.finalBatches.length > 0;
  }

  /** Scores of the fresh trials 0, 1, … in order. */
  get freshScores(): readonly number[] {
    return this.finalBatches.flatMap((batch) => [...this.#scoresOf(batch)]);
  }

  /** What its figures are made of: fresh trials where there are any. */
  get batches(): readonly TrialBatch[] {
    return this.isFresh ? this.finalBatches : this.raceBatches;
  }

  /** null before the first trial. */
  get figures(): EntrantFigures | null {
    const { batches } = this;
    if (batches.length === 0) return null;
    // A batch is never taken away, and a fresh one never comes back to the race's.
    const seen = this.raceBatches.length + this.finalBatches.length;
    if (this.#known?.batches !== seen) {
      const scores = this.isFresh ? this.freshScores : this.scores;
      const figures = { summary: summarise(batches), figure: figureOf(scores) };
      this.#known = { batches: seen, figures };
    }
    return this.#known.figures;
  }

  /** @throws RangeError for trials that do not adjoin those before */
  add(batch: TrialBatch): void {
    if (batch.from !== this.trials)
      throw new RangeError(`${this.id}: trials from ${batch.from} after ${this.trials}`);
    this.raceBatches.push(batch);
    for (const score of this.#scoresOf(batch)) {
      this.scores.push(score);
      this.#sum += score;
    }
    for (const count of batch.delivered) this.#home += count;
  }

  /** Takes in what came of trials. @returns how many there were */
  take(answer: RaceAnswer): number {
    if (this.status === "failed") return 0;
    if (answer.kind !== "ran") {
      this.fail(answer.kind === "failed" ? answer.reason : faultTexts.noAnswer);
      return 0;
    }
    this.add(answer.batch);
    return answer.batch.to - answer.batch.from;
  }

  fail(reason: string): void {
    this.status = "failed";
    this.fault = reason;
  }

  #scoresOf(batch: TrialBatch): Float64Array {
    return this.#objective.scoresOf(batch, this.#project);
  }
}

/** Below zero when a is to be taken before b: better mean, then more balls home, then fewer moves, then by id, the same everywhere. */
export function byMean(objective: Objective): (a: Entrant, b: Entrant) => number {
  return (a, b) => {
    if (a.mean !== b.mean) return objective.isBetter(a.mean, b.mean) ? -1 : 1;
    return b.homeFrac - a.homeFrac || simplestFirst(a, b);
  };
}

/**
 * Below zero when a promises more than b: by score and balls home together. Of few trials the score alone tells little,
 * since most routines bring every ball home in some and not in others.
 */
export function byPromise(objective: Objective): (a: Entrant, b: Entrant) => number {
  const sign = objective.isBetter(1, 0) ? 1 : -1;
  const promise = (each: Entrant): number => sign * each.mean + each.homeFrac;
  return (a, b) => promise(b) - promise(a) || simplestFirst(a, b);
}

/** Fewest moves first, then the shorter one, then by id. */
export function simplestFirst(a: Entrant, b: Entrant): number {
  return a.moves - b.moves || a.durationS - b.durationS || (a.id < b.id ? -1 : 1);
}

/** What a routine costs, for trade-offs. */
export const byTime = ({ durationS }: Entrant): number => durationS;
export const byMoves = ({ moves }: Entrant): number => moves;
