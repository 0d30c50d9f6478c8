import { GRAVITY_MM_PER_S2 } from "../model/units.ts";
import { SLOTS } from "../num/slots.ts";
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
  slideDecel,
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
 * Velocities are those seen from above. On the slope θ that makes the pull g·sin θ·cos θ/(1+k), and the part along d of a
 * velocity that comes from the level is cos θ of what it was, so that the speed along the surface (and the energy) is kept.
 */

/** Step for a ball that climbs a lip, s: at 300 mm/s it moves 1.25 mm, a tenth of the shortest slope that is allowed. */
export const LIP_STEP_S = 1 / 240;
/** Step for a ball on a slope, which pulls evenly, s: the floor's part, along its way, turns little meanwhile. */
export const SLOPE_STEP_S = 1 / 60;
/** The same for balls that the robot pushes over the lip and up or down the slope, s. */
export const HAND_LIP_STEP_S = 1 / 60;
export const HAND_SLOPE_STEP_S = 1 / 30;
/** A ball held by a wall or another ball on a slope moves on more slowly than this, mm/s. */
const HELD_MM_PER_S = 0.03;

export const wedge = {
  /** Unit normal of the long side, into the corner, and its level: depth = nx·x + ny·y − level. */
  nx: 0,
  ny: 0,
  level: 0,
  lip: 0,
  slope: 0,
  /** cos θ of the slope. 1 where it is steeper than 45°: such a face is crossed like a lip, as a barrier of energy. */
  lean: 1,
  /** The slope ends at this depth; level from there on. */
  run: 0,
  /** Depth at which a ball counts as home: 0, or the radius when it must be wholly on. */
  wholly: false,
  /** The wedge has a height at all. */
  raised: false,
};

/** Where ball i starts to climb: −√(2rh − h²), or −r where the lip is as high as the ball's middle. */
export const edgeDepth = new Float64Array(SLOTS);
/** 1: the lip stops this ball like a wall (too high, or more than the drive can push over). */
export const lipBlocks = new Uint8Array(SLOTS);
/** 1: the ball is past its edge depth. */
export const onWedge = new Uint8Array(SLOTS);
/** cos θ of the face the velocity of ball i belongs to. */
export const lean = new Float64Array(SLOTS);
/** A ball this near to where the slope begins is on it, mm: rounding of the step that took it there. */
const EDGE_MM = 1e-9;

export function depthOf(i: number): number {
  return wedge.nx * bx[i]! + wedge.ny * by[i]! - wedge.level;
}

/** dz/dd at depth d for ball i. */
export function slopeAt(i: number, d: number): number {
  if (d < 0 && (wedge.lip > 0 || d < -EDGE_MM)) {
    if (wedge.lip === 0 || d < edgeDepth[i]! - EDGE_MM) return 0;
    const r = radius[i]!;
    return -d / Math.sqrt(r * r - d * d);
  }
  return d < wedge.run ? wedge.slope : 0;
}

/** True where ball i has to be stepped: on the wedge where it is not level. */
export function onSlope(i: number): boolean {
  return onWedge[i] === 1 && wedge.raised && slopeAt(i, depthOf(i)) !== 0;
}

/** A ball on the wedge at this depth is still climbing the lip, where the pull changes on the way. */
export function overLip(d: number): boolean {
  return wedge.lip > 0 && d < 0;
}

/** The slope under ball i is too gentle to start it: tan θ ≤ (1+k)·c. */
export function holds(i: number, slope: number): boolean {
  return (GRAVITY_MM_PER_S2 * Math.abs(slope)) / (1 + inertia[i]!) <= rollDecel[i]!;
}

/** cos θ of the face under ball i at depth d. */
export function leanAt(i: number, d: number): number {
  return onWedge[i] === 1 && d >= -EDGE_MM && d < wedge.run ? wedge.lean : 1;
}

/** How strongly the face at depth d pulls ball i back along d, seen from above, mm/s². */
export function pullAt(i: number, d: number): number {
  const pull = GRAVITY_MM_PER_S2 * slopeAt(i, d) * lean[i]! * lean[i]!;
  return mode[i] === SLIDING ? pull : pull / (1 + inertia[i]!);
}

/** Adds what a slope under ball i pulls it with to its acceleration [ax, ay]. */
export function addPull(i: number, accel: Float64Array): void {
  if (!onSlope(i)) return;
  const pull = pullAt(i, depthOf(i));
  accel[0]! -= pull * wedge.nx;
  accel[1]! -= pull * wedge.ny;
}

function kick(i: number, d: number, t: number): void {
  const dv = -pullAt(i, d) * t;
  vx[i]! += wedge.nx * dv;
  vy[i]! += wedge.ny * dv;
  if (mode[i] === SLIDING) return;
  sx[i] = vx[i]!;
  sy[i] = vy[i]!;
  settleMode(i);
}

