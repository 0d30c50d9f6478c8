import { Arrivals } from "./arrivals.kernel.ts";
import { PushLane } from "./lane.kernel.ts";
import { meet, newPush, type Push } from "./meet.kernel.ts";
import { Meets } from "./meets.kernel.ts";
import { givePlanes, type Planes, takePlanes } from "./planes.ts";
import { DIRECTION_RAD, DIRECTIONS } from "./room.ts";
import type { PushSetup } from "./setup.ts";
import { STOP_STEP_MM, Stops } from "./stops.kernel.ts";

/**
 * Cheapest push chains home, backward from the wedge. A state is a place of the ball and a direction with the robot behind
 * it; its value the seconds until the ball is home. First all pushes that end on the wedge, in closed form; then, from every
 * state whose chain can be quicker than what is known, pushes that end on the floor, followed by the cheapest way on from
 * there: let go and come from another side, or (a pusher that holds) turn with the ball and push home. Rounds are repeated
 * until nothing gets quicker: label-correcting shortest paths (Bellman 1958); all costs are positive, so they end.
 * Over 300 lines: the ways a push may end share the tables of one solver, filled in its inner loops.
 */

/** A chain must gain this much to count, s: below what single precision tells apart. */
const GAIN_S = 1e-4;
/** No chain of more pushes is looked for. */
const MOST_PUSHES = 24;
const NEVER = Number.POSITIVE_INFINITY;

export class FieldSolver {
  readonly setup: PushSetup;
  readonly cells: number;
  private readonly planes: Planes;
  /** Seconds home, one plane of places (row by row) for each direction. */
  readonly seconds: Float32Array;
  /** The least of them, per place; 0 on the wedge. */
  readonly best: Float32Array;
  /** Direction that gives the least; 255 where there is none. */
  readonly bestDirection: Uint8Array;
  /** Seconds on from a floor stop, by direction of arrival and place. */
  readonly onward: Float32Array;
  /** Seconds home for a robot that stands there with a ball in its pusher, by heading; Infinity for one that cannot turn with it. */
  readonly carried: Float32Array;
  private readonly placeX: Float64Array;
  private readonly placeY: Float64Array;
  private readonly arrivals: Arrivals;
  /** The least values that are new in this round, by direction of arrival. */
  private readonly leastOnward = new Float64Array(DIRECTIONS).fill(NEVER);
  private readonly leastCarried = new Float64Array(DIRECTIONS).fill(NEVER);
  private readonly lane: PushLane;
  private readonly quick: Stops;
  private readonly slow: Stops;
  private readonly turnTimes: Float64Array;
  private readonly push: Push = newPush();

  constructor(setup: PushSetup) {
    const { columns, rows, stepX, stepY, radius } = setup;
    this.setup = setup;
    this.cells = columns * rows;
    const states = this.cells * DIRECTIONS;
    this.planes = takePlanes(states);
    this.seconds = this.planes.seconds;
    this.onward = this.planes.onward;
    this.carried = this.planes.carried;
    this.best = new Float32Array(this.cells).fill(NEVER);
    this.bestDirection = new Uint8Array(this.cells).fill(255);
    this.placeX = Float64Array.from({ length: columns }, (_, i) => radius + i * stepX);
    this.placeY = Float64Array.from({ length: rows }, (_, i) => radius + i * stepY);
    for (let cell = 0; cell < this.cells; cell++) {
      if (this.depth(this.xOf(cell), this.yOf(cell)) >= setup.homeDepth) this.best[cell] = 0;
    }
    this.arrivals = new Arrivals(setup.regrip);
    this.turnTimes = turnTimesOf(setup);
    this.lane = new PushLane(setup);
    this.quick = new Stops(setup, setup.speed, setup.runOn);
    this.slow = new Stops(setup, setup.slowSpeed, setup.slowRunOn);
  }

  solve(): void {
    for (let d = 0; d < DIRECTIONS; d++) this.pushHome(d);
    if (this.setup.carryContact >= 0) this.turnHome();
    const meets = new Meets(this.lane, this.best, this.planes.meets);
    const changed = new Uint8Array(this.cells).fill(1);
    const order = this.squareFirst();
    for (let round = 1; round < MOST_PUSHES; round++) {
      this.lookOnward(changed);
      changed.fill(0);
      let gained = false;
      for (let n = 0; n < DIRECTIONS; n++) if (this.pushOnward(order[n]!, meets, changed)) gained = true;
      if (!gained) break;
      // Turns with the ball lead home at once: the first round has looked at all of them.
      this.leastCarried.fill(NEVER);
    }
  }

  /** Gives the memory of the states back: only what is known of places may be read from now on. */
  release(): void {
    givePlanes(this.planes);
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
    const column = Math.min(columns - 1, Math.max(0, Math.round((x - radius) / stepX)));
    const row = Math.min(rows - 1, Math.max(0, Math.round((y - radius) / stepY)));
    return row * columns + column;
  }

