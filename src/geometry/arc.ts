import { atan2, cos, sin } from "../num/elementary.ts";

/** Which side of the true region a polygon with straight pieces for its arcs keeps to: part of it, or all of it. */
export type Bound = "inside" | "outside";

/** inscribed: corners on the circle, chords inside it. circumscribed: straight pieces touch the circle from outside. */
export type ArcStyle = "inscribed" | "circumscribed";

/** No straight piece spans more, rad: keeps a circumscribed corner within 1.42 radii however loose the tolerance. */
const WIDEST_STEP_RAD = 1.5707963267948966;

/** A whole number of steps may exceed the arc by this share before one more is taken: rounding, not geometry. */
const STEP_SLACK = 1e-9;

/**
 * Largest angle of one straight piece such that neither a chord dips nor a circumscribed corner sticks out by more
 * than the tolerance: r(1/cos(h/2) − 1) ≤ tol, and r(1 − cos(h/2)) is smaller still. tan²(h/2) = (1 + tol/r)² − 1.
 */
export function arcStepRad(radiusMm: number, toleranceMm: number): number {
  const t = toleranceMm / radiusMm;
  return Math.min(2 * atan2(Math.sqrt(2 * t + t * t), 1), WIDEST_STEP_RAD);
}

/**
 * Appends the corners that stand for the arc between its two ends, both left out: the points on the circle
 * (inscribed), or the meeting points of the tangents at evenly spaced points, the ends included (circumscribed).
 *
 * @param out flat list that grows, mm
 * @param ux @param uy from the centre to the start of the arc, mm
 * @param angleRad signed, |angle| ≤ 2π
 * @param stepRad from arcStepRad
 */
export function appendArc(
  out: number[],
  centreX: number,
  centreY: number,
  ux: number,
  uy: number,
  angleRad: number,
  stepRad: number,
  style: ArcStyle,
): void {
  const steps = Math.max(1, Math.ceil(Math.abs(angleRad) / stepRad - STEP_SLACK));
  const h = angleRad / steps;
  const c = cos(h);
  const s = sin(h);
  const tanHalf = s / (1 + c);
  const inscribed = style === "inscribed";
  let x = inscribed ? ux * c - uy * s : ux - uy * tanHalf;
  let y = inscribed ? uy * c + ux * s : uy + ux * tanHalf;
  for (let i = inscribed ? 1 : 0; i < steps; i++) {
    out.push(centreX + x, centreY + y);
    const turned = x * c - y * s;
    y = y * c + x * s;
    x = turned;
  }
}
