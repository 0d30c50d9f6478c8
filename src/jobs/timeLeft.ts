import type { Gate } from "./gate.ts";

/** Before this much of the work is done, an estimate would be a guess. */
const LEAST_FRAC = 0.02;

/**
 * Estimates how long a job still takes: as long for the rest as for what is done, at the mean pace so far. Time in
 * which the gate was closed does not count.
 */
export class TimeLeft {
  readonly #now: () => number;
  readonly #gate: Gate | null;
  readonly #unwatch: () => void;
  #workedMs = 0;
  #since: number;

  /** @param now a clock in milliseconds */
  constructor(gate: Gate | null = null, now: () => number = () => performance.now()) {
    this.#now = now;
    this.#gate = gate;
    this.#since = now();
    this.#unwatch = gate?.watch(() => this.#turn()) ?? (() => {});
  }

  /** Seconds worked so far, without pauses. */
  get workedS(): number {
    const running = this.#gate?.isClosed ? 0 : this.#now() - this.#since;
    return (this.#workedMs + running) / 1000;
  }

  /** @param doneFrac share of the work that is done, 0 … 1 @returns null while too little is done to say */
  leftS(doneFrac: number): number | null {
    if (doneFrac < LEAST_FRAC) return null;
    return doneFrac >= 1 ? 0 : (this.workedS * (1 - doneFrac)) / doneFrac;
  }

  /** To be called when the job is over, so that the gate forgets it. */
  end(): void {
    this.#unwatch();
  }

  /** The gate has just opened or closed. */
  #turn(): void {
    const now = this.#now();
    if (this.#gate?.isClosed) this.#workedMs += now - this.#since;
    this.#since = now;
  }
}
