import { SCRATCH } from "../num/slots.ts";
import { bx, by, mode, phaseOf, REST, vx, vy } from "./balls.kernel.ts";
import { byRobot, pairReach } from "./contact.kernel.ts";
import { found, hitTime, LASTING, partAccel, safeTime, TOUCH } from "./robot.kernel.ts";
import { ANSWER, ASK_LIMIT, ASK_PUSHED, ASK_STEP, ask, CREEP_MM } from "./walls.kernel.ts";
import { addPull } from "./wedge.kernel.ts";

/** When two balls meet. */

const other = new Float64Array(SCRATCH);

/**
 * Time within which balls i and j do not meet, exact where both are free: those in touch that hardly part are left to
 * the contact step. Question and answer in `ask`; above the limit any answer does.
 */
export function pairTime(i: number, j: number): void {
  const limit = ask[ASK_LIMIT]!;
  const dx = bx[j]! - bx[i]!;
  const dy = by[j]! - by[i]!;
  const d = Math.sqrt(dx * dx + dy * dy);
  const gap = d - pairReach(i, j);
  const rate = ((vx[j]! - vx[i]!) * dx + (vy[j]! - vy[i]!) * dy) / d;
  const ax = ask[0]!;
  const ay = ask[1]!;
  let curve = Math.sqrt(ax * ax + ay * ay) + ask[ASK_PUSHED]!;
  if (mode[j] === REST) other[0] = other[1] = 0;
  else {
    phaseOf(j, other);
    addPull(j, other);
    curve += Math.sqrt(other[0]! * other[0]! + other[1]! * other[1]!);
  }
  if (byRobot[j] !== 0) curve += partAccel();
  if (gap <= TOUCH) {
    const bend = ((other[0]! - ax) * dx + (other[1]! - ay) * dy) / d;
    if (rate <= 0 || bend < 0) found.closing = true;
    if (byRobot[i] === 0 && byRobot[j] === 0) ask[ANSWER] = hitTime(CREEP_MM, rate, bend);
    // A ball in hand is carried along: the contact step looks after it, unless a wall has just pushed it against one that comes on.
    else ask[ANSWER] = rate < -LASTING ? 0 : ask[ASK_STEP]!;
    return;
  }
  // Even closing and bending as now they stay apart for as long as is asked: no root needed.
  if (gap + ((rate < 0 ? rate : 0) - 0.5 * curve * limit) * limit > TOUCH) {
    ask[ANSWER] = Number.POSITIVE_INFINITY;
    return;
  }
  ask[ANSWER] = safeTime(gap - 0.5 * TOUCH, rate, curve);
  if (ask[ANSWER]! < limit && byRobot[i] === 0 && byRobot[j] === 0) meetingTime(i, j);
}

/** Two balls this near to touching meet, mm: a millionth of the touch tolerance. */
const MEET_MM = 2e-9;
/** Most looks ahead along two free paths; five are usual. */
const MAX_LOOKS = 20;

/** Moves the answer on to where two free balls touch, both phases going on: the same bound again and again, along their paths. */
function meetingTime(i: number, j: number): void {
  const limit = ask[ASK_LIMIT]!;
  const ax = other[0]! - ask[0]!;
  const ay = other[1]! - ask[1]!;
  const curve = Math.sqrt(ax * ax + ay * ay);
  const wx = vx[j]! - vx[i]!;
  const wy = vy[j]! - vy[i]!;
  const reach = pairReach(i, j) + 0.5 * TOUCH;
  let t = ask[ANSWER]!;
  for (let look = 0; look < MAX_LOOKS && t < limit; look++) {
    const dx = bx[j]! - bx[i]! + (wx + 0.5 * ax * t) * t;
    const dy = by[j]! - by[i]! + (wy + 0.5 * ay * t) * t;
    const d = Math.sqrt(dx * dx + dy * dy);
    if (d - reach < MEET_MM) break;
    t += safeTime(d - reach, ((wx + ax * t) * dx + (wy + ay * t) * dy) / d, curve);
  }
  ask[ANSWER] = t;
}
