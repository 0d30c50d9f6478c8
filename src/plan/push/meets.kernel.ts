import type { PushLane } from "./lane.kernel.ts";
import { DIRECTIONS } from "./room.ts";

/**
 * From which places which pushes are possible at all, by direction and contact: it depends on zone and robot alone, and all
 * rounds of the solver go over it. A ball that can be met where it stays put in the pusher is not met by any later contact.
 */
export class Meets {
  private readonly contacts: number;
  /** Places of direction d and contact k: cells[starts[d·contacts + k]] … before the next start, row by row. */
  private readonly starts: Int32Array;
  cells: Int32Array;

  /**
   * @param best seconds home: no ball is met where they are 0
   * @param memory for the list, as long as it suffices
   */
  constructor(lane: PushLane, best: Float32Array, memory: Int32Array) {
    const { contacts, columns, rows } = lane.setup;
    this.contacts = contacts.length;
    this.starts = new Int32Array(DIRECTIONS * contacts.length + 1);
    this.cells = memory;
    const done = new Uint8Array(columns * rows);
    let size = 0;
    for (let d = 0; d < DIRECTIONS; d++) {
      for (let cell = 0; cell < done.length; cell++) done[cell] = best[cell] === 0 ? 1 : 0;
      for (let k = 0; k < contacts.length; k++) {
        this.starts[d * contacts.length + k] = size;
        lane.aim(d, k);
        this.makeRoom(size + columns * rows);
        size = this.list(lane, done, size);
      }
    }
    this.starts[DIRECTIONS * contacts.length] = size;
  }

  startOf(d: number, k: number): number {
    return this.starts[d * this.contacts + k]!;
  }

  endOf(d: number, k: number): number {
    return this.starts[d * this.contacts + k + 1]!;
  }

  private makeRoom(size: number): void {
    if (size <= this.cells.length) return;
    const more = new Int32Array(Math.ceil(1.5 * size));
    more.set(this.cells);
    this.cells = more;
  }

  private list(lane: PushLane, done: Uint8Array, size: number): number {
    const { cells } = this;
    const { columns, keepOuts } = lane.setup;
    const settles = lane.advance === 0;
    const blocked = keepOuts.length > 0 ? lane.blocked : null;
    let next = size;
    for (let row = lane.firstRow; row <= lane.lastRow; row++) {
      lane.takeRow(row);
      const end = row * columns + lane.to;
      for (let cell = row * columns + lane.from; cell <= end; cell++) {
        if (done[cell] === 1 || (blocked !== null && blocked[cell - row * columns] === 1)) continue;
        if (settles) done[cell] = 1;
        cells[next++] = cell;
      }
    }
    return next;
  }
}
