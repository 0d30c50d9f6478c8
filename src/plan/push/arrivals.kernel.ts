import { DIRECTIONS } from "./room.ts";

/**
 * Seconds on from a place for a robot that let go of the ball there, for all directions it may have come from: the least over
 * the directions to come back in, each with what it takes to get there.
 */
export class Arrivals {
  /** Of the place last asked for, by direction of arrival. */
  readonly seconds = new Float32Array(DIRECTIONS);
  /** The least that coming back to a ball takes. */
  readonly leastRegrip: number;
  private readonly regrip: Float64Array;
  /** Entry n: the least of all entries of `regrip` from n on. */
  private readonly leastFrom: Float64Array;
  private readonly slack: Float64Array;

  /** @param regrip seconds to leave a ball and take it n directions off */
  constructor(regrip: Float64Array) {
    this.regrip = regrip;
    this.leastFrom = regrip.slice();
    for (let n = regrip.length - 2; n >= 0; n--) {
      this.leastFrom[n] = Math.min(regrip[n]!, this.leastFrom[n + 1]!);
    }
    this.leastRegrip = this.leastFrom[0]!;
    this.slack = slackOf(regrip);
  }

  /** A state in direction d that is slower than this is of no use: coming back in the place's best direction is never slower. */
  latest(best: number, bestDirection: number, d: number): number {
    return bestDirection === 255 ? best : best + this.slack[apart(d, bestDirection)]!;
  }

  /**
   * Fills `seconds` for one place.
   *
   * @param on seconds home from it, `cells` apart by direction, of which `best` is the least
   */
  take(on: Float32Array, cell: number, cells: number, best: number, bestDirection: number): void {
    const { regrip, leastFrom, seconds } = this;
    let latest = Number.POSITIVE_INFINITY;
    let taken = 0;
    seconds.fill(latest);
    for (let i = 0, to = bestDirection; i < DIRECTIONS; i++, to = (to + SPREAD_STEP) % DIRECTIONS) {
      const home = on[to * cells + cell]!;
      if (home > this.latest(best, bestDirection, to)) continue;
      // Outward from the direction itself, as long as it can be quicker than the slowest of what there is.
      let left = to;
      let right = to;
      for (let n = 0; n < regrip.length && home + leastFrom[n]! < latest; n++) {
        const total = home + regrip[n]!;
        if (total < seconds[left]!) seconds[left] = total;
        if (total < seconds[right]!) seconds[right] = total;
        if (++left === DIRECTIONS) left = 0;
        if (--right < 0) right = DIRECTIONS - 1;
      }
      if (++taken % LOOK_AGAIN === 0) latest = mostOf(seconds);
    }
  }
}

/** Directions are gone through at this step, so that the first few are all round; it shares no factor with their number. */
const SPREAD_STEP = 13;
/** After this many directions the slowest of what they give is looked up. */
const LOOK_AGAIN = 3;

function mostOf(seconds: Float32Array): number {
  let most = 0;
  for (let i = 0; i < seconds.length; i++) if (seconds[i]! > most) most = seconds[i]!;
  return most;
}

/** Steps between two directions, 0 … DIRECTIONS/2. */
export function apart(a: number, b: number): number {
  const steps = a > b ? a - b : b - a;
  return steps > DIRECTIONS / 2 ? DIRECTIONS - steps : steps;
}

/** Entry n: the most that coming to a ball n directions off can save, over all directions to come from. */
function slackOf(regrip: Float64Array): Float64Array {
  const slack = new Float64Array(regrip.length);
  for (let n = 0; n < slack.length; n++) {
    for (let from = 0; from < DIRECTIONS; from++) {
      slack[n] = Math.max(slack[n]!, regrip[apart(from, 0)]! - regrip[apart(from, n)]!);
    }
  }
  return slack;
}
