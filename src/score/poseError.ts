import { cos, sin } from "../num/elementary.ts";
import type { Around } from "./driftBounds.ts";

/**
 * By how much the robot's real pose can differ from the nominal one, as an affine form: centre + Σ coefficient·ξ with every ξ
 * somewhere in [−1, 1], plus a rest. What holds all run (scale, curvature) keeps its ξ from move to move, so that errors
 * that cancel on the way back do cancel; what the first order leaves out is bounded and goes into the rest.
 *
 * Source: affine arithmetic, Stolfi and de Figueiredo (1997); from memory. Checked against exact paths in
 * tests/property/sureCoverage.
 */
export interface PoseError {
  /** Coefficients of the symbols, entry 0 the centre; equally long. mm, mm, rad. */
  readonly x: readonly number[];
  readonly y: readonly number[];
  readonly heading: readonly number[];
  /** Radius of what is not in the forms: position in any direction, mm; heading, rad. */
  readonly restMm: number;
  readonly restRad: number;
}

export interface Interval {
  readonly low: number;
  readonly high: number;
}

/** How far one move can stray: what it adds is linear in these forms (coefficients as in PoseError). */
export interface MoveError {
  /** Drives: real over nominal progress, minus 1. Turns on the spot: 0. */
  readonly scale: readonly number[];
  /** Heading change added per unit of progress. For a turn on the spot: the sign of the turn times its scale error. */
  readonly bend: readonly number[];
}

/** A stretch of constant motion: a line or an arc of the origin, or a turn on the spot. */
export interface Motion {
  /** Nominal heading at its start. */
  readonly headingRad: number;
  /** 1 forward, −1 backward, 0 a turn on the spot. */
  readonly sigma: number;
  /** Nominal heading change per unit of progress. */
  readonly kappa: number;
}

/** Hands out symbols. 1 … 3 are those that hold all run. */
export class Symbols {
  private next = 4;

  /** distance, turn and curvature: the same symbol whenever it is asked for. */
  shared(which: 1 | 2 | 3, { centre, half }: Around, factor = 1): readonly number[] {
    const form = new Array<number>(which + 1).fill(0);
    form[0] = factor * centre;
    form[which] = factor * half;
    return form;
  }

  /** A value of its own within centre ± half. */
  fresh(half: number, centre = 0): readonly number[] {
    const at = half === 0 ? 0 : this.next++;
    const form = new Array<number>(at + 1).fill(0);
    if (half !== 0) form[at] = half;
    form[0] = centre;
    return form;
  }
}

/** Σ factor·form. */
export function sumOf(...terms: readonly (readonly [number, readonly number[]])[]): readonly number[] {
  const sum = new Array<number>(Math.max(1, ...terms.map(([, form]) => form.length))).fill(0);
  for (const [factor, form] of terms) {
    for (const [i, value] of form.entries()) sum[i] = (sum[i] ?? 0) + factor * value;
  }
  return sum;
}

/** Values that a form can take, its rest added on both sides. */
export function rangeOf(form: readonly number[], rest = 0): Interval {
  let half = rest;
  for (let i = 1; i < form.length; i++) half += Math.abs(form[i] ?? 0);
  const centre = form[0] ?? 0;
  return { low: centre - half, high: centre + half };
}

/** Largest size of a value within the interval. */
export function largest({ low, high }: Interval): number {
  return Math.max(Math.abs(low), Math.abs(high));
}

/** Values of ax·(x error) + ay·(y error) + b·(heading error). */
export function reach(error: PoseError, ax: number, ay: number, b: number): Interval {
  const rest = error.restMm * Math.sqrt(ax * ax + ay * ay) + error.restRad * Math.abs(b);
  return rangeOf(sumOf([ax, error.x], [ay, error.y], [b, error.heading]), rest);
}

export function headingRange(error: PoseError): Interval {
  return rangeOf(error.heading, error.restRad);
}

