/** Progress of a job made of several parts that run side by side. */
export class PartsDone<Part extends string> {
  readonly #weights: Readonly<Record<Part, number>>;
  readonly #onProgress: ((doneFrac: number, what: Part) => void) | undefined;
  readonly #done = new Map<Part, number>();

  /** @param weights share of the whole work that each part is, roughly; they add up to 1 */
  constructor(
    weights: Readonly<Record<Part, number>>,
    onProgress: ((doneFrac: number, what: Part) => void) | undefined,
  ) {
    this.#weights = weights;
    this.#onProgress = onProgress;
  }

  /** Notes how much of a part is done, 0 … 1, and tells. */
  set(part: Part, doneFrac: number): void {
    this.#done.set(part, doneFrac);
    let all = 0;
    for (const [each, frac] of this.#done) all += this.#weights[each] * frac;
    this.#onProgress?.(all, part);
  }
}
