import { bx, by, mode, phaseOf, REST, vx, vy } from "./balls.kernel.ts";
import { byRobot, pairReach } from "./contact.kernel.ts";
import { found, hitTime, partAccel, safeTime, TOUCH } from "./robot.kernel.ts";
import { CREEP_MM } from "./walls.kernel.ts";

/** When two balls meet. */

/** Acceleration of the ball whose time is asked for, and how long it lasts: set before `pairTime`. */
export const own = new Float64Array(3);
const other = new Float64Array(3);

/**
 * Time within which balls i and j do not meet, exact where both are free; those in touch that hardly part are left to
 * the contact step. `curveI`: bound on the acceleration of ball i, whose free phase is in `own`. Above `limit` any answer does.
 */
export function pairTime(i: number, j: number, curveI: number, limit: number, contactStepS: number): number {
  const dx = bx[j]! - bx[i]!;
  const dy = by[j]! - by[i]!;
  const d = Math.sqrt(dx * dx + dy * dy);
  const gap = d - pairReach(i, j);
  const rate = ((vx[j]! - vx[i]!) * dx + (vy[j]! - vy[i]!) * dy) / d;
  let curve = curveI;
  if (mode[j] === REST) other[0] = other[1] = 0;
  else {
    phaseOf(j, other);
    curve += Math.sqrt(other[0]! * other[0]! + other[1]! * other[1]!);
  }
  if (byRobot[j] !== 0) curve += partAccel();
  if (gap <= TOUCH) {
    const bend = ((other[0]! - own[0]!) * dx + (other[1]! - own[1]!) * dy) / d;
    if (rate <= 0 || bend < 0) found.closing = true;
    // A ball in hand is carried along: the contact step looks after it.
    return byRobot[i] === 0 && byRobot[j] === 0 ? hitTime(CREEP_MM, rate, bend) : contactStepS;
  }
  const t = safeTime(gap - 0.5 * TOUCH, rate, curve);
  return t < limit && byRobot[i] === 0 && byRobot[j] === 0 ? meetingTime(i, j, t, limit) : t;
}

/** Two balls this near to touching meet, mm: a millionth of the touch tolerance. */
const MEET_MM = 2e-9;
/** Most looks ahead along two free paths; five are usual. */
const MAX_LOOKS = 20;

/** Time ≥ t at which two free balls touch, both phases going on: the same bound again and again, along their paths. */
function meetingTime(i: number, j: number, from: number, limit: number): number {
  const ax = other[0]! - own[0]!;
  const ay = other[1]! - own[1]!;
  const curve = Math.sqrt(ax * ax + ay * ay);
  const wx = vx[j]! - vx[i]!;
  const wy = vy[j]! - vy[i]!;
  const reach = pairReach(i, j) + 0.5 * TOUCH;
  let t = from;
  for (let look = 0; look < MAX_LOOKS && t < limit; look++) {
    const dx = bx[j]! - bx[i]! + (wx + 0.5 * ax * t) * t;
    const dy = by[j]! - by[i]! + (wy + 0.5 * ay * t) * t;
    const d = Math.sqrt(dx * dx + dy * dy);
    if (d - reach < MEET_MM) return t;
    t += safeTime(d - reach, ((wx + ax * t) * dx + (wy + ay * t) * dy) / d, curve);
  }
  return t;
}
