import { cos, sin } from "../num/elementary.ts";
import { Moments } from "../num/moments.ts";
import { type Estimate, estimateOf } from "./estimate.ts";

/** Where the robot ended after a square that should have brought it back: ahead and left of its start, seen as it stood there. */
export interface SquareRun {
  readonly sideMm: number;
  readonly aheadMm: number;
  readonly leftMm: number;
}

/** Squares driven to the right (clockwise) and to the left, all of the same side. */
export interface SquareRuns {
  readonly right: readonly SquareRun[];
  readonly left: readonly SquareRun[];
}

export interface SquareErrors {
  /** Error of each quarter turn and heading change along each side, rad. */
  readonly alphaRad: number;
  readonly betaRad: number;
}

/**
 * First-order errors of a robot that drives squares both ways, from the mean end points' distances ahead of the start.
 *
 * Type A, alpha = (x_cw + x_ccw)/(−4L); type B, beta = (x_cw − x_ccw)/(−4L).
 * Source: Borenstein and Feng, IEEE T-RA 12 (1996) 869–880. Checked in tests/published/squares.
 */
export function squareErrors(sideMm: number, xRightMm: number, xLeftMm: number): SquareErrors {
  return {
    alphaRad: (xRightMm + xLeftMm) / (-4 * sideMm),
    betaRad: (xRightMm - xLeftMm) / (-4 * sideMm),
  };
}

/** True over assumed gauge: 90/(90 − α°). Source as above. */
export function gaugeRatio(alphaRad: number): number {
  return Math.PI / 2 / (Math.PI / 2 - alphaRad);
}

/** Right over left wheel diameter: (R + b/2)/(R − b/2), R = (L/2)/sin(β/2) the radius of what should be a straight side. Source as above. */
export function wheelRatio(betaRad: number, sideMm: number, gaugeMm: number): number {
  return wheelRatioOf((2 * sin(betaRad / 2)) / sideMm, gaugeMm);
}

/** The same from the curvature 1/R of straights, left positive. */
export function wheelRatioOf(curvatureRadPerMm: number, gaugeMm: number): number {
  const bend = (curvatureRadPerMm * gaugeMm) / 2;
  return (1 + bend) / (1 - bend);
}

/** Larger distance of the two mean end points from the start, mm: the systematic error of Borenstein and Feng. */
export function systematicErrorMm(runs: SquareRuns): number {
  const [right, left] = [runs.right, runs.left].map((list) => {
    const { x, y } = centreOf(list);
    return Math.sqrt(x * x + y * y);
  });
  return Math.max(right ?? 0, left ?? 0);
}

function centreOf(runs: readonly SquareRun[]): { x: number; y: number } {
  const n = Math.max(1, runs.length);
  return {
    x: runs.reduce((sum, { aheadMm }) => sum + aheadMm, 0) / n,
    y: runs.reduce((sum, { leftMm }) => sum + leftMm, 0) / n,
  };
}

/**
 * Where a square ends, in sides: four straights that curve by `bendRad` each, four turns short or long by the share `turnScale`.
 *
 * @param sense 1: to the left, −1: to the right
 */
function squareEnd(turnScale: number, bendRad: number, sense: 1 | -1): readonly [number, number] {
  let [x, y, heading] = [0, 0, 0];
  const size = Math.abs(bendRad);
  // Chord of an arc of length 1: sin φ/φ ahead, (1 − cos φ)/φ aside.
  const ahead = size < 1e-6 ? 1 - (bendRad * bendRad) / 6 : sin(bendRad) / bendRad;
  const aside = size < 1e-6 ? bendRad / 2 : (1 - cos(bendRad)) / bendRad;
  for (let side = 0; side < 4; side++) {
    const [c, s] = [cos(heading), sin(heading)];
    x += c * ahead - s * aside;
    y += s * ahead + c * aside;
    heading += bendRad + sense * (Math.PI / 2) * (1 + turnScale);
  }
  return [x, y];
}

export interface SquareFit {
  readonly turnScale: Estimate;
  readonly curvatureRadPerMm: Estimate;
}

const FIT_STEP = 1e-6;
const FIT_ROUNDS = 30;

