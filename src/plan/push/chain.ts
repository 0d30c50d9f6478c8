import { apart, type FieldSolver, newStep, type PushEnd } from "./field.kernel.ts";
import { meet, newPush } from "./meet.kernel.ts";
import { DIRECTION_RAD, DIRECTIONS } from "./room.ts";

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
    chain.push(push.written);
    if (push.written.end !== "regrip") break;
    cell = solver.cellAt(push.endX, push.endY);
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

interface FoundPush {
  readonly written: ChainPush;
  readonly endX: number;
  readonly endY: number;
}

/** The push behind the field's value for a place and direction. */
function bestPush(solver: FieldSolver, cell: number, d: number): FoundPush | null {
  const { setup } = solver;
  const x = solver.xOf(cell);
  const y = solver.yOf(cell);
  const value = solver.seconds[d * solver.cells + cell] ?? Number.POSITIVE_INFINITY;
  const push = newPush();
  const step = newStep();
  let found: FoundPush | null = null;
  let least = Number.POSITIVE_INFINITY;
  const write = (seconds: number, end: PushEnd, lengthMm: number, speedMmPerS: number): void => {
    if (seconds >= least) return;
    least = seconds;
    const written: ChainPush = {
      fromXMm: x,
      fromYMm: y,
      headingRad: d * DIRECTION_RAD,
      robotXMm: push.robotX,
      robotYMm: push.robotY,
      lengthMm,
      speedMmPerS,
      end,
      seconds: value,
    };
    found = { written, endX: step.x, endY: step.y };
  };
  for (let k = 0; k < setup.contacts.length; k++) {
    if (!meet(setup, x, y, d, k, push)) continue;
    if (solver.endsHome(push, d)) write(solver.untilStopped(push.travel), "home", push.travel, setup.speed);
    step.seconds = least;
    solver.stopsAfter(push, d, k, step);
    if (step.seconds < least) write(step.seconds, step.end, step.length, step.speed);
  }
  return found;
}
