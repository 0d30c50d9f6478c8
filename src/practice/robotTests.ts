import { type Estimate, estimateOf, meanOf, scatterOf, spreadOf } from "./estimate.ts";

/** A straight run: how far was commanded and how far it got, and how far to the left of the line it ended. */
export interface StraightRun {
  readonly commandedMm: number;
  readonly measuredMm: number;
  readonly leftMm: number;
}

/** Turns on the spot one after the other, all the same way: both angles summed up. */
export interface TurnRun {
  readonly commandedRad: number;
  readonly measuredRad: number;
  readonly turns: number;
}

export interface StraightFit {
  readonly distanceScale: Estimate;
  /** Scatter of one run, share of the distance. */
  readonly distanceSdFrac: Estimate;
  readonly curvatureRadPerMm: Estimate;
  readonly curvatureSdRadPerMm: Estimate;
}

/** @returns null for fewer than two runs */
export function fitStraights(runs: readonly StraightRun[]): StraightFit | null {
  const scales = runs.map(({ commandedMm, measuredMm }) => measuredMm / commandedMm - 1);
  // A gentle curve of length d strays by κ·d²/2.
  const bends = runs.map(({ measuredMm, leftMm }) => (2 * leftMm) / (measuredMm * measuredMm));
  const distanceScale = meanOf(scales);
  const distanceSdFrac = scatterOf(scales);
  const curvatureRadPerMm = meanOf(bends);
  const curvatureSdRadPerMm = scatterOf(bends);
  if (!distanceScale || !distanceSdFrac || !curvatureRadPerMm || !curvatureSdRadPerMm) return null;
  return { distanceScale, distanceSdFrac, curvatureRadPerMm, curvatureSdRadPerMm };
}

export interface TurnFit {
  readonly turnScale: Estimate;
  /** Scatter of a single turn, rad. */
  readonly turnSdRad: Estimate;
}

/**
 * Real over commanded turn, minus 1, and what a single turn is off by at random: n turns in a row are off by √n times as much, so
 * each row counts with the weight 1/n (weighted least squares through the origin).
 *
 * @returns null for fewer than two rows
 */
export function fitTurns(runs: readonly TurnRun[]): TurnFit | null {
  if (runs.length < 2) return null;
  let moment = 0;
  let weight = 0;
  for (const { commandedRad, measuredRad, turns } of runs) {
    moment += (commandedRad * (measuredRad - commandedRad)) / turns;
    weight += (commandedRad * commandedRad) / turns;
  }
  const scale = moment / weight;
  let squares = 0;
  for (const { commandedRad, measuredRad, turns } of runs) {
    const rest = measuredRad - commandedRad * (1 + scale);
    squares += (rest * rest) / turns;
  }
  const dof = runs.length - 1;
  return {
    turnScale: estimateOf(scale, Math.sqrt(squares / dof / weight), dof, runs.length),
    turnSdRad: spreadOf(squares, dof, runs.length),
  };
}
