import type { Project } from "../model/project.ts";
import type { Routine } from "../model/routine.ts";
import { catalogueIds } from "../plan/catalogueIds.ts";
import { entryOrder } from "./entryOrder.ts";
import type { Objective } from "./objective.ts";
import { Race } from "./race.ts";
import { variedIds } from "./variedIds.ts";

/** With fewer trials each, more routines would only bring more luck into the choice. */
const WIDE_FROM_TRIALS = 200;

export interface PlanRaceSettings {
  readonly project: Project;
  readonly objective: Objective;
  readonly seed: number;
  /** Most trials one routine gets in the race, and fresh ones in the final. */
  readonly mostTrials: number;
  /** The team's own routines. */
  readonly own: readonly Routine[];
  /** Ids that somebody asked for, and those that were best before a change: shown first, without a say. */
  readonly wantedIds?: readonly string[];
  readonly previewIds?: readonly string[];
  readonly budgetTrials?: number;
  readonly mostTied?: number;
}

/**
 * The race behind every ranking, on the page and in the command: the catalogue's routines first, those that sense among
 * them, in an order that shows all patterns soon; where trials suffice to tell more apart, also routines between and beside
 * them; and the team's own.
 */
export function planRace(settings: PlanRaceSettings): Race {
  const { project, mostTrials } = settings;
  const isWide = mostTrials >= WIDE_FROM_TRIALS;
  let first: readonly string[] | null = null;
  let more: readonly string[] | null = null;
  // Hundreds of ids: not before the first answer, which guests give.
  return new Race({
    ...settings,
    get firstIds() {
      first ??= entryOrder(catalogueIds(project));
      return first;
    },
    get moreIds() {
      more ??= isWide ? entryOrder(variedIds(project, catalogueIds(project))) : [];
      return more;
    },
  });
}
