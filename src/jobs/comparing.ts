import type { Project } from "../model/project.ts";
import type { Routine } from "../model/routine.ts";
import { summarise } from "../score/stress.ts";
import { type PairVerdict, pairVerdict } from "../search/pairVerdict.ts";
import type { TrialBatch } from "../trial/outcome.ts";
import type { Workers } from "./catalogue.ts";
import { chunksOf, unbroken } from "./chunks.ts";
import type { JobOptions } from "./jobOptions.ts";

/** A routine and the project, robot included, that it is run in. */
export interface Side {
  readonly project: Project;
  readonly routine: Routine;
}

export interface ComparingOptions extends JobOptions {
  /** Both sides get the trials of the same seed: the same placements and luck. */
  readonly seed: number;
  readonly trials: number;
  /** Trials done, of both sides together. */
  readonly onProgress?: ((doneTrials: number) => void) | undefined;
  /** Told what the trials say that both have done, whenever there are more of them. */
  readonly onKnown?: ((verdict: PairVerdict) => void) | undefined;
}

export interface ComparingResult {
  /** stopped: the signal was aborted, and the verdict is of the trials that both had done. */
  readonly status: "done" | "stopped";
  readonly verdict: PairVerdict;
}

/** Compares two routines or robots in the workers, piece by piece side by side. Rejects when a trial cannot be run. */
export async function comparePair(
  workers: Workers,
  sides: readonly [Side, Side],
  { seed, trials, signal, gate, onProgress, onKnown }: ComparingOptions,
): Promise<ComparingResult> {
  const batches: readonly [TrialBatch[], TrialBatch[]] = [[], []];
  let done = 0;
  let told = 0;
  const tell = (): void => {
    const [first = 0, second = 0] = batches.map((side) => unbroken(side).at(-1)?.to ?? 0);
    const common = Math.min(first, second);
    if (common <= told) return;
    told = common;
    onKnown?.(verdict());
  };
  const run = async (side: 0 | 1, from: number, to: number): Promise<void> => {
    const { project, routine } = sides[side];
    const task = { kind: "stress", seed, from, to } as const;
    batches[side].push(await workers.run(project, routine, task, { signal, gate, urgent: true }));
    done += to - from;
    onProgress?.(done);
    if (onKnown) tell();
  };
  const verdict = (): PairVerdict =>
    pairVerdict(summarise(unbroken(batches[0])), summarise(unbroken(batches[1])));
  try {
    await Promise.all(chunksOf(trials).flatMap(({ from, to }) => [run(0, from, to), run(1, from, to)]));
    return { status: "done", verdict: verdict() };
  } catch (reason) {
    if (!signal?.aborted) throw reason;
    return { status: "stopped", verdict: verdict() };
  }
}
