import { highWord, lowWord } from "./bits.kernel.ts";

/**
 * A 64-bit fingerprint of a sequence of doubles, in two lanes of 32 bits that mix with the multiply-rotate step and the finish of
 * MurmurHash3 (Appleby, public domain) and feed each other. Not for secrets: it tells trajectories apart.
 */
export class TrajectoryHash {
  private laneA = 0;
  private laneB = 0;
  private count = 0;

  constructor() {
    this.reset();
  }

  /** Forgets everything mixed in so far. */
  reset(): void {
    this.laneA = 0x243f6a88 | 0;
    this.laneB = 0x85a308d3 | 0;
    this.count = 0;
  }

  /** Goes on from where another one is. */
  copy(other: TrajectoryHash): void {
    this.laneA = other.laneA;
    this.laneB = other.laneB;
    this.count = other.count;
  }

  /** Takes in the 64 bits of a double; 0 and −0 differ, all NaN count as one. */
  mix(value: number): void {
    const finite = Number.isNaN(value) ? NaN : value;
    const low = Math.imul(lowWord(finite), 0xcc9e2d51);
    const high = Math.imul(highWord(finite), 0x1b873593);
    const a = this.laneA ^ Math.imul((low << 15) | (low >>> 17), 0x1b873593);
    const b = this.laneB ^ Math.imul((high << 16) | (high >>> 16), 0xcc9e2d51);
    const turnedA = Math.imul((a << 13) | (a >>> 19), 5) + 0xe6546b64;
    this.laneA = (turnedA + b) | 0;
    this.laneB = (Math.imul((b << 17) | (b >>> 15), 5) + 0x0bcaa747 + this.laneA) | 0;
    this.count = (this.count + 1) | 0;
  }

  /** Low 32 bits of the fingerprint, unsigned. */
  get low(): number {
    return finish(this.crossed()) >>> 0;
  }

  /** High 32 bits of the fingerprint, unsigned. */
  get high(): number {
    return finish(this.laneB + Math.imul(this.crossed(), 0x85ebca77)) >>> 0;
  }

  /** Both lanes in one word; with laneB it still determines the state. */
  private crossed(): number {
    return this.laneA ^ this.count ^ Math.imul(this.laneB, 0x9e3779b1);
  }

  /** The fingerprint as 16 hexadecimal digits. */
  hex(): string {
    return hashHex(this.low, this.high);
  }
}

/**
 * The fingerprint of a set of trials: each trial's hash is tied to its index and the results are added modulo 2^32 a lane, so the
 * order in which trials arrive, and which worker ran them, does not matter, while swapping two trials' trajectories does.
 */
export class HashSum {
  private sumLow = 0;
  private sumHigh = 0;

  /** Adds one trial. */
  add(index: number, low: number, high: number): void {
    const tie = finish(Math.imul(index, 0x9e3779b1) ^ 0x6a09e667);
    const mixedLow = finish((low ^ tie) + Math.imul(high, 0x85ebca77));
    this.sumLow = (this.sumLow + mixedLow) | 0;
    this.sumHigh = (this.sumHigh + finish((high ^ mixedLow) + Math.imul(tie, 0xc2b2ae3d))) | 0;
  }

  /** Adds the sum of other trials. */
  addSum(low: number, high: number): void {
    this.sumLow = (this.sumLow + low) | 0;
    this.sumHigh = (this.sumHigh + high) | 0;
  }

  get low(): number {
    return this.sumLow >>> 0;
  }

  get high(): number {
    return this.sumHigh >>> 0;
  }

  /** The fingerprint as 16 hexadecimal digits. */
  hex(): string {
    return hashHex(this.low, this.high);
  }
}

/** Two 32-bit words as 16 hexadecimal digits, high word first. */
export function hashHex(low: number, high: number): string {
  return (high >>> 0).toString(16).padStart(8, "0") + (low >>> 0).toString(16).padStart(8, "0");
}

/** Spreads every input bit over the whole word (the finish of MurmurHash3). */
export function finish(word: number): number {
  let h = word | 0;
  h = Math.imul(h ^ (h >>> 16), 0x85ebca6b);
  h = Math.imul(h ^ (h >>> 13), 0xc2b2ae35);
  return (h ^ (h >>> 16)) | 0;
}
