import type { Project } from "../model/project.ts";
import type { Drift } from "../model/robot.ts";
import type { Routine } from "../model/routine.ts";
import { log } from "../num/elementary.ts";
import { chanceOf, promiseOf } from "./promise.ts";
import type { Placement } from "./testPlacements.ts";

/** Drift so many times as large as in the project. */
export const DRIFT_FACTORS = [0, 0.5, 1, 1.5, 2, 3, 4, 6] as const;

/** Half of the chi-square law's 95 % point with one degree of freedom (3.841): what the log-likelihood may fall behind its top. */
const BEHIND = 3.841 / 2;

export interface DriftFit {
  /** The factor that explains the results best, and the least and largest that are not contradicted. */
  readonly factor: number;
  readonly low: number;
  readonly high: number;
  /** Log-likelihood of each of DRIFT_FACTORS. */
  readonly logLikelihoods: readonly number[];
}

/** What happened on one placement: how many balls came home. */
export interface Outcome {
  readonly placement: Placement;
  readonly home: number;
}

/** All parts of the drift so many times as large; the means stay. */
export function scaledDrift({ systematic, random, start }: Drift, factor: number): Drift {
  return {
    systematic: {
      ...systematic,
      distanceScaleSd: systematic.distanceScaleSd * factor,
      turnScaleSd: systematic.turnScaleSd * factor,
      curvatureSdRadPerMm: systematic.curvatureSdRadPerMm * factor,
    },
    random: {
      distanceSdFrac: random.distanceSdFrac * factor,
      turnSdFrac: random.turnSdFrac * factor,
      turnSdRad: random.turnSdRad * factor,
      curvatureSdRadPerMm: random.curvatureSdRadPerMm * factor,
    },
    start: {
      positionSdMm: start.positionSdMm * factor,
      headingSdRad: start.headingSdRad * factor,
    },
  };
}

/**
 * How many times as large as stated the drift must be to explain what happened: the likelihood of the numbers of balls that came home,
 * by simulation on the same placements with the same luck for each factor. Cost: outcomes × 8 × runs trials.
 */
export function fitDrift(
  project: Project,
  routine: Routine,
  outcomes: readonly Outcome[],
  options: { readonly runs: number; readonly seed: number },
): DriftFit {
  const logLikelihoods = DRIFT_FACTORS.map((factor) => {
    const drift = scaledDrift(project.robot.drift, factor);
    const drifting = { ...project, robot: { ...project.robot, drift } };
    return outcomes.reduce(
      (sum, { placement, home }) =>
        sum + log(chanceOf(promiseOf(drifting, routine, placement, options), home)),
      0,
    );
  });
  return driftFitOf(logLikelihoods);
}

/** The fit for the log-likelihood of each of DRIFT_FACTORS. */
export function driftFitOf(logLikelihoods: readonly number[]): DriftFit {
  const top = Math.max(...logLikelihoods);
  const likely = DRIFT_FACTORS.filter((_, i) => (logLikelihoods[i] ?? top) >= top - BEHIND);
  return {
    factor: DRIFT_FACTORS[logLikelihoods.indexOf(top)] ?? 1,
    low: likely[0] ?? 0,
    high: likely.at(-1) ?? 0,
    logLikelihoods,
  };
}
