import type { Project } from "../model/project.ts";
import type { Routine } from "../model/routine.ts";
import type { TrialBatch } from "../trial/outcome.ts";
import type { LeaderRefining } from "./leaderRefining.ts";

/** One thing a race wants done; the order does not matter, and several may be done at once. */
export type RaceWork =
  | { readonly kind: "make"; readonly project: Project; readonly ids: readonly string[] }
  /** What refines leaders: seconds into a race, so that a page need not have it for its first answer. */
  | { readonly kind: "refiner" }
  /** Trials `from` (included) to `to` (excluded). */
  | {
      readonly kind: "trials";
      readonly project: Project;
      readonly routine: Routine;
      readonly seed: number;
      readonly from: number;
      readonly to: number;
    };

export type RaceAnswer =
  | { readonly kind: "made"; readonly routines: readonly (Routine | null)[] }
  | { readonly kind: "ran"; readonly batch: TrialBatch }
  | { readonly kind: "refiner"; readonly Refining: typeof LeaderRefining }
  /** The routine cannot be run. */
  | { readonly kind: "failed"; readonly reason: string };

/** Pieces of work go out, their answers come back in the same order. */
export type Racing<T> = Generator<readonly RaceWork[], T, readonly RaceAnswer[]>;

/** Ids a piece of work makes, and trials it runs, at most: some tens of milliseconds of a worker. */
const MOST_IDS = 2;
const MOST_TRIALS = 50;
/** Trials that go out together: a fraction of a second, so that a race can be shown, paused and stopped in between. */
const SLICE_TRIALS = 800;

/** Makes routines by their ids, in order; null where there is no room for one. */
export function* makeAll(project: Project, ids: readonly string[]): Racing<readonly (Routine | null)[]> {
  const pieces = Array.from({ length: Math.ceil(ids.length / MOST_IDS) }, (_, i) =>
    ids.slice(i * MOST_IDS, (i + 1) * MOST_IDS),
  );
  const answers = yield pieces.map((piece) => ({ kind: "make", project, ids: piece }));
  return pieces.flatMap((piece, i) => {
    const answer = answers[i];
    return answer?.kind === "made" ? answer.routines : piece.map(() => null);
  });
}

export interface TrialSpan<T> {
  readonly of: T;
  readonly routine: Routine;
  readonly from: number;
  readonly to: number;
}

/**
 * Runs the spans of several routines, slice by slice; `take` gets the answers of one span after the other, each span's
 * in the order of its trials. `isOver` is asked before each slice.
 */
export function* runSpans<T>(
  project: Project,
  seed: number,
  spans: readonly TrialSpan<T>[],
  take: (span: TrialSpan<T>, answer: RaceAnswer) => void,
  isOver: () => boolean = () => false,
): Racing<void> {
  const pieces = spans.flatMap(piecesOf);
  for (let done = 0; done < pieces.length && !isOver(); ) {
    let trials = 0;
    let end = done;
    for (; end < pieces.length && trials < SLICE_TRIALS; end++) {
      const piece = pieces[end];
      trials += piece ? piece.to - piece.from : 0;
    }
    const slice = pieces.slice(done, end);
    const answers = yield slice.map(({ routine, from, to }) => ({
      kind: "trials",
      project,
      routine,
      seed,
      from,
      to,
    }));
    for (const [i, piece] of slice.entries()) {
      const answer = answers[i];
      if (answer) take(piece, answer);
    }
    done = end;
  }
}

function piecesOf<T>(span: TrialSpan<T>): readonly TrialSpan<T>[] {
  const { from, to } = span;
  return Array.from({ length: Math.ceil(Math.max(0, to - from) / MOST_TRIALS) }, (_, i) => ({
    ...span,
    from: from + i * MOST_TRIALS,
    to: Math.min(to, from + (i + 1) * MOST_TRIALS),
  }));
}
