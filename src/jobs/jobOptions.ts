import type { Gate } from "./gate.ts";

/** How far a long job is. */
export interface JobProgress {
  /** Share of the work that is done, 0 … 1. */
  readonly doneFrac: number;
  /** Seconds it will still take at the present pace; null while nobody can say. */
  readonly leftS: number | null;
}

/** What every long job understands. */
export interface JobOptions {
  /** Aborting it cancels the job. */
  readonly signal?: AbortSignal | undefined;
  /** Closing it pauses the job. */
  readonly gate?: Gate | undefined;
}
