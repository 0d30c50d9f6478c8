/** Holds work back while it is closed: pausing. What is under way ends; nothing new begins until the gate opens. */
export class Gate {
  #closed = false;
  readonly #onChange = new Set<() => void>();

  get isClosed(): boolean {
    return this.#closed;
  }

  close(): void {
    this.#set(true);
  }

  open(): void {
    this.#set(false);
  }

  /** Calls back whenever the gate opens or closes. @returns forgets the callback */
  watch(onChange: () => void): () => void {
    this.#onChange.add(onChange);
    return () => {
      this.#onChange.delete(onChange);
    };
  }

  #set(closed: boolean): void {
    if (closed === this.#closed) return;
    this.#closed = closed;
    for (const each of [...this.#onChange]) each();
  }
}
