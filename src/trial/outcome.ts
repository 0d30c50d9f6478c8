import type { PointMm } from "../model/zone.ts";

/** Why a ball was not delivered. Decided in this order of precedence (see trial/verdict). */
export const LOSS_REASONS = [
  "rolled-out",
  "out-of-time",
  "left-wedge",
  "jammed",
  "left-pusher",
  "never-touched",
] as const;
export type LossReason = (typeof LOSS_REASONS)[number];

/** One simulated run. Arrays have one entry per ball, in the order of `ballsOf(project)`. */
export interface TrialOutcome {
  readonly seed: number;
  readonly index: number;
  readonly placement: readonly PointMm[];
  readonly delivered: readonly boolean[];
  /** Second at which a delivered ball came onto the wedge for good; null for the others. */
  readonly deliveredAtS: readonly (number | null)[];
  /** null for delivered balls. */
  readonly losses: readonly (LossReason | null)[];
  readonly endPositions: readonly PointMm[];
  /** End of the routine or the time limit, whichever came first. */
  readonly timeS: number;
  readonly jams: number;
  readonly stalls: number;
  /** 64-bit hash of the whole trajectory, 16 hex digits. */
  readonly hash: string;
}

/** What a run of trials adds up to; plain numbers and typed arrays, cheap to send between workers. */
export interface TrialBatch {
  /** First trial index, and one past the last. */
  readonly from: number;
  readonly to: number;
  /** Balls delivered, per trial. */
  readonly delivered: Uint8Array;
  /** Time used, per trial, s. */
  readonly timeS: Float64Array;
  /** Points earned, per trial. */
  readonly points: Float64Array;
  /** Balls lost, per reason in the order of LOSS_REASONS. */
  readonly losses: Float64Array;
  /** Sum over trials of the mixed trajectory hash, two 32-bit lanes: does not depend on how trials are shared out. */
  readonly hashLow: number;
  readonly hashHigh: number;
  readonly jams: number;
  readonly stalls: number;
}