  /** Works out anew what changed places are worth to a robot that lets go of the ball there. */
  private lookOnward(changed: Uint8Array): void {
    const { onward, cells, best, bestDirection, leastOnward, arrivals } = this;
    leastOnward.fill(NEVER);
    for (let cell = 0; cell < cells; cell++) {
      if (changed[cell] === 0 || best[cell] === NEVER || best[cell] === 0) continue;
      arrivals.take(this.seconds, cell, cells, best[cell]!, bestDirection[cell]!);
      for (let from = 0; from < DIRECTIONS; from++) {
        const total = arrivals.seconds[from]!;
        if (total >= onward[from * cells + cell]!) continue;
        onward[from * cells + cell] = total;
        if (total < leastOnward[from]!) leastOnward[from] = total;
      }
    }
  }

  /** Seconds home for a ball that was let go of at a point by a robot facing direction d. */
  afterRegrip(x: number, y: number, d: number): number {
    return this.onward[d * this.cells + this.cellAt(x, y)]!;
  }

  /** Seconds home for a robot that has its ball in the pusher after so much of a push, and turns with it. */
  afterCarry(push: Push, lengthMm: number, d: number): number {
    const { room } = this.setup;
    const x = push.robotX + room.cos[d]! * lengthMm;
    const y = push.robotY + room.sin[d]! * lengthMm;
    return this.carried[d * this.cells + this.cellAt(x, y)]!;
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
    const { setup, lane } = this;
    for (let k = 0; k < setup.contacts.length; k++) {
      lane.aim(d, k);
      for (let row = lane.firstRow; row <= lane.lastRow; row++) {
        lane.takeHomeRow(this.placeY[row]!, setup.homeDepth);
        this.pushRowHome(d, k, row);
      }
    }
  }

