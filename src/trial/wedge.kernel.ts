import { MAX_BALLS } from "../model/project.ts";
import { GRAVITY_MM_PER_S2 } from "../model/units.ts";
import {
  bx,
  by,
  halt,
  inertia,
  mode,
  REST,
  radius,
  roam,
  rollDecel,
  SLIDING,
  settleMode,
  sx,
  sy,
  vx,
  vy,
} from "./balls.kernel.ts";

/**
 * The wedge under a ball. Depth d: how far the ball's centre is beyond the wedge's long side, toward the corner.
 * The centre's height z(d) over the floor is the potential: over a lip of height h the ball pivots about the edge,
 * z = h + √(r² − d²) − r for −√(2rh − h²) < d < 0, and z' there times m·g is exactly the push it takes
 * (F = m·g·√(2rh − h²)/(r − h) at the start; Halliday, Fundamentals of Physics 10e, problem 12-25). A rolling ball that
 * meets the lip keeps v·(1 − h/(r(1+k))) (angular momentum about the edge) and accelerates with −g·z'/(1+k) along d.
 */

/** Step for a ball on a slope, s: at 300 mm/s it moves 1.25 mm, a tenth of the shortest slope that is allowed. */
export const SLOPE_STEP_S = 1 / 240;
/** A ball held by a wall or another ball on a slope moves less than this in one such step, mm. */
const HELD_MM = 5e-4;

export const wedge = {
  /** Unit normal of the long side, into the corner, and its level: depth = nx·x + ny·y − level. */
  nx: 0,
  ny: 0,
  level: 0,
  lip: 0,
  slope: 0,
  /** The slope ends at this depth; level from there on. */
  run: 0,
  /** Depth at which a ball counts as home: 0, or the radius when it must be wholly on. */
  wholly: false,
  /** The wedge has a height at all. */
  raised: false,
};

/** Where ball i starts to climb: −√(2rh − h²), or −r where the lip is as high as the ball's middle. */
export const edgeDepth = new Float64Array(MAX_BALLS);
/** 1: the lip stops this ball like a wall (too high, or more than the drive can push over). */
export const lipBlocks = new Uint8Array(MAX_BALLS);
/** 1: the ball is past its edge depth. */
export const onWedge = new Uint8Array(MAX_BALLS);

export function depthOf(i: number): number {
  return wedge.nx * bx[i]! + wedge.ny * by[i]! - wedge.level;
}

/** dz/dd at depth d for ball i. */
export function slopeAt(i: number, d: number): number {
  if (d < 0) {
    if (wedge.lip === 0 || d < edgeDepth[i]!) return 0;
    const r = radius[i]!;
    return -d / Math.sqrt(r * r - d * d);
  }
  return d < wedge.run ? wedge.slope : 0;
}

/** True where ball i has to be stepped: on the wedge where it is not level. */
export function onSlope(i: number): boolean {
  return onWedge[i] === 1 && wedge.raised && slopeAt(i, depthOf(i)) !== 0;
}

/** The slope under ball i is too gentle to start it: tan θ ≤ (1+k)·c. */
export function holds(i: number, slope: number): boolean {
  return (GRAVITY_MM_PER_S2 * Math.abs(slope)) / (1 + inertia[i]!) <= rollDecel[i]!;
}

function kick(i: number, t: number): void {
  const slope = slopeAt(i, depthOf(i));
  const sliding = mode[i] === SLIDING;
  const dv = (-GRAVITY_MM_PER_S2 * slope * t) / (sliding ? 1 : 1 + inertia[i]!);
  vx[i]! += wedge.nx * dv;
  vy[i]! += wedge.ny * dv;
  if (sliding) return;
  sx[i] = vx[i]!;
  sy[i] = vy[i]!;
  settleMode(i);
}

/** One step of a ball on a slope: half the pull, free motion, half the pull. Energy error of second order in t. */
export function roamSlope(i: number, t: number): void {
  const still = vx[i] === 0 && vy[i] === 0 && mode[i] !== SLIDING;
  if (still && holds(i, slopeAt(i, depthOf(i)))) {
    halt(i);
    return;
  }
  kick(i, 0.5 * t);
  roam(i, t);
  if (mode[i] === REST && holds(i, slopeAt(i, depthOf(i)))) return;
  kick(i, 0.5 * t);
}

/** After a step: a ball that did not move although the slope pulls is held by what it touches. */
export function isHeld(fromX: number, fromY: number, i: number): boolean {
  const dx = bx[i]! - fromX;
  const dy = by[i]! - fromY;
  return dx * dx + dy * dy < HELD_MM * HELD_MM;
}

/** Ball i came to its edge depth: it loses speed at the lip. Returns true when it went on or off the wedge. */
export function crossEdge(i: number): boolean {
  const inside = depthOf(i) >= edgeDepth[i]! - 1e-9;
  if (inside === (onWedge[i] === 1) || (inside && lipBlocks[i] === 1)) return false;
  onWedge[i] = inside ? 1 : 0;
  if (!inside || wedge.lip === 0) return true;
  const keep = 1 - wedge.lip / (radius[i]! * (1 + inertia[i]!));
  const lossV = (1 - keep) * (vx[i]! * wedge.nx + vy[i]! * wedge.ny);
  const lossS = (1 - keep) * (sx[i]! * wedge.nx + sy[i]! * wedge.ny);
  vx[i]! -= lossV * wedge.nx;
  vy[i]! -= lossV * wedge.ny;
  sx[i]! -= lossS * wedge.nx;
  sy[i]! -= lossS * wedge.ny;
  settleMode(i);
  return true;
}

/** Ball i counts as delivered where it is now. */
export function isHome(i: number): boolean {
  return depthOf(i) > (wedge.wholly ? radius[i]! : 0);
}
