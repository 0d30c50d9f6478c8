import type { Region } from "../geometry/region.ts";
import type { Project } from "../model/project.ts";
import type { Routine } from "../model/routine.ts";
import type { PointMm } from "../model/zone.ts";
import type { PushField } from "../plan/push/pushField.ts";
import type { Coverage } from "../score/coverage.ts";
import type { DriftBounds } from "../score/driftBounds.ts";
import type { SureCoverage } from "../score/sureCoverage.ts";
import type { ProposedChange } from "../search/change.ts";
import type { ResponseRequest } from "../search/factors.ts";
import type { KnownBallsRun } from "../search/knownBalls.ts";
import type { RoutinePart } from "../search/routineParts.ts";
import type { FateBatch } from "../trial/fates.ts";
import type { TrialBatch, TrialOutcome } from "../trial/outcome.ts";
import type { Recording } from "../trial/recording.ts";
import type { BlindSpot } from "./blindSpots.ts";
import type { Failings } from "./failings.ts";

/** What passes between a pool and its workers; the same in the browser and in Node. Everything here survives a structured clone. */

/**
 * What a task is about: a project, and mostly one of its routines. A worker keeps it, and what it derives from it
 * (known.ts), under the key the pool gave it.
 */
export interface Subject {
  readonly project: Project;
  readonly routine: Routine | null;
}

export type Task =
  /** Trials `from` (included) to `to` (excluded). */
  | { readonly kind: "stress"; readonly seed: number; readonly from: number; readonly to: number }
  /** The same of several lists of moves, which are run together as far as they begin alike; about a project and a family. */
  | { readonly kind: "family"; readonly seed: number; readonly from: number; readonly to: number }
  /** The same with perfect sight: the robot knows its own place and every ball's. */
  | { readonly kind: "all-known"; readonly seed: number; readonly from: number; readonly to: number }
  /** One trial with its recording. */
  | { readonly kind: "record"; readonly seed: number; readonly index: number }
  | { readonly kind: "coverage" }
  /** What became of every ball of trials `from` (included) to `to` (excluded). */
  | { readonly kind: "fates"; readonly seed: number; readonly from: number; readonly to: number }
  /** What fates say together; they follow one another from trial 0 on, at least one. */
  | { readonly kind: "failings"; readonly batches: readonly FateBatch[] }
  /** The largest circles in what is not covered. */
  | { readonly kind: "blind-spots"; readonly region: Region; readonly diameterMm: number }
  | { readonly kind: "sure-coverage"; readonly bounds: DriftBounds }
  /** The share of the places that is sure within bounds. */
  | { readonly kind: "sure-share"; readonly bounds: DriftBounds }
  /** Mean losses of layouts, each over the trials 0 to `trials`. */
  | {
      readonly kind: "losses";
      readonly placements: readonly (readonly PointMm[])[];
      readonly seed: number;
      readonly trials: number;
    }
  /** Changes to robot and routine, made and checked. */
  | { readonly kind: "changes" }
  /** The routine's parts, and the routine with every combination of them, by the bits of the index. */
  | { readonly kind: "parts"; readonly most: number }
  | { readonly kind: "factors" }
  /** Seconds home from every place, and dead pockets; about a project alone. */
  | { readonly kind: "push-field" }
  /** The best push sequence for a trial's placement, run in that trial; about a project alone. */
  | { readonly kind: "known-balls"; readonly seed: number; readonly index: number }
  /** Balls delivered per trial with some factors set. */
  | { readonly kind: "response"; readonly request: ResponseRequest }
  /** Routines by their ids; about a project alone. */
  | { readonly kind: "routines"; readonly ids: readonly string[] };

/** What each kind of task is answered with. */
export interface Answers {
  readonly stress: TrialBatch;
  /** In the order of the family's routines. */
  readonly family: readonly TrialBatch[];
  readonly "all-known": TrialBatch;
  readonly record: { readonly outcome: TrialOutcome; readonly recording: Recording };
  readonly coverage: Coverage;
  readonly fates: FateBatch;
  readonly failings: Failings;
  readonly "blind-spots": readonly BlindSpot[];
  readonly "sure-coverage": SureCoverage;
  readonly "sure-share": number;
  readonly losses: Float64Array;
  readonly changes: readonly ProposedChange[];
  readonly parts: { readonly parts: readonly RoutinePart[]; readonly variants: readonly Routine[] };
  readonly factors: readonly { readonly id: string; readonly title: string }[];
  readonly "push-field": PushField;
  readonly "known-balls": KnownBallsRun;
  readonly response: number;
  /** null where the pattern has no room. */
  readonly routines: readonly (Routine | null)[];
}

export type TaskKind = Task["kind"];
export type TaskOf<K extends TaskKind> = Extract<Task, { readonly kind: K }>;

export interface Request {
  /** Increasing; the reply carries it back. */
  readonly id: number;
  readonly key: number;
  /** Sent with a key's first task in this worker only. */
  readonly subject: Subject | null;
  /** Routines of the same project that the task is about besides, each under a key of its own. */
  readonly family?: readonly { readonly key: number; readonly subject: Subject | null }[];
  /** Keys the worker will not be asked about again before it gets their subject anew. */
  readonly forget: readonly number[];
  readonly task: Task;
}

export type Reply =
  | { readonly id: number; readonly ok: true; readonly answer: Answers[TaskKind] }
  /** The task itself threw: asking again would give the same. */
  | { readonly id: number; readonly ok: false; readonly fault: string };
