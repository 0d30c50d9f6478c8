/** More steps back than anyone takes; each is a few kilobytes shared with its neighbours. */
const MAX_STEPS = 500;

/** What a value was, is, and would be again: undo and redo over values that are never changed in place. */
export class History<T> {
  present = $state.raw() as T;
  #past = $state.raw<readonly T[]>([]);
  #future = $state.raw<readonly T[]>([]);
  /** What undoing would bring back, the nearest last. */
  get past(): readonly T[] {
    return this.#past;
  }

  readonly canUndo = $derived(this.#past.length > 0);
  readonly canRedo = $derived(this.#future.length > 0);
  #gesture = "";

  constructor(first: T) {
    this.present = first;
  }

  /** Forgets everything and begins with this value. */
  reset(value: T): void {
    this.present = value;
    this.#past = [];
    this.#future = [];
    this.#gesture = "";
  }

  /** @param gesture changes of one gesture in a row (a drag, typing in one field) count as one; "" for a change of its own */
  push(value: T, gesture = ""): void {
    const goesOn = gesture !== "" && gesture === this.#gesture;
    if (!goesOn) this.#past = [...this.#past.slice(1 - MAX_STEPS), this.present];
    this.#future = [];
    this.#gesture = gesture;
    this.present = value;
  }

  /** Changes the present without a step back to what it was: for what the program itself adds. */
  amend(value: T): void {
    this.present = value;
  }

  /** Ends a gesture: the next change is one of its own. */
  seal(): void {
    this.#gesture = "";
  }

  undo(): void {
    const before = this.#past.at(-1);
    if (before === undefined) return;
    this.#future = [this.present, ...this.#future];
    this.#past = this.#past.slice(0, -1);
    this.present = before;
    this.#gesture = "";
  }

  redo(): void {
    const [next, ...rest] = this.#future;
    if (next === undefined) return;
    this.#past = [...this.#past, this.present];
    this.#future = rest;
    this.present = next;
    this.#gesture = "";
  }
}
