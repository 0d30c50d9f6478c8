import type { Rate } from "../num/interval.ts";
import { byRank } from "../score/ranking.ts";
import type { StressSummary } from "../score/stress.ts";
import { byMean, type Entrant, type EntrantStatus } from "./entrant.ts";
import type { Race } from "./race.ts";

/** A routine of a race with its figures. */
export interface Standing {
  readonly entrant: Entrant;
  /** Of fresh trials where it has any, else of the race's. */
  readonly summary: StressSummary;
  /** Mean score by the race's objective, of the same trials. */
  readonly figure: Rate;
  /** Figures that had no say in who was chosen. */
  readonly isFresh: boolean;
  /** Not told from the leader. */
  readonly isTied: boolean;
  /** The one to recommend. */
  readonly isWinner: boolean;
}

/**
 * All that a race knows; what was never run is left out. While it goes on, those still in it by their means, then the
 * others. Once it is settled, the winner, what ties with it after fresh
 * trials, the simplest first, and then the rest by their figures.
 */
export function standingsOf(race: Race): readonly Standing[] {
  const { ties, winner } = race.verdict;
  const tied = new Set(ties);
  const standings = race.listed.flatMap((entrant): readonly Standing[] => {
    const { figures, isFresh, status } = entrant;
    if (status === "failed" || figures === null) return [];
    return [{ entrant, ...figures, isFresh, isTied: tied.has(entrant), isWinner: entrant === winner }];
  });
  if (!race.isSettled) return standings.sort(asItStands(race));
  // A tie without fresh runs is one of very many that few runs do not tell apart: its figure says more than its moves.
  const told = ties.filter((tie) => tie !== winner && tie.isFresh);
  const place = new Map([winner, ...told].map((tie, i) => [tie, i]));
  const first = standings.filter(({ entrant }) => place.has(entrant));
  const rest = standings.filter(({ entrant }) => !place.has(entrant));
  return [
    ...first.sort((a, b) => (place.get(a.entrant) ?? 0) - (place.get(b.entrant) ?? 0)),
    ...rest.sort(byFigure(race)),
  ];
}

const ORDER: Readonly<Record<EntrantStatus, number>> = {
  final: 0,
  racing: 0,
  aside: 1,
  dropped: 1,
  failed: 2,
};

function asItStands({ settings }: Race): (a: Standing, b: Standing) => number {
  const mean = byMean(settings.objective);
  return ({ entrant: a }, { entrant: b }) => ORDER[a.status] - ORDER[b.status] || mean(a, b);
}

function byFigure({ settings: { objective } }: Race): (a: Standing, b: Standing) => number {
  return (a, b) => {
    if (a.figure.value === b.figure.value) return byRank(rankable(a), rankable(b));
    return objective.isBetter(a.figure.value, b.figure.value) ? -1 : 1;
  };
}

function rankable({ entrant: { id, durationS }, summary: { successRate, meanDelivered } }: Standing) {
  return { id, durationS, successRate, meanDelivered };
}
