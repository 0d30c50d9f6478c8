import type { Project } from "./project.ts";
import type { Routine } from "./routine.ts";
import type { PointMm } from "./zone.ts";

/** One practice run, proposed or made. */
export interface PracticeEntry {
  /** Id of the routine that was practised. */
  readonly routine: string;
  /** One place a ball, in the order of the project when it was laid out. */
  readonly placement: readonly PointMm[];
  /** Proposed because the routine does badly on it. */
  readonly hard: boolean;
  /** How many balls came home; null: not run yet. */
  readonly home: number | null;
  /** null: not taken. */
  readonly timeS: number | null;
  /** Why balls were lost, one of the program's reasons; "" for none or not told. */
  readonly loss: string;
  /** On which day it was made, by a date or any name; "" for not told. */
  readonly day: string;
  readonly note: string;
}

/** What a decision was made from. */
export const DECISION_KINDS = ["comparison", "calibration", "fix"] as const;
export type DecisionKind = (typeof DECISION_KINDS)[number];

/** What made the figures of a decision, as it was then: with it they can be made again whatever becomes of the project. */
export interface DecisionInputs {
  readonly project: Project;
  /** Of two robots compared, the other one's project; left out where both sides have the same. */
  readonly otherProject?: Project;
  /** The routines it is about, the first one the routine decided on. */
  readonly routines: readonly Routine[];
  /** Of a fix: the change that was tried, by its id; left out in files written before it was kept. */
  readonly change?: string;
  /** Measured table that a calibration was made from; "" for other kinds. */
  readonly measurements: string;
  readonly seed: number;
  /** Simulated runs of each side; 0 where none were made. */
  readonly trials: number;
}

/** A dated entry of the decision notebook. */
export interface Decision {
  /** "2031-04-09", as the calendar of whoever made it said. */
  readonly date: string;
  readonly kind: DecisionKind;
  readonly title: string;
  /** Sentences with the numbers. */
  readonly figures: readonly string[];
  /** Why the team decided so, in its own words. */
  readonly reason: string;
  readonly inputs: DecisionInputs;
}

/** What a team wrote down beside its project; no run depends on it. */
export interface TeamRecord {
  /** The table of tests with the tape measure, as typed. */
  readonly measurements: string;
  readonly practice: readonly PracticeEntry[];
  /** Oldest first. */
  readonly decisions: readonly Decision[];
}

export const EMPTY_RECORD: TeamRecord = { measurements: "", practice: [], decisions: [] };
