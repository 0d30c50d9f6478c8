/**
 * Most subjects one worker keeps. More than the routines of one race, which takes them in turn again and again: with
 * fewer, each would be forgotten just before its next turn. And more than one task can be about: 1024 combinations of ten parts, and
 * their project. A compiled plan is some tens of kilobytes.
 */
export const KNOWN_KEYS = 1100;

/** The pool's account of what one worker still keeps: the keys used last. */
export class KnownKeys {
  /** In the order of their last use, oldest first. */
  readonly #keys = new Set<number>();
  readonly #capacity: number;

  constructor(capacity = KNOWN_KEYS) {
    this.#capacity = capacity;
  }

  /** Notes a use; tells whether the worker must be sent the subject, and what it may forget. */
  use(key: number): { readonly isNew: boolean; readonly forget: readonly number[] } {
    const isNew = !this.#keys.delete(key);
    this.#keys.add(key);
    const forget: number[] = [];
    for (const oldest of this.#keys) {
      if (this.#keys.size <= this.#capacity) break;
      this.#keys.delete(oldest);
      forget.push(oldest);
    }
    return { isNew, forget };
  }

  drop(key: number): void {
    this.#keys.delete(key);
  }
}
