import { type DriftBounds, scaledBounds } from "./driftBounds.ts";

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

/** Bounds to be tried go out, the sure share within each comes back. */
export type Budgeting = Generator<DriftBounds, DriftBudget, number>;

/**
 * The drift budget by bisection: the largest factor on the bounds for which at least `wantedFrac` of the places stays sure.
 * The sure share falls as the bounds widen, so that halving finds the edge. Whoever runs the generator works out the shares:
 * about 0.2 s each for a long routine.
 */
export function* driftBudget(
  bounds: DriftBounds,
  wantedFrac: number,
  { most = 4, steps = 9 }: BudgetOptions = {},
): Budgeting {
  const search = largestFactor(wantedFrac, most, steps);
  let step = search.next();
  while (!step.done) step = search.next(yield scaledBounds(bounds, step.value));
  return { wantedFrac, ...step.value };
}

/** Bisection on any falling share: factors go out, the share at each comes back. */
export function* largestFactor(
  wantedFrac: number,
  most: number,
  steps: number,
): Generator<number, Omit<DriftBudget, "wantedFrac">, number> {
  const whole = yield most;
  if (whole >= wantedFrac) return { factor: most, toleranceFactor: 0, sureFrac: whole, isOpen: true };
  let low = 0;
  let high = most;
  let sureFrac = yield 0;
  for (let step = 0; step < steps; step++) {
    const middle = (low + high) / 2;
    const share = yield middle;
    if (share >= wantedFrac) {
      low = middle;
      sureFrac = share;
    } else high = middle;
  }
  return { factor: low, toleranceFactor: high - low, sureFrac, isOpen: false };
}
