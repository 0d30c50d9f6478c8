import type { Project } from "../../model/project.ts";
import type { Routine } from "../../model/routine.ts";
import { routineDurationS } from "../../motion/duration.ts";
import { compareRoutines } from "../../score/compare.ts";
import { byRank as compareRanks, type Rankable } from "../../score/ranking.ts";
import { type StressSummary, summarise } from "../../score/stress.ts";
import type { TrialBatch } from "../../trial/outcome.ts";

/** A routine in the ranking, with what is known of it so far. */
export interface Candidate {
  readonly routine: Routine;
  readonly durationS: number;
  readonly fitsTime: boolean;
  /** Adjoining, from trial 0. */
  readonly batches: readonly TrialBatch[];
  readonly trials: number;
  /** null until the first batch. */
  readonly summary: StressSummary | null;
  /** Why it could not be tested; null if it could. */
  readonly fault: string | null;
}

export function newCandidate(project: Project, routine: Routine): Candidate {
  const durationS = routineDurationS(project.robot.drive, routine.moves);
  return {
    routine,
    durationS,
    fitsTime: durationS <= project.rules.timeLimitS,
    batches: [],
    trials: 0,
    summary: null,
    fault: null,
  };
}

/** @param batch starts where the candidate's trials end */
export function withBatch(candidate: Candidate, batch: TrialBatch): Candidate {
  const batches = [...candidate.batches, batch];
  return { ...candidate, batches, trials: batch.to, summary: summarise(batches) };
}

/** Best first, see score/ranking; those without a result last. */
export function byRank(a: Candidate, b: Candidate): number {
  if (!a.summary || !b.summary) return Number(a.summary === null) - Number(b.summary === null);
  return compareRanks(rankable(a, a.summary), rankable(b, b.summary));
}

function rankable(candidate: Candidate, summary: StressSummary): Rankable {
  const { successRate, meanDelivered } = summary;
  return { id: candidate.routine.id, successRate, meanDelivered, durationS: candidate.durationS };
}

/** Whether the paired test on the runs both have made does not tell a routine from the best one. */
export function tiesWithBest(candidate: Candidate, best: Candidate | undefined): boolean {
  if (!candidate.summary || !best?.summary || candidate === best) return false;
  return compareRoutines(best.summary, candidate.summary).better !== "first";
}
