import type { Project } from "../model/project.ts";
import type { Routine } from "../model/routine.ts";
import { routineDurationS } from "../motion/duration.ts";
import { type Rankable, type Ranked, rankRoutines } from "../score/ranking.ts";
import { type StressSummary, summarise } from "../score/stress.ts";
import type { TrialBatch } from "../trial/outcome.ts";
import { chunksOf, unbroken } from "./chunks.ts";
import type { Pool } from "./pool.ts";

/** What the ranking knows of a routine. */
export interface RankingEntry extends Rankable {
  readonly routine: Routine;
  /** null while not measured. */
  readonly coverageFrac: number | null;
  readonly summary: StressSummary;
}

export interface RankingProgress {
  readonly doneTrials: number;
  readonly totalTrials: number;
  /** The ranking so far, best first; made when asked for. Routines without a trial yet are not in it. */
  readonly ranking: () => readonly Ranked<RankingEntry>[];
}

export interface RankingOptions {
  readonly seed: number;
  /** Of each routine. All see the same placements and the same luck. */
  readonly trials: number;
  readonly signal?: AbortSignal | undefined;
  readonly onProgress?: ((progress: RankingProgress) => void) | undefined;
}

export interface RankingResult {
  /** stopped: the signal was aborted, and the ranking is of the trials done until then. */
  readonly status: "done" | "stopped";
  readonly ranking: readonly Ranked<RankingEntry>[];
}

interface Candidate {
  readonly routine: Routine;
  readonly batches: TrialBatch[];
  coverageFrac: number | null;
}

/**
 * Stress-tests routines in the pool's workers and puts them in order. All routines get their first trials before any
 * gets more, so that there is a whole, rough ranking early on. Rejects when a routine cannot be tested; being stopped is a result.
 */
export async function rankByStress(
  pool: Pool,
  project: Project,
  routines: readonly Routine[],
  { seed, trials, signal, onProgress }: RankingOptions,
): Promise<RankingResult> {
  const candidates = routines.map((routine): Candidate => ({ routine, batches: [], coverageFrac: null }));
  const ranking = () => rankingOf(project, candidates);
  const totalTrials = trials * routines.length;
  let doneTrials = 0;
  const failure = new AbortController();
  const options = { signal: AbortSignal.any([failure.signal, ...(signal ? [signal] : [])]) };
  const cover = async (candidate: Candidate): Promise<void> => {
    const { coverageFrac } = await pool.run(project, candidate.routine, { kind: "coverage" }, options);
    candidate.coverageFrac = coverageFrac;
  };
  const stress = async (candidate: Candidate, from: number, to: number): Promise<void> => {
    const task = { kind: "stress", seed, from, to } as const;
    candidate.batches.push(await pool.run(project, candidate.routine, task, options));
    doneTrials += to - from;
    onProgress?.({ doneTrials, totalTrials, ranking });
  };
  const tasks = chunksOf(trials).flatMap(({ from, to }) =>
    candidates.flatMap((each) => [...(from === 0 ? [cover(each)] : []), stress(each, from, to)]),
  );
  try {
    await Promise.all(tasks);
    return { status: "done", ranking: ranking() };
  } catch (reason) {
    if (signal?.aborted) return { status: "stopped", ranking: ranking() };
    // The rest is not worth the time any more.
    failure.abort(reason);
    throw reason;
  }
}

function rankingOf(project: Project, candidates: readonly Candidate[]): readonly Ranked<RankingEntry>[] {
  const entries = candidates.flatMap(({ routine, batches, coverageFrac }) => {
    const known = unbroken(batches);
    if (known.length === 0) return [];
    const summary = summarise(known);
    // What a program takes depends on what it meets.
    const durationS =
      routine.program === undefined
        ? routineDurationS(project.robot.drive, routine.moves)
        : summary.meanTimeS;
    const { successRate, meanDelivered } = summary;
    return [{ id: routine.id, routine, successRate, meanDelivered, durationS, coverageFrac, summary }];
  });
  return rankRoutines(entries, project.rules.timeLimitS);
}
