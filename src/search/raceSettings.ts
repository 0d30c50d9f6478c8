import type { Project } from "../model/project.ts";
import type { Routine } from "../model/routine.ts";
import type { Objective } from "./objective.ts";

export interface RaceSettings {
  readonly project: Project;
  readonly objective: Objective;
  /** Of the final; the race itself runs on seeds of its own. */
  readonly seed: number;
  /** Most trials one routine gets in the race, and the fresh trials of each in the final. */
  readonly mostTrials: number;
  /** Routines that are there already, such as a team's own. */
  readonly own: readonly Routine[];
  /** Ids that somebody asks for: shown first, and to the end, whether they take part or not (guests.ts). */
  readonly wantedIds?: readonly string[];
  /** Ids that were best before the project changed: shown until the race knows better. */
  readonly previewIds?: readonly string[];
  /** Ids to begin with, for a first answer, and more that join after the first look. */
  readonly firstIds: readonly string[];
  readonly moreIds: readonly string[];
  /** Most routines of a tie that get fresh trials; without it a dozen or fewer, the best of them. */
  readonly mostTied?: number;
  /** Trials of the whole race, about; without it, it runs until it is settled. */
  readonly budgetTrials?: number;
}
