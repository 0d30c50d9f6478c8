import { GRAVITY_MM_PER_S2 } from "../model/units.ts";
import { SCRATCH } from "../num/slots.ts";
import {
  ballBounce,
  ballFriction,
  inertia,
  mass,
  rollCoeff,
  rollDecel,
  settleMode,
  slideDecel,
  sx,
  sy,
  vx,
  vy,
} from "./balls.kernel.ts";
import { depthOf, lean, onSlope, pullAt, wedge } from "./wedge.kernel.ts";

/**
 * Impulses at upright faces. Normal: restitution e above 10 mm/s. Friction: Coulomb against the combined slip, which
 * has a lateral part (v − V)·t and a vertical part from the roll, s·n (a ball that rolls away from the face moves up along
 * it). The vertical impulse slows the roll, Δ(s·n) = J_z/(k m), and loads the floor; the lateral one may take away at most
 * k/(1+k) of the lateral slip, the share after which a ball without spin about the vertical rolls along the face.
 * Steady push that follows: N(1 − μ(1 + ρ)) = ρ·m·g with ρ = (1+k)c. Checked in tests/published/push.
 */

/** Slower impacts do not bounce, mm/s: the rebound would be under 0.3 mm high on any floor allowed. */
export const NO_BOUNCE = 10;

/**
 * The face that `strikeFace` strikes with: unit normal toward the ball, velocity, restitution, friction, and by how much the
 * face has turned since the middle of the time it pressed, rad: that long its push was along the normal it had then. In an array, since
 * numbers handed to a function that is not inlined are put on the heap one by one.
 */
export const face = new Float64Array(SCRATCH);

/** Strikes ball i with `face`. Returns the closing speed it met, mm/s, 0 if none. */
export function strikeFace(i: number): number {
  const nx = face[0]!;
  const ny = face[1]!;
  const ux = face[2]!;
  const uy = face[3]!;
  const wx = vx[i]! - ux;
  const wy = vy[i]! - uy;
  const wn = wx * nx + wy * ny;
  if (wn >= 0) return 0;
  const k = inertia[i]!;
  const jn = (wn < -NO_BOUNCE ? 1 + face[4]! : 1) * -wn;
  const lateral = wy * nx - wx * ny;
  const vertical = sx[i]! * nx + sy[i]! * ny;
  const slip = Math.sqrt(lateral * lateral + vertical * vertical);
  let jt = 0;
  let jz = 0;
  if (slip > 0) {
    const most = face[5]! * jn;
    jt = Math.min((most * Math.abs(lateral)) / slip, (Math.abs(lateral) * k) / (1 + k));
    const stop =
      vertical > 0 ? stopPressed(i, vertical, vx[i]! * nx + vy[i]! * ny + jn - vertical) : -vertical * k;
    jz = Math.min((most * Math.abs(vertical)) / slip, stop);
    if (lateral > 0) jt = -jt;
    if (vertical > 0) jz = -jz;
  }
  const back = face[6]!;
  vx[i]! += jn * (nx + back * ny) - jt * ny;
  vy[i]! += jn * (ny - back * nx) + jt * nx;
  if (jz < 0) {
    pressDown(i, nx, ny, Math.min(-jz, backward[0]!));
    pressDown(i, nx, ny, -jz - Math.min(-jz, backward[0]!));
  } else {
    sx[i]! += (jz / k) * nx;
    sy[i]! += (jz / k) * ny;
  }
  settleMode(i);
  return -wn;
}

/** Of the last `stopPressed`: the part of the impulse while the ball still slips backward over the floor. */
const backward = new Float64Array(SCRATCH);

/**
 * Downward impulse (over mass, mm/s) at a face that stops the roll of ball i away from it, `roll`, while the floor, on which it slips
 * forward at `slip`, grips with μ times what is pressed on it: a forward slip keeps the roll up, d(roll)/dj = −(1 − μ)/k; a backward
 * one helps to stop it, −(1 + μ)/k, until the ball rolls. A floor that grips enough, μ ≥ 1/(1+k), keeps it rolling until it stops.
 */
function stopPressed(i: number, roll: number, slip: number): number {
  const k = inertia[i]!;
  const grip = slideDecel[i]! / GRAVITY_MM_PER_S2;
  const forward = k / (1 - Math.min(grip, 1 / (1 + k)));
  backward[0] = 0;
  if (slip >= 0) return roll * forward;
  const until = (-k * slip) / (1 + grip * (1 + k));
  const left = roll - ((1 + grip) / k) * until;
  backward[0] = left > 0 ? until : (k * roll) / (1 + grip);
  return backward[0]! + (left > 0 ? left * forward : 0);
}

/** A face with normal (nx, ny) presses ball i on the floor by an impulse (over mass, mm/s), which slows its roll and makes the floor grip it. */
function pressDown(i: number, nx: number, ny: number, impulse: number): void {
  if (impulse <= 0) return;
  sx[i]! -= (impulse / inertia[i]!) * nx;
  sy[i]! -= (impulse / inertia[i]!) * ny;
  pressFloor(i, impulse);
}

/**
 * The step whose contacts are put right: its seconds, how long the floor has had to act on a ball that stays in touch, and
 * half the angle by which the robot turned in it, rad.
 */
export const span = new Float64Array(SCRATCH);

/**
 * Strikes rolling ball i, which has been in touch with `face` all through the step. What it closes is what the floor and
 * the face's own motion did to it meanwhile, so that it rolls on with the face: the push J is what it takes to keep both
 * v and the roll up, J·(1 − μ_z(1+ρ)) = (1+k)·closing with μ_z the vertical share of the friction. If the floor cannot
 * grip enough for that, or the face stops the roll (μ_z near 1), it is struck like any other ball and slides.
 */
