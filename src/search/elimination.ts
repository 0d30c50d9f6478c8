import { evidenceOfLead } from "./wager.ts";

/** A candidate as elimination sees it. */
export interface Contender {
  readonly id: string;
  /** Of the trials 0, 1, … that all contenders share; in [0, 1]. */
  readonly scores: ArrayLike<number>;
}

/** Chance that a race drops its best candidate, at most. */
export const RACE_ERROR = 0.05;

/**
 * The contenders that are clearly worse than the leader, on the trials they share.
 *
 * Bound: the candidate with the highest true mean is dropped, ever, with probability `RACE_ERROR` at most. It can be
 * dropped only by evidence (wager.ts) that some rival is better, which is false; against one rival this evidence ever
 * reaches (K − 1)/error with probability error/(K − 1) at most (Ville), however often one looks; there are K − 1 rivals
 * (union bound). Trials count as independent; even placements make means vary less than that.
 *
 * Racing: Maron and Moore, NIPS 6 (1994) 59–66, with Hoeffding's bound in this place; from memory.
 *
 * @param entrants K: all that take part, those included that join later
 */
export function clearlyWorse<C extends Contender>(
  leader: C,
  others: readonly C[],
  entrants: number,
  error = RACE_ERROR,
): readonly C[] {
  const enough = Math.max(1, entrants - 1) / error;
  return others.filter(({ scores }) => evidenceOfLead(leader.scores, scores, enough) >= enough);
}
