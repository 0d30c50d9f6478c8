import type { Project } from "../model/project.ts";
import type { Drift } from "../model/robot.ts";
import type { Routine } from "../model/routine.ts";
import { log } from "../num/elementary.ts";
import { chanceOf, type Promised, promiseOf } from "./promise.ts";
import type { Placement } from "./testPlacements.ts";

/** Drift so many times as large as in the project; straights and turns each have one of these. */
export const DRIFT_FACTORS = [0.5, 1, 2, 4] as const;
/** Where the project's own drift stands among them. */
const AS_IT_IS = DRIFT_FACTORS.indexOf(1);

/** Half of the chi-square law's 95 % point with one degree of freedom (3.841): what the log-likelihood may fall behind its top. */
const BEHIND = 3.841 / 2;
/**
 * Likelihoods are counted in few simulated runs: two of them may lie apart by chance alone. So many standard errors of their
 * difference are allowed on top, which brings the intervals' cover to 95 % (tests/unit/practice/driftFit).
 */
const ALLOWED = 1;

/** A factor that explains the results best, and the least and largest that are not contradicted, whatever the other one is. */
export interface FactorRange {
  readonly factor: number;
  readonly low: number;
  readonly high: number;
  /** The least, or the largest, factor tried is among them: it may be smaller, or larger, still. */
  readonly openBelow: boolean;
  readonly openAbove: boolean;
}

/**
 * What would have to differ: the straights alone, the turns alone, both; either alone, so that these runs cannot tell them apart; or
 * nothing, because no other drift explains them better.
 */
export type DriftBlame = "straights" | "turns" | "both" | "either" | "none";

export interface DriftFit {
  readonly straight: FactorRange;
  readonly turn: FactorRange;
  readonly blame: DriftBlame;
  /** Log-likelihood by the factor of the straights, then by that of the turns, each in the order of DRIFT_FACTORS. */
  readonly logLikelihoods: readonly (readonly number[])[];
}

/** How likely what happened is under a pair of factors. */
export interface PairLikelihood {
  readonly logLikelihood: number;
  /** Variance of that, for the number of runs in which it was counted. */
  readonly variance: number;
}

/** What happened on one placement: how many balls came home. */
export interface Outcome {
  readonly placement: Placement;
  readonly home: number;
  /** On which day; left out or "" for not told. */
  readonly day?: string;
}

/** The drift of straights and that of turns so many times as large; the means stay, and so does how the robot is placed at the start. */
export function scaledDrift({ systematic, random, start }: Drift, straight: number, turn: number): Drift {
  return {
    systematic: {
      ...systematic,
      distanceScaleSd: systematic.distanceScaleSd * straight,
      curvatureSdRadPerMm: systematic.curvatureSdRadPerMm * straight,
      turnScaleSd: systematic.turnScaleSd * turn,
    },
    random: {
      distanceSdFrac: random.distanceSdFrac * straight,
      curvatureSdRadPerMm: random.curvatureSdRadPerMm * straight,
      turnSdFrac: random.turnSdFrac * turn,
      turnSdRad: random.turnSdRad * turn,
    },
    start,
  };
}

/** Every pair of factors, by the straights' and then by the turns'. */
export function driftPairs(): readonly (readonly [straight: number, turn: number])[] {
  return DRIFT_FACTORS.flatMap((straight) => DRIFT_FACTORS.map((turn) => [straight, turn] as const));
}

/**
 * How many times as large as stated the drift of straights and of turns must be to explain what happened: the likelihood of the numbers
 * of balls that came home, by simulation on the same placements with the same luck for each pair. Cost: outcomes × 16 × runs trials.
 */
export function fitDrift(
  project: Project,
  routine: Routine,
  outcomes: readonly Outcome[],
  options: { readonly runs: number; readonly seed: number },
): DriftFit {
  return driftFitOf(
    driftPairs().map(([straight, turn]) => {
      const drift = scaledDrift(project.robot.drift, straight, turn);
      const drifting = { ...project, robot: { ...project.robot, drift } };
      const promised = outcomes.map(({ placement }) => promiseOf(drifting, routine, placement, options));
      return likelihoodOf(promised, outcomes);
    }),
  );
}

/** @param promised for each of the outcomes */
export function likelihoodOf(promised: readonly Promised[], outcomes: readonly Outcome[]): PairLikelihood {
  let [logLikelihood, variance] = [0, 0];
  for (const [i, { home }] of outcomes.entries()) {
    const promise = promised[i];
    if (promise === undefined) throw new RangeError(`no promise for outcome ${i}`);
    const chance = chanceOf(promise, home);
    logLikelihood += log(chance);
    variance += (1 - chance) / (chance * promise.runs);
  }
  return { logLikelihood, variance };
}

/** The fit for what each of `driftPairs` makes of the outcomes. */
export function driftFitOf(pairs: readonly PairLikelihood[]): DriftFit {
  const top = pairs.reduce((best, each) => (each.logLikelihood > best.logLikelihood ? each : best));
  // By how much each may fall behind and is still possible: below 0 it is not.
  const spare = pairs.map(
    ({ logLikelihood, variance }) =>
      logLikelihood - top.logLikelihood + BEHIND + ALLOWED * Math.sqrt(variance + top.variance),
  );
  const rows = grid(spare);
  const likely = grid(pairs.map(({ logLikelihood }) => logLikelihood));
  return {
    straight: rangeOf(rows, likely),
    turn: rangeOf(turned(rows), turned(likely)),
    blame: blameOf(rows),
    logLikelihoods: likely,
  };
}

type Grid = readonly (readonly number[])[];

/** By the straights' factor, then by the turns'. */
function grid(values: readonly number[]): Grid {
  const count = DRIFT_FACTORS.length;
  return DRIFT_FACTORS.map((_, s) => values.slice(s * count, (s + 1) * count));
}

function turned(rows: Grid): Grid {
  return DRIFT_FACTORS.map((_, t) => rows.map((row) => row[t] ?? Number.NEGATIVE_INFINITY));
}

/** Of each factor only its best partner counts: the profile likelihood. */
function rangeOf(spare: Grid, likely: Grid): FactorRange {
  const profile = likely.map((line) => Math.max(...line));
  const possible = DRIFT_FACTORS.filter((_, i) => Math.max(...(spare[i] ?? [])) >= 0);
  const [low, high] = [possible[0] ?? 1, possible.at(-1) ?? 1];
  return {
    factor: DRIFT_FACTORS[profile.indexOf(Math.max(...profile))] ?? 1,
    ...{ low, high },
    openBelow: low === DRIFT_FACTORS[0],
    openAbove: high === DRIFT_FACTORS.at(-1),
  };
}

function blameOf(rows: Grid): DriftBlame {
  const turns = rows[AS_IT_IS] ?? [];
  const straights = turned(rows)[AS_IT_IS] ?? [];
  if ((turns[AS_IT_IS] ?? 0) >= 0) return "none";
  const [byStraights, byTurns] = [Math.max(...straights) >= 0, Math.max(...turns) >= 0];
  if (byStraights && byTurns) return "either";
  if (byStraights) return "straights";
  return byTurns ? "turns" : "both";
}
