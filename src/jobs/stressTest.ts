import type { Project } from "../model/project.ts";
import type { Routine } from "../model/routine.ts";
import { type StressSummary, summarise } from "../score/stress.ts";
import type { TrialBatch } from "../trial/outcome.ts";
import type { Workers } from "./catalogue.ts";
import { chunksOf, unbroken } from "./chunks.ts";

export interface StressOptions {
  readonly seed: number;
  readonly trials: number;
  readonly signal?: AbortSignal | undefined;
  readonly onProgress?: ((doneTrials: number) => void) | undefined;
}

export interface StressResult {
  /** stopped: the signal was aborted, and the summary is of the trials done until then, fewer than asked for. */
  readonly status: "done" | "stopped";
  readonly summary: StressSummary;
}

/** Stress-tests one routine in the pool's workers. Rejects when a trial cannot be run; being stopped is a result. */
export async function stressTest(
  pool: Workers,
  project: Project,
  routine: Routine,
  { seed, trials, signal, onProgress }: StressOptions,
): Promise<StressResult> {
  const batches: TrialBatch[] = [];
  let doneTrials = 0;
  const run = async ({ from, to }: { from: number; to: number }): Promise<void> => {
    batches.push(await pool.run(project, routine, { kind: "stress", seed, from, to }, { signal }));
    doneTrials += to - from;
    onProgress?.(doneTrials);
  };
  try {
    await Promise.all(chunksOf(trials).map(run));
    return { status: "done", summary: summarise(batches) };
  } catch (reason) {
    if (!signal?.aborted) throw reason;
    return { status: "stopped", summary: summarise(unbroken(batches)) };
  }
}
