import { RaceRun } from "../../jobs/race.ts";
import type { Project } from "../../model/project.ts";
import type { Routine } from "../../model/routine.ts";
import { type MissingFamily, missingFamilies } from "../../plan/catalogueIds.ts";
import { byMoves, byTime, type Entrant } from "../../search/entrant.ts";
import type { Objective } from "../../search/objective.ts";
import { planRace } from "../../search/planRace.ts";
import type { Race } from "../../search/race.ts";
import { standingsOf } from "../../search/standing.ts";
import { rankingTexts } from "../../texts/english/ranking.ts";
import type { Candidate } from "./candidate.ts";
import type { Workers } from "./workers.ts";

/** What the page asks of a race. */
export interface RaceWish {
  readonly project: Project;
  readonly objective: Objective;
  readonly seed: number;
  readonly own: readonly Routine[];
  /** Ids to be there first: what a link names, or what was chosen before a change. */
  readonly wantedIds: readonly string[];
  /** Ids of the best before the change. */
  readonly previewIds: readonly string[];
}

/** Points of the trade-off fronts, cheapest first. */
export interface Fronts {
  readonly time: readonly Candidate[];
  readonly moves: readonly Candidate[];
}

/** A race as the page shows it. */
export interface OpenRace {
  readonly race: Race;
  readonly run: RaceRun;
  /** In the order of the ranking; those that could not be run last. */
  candidates(): readonly Candidate[];
  fronts(): Fronts;
  /** Patterns that give no routine for this project; none are known before the catalogue has been made. */
  missing(): readonly MissingFamily[];
  /** What is being done. */
  doing(): string;
  /** What the search says of itself: ties, those given up and its error bound, what sensing is worth. */
  notes(): Promise<readonly string[]>;
}

/** Trials of a whole race, and most of one routine: a refined answer after some ten seconds of an ordinary computer. */
const BUDGET_TRIALS = 24_000;
const MOST_TRIALS = 1000;

/** Opens the race of a project; it runs when its `run` is told to go. Fetched apart from the page's first script. */
export async function openRace(workers: Workers, wish: RaceWish): Promise<OpenRace> {
  const race = planRace({ ...wish, mostTrials: MOST_TRIALS, budgetTrials: BUDGET_TRIALS });
  if (wish.wantedIds.length + wish.previewIds.length > 0) {
    const { Guests } = await import("../../search/guests.ts");
    race.guests = new Guests(race);
  }
  return showRace(workers, race);
}

/** A race as the page sees it. */
export function showRace(workers: Workers, race: Race): OpenRace {
  return {
    race,
    run: new RaceRun(workers, race),
    candidates: () => candidatesOf(race),
    fronts: () => frontsOf(race),
    missing: () => (race.stage === "first-look" ? [] : missingFamilies(race.patterns)),
    doing: () => doingWords(race),
    notes: () => notesOf(race),
  };
}

/** Empty until all have been tried: a few runs of a part of the field are no trade-off. */
function frontsOf(race: Race): Fronts {
  if (race.stage === "first-look" || race.stage === "widening") return { time: [], moves: [] };
  const along = (cost: (entrant: Entrant) => number): readonly Candidate[] =>
    // As the list shows it, where it does: only there is it known whether it ties.
    race.front(cost).map((entrant) => shown.get(entrant) ?? candidateOf(race, entrant, false));
  return { time: along(byTime), moves: along(byMoves) };
}

function candidatesOf(race: Race): readonly Candidate[] {
  const standings = standingsOf(race);
  const failed = race.listed.filter(({ status }) => status === "failed");
  return [
    ...standings.map(({ entrant, isTied }) => candidateOf(race, entrant, isTied)),
    ...failed.map((entrant) => candidateOf(race, entrant, false)),
  ];
}

/** What was shown last of an entrant: the same object while nothing has changed. */
const shown = new WeakMap<Entrant, Candidate>();

function candidateOf({ settings }: Race, entrant: Entrant, isTied: boolean): Candidate {
  const { routine, durationS, fitsTime, moves, isFresh, figures, status, fault } = entrant;
  // With the clock stopped early, a run is not the one that would be shown.
  const canBeShown = isFresh && settings.objective.bySecondS === null;
  const now: Candidate = {
    routine,
    durationS,
    fitsTime,
    moves,
    batches: canBeShown ? entrant.finalBatches : [],
    trials: figures?.summary.trials ?? 0,
    summary: figures?.summary ?? null,
    figure: figures?.figure ?? null,
    isFresh,
    isTied,
    isGivenUp: status === "dropped" || status === "aside",
    fault: status === "failed" ? fault : null,
  };
  const before = shown.get(entrant);
  const same =
    before?.summary === now.summary &&
    before.isTied === isTied &&
    before.isGivenUp === now.isGivenUp &&
    before.fault === now.fault;
  if (same) return before;
  shown.set(entrant, now);
  return now;
}

function doingWords(race: Race): string {
  const { stage, entrants, racing } = race;
  switch (stage) {
    case "first-look":
      return rankingTexts.firstLook;
    case "widening":
      return rankingTexts.moreSettings(entrants.length);
    case "racing":
      return rankingTexts.following(racing.length);
    case "refining":
      return rankingTexts.fineTuning;
    case "final":
    case "over":
      return rankingTexts.freshRuns;
    default:
      return stage satisfies never;
  }
}

/** Fetched when there is something to say: the first rows are sooner there without the words. */
async function notesOf(race: Race): Promise<readonly string[]> {
  if (!race.isSettled) return [];
  const { raceNotes } = await import("../../report/raceWords.ts");
  return raceNotes(race);
}
