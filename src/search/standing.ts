import { byRank } from "../score/ranking.ts";
import { type StressSummary, summarise } from "../score/stress.ts";
import type { Entrant } from "./entrant.ts";
import type { Race } from "./race.ts";

/** A routine of a race with its figures. */
export interface Standing {
  readonly entrant: Entrant;
  /** Of fresh trials where it has any, else of the race's. */
  readonly summary: StressSummary;
  /** Figures that had no say in who was chosen. */
  readonly isFresh: boolean;
  /** Not told from the leader. */
  readonly isTied: boolean;
}

/** All that a race knows, by success rate, then balls, then time; what was never run is left out. */
export function standingsOf(race: Race): readonly Standing[] {
  const tied = new Set(race.ties);
  const standings = race.entrants.flatMap((entrant): readonly Standing[] => {
    if (entrant.status === "failed" || entrant.batches.length === 0) return [];
    const isFresh = entrant.finalBatches.length > 0;
    return [{ entrant, summary: summarise(entrant.batches), isFresh, isTied: tied.has(entrant) }];
  });
  const keyed = standings.map((standing) => {
    const { successRate, meanDelivered } = standing.summary;
    const { id, durationS } = standing.entrant;
    return { standing, id, durationS, successRate, meanDelivered };
  });
  return keyed.sort(byRank).map(({ standing }) => standing);
}
