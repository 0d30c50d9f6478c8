import type { Project } from "../model/project.ts";
import { sensingWords } from "../report/raceWords.ts";
import { RACE_ERROR } from "../search/elimination.ts";
import { byMoves, byTime, type Entrant } from "../search/entrant.ts";
import { nameOf } from "../search/objective.ts";
import type { Race } from "../search/race.ts";
import type { Standing } from "../search/standing.ts";
import type { PlanInput } from "./planCommand.ts";

/** What a search has found. */
export interface PlanResult {
  readonly race: Race;
  readonly standings: readonly Standing[];
  /** Covered shares by id, where measured. */
  readonly coverage: ReadonlyMap<string, number>;
  readonly isStopped: boolean;
}

/**
 * `routines` with the one to recommend (`best`) first, then what ties with it, the simplest first, then the others by their
 * figures; `ties` are those not told from the race's leader. `score` is by the aim: of runs, of all points, or of the balls.
 */
export function planJson(
  project: Project,
  { seed, trials, seconds, objective }: PlanInput,
  result: PlanResult,
): object {
  const { race, standings, isStopped } = result;
  const failed = race.entrants.filter(({ status }) => status === "failed");
  return {
    project: project.name,
    seed,
    trials,
    ...(seconds === null ? {} : { seconds }),
    ...(objective.id === "every-ball" ? {} : { aim: nameOf(objective) }),
    ...(isStopped ? { stopped: true } : {}),
    routines: standings.map((standing) => routineJson(standing, result.coverage)),
    best: race.winner?.id ?? null,
    ties: race.ties.map(({ id }) => id),
    timeFront: race.front(byTime).map(offerJson),
    movesFront: race.front(byMoves).map(offerJson),
    sensing: sensingWords(race),
    ranTrials: race.doneTrials,
    errorOfDropping: RACE_ERROR,
    failed: failed.map(({ id, fault }) => ({ id, reason: fault })),
  };
}

function routineJson(
  { entrant, summary, figure, isFresh }: Standing,
  coverage: ReadonlyMap<string, number>,
): object {
  return {
    id: entrant.id,
    pattern: entrant.routine.pattern,
    label: entrant.routine.label,
    durationS: entrant.durationS,
    fitsTime: entrant.fitsTime,
    coverageFrac: coverage.get(entrant.id) ?? null,
    successRate: summary.successRate,
    meanDelivered: summary.meanDelivered,
    losses: summary.losses,
    score: figure,
    moves: entrant.moves,
    status: entrant.status,
    fresh: isFresh,
  };
}

/** A point of a trade-off. */
function offerJson(entrant: Entrant): object {
  const { id, durationS, moves, isFresh, figures } = entrant;
  return { id, durationS, moves, score: figures?.figure ?? null, fresh: isFresh };
}
