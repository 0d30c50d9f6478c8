import type { Project } from "../model/project.ts";
import type { Routine } from "../model/routine.ts";
import { type DriftBounds, scaledBounds } from "./driftBounds.ts";
import { sureCoverage } from "./sureCoverage.ts";

/** The largest drift under which a wanted share stays sure. */
export interface DriftBudget {
  readonly wantedFrac: number;
  /** Times the given bounds; the true limit of the promise lies between this and `factor + toleranceFactor`. 0: not even a hair of drift. */
  readonly factor: number;
  readonly toleranceFactor: number;
  /** Sure share at the factor. */
  readonly sureFrac: number;
  /** The whole range up to `most` was sure enough. */
  readonly isOpen: boolean;
}

export interface BudgetOptions {
  /** Largest factor tried. */
  readonly most?: number;
  /** Halvings of the range. */
  readonly steps?: number;
}

/**
 * The drift budget by bisection: the largest factor on the bounds for which at least `wantedFrac` of the places stays sure.
 * The sure share falls as the bounds widen, so that halving finds the edge. About 0.3 s a step for a long routine.
 */
export function driftBudget(
  project: Project,
  routine: Pick<Routine, "moves">,
  bounds: DriftBounds,
  wantedFrac: number,
  { most = 4, steps = 9 }: BudgetOptions = {},
): DriftBudget {
  const sureAt = (factor: number): number =>
    sureCoverage(project, routine, scaledBounds(bounds, factor)).sureFrac;
  const largest = largestFactor(sureAt, wantedFrac, most, steps);
  return { wantedFrac, ...largest };
}

/** Bisection on any falling share. */
export function largestFactor(
  shareAt: (factor: number) => number,
  wantedFrac: number,
  most: number,
  steps: number,
): Omit<DriftBudget, "wantedFrac"> {
  const whole = shareAt(most);
  if (whole >= wantedFrac) return { factor: most, toleranceFactor: 0, sureFrac: whole, isOpen: true };
  let low = 0;
  let high = most;
  let sureFrac = shareAt(0);
  for (let step = 0; step < steps; step++) {
    const middle = (low + high) / 2;
    const share = shareAt(middle);
    if (share >= wantedFrac) {
      low = middle;
      sureFrac = share;
    } else high = middle;
  }
  return { factor: low, toleranceFactor: high - low, sureFrac, isOpen: false };
}
