import { HashSum } from "../num/hash.ts";
import { type Rate, wilson } from "../num/interval.ts";
import { Moments } from "../num/moments.ts";
import { LOSS_REASONS, type LossReason, type TrialBatch } from "../trial/outcome.ts";

/** What a stress test says about a routine. */
export interface StressSummary {
  readonly trials: number;
  /** Share of trials with every ball delivered, with Wilson's 95 % interval. */
  readonly successRate: Rate;
  /** Balls delivered per trial, and the standard error of that mean. */
  readonly meanDelivered: number;
  readonly meanDeliveredSe: number;
  /** Trials with 0, 1, … all balls delivered. */
  readonly deliveredCounts: readonly number[];
  /** Balls lost, by reason, over all trials. */
  readonly losses: Readonly<Record<LossReason, number>>;
  readonly meanTimeS: number;
  readonly meanPoints: number;
  readonly jams: number;
  readonly stalls: number;
  /** Fingerprint of all trajectories, 16 hex digits: does not depend on how the trials were shared out. */
  readonly hash: string;
  /** The trials in increasing order, and the balls each delivered: for paired comparisons. */
  readonly indices: readonly number[];
  readonly delivered: readonly number[];
}

/** Puts the pieces of a stress test together, in whatever order they come. */
export class StressTally {
  readonly #batches: TrialBatch[] = [];

  /** @throws RangeError for a trial that is there already, or a batch that contradicts its own range */
  add(batch: TrialBatch): void {
    const { from, to } = batch;
    const count = to - from;
    if (!(Number.isInteger(from) && from >= 0 && count >= 0 && batch.delivered.length === count)) {
      throw new RangeError(
        `batch ${from} to ${to} with ${batch.delivered.length} trials; expected to − from`,
      );
    }
    if (
      batch.timeS.length !== count ||
      batch.points.length !== count ||
      batch.losses.length !== LOSS_REASONS.length
    ) {
      throw new RangeError(`batch ${from} to ${to} has columns of different lengths`);
    }
    if (count === 0) return;
    const twice = this.#batches.find((other) => from < other.to && other.from < to);
    if (twice)
      throw new RangeError(`trials ${from} to ${to} overlap ${twice.from} to ${twice.to}, added before`);
    this.#batches.push(batch);
  }

  get trials(): number {
    return this.#batches.reduce((sum, { from, to }) => sum + to - from, 0);
  }

  /**
   * What is known so far. The number of balls is read off the batches: every ball of a trial is delivered or lost.
   * @throws RangeError if the trials were not all of the same number of balls
   */
  summary(): StressSummary {
    // In the order of the trials, so that sums of doubles come out the same whatever order the pieces came in.
    const batches = [...this.#batches].sort((a, b) => a.from - b.from);
    const trials = this.trials;
    const delivered = batches.flatMap((batch) => [...batch.delivered]);
    const losses = sumLosses(batches);
    const balls = ballsPerTrial(delivered, losses, trials);
    const deliveredCounts = new Array<number>(balls + 1).fill(0);
    const moments = new Moments();
    for (const count of delivered) {
      deliveredCounts[count] = (deliveredCounts[count] ?? 0) + 1;
      moments.add(count);
    }
    const successes = trials === 0 ? 0 : (deliveredCounts[balls] ?? 0);
    return {
      trials,
      successRate: wilson(successes, trials),
      meanDelivered: moments.mean,
      meanDeliveredSe: moments.standardError,
      deliveredCounts,
      losses,
      meanTimeS: meanOf(batches, trials, (batch) => batch.timeS),
      meanPoints: meanOf(batches, trials, (batch) => batch.points),
      jams: batches.reduce((sum, batch) => sum + batch.jams, 0),
      stalls: batches.reduce((sum, batch) => sum + batch.stalls, 0),
      hash: hashOf(batches),
      indices: batches.flatMap(({ from, to }) => Array.from({ length: to - from }, (_, i) => from + i)),
      delivered,
    };
  }
}

/** The summary of batches in any order. @throws RangeError as StressTally does */
export function summarise(batches: Iterable<TrialBatch>): StressSummary {
  const tally = new StressTally();
  for (const batch of batches) tally.add(batch);
  return tally.summary();
}

function sumLosses(batches: readonly TrialBatch[]): Record<LossReason, number> {
  const sum = (i: number): number => batches.reduce((total, { losses }) => total + (losses[i] ?? 0), 0);
  return Object.fromEntries(LOSS_REASONS.map((reason, i) => [reason, sum(i)])) as Record<LossReason, number>;
}

function ballsPerTrial(
  delivered: readonly number[],
  losses: Record<LossReason, number>,
  trials: number,
): number {
  if (trials === 0) return 0;
  let sum = 0;
  let most = 0;
  for (const count of delivered) {
    sum += count;
    most = Math.max(most, count);
  }
  for (const reason of LOSS_REASONS) sum += losses[reason];
  if (sum % trials === 0 && most <= sum / trials) return sum / trials;
  throw new RangeError(
    `${sum} balls delivered or lost in ${trials} trials; expected the same number in each`,
  );
}

function meanOf(
  batches: readonly TrialBatch[],
  trials: number,
  column: (batch: TrialBatch) => Float64Array,
): number {
  let sum = 0;
  for (const batch of batches) for (const value of column(batch)) sum += value;
  return trials === 0 ? 0 : sum / trials;
}

function hashOf(batches: readonly TrialBatch[]): string {
  const hash = new HashSum();
  for (const { hashLow, hashHigh } of batches) hash.addSum(hashLow, hashHigh);
  return hash.hex();
}
