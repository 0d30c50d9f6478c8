/**
 * Where moves end, remembered: planning tries the same move from the same pose some ten times over (usual-zone: 100,089 asked, 9,612
 * different). Keys are compared bit by bit, so that what is found is what would be worked out again. An open-addressed table; when it is
 * full it is emptied.
 */

/** Doubles of a key: x, y, heading, sigma, kappa, length; of an entry: the key and x, y, heading after the move. */
const KEY = 6;
const ENTRY = 9;
/** 32-bit words of a key. */
const WORDS = 2 * KEY;
/** Entries at most, 590 kB. */
const MOST = 8192;

export class PoseMemo {
  /** The key that is looked for: fill it in, then `find`. */
  readonly key = new Float64Array(KEY);
  private readonly words = new Int32Array(this.key.buffer);
  private readonly entries = new Float64Array(MOST * ENTRY);
  private readonly entryWords = new Int32Array(this.entries.buffer);
  /** Entry + 1 by hash, 0 for none; twice as many slots as entries. */
  private readonly slots = new Int32Array(2 * MOST);
  private count = 0;

  /** Entries there are. */
  get size(): number {
    return this.count;
  }

  /** Place of the key's entry, to be read with `at`; −1 where there is none. */
  find(): number {
    return this.slots[this.slotOf()]! - 1;
  }

  /** One of the three numbers of an entry. */
  at(entry: number, index: number): number {
    return this.entries[entry * ENTRY + KEY + index]!;
  }

  /** Keeps what belongs to the key, which must not be there yet. */
  keep(x: number, y: number, heading: number): void {
    if (this.count === MOST) {
      this.count = 0;
      this.slots.fill(0);
    }
    const place = this.count * ENTRY;
    this.slots[this.slotOf()] = ++this.count;
    this.entries.set(this.key, place);
    this.entries.set([x, y, heading], place + KEY);
  }

  /** The key's slot, or the free one where it belongs. */
  private slotOf(): number {
    const { words, entryWords, slots } = this;
    let h = 0;
    for (let i = 0; i < WORDS; i++) {
      h = Math.imul(h ^ words[i]!, 0x9e3779b1);
      h ^= h >>> 15;
    }
    for (let slot = h; ; slot++) {
      slot &= slots.length - 1;
      const entry = slots[slot]! - 1;
      if (entry < 0) return slot;
      let i = 0;
      while (i < WORDS && words[i] === entryWords[2 * entry * ENTRY + i]) i++;
      if (i === WORDS) return slot;
    }
  }
}
