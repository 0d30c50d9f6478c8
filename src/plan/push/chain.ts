import { apart } from "./arrivals.kernel.ts";
import type { FieldSolver } from "./field.kernel.ts";
import { meet, newPush, type Push } from "./meet.kernel.ts";
import { DIRECTION_RAD, DIRECTIONS } from "./room.ts";
import { STOP_STEP_MM } from "./stops.kernel.ts";

/** How a push ends: on the wedge; on the floor, to be taken again; in a turn with the ball, then home. */
export type PushEnd = "home" | "regrip" | "carry";

/** One push of a chain: the robot meets the ball, heading `headingRad`, and drives `lengthMm` on from the touch. */
export interface ChainPush {
  readonly fromXMm: number;
  readonly fromYMm: number;
  readonly headingRad: number;
  /** Where the robot's origin is at the touch. */
  readonly robotXMm: number;
  readonly robotYMm: number;
  readonly lengthMm: number;
  readonly speedMmPerS: number;
  readonly end: PushEnd;
  /** Where the ball comes to lie, or where the pusher has it. */
  readonly toXMm: number;
  readonly toYMm: number;
  /** Seconds home from the touch on, what follows included. */
  readonly seconds: number;
}

/** Longest chain that is written out; the field makes none that is longer. */
const MOST_PUSHES = 12;

/** The cheapest push chain home from the place nearest to a point; empty on the wedge and where there is none. */
export function pushChain(solver: FieldSolver, xMm: number, yMm: number): readonly ChainPush[] {
  const chain: ChainPush[] = [];
  let cell = solver.cellAt(xMm, yMm);
  let d = solver.bestDirection[cell] ?? 255;
  while (d !== 255 && chain.length < MOST_PUSHES) {
    const push = bestPush(solver, cell, d);
    if (push === null) break;
    chain.push(push);
    if (push.end !== "regrip") break;
    cell = solver.cellAt(push.toXMm, push.toYMm);
    d = bestFrom(solver, cell, d);
  }
  return chain;
}

/** The direction to take a ball in that was let go of by a robot facing `from`. */
function bestFrom(solver: FieldSolver, cell: number, from: number): number {
  let best = 255;
  let least = Number.POSITIVE_INFINITY;
  for (let to = 0; to < DIRECTIONS; to++) {
    const total =
      (solver.seconds[to * solver.cells + cell] ?? least) + (solver.setup.regrip[apart(from, to)] ?? 0);
    if (total < least) {
      least = total;
      best = to;
    }
  }
  return best;
}

/** The push behind the field's value for a place and direction: the field looks at the same contacts, in the same order. */
function bestPush(solver: FieldSolver, cell: number, d: number): ChainPush | null {
  const { setup } = solver;
  const push = newPush();
  let best: ChainPush | null = null;
  let endsHome = false;
  let settled = false;
  for (const [k, contact] of setup.contacts.entries()) {
    if (!meet(setup, solver.xOf(cell), solver.yOf(cell), d, k, push)) continue;
    const home = endsHome ? null : homeEnd(solver, push, d);
    if (home !== null) endsHome = true;
    const ends = [...(home === null ? [] : [home]), ...(settled ? [] : floorEnds(solver, push, d, k))];
    for (const end of ends) {
      if (best === null || end.seconds < best.seconds) best = { ...begunAt(solver, cell, d, push), ...end };
    }
    if (contact.advanceMm === 0) settled = true;
  }
  return best;
}

type Ending = Pick<ChainPush, "lengthMm" | "speedMmPerS" | "end" | "toXMm" | "toYMm" | "seconds">;

function begunAt(solver: FieldSolver, cell: number, d: number, push: Push): Omit<ChainPush, keyof Ending> {
  return {
    fromXMm: solver.xOf(cell),
    fromYMm: solver.yOf(cell),
    headingRad: d * DIRECTION_RAD,
    robotXMm: push.robotX,
    robotYMm: push.robotY,
  };
}

function homeEnd(solver: FieldSolver, push: Push, d: number): Ending | null {
  if (!solver.endsHome(push, d)) return null;
  const seconds = solver.untilStopped(push.travel);
  const to = ballAfter(solver, push, d, push.travel - push.advance);
  return { lengthMm: push.travel, speedMmPerS: solver.setup.speed, end: "home", ...to, seconds };
}

/** All ways in which a push may end on the floor. */
function floorEnds(solver: FieldSolver, push: Push, d: number, k: number): readonly Ending[] {
  const { setup } = solver;
  const { speed, slowSpeed, runOn, slowRunOn, accel } = setup;
  const holds = setup.carryContact >= 0 && (setup.contacts[k]?.depthMm ?? 0) >= setup.radius;
  const ends: Ending[] = [];
  const stopAt = (speedMmPerS: number, onMm: number): void => {
    const first = Math.max(push.advance, (speedMmPerS * speedMmPerS) / accel);
    for (let lengthMm = first; lengthMm <= push.travel; lengthMm += STOP_STEP_MM) {
      const rolled = lengthMm - push.advance;
      const timeS = lengthMm / speedMmPerS + speedMmPerS / accel;
      if (rolled + onMm <= push.ballFree) {
        const to = ballAfter(solver, push, d, rolled + onMm);
        const seconds = timeS + solver.afterRegrip(to.toXMm, to.toYMm, d);
        ends.push({ lengthMm, speedMmPerS, end: "regrip", ...to, seconds });
      }
      if (!holds || speedMmPerS > slowSpeed) continue;
      const seconds = timeS + solver.afterCarry(push, lengthMm, d);
      ends.push({ lengthMm, speedMmPerS, end: "carry", ...ballAfter(solver, push, d, rolled), seconds });
    }
  };
  stopAt(speed, runOn);
  if (slowSpeed < speed) stopAt(slowSpeed, slowRunOn);
  return ends.filter(({ seconds }) => seconds < Number.POSITIVE_INFINITY);
}

function ballAfter(
  { setup }: FieldSolver,
  push: Push,
  d: number,
  rolledMm: number,
): Pick<Ending, "toXMm" | "toYMm"> {
  return {
    toXMm: push.ballX + rolledMm * (setup.room.cos[d] ?? 0),
    toYMm: push.ballY + rolledMm * (setup.room.sin[d] ?? 0),
  };
}
