import { hasRoom, meet, meetable, newPush, type Push } from "./meet.kernel.ts";
import { DIRECTION_RAD, DIRECTIONS } from "./room.ts";
import type { PushSetup } from "./setup.ts";

/**
 * Cheapest push chains home, backward from the wedge. A state is a place of the ball and a direction with the robot behind
 * it; its value the seconds until the ball is home. First all pushes that end on the wedge, in closed form; then, for the
 * places where a chain can be quicker than the best of these, pushes that end on the floor, followed by the cheapest way on
 * from there: let go and come from another side, or (a pusher that holds) turn with the ball and push home. Rounds are
 * repeated until nothing gets quicker: label-correcting shortest paths (Bellman 1958); all costs are positive, so they end.
 * Over 300 lines: the ways a push may end share the tables of one solver, filled in its inner loops.
 */

/** Ways of a push that ends on the floor are tried at this step, mm. */
export const STOP_STEP_MM = 30;
/** A chain must gain this much to count, s: below what single precision tells apart. */
const GAIN_S = 1e-4;
/** No chain of more pushes is looked for. */
const MOST_PUSHES = 24;

/** How a push ends: on the wedge; on the floor, to be taken again; in a turn with the ball, then home. */
export type PushEnd = "home" | "regrip" | "carry";

/** The best push found from a state. */
export interface Step {
  seconds: number;
  end: PushEnd;
  contact: number;
  /** Way of the robot from the touch, mm, and the speed it ends with. */
  length: number;
  speed: number;
  /** Where the ball then lies (regrip) or where the robot's origin is (carry). */
  x: number;
  y: number;
}

export class FieldSolver {
  readonly setup: PushSetup;
  readonly cells: number;
  /** Seconds home, one plane of places (row by row) for each direction. */
  readonly seconds: Float32Array;
  /** The least of them, per place; 0 on the wedge. */
  readonly best: Float32Array;
  /** Direction that gives the least; 255 where there is none. */
  readonly bestDirection: Uint8Array;
  /** Seconds on from a floor stop, by direction of arrival and place. */
  private readonly onward: Float32Array;
  /** Seconds home for a robot that stands there with a ball in its pusher, by heading; empty for one that cannot turn with it. */
  private readonly carried: Float32Array;
  private readonly placeX: Float64Array;
  private readonly placeY: Float64Array;
  /** Least seconds that any chain takes from a place. */
  private readonly least: Float32Array;
  /** By how many directions a state is off its place's best: what it may be slower and still be the better one to come to. */
  private readonly slack: Float64Array;
  /** No push that ends on the floor, with what it takes to come back to the ball, is quicker. */
  private readonly leastEdge: number;
  private readonly push: Push = newPush();
  private readonly step: Step = newStep();

  constructor(setup: PushSetup) {
    const { columns, rows, stepX, stepY, radius, regrip } = setup;
    this.setup = setup;
    this.cells = columns * rows;
    const states = this.cells * DIRECTIONS;
    this.seconds = new Float32Array(states).fill(Number.POSITIVE_INFINITY);
    this.best = new Float32Array(this.cells).fill(Number.POSITIVE_INFINITY);
    this.bestDirection = new Uint8Array(this.cells).fill(255);
    this.onward = new Float32Array(states).fill(Number.POSITIVE_INFINITY);
    this.carried = new Float32Array(setup.carryContact >= 0 ? states : 0).fill(Number.POSITIVE_INFINITY);
    this.placeX = Float64Array.from({ length: columns }, (_, i) => radius + i * stepX);
    this.placeY = Float64Array.from({ length: rows }, (_, i) => radius + i * stepY);
    this.least = new Float32Array(this.cells);
    for (let cell = 0; cell < this.cells; cell++) {
      this.least[cell] = this.leastSeconds(this.xOf(cell), this.yOf(cell));
      if (this.depth(this.xOf(cell), this.yOf(cell)) >= setup.homeDepth) this.best[cell] = 0;
    }
    this.slack = slackOf(regrip);
    const slowest = Math.min(setup.slowSpeed, setup.speed);
    this.leastEdge = regrip[1]! + (2 * slowest) / setup.accel;
  }