export function pressFace(i: number): number {
  const nx = face[0]!;
  const ny = face[1]!;
  const wx = vx[i]! - face[2]!;
  const wy = vy[i]! - face[3]!;
  const wn = wx * nx + wy * ny;
  if (wn >= 0) return 0;
  const k = inertia[i]!;
  const lateral = wy * nx - wx * ny;
  const away = sx[i]! * nx + sy[i]! * ny;
  const slip = Math.sqrt(lateral * lateral + away * away);
  const down = away > 0 ? (face[5]! * away) / slip : 0;
  const share = 1 - down * (1 + (1 + k) * rollCoeff[i]!);
  const push = (-wn * (1 + k)) / share;
  // On a leaning face the floor carries cos θ of the weight, and what it grips with is seen from above.
  const weight = lean[i]! * lean[i]! * span[0]!;
  const floor = slideDecel[i]! * (weight + (down * push) / GRAVITY_MM_PER_S2);
  const grip = push + wn + (rollDecel[i]! - slopeGrip(i, nx, ny)) * span[0]!;
  if (share < LEAST_SHARE || grip > floor || -grip > floor) return strikeFace(i);
  let aside = 0;
  if (lateral !== 0) {
    const most = (face[5]! * push * Math.abs(lateral)) / slip;
    aside = Math.min(most, (Math.abs(lateral) * k) / (1 + k)) / (1 + k);
    // The floor's share of what the face presses down on it.
    aside += (rollCoeff[i]! * down * push * Math.abs(lateral)) / slip;
    if (lateral > 0) aside = -aside;
  }
  const back = face[6]!;
  vx[i]! += -wn * (nx + back * ny) - aside * ny;
  vy[i]! += -wn * (ny - back * nx) + aside * nx;
  sx[i] = vx[i]!;
  sy[i] = vy[i]!;
  settleMode(i);
  return -wn;
}

/**
 * What the floor does to slow down the roll of a ball that climbs freely, k·pull, along the normal (nx, ny) of a face, mm/s²: a ball
 * that the face keeps going does not ask it of the floor.
 */
function slopeGrip(i: number, nx: number, ny: number): number {
  return onSlope(i) ? inertia[i]! * pullAt(i, depthOf(i)) * (nx * wedge.nx + ny * wedge.ny) : 0;
}

/** Below this share the push would be more than ten times the floor's own pull: the ball is about to slide. */
const LEAST_SHARE = 0.1;

/**
 * A downward impulse (over mass, mm/s) presses a ball on the floor that was just struck and slides: it is gripped the more, by the
 * floor's friction times the impulse, until it rolls.
 */
function pressFloor(i: number, jz: number): void {
  const slipX = vx[i]! - sx[i]!;
  const slipY = vy[i]! - sy[i]!;
  const slip = Math.sqrt(slipX * slipX + slipY * slipY);
  if (slip === 0) return;
  const k = inertia[i]!;
  const share = Math.min((slideDecel[i]! * jz) / (GRAVITY_MM_PER_S2 * slip), k / (1 + k));
  vx[i]! -= share * slipX;
  vy[i]! -= share * slipY;
  sx[i]! += (share / k) * slipX;
  sy[i]! += (share / k) * slipY;
}

/** How far the two balls that `strikeBalls` strikes give way, share of what they would by themselves: less where one leans on a wall. */
export const give = new Float64Array(SCRATCH).fill(1);

/**
 * Two balls; (nx, ny) from i to j. Both rolls give a vertical slip of −(s_i + s_j)·n at the point of contact.
 * Returns the closing speed, mm/s, 0 if they part.
 */
export function strikeBalls(i: number, j: number, nx: number, ny: number, first: boolean): number {
  const wx = vx[i]! - vx[j]!;
  const wy = vy[i]! - vy[j]!;
  const wn = wx * nx + wy * ny;
  if (wn <= 0) return 0;
  const mi = 1 / mass[i]!;
  const mj = 1 / mass[j]!;
  const ki = inertia[i]!;
  const kj = inertia[j]!;
  const e = first && wn > NO_BOUNCE ? Math.min(ballBounce[i]!, ballBounce[j]!) : 0;
  const jn = ((1 + e) * wn) / (give[0]! * mi + give[1]! * mj);
  const lateral = wy * nx - wx * ny;
  const vertical = -(sx[i]! + sx[j]!) * nx - (sy[i]! + sy[j]!) * ny;
  const slip = Math.sqrt(lateral * lateral + vertical * vertical);
  let jt = 0;
  let jz = 0;
  if (slip > 0) {
    const most = Math.sqrt(ballFriction[i]! * ballFriction[j]!) * jn;
    const stickT = Math.abs(lateral) / (mi * (1 + 1 / ki) + mj * (1 + 1 / kj));
    const stickZ = Math.abs(vertical) / (mi / ki + mj / kj);
    jt = Math.min((most * Math.abs(lateral)) / slip, stickT);
    jz = Math.min((most * Math.abs(vertical)) / slip, stickZ);
    if (lateral > 0) jt = -jt;
    if (vertical > 0) jz = -jz;
  }
  const px = -jn * nx - jt * ny;
  const py = -jn * ny + jt * nx;
  vx[i]! += px * mi;
  vy[i]! += py * mi;
  vx[j]! -= px * mj;
  vy[j]! -= py * mj;
  sx[i]! -= (jz * mi * nx) / ki;
  sy[i]! -= (jz * mi * ny) / ki;
  sx[j]! -= (jz * mj * nx) / kj;
  sy[j]! -= (jz * mj * ny) / kj;
  settleMode(i);
  settleMode(j);
  return wn;
}