/** Free motion on a leaning face: the floor presses with cos θ of the weight, and what it takes lies along the surface. */
function roamLeaning(i: number, t: number): void {
  const roll = rollDecel[i]!;
  const slide = slideDecel[i]!;
  const down = (vx[i]! * wedge.nx + vy[i]! * wedge.ny) / lean[i]!;
  const across = vx[i]! * wedge.ny - vy[i]! * wedge.nx;
  const plan2 = vx[i]! * vx[i]! + vy[i]! * vy[i]!;
  const share = plan2 > 0 ? lean[i]! * Math.sqrt(plan2 / (down * down + across * across)) : lean[i]!;
  rollDecel[i] = roll * share;
  slideDecel[i] = slide * share;
  roam(i, t);
  rollDecel[i] = roll;
  slideDecel[i] = slide;
}

/** Speed of ball i along d. */
function rateOf(i: number): number {
  return vx[i]! * wedge.nx + vy[i]! * wedge.ny;
}

/**
 * One step of a ball on a slope. Slope: half the pull, free motion, half the pull, which is exact where it pulls evenly.
 * Lip: the same, then the speed that the height gained really leaves, so that what decides is the energy, not the step.
 */
export function roamSlope(i: number, t: number): void {
  const from = depthOf(i);
  const still = vx[i] === 0 && vy[i] === 0 && mode[i] !== SLIDING;
  if (still && holds(i, slopeAt(i, from))) {
    halt(i);
    return;
  }
  const before = rateOf(i);
  kick(i, from, 0.5 * t);
  const kicked = rateOf(i);
  if (lean[i] === 1) roam(i, t);
  else roamLeaning(i, t);
  const to = depthOf(i);
  if (mode[i] === REST && holds(i, slopeAt(i, to))) return;
  // A ball that friction stopped on the way has no speed to take from what its height gained: the pull starts it anew.
  if (from >= -EDGE_MM || mode[i] === REST) kick(i, from, 0.5 * t);
  else climb(i, from, to < edgeDepth[i]! ? edgeDepth[i]! : to > 0 ? 0 : to, before, kicked);
}

/** Gives a ball that moved from depth `from` to `to` over the lip the speed that energy leaves it; `before`: at the start, `kicked`: after half the pull. */
function climb(i: number, from: number, to: number, before: number, kicked: number): void {
  const r2 = radius[i]! * radius[i]!;
  const gain = Math.sqrt(r2 - to * to) - Math.sqrt(r2 - from * from);
  const sliding = mode[i] === SLIDING;
  const left = before * before - (2 * GRAVITY_MM_PER_S2 * gain) / (sliding ? 1 : 1 + inertia[i]!);
  const now = rateOf(i);
  let rate = (now + kicked < before ? -Math.sqrt(left) : Math.sqrt(left)) + now - kicked;
  if (left < 0) {
    // It has not the energy to get there: it turned on the way and is back where it was.
    const back = from - depthOf(i);
    bx[i]! += wedge.nx * back;
    by[i]! += wedge.ny * back;
    rate = -before;
  }
  vx[i]! += wedge.nx * (rate - now);
  vy[i]! += wedge.ny * (rate - now);
  if (sliding) return;
  sx[i] = vx[i]!;
  sy[i] = vy[i]!;
  settleMode(i);
}

/** After a step of h seconds: a ball that did not move although the slope pulls is held by what it touches. */
export function isHeld(fromX: number, fromY: number, i: number, h: number): boolean {
  const dx = bx[i]! - fromX;
  const dy = by[i]! - fromY;
  const most = HELD_MM_PER_S * h;
  return dx * dx + dy * dy < most * most;
}

/** After a step: ball i loses speed where it came to the lip, and changes to the lean of the face it is on. */
export function crossEdge(i: number): void {
  const d = depthOf(i);
  const beyond = d - edgeDepth[i]!;
  // On the edge itself it is off the wedge if it goes down: the pull ends there.
  const inside = beyond > EDGE_MM || (beyond >= -EDGE_MM && rateOf(i) >= 0);
  if (inside !== (onWedge[i] === 1) && !(inside && lipBlocks[i] === 1)) {
    onWedge[i] = inside ? 1 : 0;
    if (inside && wedge.lip > 0) stretch(i, 1 - wedge.lip / (radius[i]! * (1 + inertia[i]!)));
  }
  const now = leanAt(i, d);
  if (now === lean[i]) return;
  stretch(i, now / lean[i]!);
  lean[i] = now;
}

/** Multiplies the part along d of velocity and roll. */
function stretch(i: number, factor: number): void {
  const gainV = (factor - 1) * (vx[i]! * wedge.nx + vy[i]! * wedge.ny);
  const gainS = (factor - 1) * (sx[i]! * wedge.nx + sy[i]! * wedge.ny);
  vx[i]! += gainV * wedge.nx;
  vy[i]! += gainV * wedge.ny;
  sx[i]! += gainS * wedge.nx;
  sy[i]! += gainS * wedge.ny;
  settleMode(i);
}

/** Ball i counts as delivered where it is now. */
export function isHome(i: number): boolean {
  return depthOf(i) > (wedge.wholly ? radius[i]! : 0);
}
