import { betaQuantile } from "./beta.ts";
import { normalQuantile } from "./normal.ts";

/** A share of trials with its interval; all in [0, 1] except `trials`. Without trials the share is 0 and the interval [0, 1]. */
export interface Rate {
  readonly value: number;
  readonly low: number;
  readonly high: number;
  readonly trials: number;
}

/** The difference of two rates, in [−1, 1], with its interval. */
export interface RateDifference {
  readonly value: number;
  readonly low: number;
  readonly high: number;
}

function checkCounts(successes: number, trials: number, confidence: number): void {
  if (!(Number.isInteger(successes) && Number.isInteger(trials) && successes >= 0 && successes <= trials)) {
    throw new RangeError(
      `${successes} successes in ${trials} trials; expected whole numbers, 0 ≤ successes ≤ trials`,
    );
  }
  if (!(confidence > 0 && confidence < 1)) {
    throw new RangeError(`confidence ${confidence}; expected a number between 0 and 1`);
  }
}

/**
 * Wilson's score interval: the rates from which the observed one is no further than the normal quantile allows.
 *
 * @param successes whole number, 0 … trials
 * @param confidence two-sided, between 0 and 1
 * @throws RangeError for counts or a confidence out of range
 * Source: Wilson, JASA 22 (1927) 209–212; Newcombe, Stat. Med. 17 (1998) 857–872, method 3. Checked in tests/published/intervals.
 */
export function wilson(successes: number, trials: number, confidence = 0.95): Rate {
  checkCounts(successes, trials, confidence);
  if (trials === 0) return { value: 0, low: 0, high: 1, trials };
  const z = normalQuantile(0.5 + confidence / 2);
  const value = successes / trials;
  const spread = (z * z) / trials;
  const centre = (value + spread / 2) / (1 + spread);
  const half = (z / (1 + spread)) * Math.sqrt((value * (1 - value) + spread / 4) / trials);
  return {
    value,
    low: successes === 0 ? 0 : Math.max(0, centre - half),
    high: successes === trials ? 1 : Math.min(1, centre + half),
    trials,
  };
}

/**
 * The exact interval of Clopper and Pearson: never covers less than the confidence, hence mostly wider than Wilson's.
 * Arguments and errors as for wilson.
 *
 * Source: Clopper and Pearson, Biometrika 26 (1934) 404–413; Newcombe 1998, method 5. Checked in tests/published/intervals.
 */
export function clopperPearson(successes: number, trials: number, confidence = 0.95): Rate {
  checkCounts(successes, trials, confidence);
  if (trials === 0) return { value: 0, low: 0, high: 1, trials };
  const tail = (1 - confidence) / 2;
  const failures = trials - successes;
  return {
    value: successes / trials,
    low: successes === 0 ? 0 : betaQuantile(tail, successes, failures + 1),
    high: failures === 0 ? 1 : 1 - betaQuantile(tail, failures, successes + 1),
    trials,
  };
}

/**
 * The equal-tailed interval of the Beta posterior under Jeffreys' prior; ends at 0 or 1 when all trials failed or succeeded.
 * Arguments and errors as for wilson.
 *
 * Source: Brown, Cai and DasGupta, Statistical Science 16 (2001) 101–133. Checked in tests/published/intervals.
 */
export function jeffreys(successes: number, trials: number, confidence = 0.95): Rate {
  checkCounts(successes, trials, confidence);
  if (trials === 0) return { value: 0, low: 0, high: 1, trials };
  const tail = (1 - confidence) / 2;
  const failures = trials - successes;
  return {
    value: successes / trials,
    low: successes === 0 ? 0 : betaQuantile(tail, successes + 0.5, failures + 0.5),
    high: failures === 0 ? 1 : 1 - betaQuantile(tail, failures + 0.5, successes + 0.5),
    trials,
  };
}

/**
 * Upper bound of the failure rate after n trials without a failure: 1 − (1 − confidence)^(1/n), about 3/n at 95 %.
 *
 * @param trials positive whole number
 * @param confidence one-sided
 * @throws RangeError for a count or a confidence out of range
 * Source: Hanley and Lippman-Hand, JAMA 249 (1983) 1743–1745. Checked in tests/published/intervals.
 */
export function noFailureBound(trials: number, confidence = 0.95): number {
  checkCounts(1, trials, confidence);
  return 1 - betaQuantile(1 - confidence, trials, 1);
}

/**
 * First rate minus second, from independent trials, with Newcombe's interval built from the two Wilson intervals.
 *
 * Source: Newcombe, Stat. Med. 17 (1998) 873–890, method 10. Checked in tests/published/intervals.
 */
export function newcombe(first: Rate, second: Rate): RateDifference {
  const value = first.value - second.value;
  return {
    value,
    low: value - length(first.value - first.low, second.high - second.value),
    high: value + length(first.high - first.value, second.value - second.low),
  };
}

function length(x: number, y: number): number {
  return Math.sqrt(x * x + y * y);
}
