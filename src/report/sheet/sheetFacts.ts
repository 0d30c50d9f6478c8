import type { Evidence } from "../../jobs/evidence.ts";
import type { Judgement } from "../../jobs/practising.ts";
import type { Project } from "../../model/project.ts";
import type { Decision } from "../../model/record.ts";
import type { Routine } from "../../model/routine.ts";

/** For whom a sheet is: an engineering jury wants every range and limit, younger visitors the story. */
export const AUDIENCES = ["engineers", "visitors"] as const;
export type Audience = (typeof AUDIENCES)[number];

/** What a sheet is to be. */
export interface SheetChoice {
  readonly pages: 1 | 2;
  readonly audience: Audience;
  /** Whether the numbered steps follow on a page of their own. */
  readonly steps: boolean;
}

export const USUAL_SHEET: SheetChoice = { pages: 2, audience: "engineers", steps: false };

/** All a sheet tells; every claim on it is one of these numbers. */
export interface SheetFacts {
  readonly project: Project;
  readonly routine: Routine;
  readonly durationS: number;
  readonly seed: number;
  readonly evidence: Evidence;
  /** How the project was named on the command line; "" for the default one. */
  readonly projectArgument: string;
  /** Real runs against the model; null where none were made. */
  readonly practice: Judgement | null;
  /** From the decision notebook, oldest first. */
  readonly decisions: readonly Decision[];
}