/** No error at all, so that the nominal path is the real one. */
export function isExact(error: PoseError): boolean {
  return error.restMm === 0 && error.restRad === 0 && [error.x, error.y, error.heading].every(isZero);
}

function isZero(form: readonly number[]): boolean {
  return form.every((value) => value === 0);
}

/**
 * The error after `q` of a motion. With φ the heading error, δ the scale error and t the nominal direction, the real place is
 * ∫(1 + δ)·t(θ + φ); to first order δ·chord + ∫φ·n, n the left normal. What is left out is at most
 * q·((1 + |δ|)φ²/2 + |δφ|), and |bend·δ|·q in the heading.
 */
export function errorAfter(error: PoseError, motion: Motion, move: MoveError, q: number): PoseError {
  const { sigma, kappa } = motion;
  const scale = largest(rangeOf(move.scale));
  const bend = largest(rangeOf(move.bend));
  // Progress q of the nominal path is made with a heading change of (κ + bend)(1 + δ)q.
  const gain = sumOf([1, move.bend], [kappa, move.scale]);
  const restRad = error.restRad + bend * scale * q;
  const heading = sumOf([1, error.heading], [q, gain]);
  if (sigma === 0) return { ...error, heading, restRad };
  const most = Math.max(headingSize(error), largest(rangeOf(heading, restRad)));
  const [cx, cy] = chord(motion, q);
  const [sx, sy] = chordMoment(motion, q);
  return {
    // Left normal of a vector (a, b): (−b, a).
    x: sumOf([1, error.x], [-cy, error.heading], [cx, move.scale], [-sy, gain]),
    y: sumOf([1, error.y], [cx, error.heading], [cy, move.scale], [sx, gain]),
    heading,
    restMm: error.restMm + q * (((1 + scale) * most * most) / 2 + scale * most + restRad),
    restRad,
  };
}

/** Largest heading error. */
export function headingSize(error: PoseError): number {
  return largest(headingRange(error));
}

/** σ∫t from 0 to q. */
function chord({ headingRad, sigma, kappa }: Motion, q: number): readonly [number, number] {
  const [re, im] = powerMoment(kappa, q, 0);
  return turned(headingRad, sigma * re, sigma * im);
}

/** σ∫s·t from 0 to q. */
function chordMoment({ headingRad, sigma, kappa }: Motion, q: number): readonly [number, number] {
  const [re, im] = powerMoment(kappa, q, 1);
  return turned(headingRad, sigma * re, sigma * im);
}

function turned(angle: number, re: number, im: number): readonly [number, number] {
  const c = cos(angle);
  const s = sin(angle);
  return [c * re - s * im, s * re + c * im];
}

/** Below this turn the closed forms would lose digits, and the series needs eight terms, rad. */
const SMALL_TURN_RAD = 0.3;

/** ∫ s^power·e^{iκs} from 0 to q, power 0 or 1, as [real, imaginary]. */
function powerMoment(kappa: number, q: number, power: 0 | 1): readonly [number, number] {
  const turn = kappa * q;
  if (Math.abs(turn) < SMALL_TURN_RAD) {
    // Σ (iκ)^n q^(n+power+1) / (n!·(n + power + 1))
    let term = power === 0 ? q : q * q;
    const sums = [0, 0];
    for (let n = 0; n < 10; n++) {
      const sign = n % 4 < 2 ? 1 : -1;
      sums[n % 2] = (sums[n % 2] ?? 0) + (sign * term) / (n + power + 1);
      term *= turn / (n + 1);
    }
    return [sums[0] ?? 0, sums[1] ?? 0];
  }
  const c = cos(turn);
  const s = sin(turn);
  if (power === 0) return [s / kappa, (1 - c) / kappa];
  return [(q * s) / kappa + (c - 1) / (kappa * kappa), (-q * c) / kappa + s / (kappa * kappa)];
}
