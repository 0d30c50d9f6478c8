import { log } from "../num/elementary.ts";
import { RandomStream } from "../num/stream.ts";
import { studentQuantile } from "../num/studentT.ts";

/** A practice run that was made on a day. */
export interface DayRun {
  /** A date or any other name; the same for all runs of one day. */
  readonly day: string;
  readonly promised: number;
  readonly succeeded: boolean;
}

export interface DayCount {
  readonly day: string;
  readonly runs: number;
  readonly successes: number;
  /** Mean of the promises. */
  readonly promised: number;
}

/** Whether days differ, and by how much. */
export interface DayComparison {
  /** In the order in which they first occur, at least two. */
  readonly days: readonly DayCount[];
  /** Chance of days at least so unlike where runs are dealt out to days by lot. */
  readonly chance: number;
  readonly differ: boolean;
  /** Standard deviation of the success rate between days, with a 95 % interval. */
  readonly spread: { readonly value: number; readonly low: number; readonly high: number };
}

/** A chance below this is called a difference. */
const UNLIKELY = 0.05;
const DEALS = 2000;
/** A stream and a seed of its own: the same runs always get the same chance. */
const STREAM = 0x64617973;
const SEED = 1;
/** Steps of the rate and of its spread that are tried. */
const RATE_STEP = 0.02;
const SPREAD_STEP = 0.01;
const LARGEST_SPREAD = 0.49;
const ROUNDING = 1e-9;
const SMALLEST = 1e-200;

/** @returns null where fewer than two days are told */
export function compareDays(runs: readonly DayRun[]): DayComparison | null {
  const told = runs.filter(({ day }) => day !== "");
  const days = countDays(told);
  if (days.length < 2) return null;
  const chance = chanceOfUnlike(told, days);
  return { days, chance, differ: chance < UNLIKELY, spread: spreadBetween(days) };
}

function countDays(runs: readonly DayRun[]): readonly DayCount[] {
  return [...new Set(runs.map(({ day }) => day))].map((day) => {
    const own = runs.filter((run) => run.day === day);
    return {
      day,
      runs: own.length,
      successes: own.filter(({ succeeded }) => succeeded).length,
      promised: own.reduce((sum, { promised }) => sum + promised, 0) / own.length,
    };
  });
}

/**
 * A permutation test: what runs did better or worse than promised, less the mean, is dealt out to the days by lot; counted is how
 * often days come out at least as unlike (sum of squared day sums over runs). Exact up to the number of deals, whatever the placements.
 */
function chanceOfUnlike(runs: readonly DayRun[], days: readonly DayCount[]): number {
  const rests = runs.map(({ promised, succeeded }) => (succeeded ? 1 : 0) - promised);
  const mean = rests.reduce((sum, rest) => sum + rest, 0) / rests.length;
  const centred = Float64Array.from(rests, (rest) => rest - mean);
  const numbers = new Map(days.map(({ day }, i) => [day, i]));
  const dayOf = Uint16Array.from(runs, ({ day }) => numbers.get(day) ?? 0);
  const seen = unlikeness(centred, dayOf, days);
  const random = new RandomStream().open(SEED, 0, STREAM);
  let asUnlike = 1;
  for (let deal = 0; deal < DEALS; deal++) {
    for (let i = dayOf.length - 1; i > 0; i--) {
      const k = random.below(i + 1);
      const kept = dayOf[i] ?? 0;
      dayOf[i] = dayOf[k] ?? 0;
      dayOf[k] = kept;
    }
    if (unlikeness(centred, dayOf, days) >= seen - ROUNDING) asUnlike++;
  }
  return asUnlike / (DEALS + 1);
}

function unlikeness(rests: Float64Array, dayOf: Uint16Array, days: readonly DayCount[]): number {
  const sums = new Float64Array(days.length);
  for (const [i, day] of dayOf.entries()) sums[day] = (sums[day] ?? 0) + (rests[i] ?? 0);
  return days.reduce((total, { runs }, d) => total + ((sums[d] ?? 0) * (sums[d] ?? 0)) / runs, 0);
}

/**
 * The beta-binomial law: each day has a rate of its own, beta-distributed about a common one. The standard deviation between days by
 * maximum likelihood; the interval by the profile likelihood, its bound widened for few days as Student's t widens a mean's
 * (n/2 · ln(1 + t²/(n − 1))). Checked by repetition in tests/unit/practice/days.
 */
export function spreadBetween(days: readonly DayCount[]): DayComparison["spread"] {
  const spreads: number[] = [];
  for (let i = 0; i * SPREAD_STEP <= LARGEST_SPREAD; i++) spreads.push(i * SPREAD_STEP);
  const profile = spreads.map((spread) => bestLikelihood(days, spread));
  const top = Math.max(...profile);
  const t = studentQuantile(0.975, days.length - 1);
  const behind = (days.length / 2) * log(1 + (t * t) / (days.length - 1));
  const possible = spreads.filter((_, i) => (profile[i] ?? top) >= top - behind);
  return {
    value: spreads[profile.indexOf(top)] ?? 0,
    low: possible[0] ?? 0,
    high: possible.at(-1) ?? LARGEST_SPREAD,
  };
}

/** Largest log-likelihood over all common rates that a spread allows. */
function bestLikelihood(days: readonly DayCount[], spread: number): number {
  let best = Number.NEGATIVE_INFINITY;
  for (let rate = RATE_STEP / 2; rate < 1; rate += RATE_STEP) {
    const share = (spread * spread) / (rate * (1 - rate));
    if (share >= 1) continue;
    const gain = share / (1 - share);
    const sum = days.reduce((total, day) => total + dayLikelihood(day, rate, gain), 0);
    if (sum > best) best = sum;
  }
  return best;
}

/** ln of the beta-binomial law without its binomial factor, with γ = 1/(α + β): finite for γ = 0, where it is the binomial. */
function dayLikelihood({ runs, successes }: DayCount, rate: number, gain: number): number {
  let value = 0;
  let product = 1;
  for (let j = 0; j < runs; j++) {
    const part = j < successes ? rate + j * gain : 1 - rate + (j - successes) * gain;
    product *= part / (1 + j * gain);
    // One logarithm for many factors; before they get too small to hold.
    if (product > SMALLEST) continue;
    value += log(product);
    product = 1;
  }
  return value + log(product);
}
