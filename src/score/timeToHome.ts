import { log } from "../num/elementary.ts";
import { type Rate, wilson } from "../num/interval.ts";
import type { FateBatch } from "../trial/fates.ts";
import { LOSS_REASONS } from "../trial/outcome.ts";

/** Share of runs with at least k balls home by each second of a grid. */
export interface HomeCurve {
  /** k */
  readonly balls: number;
  /** One entry per second of `timesS`; never falls. */
  readonly shareFrac: readonly number[];
}

/** How the balls come home over time: plain data, ready to be drawn. */
export interface TimeToHome {
  readonly trials: number;
  readonly timesS: readonly number[];
  /** k = 1, 2, … all balls. */
  readonly curves: readonly HomeCurve[];
  /** Every true curve lies within ± this of its own, over all seconds at once (cut at 0 and 1). */
  readonly bandFrac: number;
  readonly confidence: number;
}

/** Points of a curve: one a second in a run of two minutes, fewer per second in longer ones. */
const POINTS = 240;

/**
 * Half width of the band that holds a whole distribution function: √(ln(2/α)/(2n)), 1 without trials.
 *
 * Source: Dvoretzky, Kiefer and Wolfowitz, Ann. Math. Stat. 27 (1956) 642–669, with the constant of Massart,
 * Ann. Prob. 18 (1990) 1269–1283. Checked in tests/published/timeToHome.
 */
export function dkwHalfWidth(trials: number, confidence = 0.95): number {
  if (!(confidence > 0 && confidence < 1))
    throw new RangeError(`confidence ${confidence}; expected a number between 0 and 1`);
  return trials === 0 ? 1 : Math.min(1, Math.sqrt(-log((1 - confidence) / 2) / (2 * trials)));
}

/**
 * Share of runs with at least k balls home by each second, each curve with a band that holds it whole. A ball counts from the
 * second at which it came home for good: one that leaves the wedge again never counts.
 *
 * @param endS last second of the curves, > 0
 */
export function timeToHome(fates: FateBatch, endS: number, confidence = 0.95): TimeToHome {
  const trials = fates.to - fates.from;
  const step = Math.max(1, Math.ceil(endS / POINTS));
  const timesS = Array.from({ length: Math.ceil(endS / step) + 1 }, (_, i) => Math.min(i * step, endS));
  const moments = homeMoments(fates);
  const curves = moments.map((sorted, i) => ({ balls: i + 1, shareFrac: sharesBy(sorted, timesS, trials) }));
  return { trials, timesS, curves, bandFrac: dkwHalfWidth(trials, confidence), confidence };
}

/** For each k, the seconds at which the k-th ball came home, of the runs in which it did; increasing. */
function homeMoments(fates: FateBatch): readonly (readonly number[])[] {
  const { balls, from, to, loss, homeAtS } = fates;
  const moments = Array.from({ length: balls }, (): number[] => []);
  for (let t = 0; t < to - from; t++) {
    const home: number[] = [];
    for (let at = t * balls; at < (t + 1) * balls; at++) if (loss[at] === 0) home.push(homeAtS[at] ?? 0);
    home.sort((a, b) => a - b);
    for (const [i, timeS] of home.entries()) moments[i]?.push(timeS);
  }
  for (const list of moments) list.sort((a, b) => a - b);
  return moments;
}

function sharesBy(sorted: readonly number[], timesS: readonly number[], trials: number): number[] {
  let count = 0;
  return timesS.map((timeS) => {
    while (count < sorted.length && (sorted[count] ?? 0) <= timeS) count++;
    return trials === 0 ? 0 : count / trials;
  });
}

/** What stopping after a move, and leaving, would have given. */
export interface StopMoment {
  /** Index of the last move that is still run, and the second at which it ends. */
  readonly move: number;
  readonly timeS: number;
  /** Share of runs with every ball home at that second. */
  readonly successRate: Rate;
  /** Balls home at that second, per run. */
  readonly meanHome: number;
}

export interface StopAdvice {
  /** One entry per move that ends within the time limit. */
  readonly moments: readonly StopMoment[];
  /** The moment to stop; null without a move that ends in time. */
  readonly best: StopMoment | null;
  /** Seconds that it saves of the routine, or of the time limit where that is shorter. */
  readonly savedS: number;
}

/** Stopping may cost this share of the runs their success and of the balls their way home: too little to see in practice. Common practice, no source. */
export const STOP_TOLERANCE_FRAC = 0.005;

/**
 * The best moment to stop and leave: the earliest end of a move after which going on would bring no more than
 * STOP_TOLERANCE_FRAC of the runs (all balls home) and of the balls home. Where each second saved earns `pointsPerS` (in
 * balls), the moment with most balls home plus earnings instead. A ball that is home at the moment and leaves the wedge later counts.
 *
 * @param moveEndS second at which each move ends, increasing (the same in every trial: moves are timed)
 */
export function whenToStop(
  fates: FateBatch,
  moveEndS: readonly number[],
  timeLimitS: number,
  ballsPerS = 0,
): StopAdvice {
  const moments = moveEndS.flatMap((timeS, move) =>
    timeS <= timeLimitS ? [stopMoment(fates, move, timeS)] : [],
  );
  const best = ballsPerS > 0 ? mostEarned(moments, ballsPerS) : earliestGood(moments, fates.balls);
  const endS = Math.min(timeLimitS, moveEndS.at(-1) ?? 0);
  return { moments, best, savedS: best === null ? 0 : Math.max(0, endS - best.timeS) };
}

function stopMoment(fates: FateBatch, move: number, timeS: number): StopMoment {
  const { balls } = fates;
  const trials = fates.to - fates.from;
  let complete = 0;
  let home = 0;
  for (let t = 0; t < trials; t++) {
    let count = 0;
    for (let at = t * balls; at < (t + 1) * balls; at++) if (isHomeAt(fates, at, timeS)) count++;
    home += count;
    if (count === balls) complete++;
  }
  return {
    move,
    timeS,
    successRate: wilson(complete, trials),
    meanHome: trials === 0 ? 0 : home / trials,
  };
}

/** Came home by then, and was not yet lost again. */
function isHomeAt({ loss, homeAtS, lossAtS }: FateBatch, at: number, timeS: number): boolean {
  const cameS = homeAtS[at] ?? Number.NaN;
  if (!(cameS <= timeS)) return false;
  // Not so for a ball that left before it was lost in another way: lossAtS is then later than when it left. It counts as gone.
  return loss[at] === 0 || (loss[at] === LEFT_WEDGE && (lossAtS[at] ?? 0) > timeS);
}

const LEFT_WEDGE = 1 + LOSS_REASONS.indexOf("left-wedge");

function earliestGood(moments: readonly StopMoment[], balls: number): StopMoment | null {
  const runs = Math.max(0, ...moments.map((moment) => moment.successRate.value));
  const home = Math.max(0, ...moments.map((moment) => moment.meanHome));
  const good = ({ successRate, meanHome }: StopMoment): boolean =>
    successRate.value >= runs - STOP_TOLERANCE_FRAC && meanHome >= home - STOP_TOLERANCE_FRAC * balls;
  return moments.find(good) ?? moments.at(-1) ?? null;
}

function mostEarned(moments: readonly StopMoment[], ballsPerS: number): StopMoment | null {
  const earned = ({ meanHome, timeS }: StopMoment): number => meanHome - ballsPerS * timeS;
  return moments.reduce<StopMoment | null>(
    (best, moment) => (best === null || earned(moment) > earned(best) ? moment : best),
    null,
  );
}
