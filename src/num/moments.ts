/**
 * Running mean and variance of a series, without storing it and without the cancellation of Σx² − (Σx)²/n.
 *
 * Source: Welford, Technometrics 4 (1962) 419–420. The result depends on the order of the values in the last digits.
 */
export class Moments {
  private n = 0;
  private average = 0;
  private squares = 0;

  /** Takes in one value. */
  add(value: number): void {
    this.n += 1;
    const before = value - this.average;
    this.average += before / this.n;
    this.squares += before * (value - this.average);
  }

  get count(): number {
    return this.n;
  }

  /** 0 while there is no value. */
  get mean(): number {
    return this.average;
  }

  /** Sample variance (divisor n − 1); 0 for fewer than two values. */
  get variance(): number {
    return this.n < 2 ? 0 : this.squares / (this.n - 1);
  }

  /** Standard error of the mean; 0 for fewer than two values. */
  get standardError(): number {
    return this.n < 2 ? 0 : Math.sqrt(this.variance / this.n);
  }
}
