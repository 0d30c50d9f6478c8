import { TimeLeft } from "../../jobs/timeLeft.ts";

/** One piece of long work at a time: with progress, and cancelled when another begins. */
export class LongWork<T> {
  result = $state.raw<T | null>(null);
  status = $state<"idle" | "running" | "done" | "stopped" | "failed">("idle");
  doneFrac = $state(0);
  /** Seconds it still takes at the pace so far; null while nobody can say. */
  leftS = $state<number | null>(null);
  fault = $state("");
  #abort = new AbortController();

  /** @param work resolves with null where it was stopped */
  async run(
    work: (signal: AbortSignal, onProgress: (doneFrac: number) => void) => Promise<T | null>,
  ): Promise<void> {
    this.#abort.abort();
    const abort = new AbortController();
    this.#abort = abort;
    this.status = "running";
    this.doneFrac = 0;
    this.leftS = null;
    const time = new TimeLeft();
    try {
      const result = await work(abort.signal, (doneFrac) => {
        if (abort.signal.aborted) return;
        this.doneFrac = doneFrac;
        this.leftS = time.leftS(doneFrac);
      });
      if (abort !== this.#abort) return;
      this.status = result === null ? "stopped" : "done";
      if (result !== null) this.result = result;
    } catch (reason) {
      if (abort !== this.#abort) return;
      this.status = abort.signal.aborted ? "stopped" : "failed";
      this.fault = reason instanceof Error ? reason.message : String(reason);
    }
  }

  cancel(): void {
    this.#abort.abort();
  }
}
