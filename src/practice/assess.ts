import { betaQuantile } from "../num/beta.ts";
import { type Rate, wilson } from "../num/interval.ts";
import { compareDays, type DayComparison } from "./days.ts";

/** One practice run that was made: what was promised for it, and whether every ball came home. */
export interface Attempt {
  /** Probability of success, strictly between 0 and 1. */
  readonly promised: number;
  readonly succeeded: boolean;
  /** On which day, by a date or any name; "" for not told. */
  readonly day?: string;
}

export type Verdict = "fits" | "worse" | "better" | "too-few";

/** A group of attempts with like promises. */
export interface CalibrationPoint {
  readonly promised: number;
  readonly observed: Rate;
}

export interface Assessment {
  readonly attempts: number;
  readonly successes: number;
  /** Mean of the promises. */
  readonly promised: number;
  /** Success rate after these runs, from a uniform prior: mean and equal-tailed 95 % of Beta(1 + s, 1 + f). */
  readonly updated: Rate;
  /** Chance of so few, or so many, successes if the promises are right. */
  readonly chanceOfFewer: number;
  readonly chanceOfMore: number;
  /** Mean squared error of the promises, and what it is on average for promises that are right. */
  readonly brier: number;
  readonly brierExpected: number;
  readonly points: readonly CalibrationPoint[];
  readonly verdict: Verdict;
  /** null where fewer than two days were told. */
  readonly days: DayComparison | null;
}

/** A chance below this is called a contradiction. */
const UNLIKELY = 0.05;
/** Fewer runs can hardly contradict anything. */
const FEWEST = 5;
const GROUPS = 4;

/** Holds promises against what happened. */
export function assess(attempts: readonly Attempt[]): Assessment {
  const successes = attempts.filter(({ succeeded }) => succeeded).length;
  const law = successLaw(attempts.map(({ promised }) => promised));
  const sum = (from: number, to: number): number => law.slice(from, to).reduce((a, b) => a + b, 0);
  const chanceOfFewer = Math.min(1, sum(0, successes + 1));
  const chanceOfMore = Math.min(1, sum(successes, law.length));
  return {
    attempts: attempts.length,
    successes,
    promised: meanOf(attempts.map(({ promised }) => promised)),
    updated: betaRate(successes, attempts.length),
    chanceOfFewer,
    chanceOfMore,
    brier: meanOf(attempts.map(({ promised, succeeded }) => squared(promised - (succeeded ? 1 : 0)))),
    brierExpected: meanOf(attempts.map(({ promised }) => promised * (1 - promised))),
    points: calibrationPoints(attempts),
    verdict: verdictOf(attempts.length, chanceOfFewer, chanceOfMore),
    days: compareDays(attempts.map((attempt) => ({ ...attempt, day: attempt.day ?? "" }))),
  };
}

/** Posterior of a success rate under a uniform prior. Checked in tests/published/practice. */
export function betaRate(successes: number, trials: number): Rate {
  const [a, b] = [1 + successes, 1 + trials - successes];
  return { value: a / (a + b), low: betaQuantile(0.025, a, b), high: betaQuantile(0.975, a, b), trials };
}

/** Law of the number of successes of independent attempts with these chances: Poisson's binomial, by convolution. */
export function successLaw(chances: readonly number[]): readonly number[] {
  let law = [1];
  for (const p of chances) {
    law = Array.from({ length: law.length + 1 }, (_, k) => (law[k] ?? 0) * (1 - p) + (law[k - 1] ?? 0) * p);
  }
  return law;
}

function verdictOf(attempts: number, fewer: number, more: number): Verdict {
  if (attempts < FEWEST) return "too-few";
  if (fewer < UNLIKELY) return "worse";
  return more < UNLIKELY ? "better" : "fits";
}

/** Groups of about equal size, by rising promise. */
function calibrationPoints(attempts: readonly Attempt[]): readonly CalibrationPoint[] {
  const sorted = [...attempts].sort((a, b) => a.promised - b.promised);
  const groups = Math.min(GROUPS, Math.floor(sorted.length / FEWEST));
  return Array.from({ length: groups }, (_, g) => {
    const group = sorted.slice(
      Math.round((g * sorted.length) / groups),
      Math.round(((g + 1) * sorted.length) / groups),
    );
    return {
      promised: meanOf(group.map(({ promised }) => promised)),
      observed: wilson(group.filter(({ succeeded }) => succeeded).length, group.length),
    };
  });
}

function meanOf(values: readonly number[]): number {
  return values.length === 0 ? 0 : values.reduce((a, b) => a + b, 0) / values.length;
}

function squared(x: number): number {
  return x * x;
}