  private pushRowHome(d: number, k: number, row: number): void {
    const { setup, push, lane, best, bestDirection, seconds } = this;
    const plane = d * this.cells;
    const last = lane.columnBefore(lane.highX);
    for (let column = lane.columnAfter(lane.lowX); column <= last; column++) {
      const cell = row * setup.columns + column;
      // A ball met in the middle of the pusher is met best: other contacts are for places where that has no room.
      if (best[cell] === 0 || seconds[plane + cell]! < NEVER) continue;
      if (!meet(setup, this.placeX[column]!, this.placeY[row]!, d, k, push) || !this.endsHome(push, d))
        continue;
      const time = this.untilStopped(push.travel);
      seconds[plane + cell] = time;
      if (time >= best[cell]!) continue;
      best[cell] = time;
      bestDirection[cell] = d;
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
    const { setup, lane } = this;
    const roomy = this.roomyPlaces();
    for (let to = 0; to < DIRECTIONS; to++) {
      if (this.towardEdge(to) <= 0) continue;
      lane.aim(to, setup.carryContact);
      for (let row = 0; row < setup.rows; row++) this.turnRowHome(to, row, roomy);
    }
  }

  private turnRowHome(to: number, row: number, roomy: Uint8Array): void {
    const { setup, push, lane, cells } = this;
    lane.takeHomeRow(this.placeY[row]! + lane.touchY, setup.homeDepth);
    const from = lane.columnAfter(lane.lowX - lane.touchX);
    const last = lane.columnBefore(lane.highX - lane.touchX);
    for (let column = from; column <= last; column++) {
      const cell = row * setup.columns + column;
      if (roomy[to * cells + cell] === 0) continue;
      const x = this.placeX[column]! + lane.touchX;
      if (!meet(setup, x, this.placeY[row]! + lane.touchY, to, setup.carryContact, push)) continue;
      if (this.endsHome(push, to)) this.turnInto(cell, to, this.untilStopped(push.travel), roomy);
    }
  }

  /** Where the robot itself may stand on a place of the ball, one plane for each heading: 1 or 0. */
  private roomyPlaces(): Uint8Array {
    const { lane, cells, setup } = this;
    const { columns, rows, keepOuts } = setup;
    const { roomy } = this.planes;
    roomy.fill(0);
    for (let d = 0; d < DIRECTIONS; d++) {
      for (let row = 0; row < rows; row++) {
        lane.takeRobotRow(d, row);
        for (let column = lane.from; column <= lane.to; column++) {
          if (keepOuts.length > 0 && lane.blocked[column] === 1) continue;
          roomy[d * cells + row * columns + column] = 1;
        }
      }
    }
    return roomy;
  }

  /** Spreads a push home to all headings from which the robot can turn into it where it stands. */
  private turnInto(cell: number, to: number, pushS: number, roomy: Uint8Array): void {
    const { carried, cells, leastCarried } = this;
    for (let way = -1; way <= 1; way += 2) {
      for (let n = 0; n <= DIRECTIONS / 2; n++) {
        const d = (to + way * n + DIRECTIONS) % DIRECTIONS;
        if (roomy[d * cells + cell] === 0) break;
        const time = pushS + this.turnTimes[n]!;
        if (time < carried[d * cells + cell]!) carried[d * cells + cell] = time;
        if (time < leastCarried[d]!) leastCarried[d] = time;
      }
    }
  }

  /** Pushes in one direction that end on the floor; tells whether any place got better, and marks it. */
  private pushOnward(d: number, meets: Meets, changed: Uint8Array): boolean {
    const { setup, seconds, best, bestDirection, lane, quick, slow } = this;
    const { arrivals, leastOnward, leastCarried } = this;
    const leastOn = Math.min(leastOnward[d]!, leastCarried[d]!);
    if (leastOn === NEVER) return false;
    const plane = d * this.cells;
    let gained = false;
    for (let k = 0; k < setup.contacts.length; k++) {
      const end = meets.endOf(d, k);
      const start = meets.startOf(d, k);
      if (start === end) continue;
      lane.aim(d, k);
      quick.aim(lane, arrivals.leastRegrip, leastOnward[d]!, leastCarried[d]!);
      if (slow.speed < quick.speed) slow.aim(lane, arrivals.leastRegrip, leastOnward[d]!, leastCarried[d]!);
      const holds = setup.carryContact >= 0 && setup.contacts[k]!.depthMm >= setup.radius;
      const settled = leastOn + Math.min(quick.leastTime(), slow.leastTime());
      for (let i = start; i < end; i++) {
        const cell = meets.cells[i]!;
        // Beyond this, no chain through here can pass by the place's best direction.
        const latest = arrivals.latest(best[cell]!, bestDirection[cell]!, d);
        const limit = Math.min(seconds[plane + cell]! - GAIN_S, latest);
        if (limit <= settled) continue;
        const found = this.stopsFrom(cell, holds, limit);
        if (found >= limit) continue;
        seconds[plane + cell] = found;
        changed[cell] = 1;
        gained = true;
        if (found >= best[cell]!) continue;
        best[cell] = found;
        bestDirection[cell] = d;
      }
    }
    return gained;
  }

  /** Least seconds home from a place by a push along the lane that ends on the floor; `limit` where none takes less. */
  private stopsFrom(cell: number, holds: boolean, limit: number): number {
    const { setup, lane, quick, slow } = this;
    const row = Math.floor(cell / setup.columns);
    const x = this.placeX[cell - row * setup.columns]!;
    const y = this.placeY[row]!;
    const two = slow.speed < quick.speed;
    const carry = two ? slow : quick;
    // Bounds before the ways are worked out: many states end here.
    const depth = this.depth(x, y);
    const most = quick.mostRegrip(depth, limit);
    const slowMost = two ? slow.mostRegrip(depth, limit) : -1;
    const carryMost = holds ? carry.mostCarry(depth, limit) : -1;
    if (!(most >= quick.first || slowMost >= slow.first || carryMost >= carry.first)) return limit;
    const free = lane.go(x, y);
    if (free < 0) return limit;
    const { ballFree } = lane;
    let found = this.regripFrom(quick, cell, Math.min(free, ballFree - quick.shift, most), limit);
    if (two) found = this.regripFrom(slow, cell, Math.min(free, ballFree - slow.shift, slowMost), found);
    return holds ? this.carryFrom(carry, cell, row, Math.min(free, carryMost), found) : found;
  }

  private regripFrom(stops: Stops, cell: number, last: number, limit: number): number {
    const { onward } = this;
    const at = this.lane.d * this.cells + cell;
    const { ball, speed, ramps, first } = stops;
    const perStep = STOP_STEP_MM / speed;
    let time = first / speed + ramps;
    let found = limit;
    const count = Math.floor((last - first) / STOP_STEP_MM);
    for (let n = 0; n <= count; n++, time += perStep) {
      const total = time + onward[at + ball[n]!]!;
      if (total < found) found = total;
    }
    return found;
  }

  private carryFrom(stops: Stops, cell: number, row: number, last: number, limit: number): number {
    const { carried, setup } = this;
    const { columns, rows } = setup;
    const plane = this.lane.d * this.cells;
    const ownColumn = cell - row * columns;
    const { robotColumns, robotRows, speed, ramps, first } = stops;
    const perStep = STOP_STEP_MM / speed;
    let time = first / speed + ramps;
    let found = limit;
    const count = Math.floor((last - first) / STOP_STEP_MM);
    for (let n = 0; n <= count; n++, time += perStep) {
      const column = ownColumn + robotColumns[n]!;
      const line = row + robotRows[n]!;
      if (column < 0 || line < 0 || column >= columns || line >= rows) continue;
      const total = time + carried[plane + line * columns + column]!;
      if (total < found) found = total;
    }
    return found;
  }
}

/** Entry n: seconds of a gentle turn with the ball by n directions. */
function turnTimesOf({ carryTurnRate, turnAccel }: PushSetup): Float64Array {
  return Float64Array.from({ length: DIRECTIONS / 2 + 1 }, (_, n) => {
    const angle = n * DIRECTION_RAD;
    return angle * turnAccel <= carryTurnRate * carryTurnRate
      ? 2 * Math.sqrt(angle / turnAccel)
      : angle / carryTurnRate + carryTurnRate / turnAccel;
  });
}
