/** Stakes that are played side by side: for a lead that is hardly there up to one that nobody could miss. */
const STAKES = [0.05, 0.12, 0.25, 0.45, 0.7, 0.95] as const;

/**
 * Evidence that paired differences lean to the plus side, collected one by one, to be looked at as often as one likes.
 *
 * A gambler with capital 1 stakes a fixed share λ of it on every difference: capital · (1 + λ d), d in [−1, 1]. As long as
 * differences do not lean to the plus side (conditional mean ≤ 0) this is a nonnegative supermartingale, and so is the
 * mean over several λ; by Ville's inequality it ever reaches 1/α with probability α at most, whenever one looks.
 *
 * Source: Ville, Étude critique de la notion de collectif, 1939 (inequality); Waudby-Smith and Ramdas, J. R. Stat. Soc. B
 * 86 (2024) 1–27 (betting for bounded means); both from memory. Checked by simulation in tests/unit/search/wager.
 */
export class Wager {
  private readonly capital = new Float64Array(STAKES.length).fill(1);
  private most = 1;

  /** @param difference in [−1, 1] */
  add(difference: number): void {
    const { capital } = this;
    let sum = 0;
    for (const [i, stake] of STAKES.entries()) {
      // Kept below what a double holds; by then the evidence is beyond any doubt.
      const next = Math.min((capital[i] ?? 0) * (1 + stake * difference), MOST_CAPITAL);
      capital[i] = next;
      sum += next;
    }
    this.most = Math.max(this.most, sum / STAKES.length);
  }

  /** Largest mean capital so far, at least 1: the odds at which nobody would still bet that there is no lean. */
  get evidence(): number {
    return this.most;
  }

  /** Mean capital now. */
  get now(): number {
    let sum = 0;
    for (const each of this.capital) sum += each;
    return sum / STAKES.length;
  }
}

const MOST_CAPITAL = 1e300;

/**
 * Evidence that the first scores are larger than the second ones, trial by trial in their order.
 *
 * @param first scores in [0, 1]
 * @param second likewise, of the same trials; what one has more of is left out
 * @param enough evidence at which the rest is not looked at any more
 */
export function evidenceOfLead(
  first: ArrayLike<number>,
  second: ArrayLike<number>,
  enough = Number.POSITIVE_INFINITY,
): number {
  const wager = new Wager();
  const trials = Math.min(first.length, second.length);
  for (let t = 0; t < trials && wager.evidence < enough; t++) {
    const difference = (first[t] ?? 0) - (second[t] ?? 0);
    if (difference !== 0) wager.add(difference);
  }
  return wager.evidence;
}
