import { MAX_BALLS } from "../model/project.ts";
import { GRAVITY_MM_PER_S2 } from "../model/units.ts";
import { SLOTS } from "../num/slots.ts";

/**
 * State of all balls and their free motion in closed form. Position p, velocity v, roll s (the velocity at which the
 * surface would roll; v = s: rolling). Sliding: u = v − s keeps its direction, dv/dt = −μg·û, ds/dt = +(μg/k)·û until
 * u = 0 after k|u|/((1+k)μg); from then on rolling with the constant deceleration c·g.
 * One world per worker, module-level arrays: a second instance of the same code would cost a third of the speed.
 * Source: Halliday/Resnick, Fundamentals of Physics, ch. 11; checked in tests/published/rolling.
 */

export const REST = 0;
export const ROLLING = 1;
export const SLIDING = 2;
export const OUT = 3;

/** Slip below this has gone within 1 ms on a usual floor: the ball is set rolling with what the slide would leave, mm/s. */
const SLIP_EPS = 3;
/** A rolling ball slower than this has stopped, mm/s: it would still roll 1e-12 mm. */
const STOP_EPS = 1e-5;

/** Playing back borrows it for the closed forms below. */
export const PLAYBACK_SLOT = MAX_BALLS;

export const bx = new Float64Array(SLOTS);
export const by = new Float64Array(SLOTS);
export const vx = new Float64Array(SLOTS);
export const vy = new Float64Array(SLOTS);
export const sx = new Float64Array(SLOTS);
export const sy = new Float64Array(SLOTS);
export const mode = new Uint8Array(SLOTS);
/** 1: the ball stays in touch with the robot during this step; what it closes by then is the step's own doing and does not bounce. */
export const inHand = new Uint8Array(SLOTS);

/** 1: the ball rides before a face of the robot through this step: its place is that of the face, not that of a free ball. */
export const rides = new Uint8Array(SLOTS);
/** Stands for the mode of a riding ball in a recording; it rolls. */
export const RIDING = 4;

/** Radius, mm. */
export const radius = new Float64Array(SLOTS);
/** Mass, kg. */
export const mass = new Float64Array(SLOTS);
/** k = I/(m r²). */
export const inertia = new Float64Array(SLOTS);
/** Rolling deceleration c·g, mm/s². */
export const rollDecel = new Float64Array(SLOTS);
/** Rolling resistance c. */
export const rollCoeff = new Float64Array(SLOTS);
/** Sliding deceleration μg, mm/s². */
export const slideDecel = new Float64Array(SLOTS);
/** Restitution and friction of this trial: against the robot, the walls, other balls. */
export const robotBounce = new Float64Array(SLOTS);
export const robotFriction = new Float64Array(SLOTS);
export const wallBounce = new Float64Array(SLOTS);
export const wallFriction = new Float64Array(SLOTS);
export const ballBounce = new Float64Array(SLOTS);
export const ballFriction = new Float64Array(SLOTS);

/** Acceleration of ball i in its present phase, written to `out` [ax, ay, seconds the phase lasts]. */
export function phaseOf(i: number, out: Float64Array): void {
  if (mode[i] === SLIDING) {
    const ux = vx[i]! - sx[i]!;
    const uy = vy[i]! - sy[i]!;
    const u = Math.sqrt(ux * ux + uy * uy);
    const a = slideDecel[i]!;
    out[0] = (-a * ux) / u;
    out[1] = (-a * uy) / u;
    out[2] = (u * inertia[i]!) / ((1 + inertia[i]!) * a);
  } else if (mode[i] === ROLLING) {
    const v = Math.sqrt(vx[i]! * vx[i]! + vy[i]! * vy[i]!);
    const a = rollDecel[i]!;
    out[0] = v > 0 ? (-a * vx[i]!) / v : 0;
    out[1] = v > 0 ? (-a * vy[i]!) / v : 0;
    out[2] = v / a;
  } else {
    out[0] = 0;
    out[1] = 0;
    out[2] = Number.POSITIVE_INFINITY;
  }
}

/** Moves ball i freely for t seconds, exactly, through the end of its phase if need be. */
export function roam(i: number, t: number): void {
  let left = t;
  if (mode[i] === SLIDING) {
    const ux = vx[i]! - sx[i]!;
    const uy = vy[i]! - sy[i]!;
    const u = Math.sqrt(ux * ux + uy * uy);
    const a = slideDecel[i]!;
    const k = inertia[i]!;
    const phase = (u * k) / ((1 + k) * a);
    const dt = left < phase ? left : phase;
    const ax = (-a * ux) / u;
    const ay = (-a * uy) / u;
    bx[i]! += (vx[i]! + 0.5 * ax * dt) * dt;
    by[i]! += (vy[i]! + 0.5 * ay * dt) * dt;
    vx[i]! += ax * dt;
    vy[i]! += ay * dt;
    sx[i]! -= (ax * dt) / k;
    sy[i]! -= (ay * dt) / k;
    left -= dt;
    // A step that ends a rounding before the phase ends it, too: no slip is left to have a direction.
    if (left > 0 || phase - dt < 1e-12) {
      sx[i] = vx[i]!;
      sy[i] = vy[i]!;
      mode[i] = ROLLING;
    }
  }
  if (mode[i] === ROLLING && left > 0) {
    const v = Math.sqrt(vx[i]! * vx[i]! + vy[i]! * vy[i]!);
    const a = rollDecel[i]!;
    if (v <= STOP_EPS) {
      halt(i);
      return;
    }
    const stop = v / a;
    const dt = left < stop ? left : stop;
    const f = dt - (0.5 * a * dt * dt) / v;
    bx[i]! += vx[i]! * f;
    by[i]! += vy[i]! * f;
    if (dt === stop) {
      halt(i);
      return;
    }
    const keep = 1 - (a * dt) / v;
    sx[i] = vx[i] = vx[i]! * keep;
    sy[i] = vy[i] = vy[i]! * keep;
  }
}

/** Ball i lies still. */
export function halt(i: number): void {
  vx[i] = vy[i] = sx[i] = sy[i] = 0;
  mode[i] = REST;
}

/** Sets the mode of ball i after its velocities changed. */
export function settleMode(i: number): void {
  const ux = vx[i]! - sx[i]!;
  const uy = vy[i]! - sy[i]!;
  if (ux * ux + uy * uy > SLIP_EPS * SLIP_EPS) {
    mode[i] = SLIDING;
    return;
  }
  const k = inertia[i]!;
  sx[i] = vx[i] = (vx[i]! + k * sx[i]!) / (1 + k);
  sy[i] = vy[i] = (vy[i]! + k * sy[i]!) / (1 + k);
  if (vx[i]! * vx[i]! + vy[i]! * vy[i]! > STOP_EPS * STOP_EPS) mode[i] = ROLLING;
  else halt(i);
}

/** Kinetic energy of ball i over its mass, mm²/s²: ½(v² + k s²). */
export function energyOf(i: number): number {
  return 0.5 * (vx[i]! * vx[i]! + vy[i]! * vy[i]! + inertia[i]! * (sx[i]! * sx[i]! + sy[i]! * sy[i]!));
}

/** c·g and μg of a trial, mm/s². */
export function decelOf(coeff: number): number {
  return coeff * GRAVITY_MM_PER_S2;
}