  solve(): void {
    for (let d = 0; d < DIRECTIONS; d++) this.pushHome(d);
    if (this.setup.carryContact >= 0) this.turnHome();
    const changed = new Uint8Array(this.cells).fill(1);
    const open = new Uint8Array(this.cells);
    const order = this.squareFirst();
    for (let round = 1; round < MOST_PUSHES; round++) {
      this.lookOnward(changed);
      this.openPlaces(open, round === 1);
      changed.fill(0);
      // What is below this has been settled by the rounds before: Dijkstra's argument, a band of edge costs at a time.
      const settled = (round - 1) * this.leastEdge;
      let gained = false;
      for (let n = 0; n < DIRECTIONS; n++)
        if (this.pushOnward(order[n]!, open, settled, changed)) gained = true;
      if (!gained) break;
    }
  }

  xOf(cell: number): number {
    return this.placeX[cell % this.setup.columns]!;
  }

  yOf(cell: number): number {
    return this.placeY[Math.floor(cell / this.setup.columns)]!;
  }

  /** The place nearest to a point. */
  cellAt(x: number, y: number): number {
    const { columns, rows, stepX, stepY, radius } = this.setup;
    let column = Math.round((x - radius) / stepX);
    let row = Math.round((y - radius) / stepY);
    if (column < 0) column = 0;
    else if (column >= columns) column = columns - 1;
    if (row < 0) row = 0;
    else if (row >= rows) row = rows - 1;
    return row * columns + column;
  }

  /** Beyond the wedge's edge: positive over the wedge, mm. */
  depth(x: number, y: number): number {
    const { edgeX, edgeY, edgeOffset } = this.setup;
    return edgeOffset - edgeX * x - edgeY * y;
  }

  /** All pushes in one direction that end with the ball on the wedge. */
  private pushHome(d: number): void {
    // Only a push toward the wedge can end on it.
    if (this.towardEdge(d) <= 0) return;
    const { setup, push, best, bestDirection } = this;
    const plane = d * this.cells;
    for (let k = 0; k < setup.contacts.length; k++) {
      const reach = meetable(setup, d, k);
      for (let row = reach.firstRow; row <= reach.lastRow; row++) {
        for (let column = reach.firstColumn; column <= reach.lastColumn; column++) {
          const cell = row * setup.columns + column;
          // A ball met in the middle of the pusher is met best: other contacts are for places where that has no room.
          if (best[cell] === 0 || this.seconds[plane + cell]! < Number.POSITIVE_INFINITY) continue;
          if (!meet(setup, this.placeX[column]!, this.placeY[row]!, d, k, push)) continue;
          if (!this.endsHome(push, d)) continue;
          const time = this.untilStopped(push.travel);
          this.seconds[plane + cell] = time;
          if (time < best[cell]!) {
            best[cell] = time;
            bestDirection[cell] = d;
          }
        }
      }
    }
  }

  /** The directions, those square at the wedge's edge first: they give good chains early, by which others are ruled out. */
  private squareFirst(): Uint8Array {
    const order = Uint8Array.from({ length: DIRECTIONS }, (_, d) => d);
    return order.sort((a, b) => this.towardEdge(b) - this.towardEdge(a) || a - b);
  }

  /** How much of a push in direction d goes square at the wedge's edge. */
  private towardEdge(d: number): number {
    const { room } = this.setup;
    return -(room.edgeX * room.cos[d]! + room.edgeY * room.sin[d]!);
  }

  /** Whether the ball stays on the wedge when this push has gone as far as it can. */
  endsHome(push: Push, d: number): boolean {
    const { setup } = this;
    const rolled = push.travel - push.advance;
    const depth = this.depth(
      push.ballX + setup.room.cos[d]! * rolled,
      push.ballY + setup.room.sin[d]! * rolled,
    );
    if (depth < setup.homeDepth) return false;
    if (depth >= setup.levelDepth) return true;
    const square = this.towardEdge(d);
    const speed2 = Math.min(setup.speed * setup.speed, 2 * setup.accel * push.travel);
    return speed2 * square * square >= setup.climbSpeed2;
  }

  /** Seconds from rest until something stops the robot after `way` mm. */
  untilStopped(way: number): number {
    const { speed, accel } = this.setup;
    return 2 * accel * way <= speed * speed
      ? Math.sqrt((2 * way) / accel)
      : way / speed + speed / (2 * accel);
  }

