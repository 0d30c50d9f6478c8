import { Gate } from "../../jobs/gate.ts";
import { TimeLeft } from "../../jobs/timeLeft.ts";

/** What a long job is given, so that it can be held, ended and watched. */
export interface WorkOptions {
  readonly signal: AbortSignal;
  readonly gate: Gate;
  readonly onProgress: (doneFrac: number) => void;
}

/** One long job at a time, as a person sees it: how far it is, how long it still takes, pause, go on and cancel. */
export class Work {
  /** 0 … 1. */
  doneFrac = $state(0);
  /** Seconds left, without pauses; null while nobody can say. */
  leftS = $state<number | null>(null);
  paused = $state(false);
  #abort = new AbortController();
  #gate = new Gate();
  #time = new TimeLeft();

  /** Ends the job before, and gives the next one its options. */
  begin(): WorkOptions {
    this.drop();
    const { signal } = this.#abort;
    const time = this.#time;
    const onProgress = (doneFrac: number): void => {
      if (!this.owns(signal)) return;
      this.doneFrac = doneFrac;
      this.leftS = time.leftS(doneFrac);
    };
    return { signal, gate: this.#gate, onProgress };
  }

  /** Whether it is still the job of a signal, ended or not: what comes from another one is stale. */
  owns(signal: AbortSignal): boolean {
    return signal === this.#abort.signal;
  }

  pause(): void {
    this.#gate.close();
    this.paused = true;
  }

  goOn(): void {
    this.paused = false;
    this.#gate.open();
  }

  /** Ends the job; what it knows by then is still its result. */
  cancel(): void {
    this.#abort.abort();
    this.paused = false;
  }

  /** Ends it and forgets it. */
  drop(): void {
    this.cancel();
    this.#time.end();
    this.#abort = new AbortController();
    this.#gate = new Gate();
    this.#time = new TimeLeft(this.#gate);
    this.doneFrac = 0;
    this.leftS = null;
  }
}
