import { HashSum } from "../num/hash.ts";
import { LOSS_REASONS, type TrialBatch } from "./outcome.ts";
import type { TrialPlan } from "./plan.ts";
import { hash, result } from "./result.kernel.ts";
import { lossOf } from "./verdict.ts";

/** Adds up the trials from … to − 1 of one routine, each right after its run. */
export class BatchTally {
  private readonly from: number;
  private readonly to: number;
  private readonly delivered: Uint8Array;
  private readonly timeS: Float64Array;
  private readonly points: Float64Array;
  private readonly losses = new Float64Array(LOSS_REASONS.length);
  private readonly hashes = new HashSum();
  private jams = 0;
  private stalls = 0;

  constructor(from: number, to: number) {
    this.from = from;
    this.to = to;
    this.delivered = new Uint8Array(to - from);
    this.timeS = new Float64Array(to - from);
    this.points = new Float64Array(to - from);
  }

  /** Takes in trial `index`, the run just finished. */
  add({ kinds, points }: Pick<TrialPlan, "kinds" | "points">, index: number): void {
    const { losses } = this;
    let count = 0;
    let earned = 0;
    for (let i = 0; i < kinds.length; i++) {
      const loss = lossOf(i);
      if (loss === null) {
        count++;
        earned += points[i] ?? 0;
      } else {
        const at = LOSS_REASONS.indexOf(loss);
        losses[at] = (losses[at] ?? 0) + 1;
      }
    }
    const trial = index - this.from;
    this.delivered[trial] = count;
    this.points[trial] = earned;
    this.timeS[trial] = result.timeS;
    this.jams += result.jams;
    this.stalls += result.stalls;
    this.hashes.add(index, hash.low, hash.high);
  }

  get batch(): TrialBatch {
    const { from, to, delivered, timeS, points, losses, jams, stalls } = this;
    const { low: hashLow, high: hashHigh } = this.hashes;
    return { from, to, delivered, timeS, points, losses, hashLow, hashHigh, jams, stalls };
  }
}