  /** For every place of the robot and heading: turn on the spot with the ball, then straight home. */
  private turnHome(): void {
    const { setup, cells, push } = this;
    const contact = setup.contacts[setup.carryContact]!;
    const roomy = new Uint8Array(DIRECTIONS);
    for (let cell = 0; cell < cells; cell++) {
      const x = this.xOf(cell);
      const y = this.yOf(cell);
      for (let d = 0; d < DIRECTIONS; d++) roomy[d] = hasRoom(setup, x, y, d) ? 1 : 0;
      for (let to = 0; to < DIRECTIONS; to++) {
        if (roomy[to] === 0 || this.towardEdge(to) <= 0) continue;
        const c = setup.room.cos[to]!;
        const s = setup.room.sin[to]!;
        const ballX = x + c * contact.seatXMm - s * contact.seatYMm;
        const ballY = y + s * contact.seatXMm + c * contact.seatYMm;
        if (!meet(setup, ballX, ballY, to, setup.carryContact, push) || !this.endsHome(push, to)) continue;
        this.turnInto(cell, to, this.untilStopped(push.travel), roomy);
      }
    }
  }

  /** Spreads a push home to all headings from which the robot can turn into it where it stands. */
  private turnInto(cell: number, to: number, pushS: number, roomy: Uint8Array): void {
    const { carried, cells } = this;
    for (let way = -1; way <= 1; way += 2) {
      for (let n = 0; n <= DIRECTIONS / 2; n++) {
        const d = (to + way * n + DIRECTIONS) % DIRECTIONS;
        if (roomy[d] === 0) break;
        const time = pushS + this.turnSeconds(n);
        if (time < carried[d * cells + cell]!) carried[d * cells + cell] = time;
      }
    }
  }

  /** Seconds of a gentle turn with the ball by n directions. */
  turnSeconds(n: number): number {
    const { carryTurnRate, turnAccel } = this.setup;
    const angle = n * DIRECTION_RAD;
    return angle * turnAccel <= carryTurnRate * carryTurnRate
      ? 2 * Math.sqrt(angle / turnAccel)
      : angle / carryTurnRate + carryTurnRate / turnAccel;
  }

  /** No chain brings a ball home quicker: it has to come that much nearer, and the robot has no higher speed. */
  private leastSeconds(x: number, y: number): number {
    return Math.max(0, this.setup.homeDepth - this.depth(x, y) - this.setup.runOn) / this.setup.speed;
  }

  /** Marks the places where a chain may be quicker than what is known: in the first round one with a carried turn, later only one that lets go. */
  private openPlaces(open: Uint8Array, first: boolean): void {
    const { setup, best, least, cells } = this;
    const extra = first && setup.carryContact >= 0 ? this.turnSeconds(1) : setup.regrip[1]!;
    for (let cell = 0; cell < cells; cell++) {
      open[cell] = best[cell]! > least[cell]! + extra + GAIN_S ? 1 : 0;
    }
  }

  /** Pushes in one direction from all open places that end on the floor; tells whether any place got better, and marks it. */
  private pushOnward(d: number, open: Uint8Array, settled: number, changed: Uint8Array): boolean {
    const { setup, seconds, best, bestDirection, step, slack } = this;
    const plane = d * this.cells;
    const done = new Uint8Array(this.cells);
    let gained = false;
    for (let k = 0; k < setup.contacts.length; k++) {
      const reach = meetable(setup, d, k);
      for (let row = reach.firstRow; row <= reach.lastRow; row++) {
        for (let column = reach.firstColumn; column <= reach.lastColumn; column++) {
          const cell = row * setup.columns + column;
          if (open[cell] === 0 || done[cell] === 1) continue;
          // Beyond this, no chain through here can pass by the place's best direction.
          const off = bestDirection[cell] === 255 ? 0 : apart(d, bestDirection[cell]!);
          const limit = Math.min(seconds[plane + cell]! - GAIN_S, best[cell]! + slack[off]!);
          if (limit <= settled) continue;
          if (!meet(setup, this.placeX[column]!, this.placeY[row]!, d, k, this.push)) continue;
          if (setup.contacts[k]!.advanceMm === 0) done[cell] = 1;
          step.seconds = limit;
          this.stopsAfter(this.push, d, k, step);
          if (step.seconds >= limit) continue;
          seconds[plane + cell] = step.seconds;
          changed[cell] = 1;
          gained = true;
          if (step.seconds < best[cell]!) {
            best[cell] = step.seconds;
            bestDirection[cell] = d;
          }
        }
      }
    }
    return gained;
  }

  /** Stops of a push (found by `meet`) on the floor that give less than out.seconds. */
  stopsAfter(push: Push, d: number, k: number, out: Step): void {
    const { setup } = this;
    this.stopsAtSpeed(push, d, k, setup.speed, setup.runOn, out);
    if (setup.slowSpeed < setup.speed) this.stopsAtSpeed(push, d, k, setup.slowSpeed, setup.slowRunOn, out);
  }

