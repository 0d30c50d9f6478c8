import type { PointMm } from "../../model/zone.ts";

/** Step across the robot at which the profile is told, mm: a plate's ends and a V's bottom are known to a quarter of it. */
export const PROFILE_STEP_MM = 0.5;

/**
 * Where a ball touches a robot that drives straight at it. For every place across (y, robot frame) the profile holds how far
 * ahead of the axle (x) the ball's centre is when the outline meets it: the front of outline ⊕ disc. Driven on, a round ball
 * gives way toward where the profile falls back, and stays where it is level: that is all of straight pushing.
 */
export interface Profile {
  readonly radiusMm: number;
  /** Place across of the first entry; the others follow at PROFILE_STEP_MM. Symmetric about 0. */
  readonly firstYMm: number;
  /** x of the ball's centre; −Infinity where the ball is passed without a touch. */
  readonly xMm: Float64Array;
}

/**
 * @param outline the footprint, robot frame, counter-clockwise, mm
 * @param radiusMm the ball's radius, > 0
 */
export function profileOf(outline: readonly PointMm[], radiusMm: number): Profile {
  const reach = outline.reduce((most, p) => Math.max(most, Math.abs(p.yMm)), 0) + radiusMm;
  const half = Math.floor(reach / PROFILE_STEP_MM);
  const firstYMm = -half * PROFILE_STEP_MM;
  const xMm = new Float64Array(2 * half + 1).fill(Number.NEGATIVE_INFINITY);
  outline.forEach((from, i) => {
    raiseAtCorner(xMm, firstYMm, from, radiusMm);
    raiseAlongEdge(xMm, firstYMm, from, outline[(i + 1) % outline.length] ?? from, radiusMm);
  });
  return { radiusMm, firstYMm, xMm };
}

/** Disc about a corner: x = corner + √(r² − Δy²). */
function raiseAtCorner(xMm: Float64Array, firstYMm: number, corner: PointMm, radiusMm: number): void {
  const from = Math.ceil((corner.yMm - radiusMm - firstYMm) / PROFILE_STEP_MM);
  const to = Math.floor((corner.yMm + radiusMm - firstYMm) / PROFILE_STEP_MM);
  for (let i = Math.max(0, from); i <= Math.min(xMm.length - 1, to); i++) {
    const aside = firstYMm + i * PROFILE_STEP_MM - corner.yMm;
    raise(xMm, i, corner.xMm + Math.sqrt(Math.max(0, radiusMm * radiusMm - aside * aside)));
  }
}

/** An edge shifted outward by the radius, where it faces forward. */
function raiseAlongEdge(
  xMm: Float64Array,
  firstYMm: number,
  from: PointMm,
  to: PointMm,
  radiusMm: number,
): void {
  const dx = to.xMm - from.xMm;
  const dy = to.yMm - from.yMm;
  // Counter-clockwise: the outward normal is (dy, −dx), forward for dy > 0.
  if (dy <= 1e-9) return;
  const length = Math.sqrt(dx * dx + dy * dy);
  const shiftX = (radiusMm * dy) / length;
  const shiftY = (-radiusMm * dx) / length;
  const low = Math.ceil((from.yMm + shiftY - firstYMm) / PROFILE_STEP_MM - 1e-9);
  const high = Math.floor((to.yMm + shiftY - firstYMm) / PROFILE_STEP_MM + 1e-9);
  for (let i = Math.max(0, low); i <= Math.min(xMm.length - 1, high); i++) {
    const along = (firstYMm + i * PROFILE_STEP_MM - from.yMm - shiftY) / dy;
    raise(xMm, i, from.xMm + shiftX + along * dx);
  }
}

function raise(xMm: Float64Array, i: number, value: number): void {
  if (value > (xMm[i] ?? Number.POSITIVE_INFINITY)) xMm[i] = value;
}
