import type { Drift } from "../model/robot.ts";

/** A value known to lie within centre ± half. */
export interface Around {
  readonly centre: number;
  readonly half: number;
}

/** How far the real motion can differ from the commanded one, at the most. What trial/drift draws, with limits instead of spreads. */
export interface DriftBounds {
  /** Same all run: real over commanded distance, minus 1; the same for turns; heading change per mm. */
  readonly distanceScale: Around;
  readonly turnScale: Around;
  readonly curvatureRadPerMm: Around;
  /** New each move, ± : share of the distance, share of the turn, added to each turn, heading change per mm. */
  readonly moveDistanceFrac: number;
  readonly moveTurnFrac: number;
  readonly moveTurnRad: number;
  readonly moveCurvatureRadPerMm: number;
  /** Start pose, ± in x, in y and in heading. */
  readonly startMm: number;
  readonly startRad: number;
}

/**
 * The bounds that hold every error of a drift up to `sds` of its standard deviations; means stay. With CUT_SD (trial/drift),
 * every drift that a trial can draw lies within.
 *
 * @param sds ≥ 0
 */
export function driftBounds({ systematic, random, start }: Drift, sds: number): DriftBounds {
  return {
    distanceScale: { centre: systematic.distanceScaleMean, half: sds * systematic.distanceScaleSd },
    turnScale: { centre: systematic.turnScaleMean, half: sds * systematic.turnScaleSd },
    curvatureRadPerMm: {
      centre: systematic.curvatureMeanRadPerMm,
      half: sds * systematic.curvatureSdRadPerMm,
    },
    moveDistanceFrac: sds * random.distanceSdFrac,
    moveTurnFrac: sds * random.turnSdFrac,
    moveTurnRad: sds * random.turnSdRad,
    moveCurvatureRadPerMm: sds * random.curvatureSdRadPerMm,
    startMm: sds * start.positionSdMm,
    startRad: sds * start.headingSdRad,
  };
}

/** Everything, means included, times `factor` ≥ 0: at 0 there is no drift at all. */
export function scaledBounds(bounds: DriftBounds, factor: number): DriftBounds {
  const around = ({ centre, half }: Around): Around => ({ centre: factor * centre, half: factor * half });
  return {
    distanceScale: around(bounds.distanceScale),
    turnScale: around(bounds.turnScale),
    curvatureRadPerMm: around(bounds.curvatureRadPerMm),
    moveDistanceFrac: factor * bounds.moveDistanceFrac,
    moveTurnFrac: factor * bounds.moveTurnFrac,
    moveTurnRad: factor * bounds.moveTurnRad,
    moveCurvatureRadPerMm: factor * bounds.moveCurvatureRadPerMm,
    startMm: factor * bounds.startMm,
    startRad: factor * bounds.startRad,
  };
}