  /** Pushes of all lengths at one speed, then on from where the ball stops or where the robot has it. */
  private stopsAtSpeed(push: Push, d: number, k: number, speed: number, runOn: number, out: Step): void {
    const { setup, onward, carried, least } = this;
    const { columns, rows, radius } = setup;
    const plane = d * this.cells;
    const c = setup.room.cos[d]!;
    const s = setup.room.sin[d]!;
    const holds = setup.carryContact >= 0 && setup.contacts[k]!.depthMm >= radius;
    const canTurn = holds && speed <= setup.slowSpeed;
    const ramps = speed / setup.accel;
    const shift = runOn - push.advance;
    const last = Math.min(push.travel, push.ballFree - shift);
    // Columns and rows as they grow with the way, half a step on, so that cutting off the digits rounds.
    const perX = 1 / setup.stepX;
    const perY = 1 / setup.stepY;
    const ballColumn = (push.ballX + c * shift - radius) * perX + 0.5;
    const ballRow = (push.ballY + s * shift - radius) * perY + 0.5;
    const robotColumn = (push.robotX - radius) * perX + 0.5;
    const robotRow = (push.robotY - radius) * perY + 0.5;
    for (let length = Math.max(push.advance, ramps * speed); length <= push.travel; length += STOP_STEP_MM) {
      const time = length / speed + ramps;
      const overColumns = c * length * perX;
      const overRows = s * length * perY;
      if (length <= last) {
        const cell = ((ballRow + overRows) | 0) * columns + ((ballColumn + overColumns) | 0);
        if (time + least[cell]! >= out.seconds) return;
        const total = time + onward[plane + cell]!;
        if (total < out.seconds) {
          set(out, total, "regrip", k, length, speed);
          out.x = push.ballX + c * (length + shift);
          out.y = push.ballY + s * (length + shift);
        }
      } else if (time >= out.seconds) return;
      if (canTurn) {
        const row = Math.min(rows - 1, (robotRow + overRows) | 0);
        const column = Math.min(columns - 1, (robotColumn + overColumns) | 0);
        const total = time + carried[plane + row * columns + column]!;
        if (total < out.seconds) {
          set(out, total, "carry", k, length, speed);
          out.x = push.robotX + c * length;
          out.y = push.robotY + s * length;
        }
      }
    }
  }

  /** Seconds on from changed places for a robot that let go of the ball there, for all directions it may have come from. */
  private lookOnward(changed: Uint8Array): void {
    const { seconds, onward, setup, cells, best, bestDirection, slack } = this;
    const row = new Float32Array(DIRECTIONS);
    const byDifference = Float64Array.from(
      { length: 2 * DIRECTIONS },
      (_, i) => setup.regrip[apart(i % DIRECTIONS, 0)]!,
    );
    for (let cell = 0; cell < cells; cell++) {
      if (changed[cell] === 0 || best[cell] === Number.POSITIVE_INFINITY || best[cell] === 0) continue;
      row.fill(Number.POSITIVE_INFINITY);
      for (let to = 0; to < DIRECTIONS; to++) {
        const on = seconds[to * cells + cell]!;
        if (on > best[cell]! + slack[apart(to, bestDirection[cell]!)]!) continue;
        for (let from = 0; from < DIRECTIONS; from++) {
          const total = on + byDifference[to + DIRECTIONS - from]!;
          if (total < row[from]!) row[from] = total;
        }
      }
      for (let from = 0; from < DIRECTIONS; from++) onward[from * cells + cell] = row[from]!;
    }
  }
}

/** Steps between two directions, 0 … DIRECTIONS/2. */
export function apart(a: number, b: number): number {
  const steps = a > b ? a - b : b - a;
  return steps > DIRECTIONS / 2 ? DIRECTIONS - steps : steps;
}

/** Entry n: the most that coming to a ball n directions off can save, over all directions to come from. */
function slackOf(regrip: Float64Array): Float64Array {
  const slack = new Float64Array(regrip.length);
  for (let n = 0; n < slack.length; n++) {
    for (let from = 0; from < DIRECTIONS; from++) {
      slack[n] = Math.max(slack[n]!, regrip[apart(from, 0)]! - regrip[apart(from, n)]!);
    }
  }
  return slack;
}

export function newStep(): Step {
  return { seconds: 0, end: "home", contact: 0, length: 0, speed: 0, x: 0, y: 0 };
}

function set(out: Step, seconds: number, end: PushEnd, contact: number, length: number, speed: number): void {
  out.seconds = seconds;
  out.end = end;
  out.contact = contact;
  out.length = length;
  out.speed = speed;
}
