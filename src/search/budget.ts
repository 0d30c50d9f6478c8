/** Shares of a short race's trials, or of its time: after which no more routines enter, after which the final begins, and after which it ends. */
const ENTERING_UNTIL = 0.35;
const FINAL_AT = 0.82;
const END_AT = 1;
/** Share of them for one round of refining. */
const REFINING = 0.14;
/** Fewer are not set aside: between so few luck would choose. */
const LEAST_SEATS = 3;

/**
 * How a race that has to be short spends its trials. Each stretch from look to look gets as many as every other one, so
 * that the field shrinks as its trials grow: the best of the field go on, the rest are set aside.
 *
 * Source: Karnin, Koren and Somekh, ICML 2013 (successive halving); from memory.
 */
export class Budget {
  /** Trials of the whole race; infinite: it is settled by evidence alone. */
  trials = Number.POSITIVE_INFINITY;

  /**
   * Share of the time that is over, for a race that has so long; null: it goes by trials. How many trials there is time for cannot
   * be told while workers warm up and routines are being made: a race of 10 s that went by it shut the door at 64 of 668.
   */
  timeFrac: number | null = null;

  get isShort(): boolean {
    return Number.isFinite(this.trials);
  }

  isFull(done: number): boolean {
    return this.#spent(done) >= ENTERING_UNTIL;
  }

  isFinalDue(done: number): boolean {
    return this.#spent(done) >= FINAL_AT;
  }

  isSpent(done: number): boolean {
    return this.#spent(done) >= END_AT;
  }

  /** Trials for one round of refining. */
  get refining(): number {
    return REFINING * this.trials;
  }

  /**
   * Most routines that go on to the next look.
   *
   * @param stretch trials of each until then
   * @param looksLeft looks still to come, that one included
   * @param refiningsLeft rounds of refining still to come
   */
  seats(done: number, stretch: number, looksLeft: number, refiningsLeft: number): number {
    if (!this.isShort) return Number.POSITIVE_INFINITY;
    const left = FINAL_AT * this.trials - done - refiningsLeft * this.refining;
    return Math.max(LEAST_SEATS, Math.floor(left / Math.max(1, looksLeft) / stretch));
  }

  #spent(done: number): number {
    return this.timeFrac ?? done / this.trials;
  }
}
