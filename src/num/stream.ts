import { normalCdf, normalQuantile } from "./normal.ts";
import { openUnit, philox4x32 } from "./philox.kernel.ts";

const TWO_TO_32 = 4294967296;

/**
 * A stream of random numbers that depends on (seed, trial, stream) alone, so that a trial can be run by itself, in any order, on any
 * worker, and two routines can be given the same luck. One object is opened again and again; nothing is allocated after construction.
 *
 * Key = the seed (low 32 and high 21 bits), counter = (trial, stream, block, 0); every draw takes half a block. A stream repeats
 * after 2^33 draws, far beyond any trial.
 */
export class RandomStream {
  private readonly words = new Uint32Array(4);
  private keyLow = 0;
  private keyHigh = 0;
  private trial = 0;
  private stream = 0;
  private block = 0;
  private half = false;
  private cutSd = 0;
  private cutTail = 0.5;

  /**
   * Starts the stream from its beginning.
   *
   * @param seed non-negative safe integer
   * @param trial non-negative integer below 2^32
   * @param stream what the numbers are for, non-negative integer below 2^32
   */
  open(seed: number, trial: number, stream: number): this {
    this.keyLow = seed | 0;
    this.keyHigh = Math.floor(seed / TWO_TO_32) | 0;
    this.trial = trial | 0;
    this.stream = stream | 0;
    this.block = 0;
    this.half = false;
    return this;
  }

  /** Uniform, strictly between 0 and 1: an odd multiple of 2^−53. */
  uniform(): number {
    if (this.half) {
      this.half = false;
      return openUnit(this.words, 2);
    }
    philox4x32(this.trial, this.stream, this.block, 0, this.keyLow, this.keyHigh, this.words);
    this.block = (this.block + 1) | 0;
    this.half = true;
    return openUnit(this.words, 0);
  }

  /** Uniform draws taken since the stream was opened. */
  get drawn(): number {
    return 2 * this.block - (this.half ? 1 : 0);
  }

  /** Goes on, or back, to where so many uniform draws had been taken. */
  resume(drawn: number): void {
    this.block = Math.floor(drawn / 2);
    this.half = false;
    if (drawn % 2 === 1) this.uniform();
  }

  /** Standard normal; takes one uniform draw. */
  normal(): number {
    return normalQuantile(this.uniform());
  }

  /**
   * Standard normal on condition that its size stays below the limit; takes one uniform draw (no retries, so streams stay aligned).
   *
   * @param limitSd positive, in standard deviations
   */
  normalCut(limitSd: number): number {
    if (limitSd !== this.cutSd) {
      this.cutSd = limitSd;
      this.cutTail = normalCdf(-limitSd);
    }
    const inside = normalQuantile(this.cutTail + this.uniform() * (1 - 2 * this.cutTail));
    // The quantile may lie a rounding beyond the limit.
    return Math.min(Math.max(inside, -limitSd), limitSd);
  }

  /** Uniform on the integers 0 … n − 1; takes one uniform draw. The unevenness is at most n · 2^−52. */
  below(n: number): number {
    return Math.floor(this.uniform() * n);
  }
}
