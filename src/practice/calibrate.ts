import type { Drive } from "../model/robot.ts";
import { fitRestitution, fitRolling } from "./ballTests.ts";
import { type Estimate, mapped } from "./estimate.ts";
import type { Measurements } from "./measurements.ts";
import { fitStraights, fitTurns } from "./robotTests.ts";
import { fitSquares, systematicErrorMm, wheelRatioOf } from "./squares.ts";

/** What the tests tell of robot and ball; null where there were too few of them. */
export interface Calibration {
  /** Real over commanded distance, minus 1. */
  readonly distanceScale: Estimate | null;
  readonly distanceSdFrac: Estimate | null;
  /** Real over commanded turn, minus 1: from turns, or from squares where there are none. */
  readonly turnScale: Estimate | null;
  /** What a single turn is off by at random. */
  readonly turnSdRad: Estimate | null;
  /** Heading change per distance on a straight, left positive: from squares, or from straights where there are none. */
  readonly curvatureRadPerMm: Estimate | null;
  readonly curvatureSdRadPerMm: Estimate | null;
  readonly effectiveGaugeMm: Estimate | null;
  /** Right over left wheel diameter. */
  readonly wheelRatio: Estimate | null;
  readonly rollingResistance: Estimate | null;
  readonly restitution: Estimate | null;
  /** Larger distance of the two mean end points of the squares from the start, mm. */
  readonly squareErrorMm: number | null;
  readonly warnings: readonly CalibrationWarning[];
}

export type CalibrationWarning = "turns-and-squares-differ" | "sides-differ" | "too-few";

/** Standard errors apart beyond which two estimates of one thing contradict each other. */
const APART = 3;

/**
 * Works the tests out.
 *
 * @param drive gauge, to put turn scale and curvature into tracks and wheels; acceleration, for the push test
 */
export function calibrate(measured: Measurements, drive: Drive): Calibration {
  const warnings: CalibrationWarning[] = [];
  const straights = fitStraights(measured.straights);
  const turns = fitTurns(measured.turns);
  const sides = new Set([...measured.squaresRight, ...measured.squaresLeft].map(({ sideMm }) => sideMm));
  if (sides.size > 1) warnings.push("sides-differ");
  const runs = { right: measured.squaresRight, left: measured.squaresLeft };
  const squares = sides.size === 1 ? fitSquares(runs, straights?.distanceScale.value ?? 0) : null;
  const turnScale = turns?.turnScale ?? squares?.turnScale ?? null;
  const curvatureRadPerMm = squares?.curvatureRadPerMm ?? straights?.curvatureRadPerMm ?? null;
  if (turns && squares && apart(turns.turnScale, squares.turnScale))
    warnings.push("turns-and-squares-differ");
  if (someTooFew(measured)) warnings.push("too-few");
  const gauge = turnScale && mapped(turnScale, (scale) => drive.gaugeMm / (1 + scale));
  return {
    distanceScale: straights?.distanceScale ?? null,
    distanceSdFrac: straights?.distanceSdFrac ?? null,
    turnScale,
    turnSdRad: turns?.turnSdRad ?? null,
    curvatureRadPerMm,
    curvatureSdRadPerMm: straights?.curvatureSdRadPerMm ?? null,
    effectiveGaugeMm: gauge,
    wheelRatio:
      curvatureRadPerMm &&
      mapped(curvatureRadPerMm, (bend) => wheelRatioOf(bend, gauge?.value ?? drive.gaugeMm)),
    rollingResistance: fitRolling(measured.rolls, measured.pushes, drive.accelMmPerS2),
    restitution: fitRestitution(measured.rebounds),
    squareErrorMm: squares ? systematicErrorMm(runs) : null,
    warnings,
  };
}

function apart(one: Estimate, two: Estimate): boolean {
  return Math.abs(one.value - two.value) > APART * Math.sqrt(one.se * one.se + two.se * two.se);
}

/** A kind of test that was made, but too seldom to tell its scatter. */
function someTooFew(measured: Measurements): boolean {
  const { straights, turns, squaresRight, squaresLeft, rolls, pushes, rebounds } = measured;
  const counts = [straights.length, turns.length, rolls.length + pushes.length, rebounds.length];
  const squares = [squaresRight.length, squaresLeft.length];
  return counts.includes(1) || (squares.some((count) => count > 0) && squares.some((count) => count < 2));
}