/**
 * Turn scale and curvature that explain the end points of squares both ways: least squares of the exact end points, begun at the
 * first-order errors. Each run's deviation moves the two by fixed weights, so that their scatter gives Student intervals (Welch's
 * degrees of freedom) whatever the shape of the cloud of end points.
 *
 * @param runs at least two each way, all of one side
 * @param distanceScale real over commanded distance, minus 1
 */
export function fitSquares(runs: SquareRuns, distanceScale: number): SquareFit | null {
  const sideMm = (runs.right[0]?.sideMm ?? 0) * (1 + distanceScale);
  if (runs.right.length < 2 || runs.left.length < 2 || !(sideMm > 0)) return null;
  const [right, left] = [centreOf(runs.right), centreOf(runs.left)];
  const target = [right.x, right.y, left.x, left.y].map((mm) => mm / sideMm);
  const start = squareErrors(sideMm, right.x, left.x);
  let turnScale = -start.alphaRad / (Math.PI / 2);
  let bend = start.betaRad;
  let weights = weightsAt(turnScale, bend);
  for (let round = 0; round < FIT_ROUNDS; round++) {
    const ends = endsAt(turnScale, bend);
    const off = target.map((value, i) => value - (ends[i] ?? 0));
    const [a, b] = weights.map((row) => row.reduce((sum, weight, i) => sum + weight * (off[i] ?? 0), 0));
    turnScale += a ?? 0;
    bend += b ?? 0;
    weights = weightsAt(turnScale, bend);
    if (Math.abs(a ?? 0) + Math.abs(b ?? 0) < 1e-14) break;
  }
  const [forTurn = [], forBend = []] = weights;
  return {
    turnScale: withScatter(turnScale, forTurn, runs, sideMm, 1),
    curvatureRadPerMm: withScatter(bend / sideMm, forBend, runs, sideMm, 1 / sideMm),
  };
}

function endsAt(turnScale: number, bend: number): readonly number[] {
  return [...squareEnd(turnScale, bend, -1), ...squareEnd(turnScale, bend, 1)];
}

/** Rows of (JᵀJ)⁻¹Jᵀ: how a change of the four coordinates moves turn scale and bend. */
function weightsAt(turnScale: number, bend: number): readonly (readonly number[])[] {
  const slope = (up: readonly number[], down: readonly number[]): readonly number[] =>
    up.map((value, i) => (value - (down[i] ?? 0)) / (2 * FIT_STEP));
  const u = slope(endsAt(turnScale + FIT_STEP, bend), endsAt(turnScale - FIT_STEP, bend));
  const v = slope(endsAt(turnScale, bend + FIT_STEP), endsAt(turnScale, bend - FIT_STEP));
  const dot = (p: readonly number[], q: readonly number[]): number =>
    p.reduce((sum, value, i) => sum + value * (q[i] ?? 0), 0);
  const [uu, uv, vv] = [dot(u, u), dot(u, v), dot(v, v)];
  const determinant = uu * vv - uv * uv;
  return [
    u.map((value, i) => (vv * value - uv * (v[i] ?? 0)) / determinant),
    v.map((value, i) => (uu * value - uv * (u[i] ?? 0)) / determinant),
  ];
}

function withScatter(
  value: number,
  weights: readonly number[],
  runs: SquareRuns,
  sideMm: number,
  unit: number,
): Estimate {
  const [wx = 0, wy = 0, vx = 0, vy = 0] = weights;
  const part = (list: readonly SquareRun[], x: number, y: number): Moments => {
    const moments = new Moments();
    for (const { aheadMm, leftMm } of list) moments.add((unit * (x * aheadMm + y * leftMm)) / sideMm);
    return moments;
  };
  const [a, b] = [part(runs.right, wx, wy), part(runs.left, vx, vy)];
  const [p, q] = [a.variance / a.count, b.variance / b.count];
  const dof = ((p + q) * (p + q)) / ((p * p) / (a.count - 1) + (q * q) / (b.count - 1) || 1);
  return estimateOf(value, Math.sqrt(p + q), Math.max(1, dof), a.count + b.count);
}
