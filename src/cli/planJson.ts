import type { Project } from "../model/project.ts";
import { RACE_ERROR } from "../search/elimination.ts";
import type { Entrant } from "../search/entrant.ts";
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

/** `routines` by success rate; `best` is the one to recommend, `ties` those not told from the race's leader, the simplest first. */
export function planJson(project: Project, { seed, trials, seconds }: PlanInput, result: PlanResult): object {
  const { race, standings, isStopped } = result;
  const failed = race.entrants.filter(({ status }) => status === "failed");
  return {
    project: project.name,
    seed,
    trials,
    ...(seconds === null ? {} : { seconds }),
    ...(isStopped ? { stopped: true } : {}),
    routines: standings.map((standing) => routineJson(standing, result.coverage)),
    best: race.winner?.id ?? null,
    ties: race.ties.map(({ id }) => id),
    timeFront: idsOf(race.front(({ durationS }) => durationS)),
    movesFront: idsOf(race.front(({ moves }) => moves)),
    ranTrials: race.doneTrials,
    errorOfDropping: RACE_ERROR,
    failed: failed.map(({ id, fault }) => ({ id, reason: fault })),
  };
}

function routineJson({ entrant, summary, isFresh }: Standing, coverage: ReadonlyMap<string, number>): object {
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
    moves: entrant.moves,
    status: entrant.status,
    fresh: isFresh,
  };
}

const idsOf = (entrants: readonly Entrant[]): readonly string[] => entrants.map(({ id }) => id);
