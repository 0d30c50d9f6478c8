import type { Project } from "../../model/project.ts";
import type { Routine } from "../../model/routine.ts";
import { routineDurationS } from "../../motion/duration.ts";
import type { Rate } from "../../num/interval.ts";
import { type StressSummary, summarise } from "../../score/stress.ts";
import type { TrialBatch } from "../../trial/outcome.ts";

/** Of fewer runs the number is said: "80 of 100" may then be 8 of 10. */
export const FEW_RUNS = 100;

/** A routine on the page, with what is known of it so far. */
export interface Candidate {
  readonly routine: Routine;
  readonly durationS: number;
  readonly fitsTime: boolean;
  /** Moves, or lines of its program: what somebody has to code. */
  readonly moves: number;
  /** Runs that can be shown by their number: of the page's seed, adjoining, from run 0. */
  readonly batches: readonly TrialBatch[];
  readonly trials: number;
  /** null until the first batch. */
  readonly summary: StressSummary | null;
  /** What the ranking goes by, with its interval; null where the routine is not in the ranking. */
  readonly figure: Rate | null;
  /** Figures from runs that had no say in the choice, of the page's seed. */
  readonly isFresh: boolean;
  /** Not told from the best. */
  readonly isTied: boolean;
  /** Clearly worse than another, or set aside for want of time: gets no more runs. */
  readonly isGivenUp: boolean;
  /** Why it could not be tested; null if it could. */
  readonly fault: string | null;
}

export function newCandidate(project: Project, routine: Routine): Candidate {
  const durationS = routineDurationS(project.robot.drive, routine.moves);
  return {
    routine,
    durationS,
    fitsTime: durationS <= project.rules.timeLimitS,
    moves: routine.moves.length,
    batches: [],
    trials: 0,
    summary: null,
    figure: null,
    isFresh: true,
    isTied: false,
    isGivenUp: false,
    fault: null,
  };
}

/** @param batch starts where the candidate's trials end */
export function withBatch(candidate: Candidate, batch: TrialBatch): Candidate {
  const batches = [...candidate.batches, batch];
  return { ...candidate, batches, trials: batch.to, summary: summarise(batches) };
}
