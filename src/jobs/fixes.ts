import type { Project } from "../model/project.ts";
import type { Routine } from "../model/routine.ts";
import { routineDurationS } from "../motion/duration.ts";
import type { Rate, RateDifference } from "../num/interval.ts";
import { compareRoutines, SIGNIFICANCE } from "../score/compare.ts";
import { pairedDifference } from "../score/pairedDifference.ts";
import { type StressSummary, summarise } from "../score/stress.ts";
import type { Change, ProposedChange } from "../search/change.ts";
import { holm } from "../search/holm.ts";
import type { TrialBatch } from "../trial/outcome.ts";
import type { Workers } from "./catalogue.ts";
import { type Chunk, chunksOf, unbroken } from "./chunks.ts";
import { type Dependence, dependenceOn, QUICK_EFFORT, USUAL_EFFORT } from "./dependence.ts";
import { inTurn } from "./inTurn.ts";
import type { JobOptions } from "./jobOptions.ts";
import { PartsDone } from "./partsDone.ts";
import { type PartWorth, partWorths } from "./partWorths.ts";

/** What a change would bring: same placements, same luck, so that most of the chance cancels. */
export interface Fix {
  readonly id: string;
  readonly about: Change["about"];
  readonly title: string;
  /**
   * Success rate with the change minus without. The intervals of all changes hold together in 95 of 100 lists (Bonferroni):
   * so does that of the one that is listed first because it looks best.
   */
  readonly gain: RateDifference;
  /** Balls home per run, with minus without. */
  readonly ballsGain: number;
  /** By the exact paired test, with Holm's correction for all changes together. */
  readonly verdict: "helps" | "harms" | "not told apart";
  /** How much longer the routine takes, s. */
  readonly costsS: number;
  readonly trials: number;
}

export interface FixList {
  readonly status: "done" | "stopped";
  readonly trials: number;
  /** Success rate as it is; null before the first trials. */
  readonly successRate: Rate | null;
  /** Greatest gain first. */
  readonly fixes: readonly Fix[];
  readonly leftOut: readonly { readonly title: string; readonly reason: string }[];
  /** null: not finished. */
  readonly worths: readonly PartWorth[] | null;
  readonly dependence: Dependence | null;
}

export interface FixOptions extends JobOptions {
  readonly seed: number;
  /** Of the routine as it is and with each change. */
  readonly trials: number;
  readonly onProgress?: ((doneFrac: number, what: string) => void) | undefined;
  /** Told what is known so far, after every few changes, and when a part has ended; verdicts are given at the end only. */
  readonly onKnown?: ((soFar: FixList) => void) | undefined;
}

/** What share of the whole job its parts are, roughly. */
const SHARES = { changes: 0.5, worths: 0.3, dependence: 0.2 };

/** Trials of every change before any gets more, and pieces of work after which the list is told anew. */
const FIRST_TRIALS = 25;
const TOLD_EVERY = 8;

/** Fewer than these ask for a quick answer: then what the result depends on is known more roughly, too. */
const FEW_TRIALS = 100;

/** Runs at one point of a sensitivity design: a task that cannot be cut short. */
const MOST_AT_A_POINT = 200;

/**
 * Says what to fix: tries every change that is sound, tells what each part of the routine is worth, and which unknowns the
 * result depends on. The same for any number of workers. Being stopped is a result; rejects when a task fails.
 */
export async function findFixes(
  workers: Workers,
  project: Project,
  routine: Routine,
  options: FixOptions,
): Promise<FixList> {
  const { seed, trials, signal, gate } = options;
  const run = { signal, gate, seed };
  const done = new PartsDone(SHARES, options.onProgress);
  const effort = {
    ...(trials < FEW_TRIALS ? QUICK_EFFORT : USUAL_EFFORT),
    trials: Math.min(MOST_AT_A_POINT, Math.max(4, Math.round(trials / 25))),
  };
  const tried = new Tried(project, routine);
  let worths: readonly PartWorth[] | null = null;
  let dependence: Dependence | null = null;
  const known = (status: FixList["status"]): FixList => ({
    status,
    trials,
    ...tried.lists(),
    worths,
    dependence,
  });
  // Looked at again and again, the exact test would find something sooner or later: it is asked once, at the end.
  const tell = () => {
    if (options.onKnown === undefined) return;
    const soFar = known("stopped");
    options.onKnown({ ...soFar, fixes: soFar.fixes.map((fix) => ({ ...fix, verdict: "not told apart" })) });
  };
  const toldBy = (part: keyof typeof SHARES) => (frac: number) => done.set(part, frac);
  const tasks = [
    tried.try(workers, options, toldBy("changes"), tell),
    partWorths(workers, project, routine, { ...run, trials, onProgress: toldBy("worths") }).then((value) => {
      worths = value;
      tell();
    }),
    dependenceOn(workers, project, routine, { ...run, effort, onProgress: toldBy("dependence") }).then(
      (value) => {
        dependence = value;
      },
    ),
  ];
  try {
    await Promise.all(tasks);
    return known("done");
  } catch (reason) {
    if (!signal?.aborted) throw reason;
    // Let the others notice, so that none is left behind unheard.
    await Promise.allSettled(tasks);
    return known("stopped");
  }
}

/** The routine as it is and with each change, and the trials done of each. */
class Tried {
  readonly #project: Project;
  readonly #routine: Routine;
  readonly #batches = new Map<string, TrialBatch[]>();
  #proposed: readonly ProposedChange[] = [];

  constructor(project: Project, routine: Routine) {
    this.#project = project;
    this.#routine = routine;
  }

  async try(
    workers: Workers,
    { seed, trials, signal, gate }: FixOptions,
    onProgress: (doneFrac: number) => void,
    tell: () => void,
  ): Promise<void> {
    // Ahead of the other parts: it is what somebody waits for.
    const run = { signal, gate, urgent: true };
    this.#proposed = await workers.run(this.#project, this.#routine, { kind: "changes" }, run);
    const subjects = [
      { id: AS_IS, project: this.#project, routine: this.#routine },
      ...this.#proposed.flatMap(({ id, made }) => (made === null ? [] : [{ id, ...made }])),
    ];
    let done = 0;
    let ended = 0;
    // All get their first trials before any gets more: stopped early, there is something to say of each.
    const pieces = firstChunksOf(trials).flatMap((chunk) =>
      subjects.map((subject) => ({ ...chunk, ...subject })),
    );
    await inTurn(pieces, async ({ id, project, routine, from, to }) => {
      const batch = await workers.run(project, routine, { kind: "stress", seed, from, to }, run);
      const batches = this.#batches.get(id) ?? [];
      batches.push(batch);
      this.#batches.set(id, batches);
      done += to - from;
      onProgress(done / (trials * subjects.length));
      if (++ended % TOLD_EVERY === 0 || ended === pieces.length) tell();
    });
  }

  lists(): Pick<FixList, "successRate" | "fixes" | "leftOut"> {
    const base = this.#summary(AS_IS);
    const leftOut = this.#proposed.flatMap(({ title, reason }) =>
      reason === null ? [] : [{ title, reason }],
    );
    if (base === null) return { successRate: null, fixes: [], leftOut };
    const compared = this.#proposed.flatMap((change) => {
      const summary = change.made === null ? null : this.#summary(change.id);
      return summary === null || change.made === null
        ? []
        : [
            {
              change,
              routine: change.made.routine,
              project: change.made.project,
              with: compareRoutines(summary, base),
            },
          ];
    });
    const told = holm(
      compared.map((each) => each.with.pValue),
      SIGNIFICANCE,
    );
    const confidence = 1 - SIGNIFICANCE / Math.max(1, this.#proposed.filter(({ made }) => made).length);
    const nowS = routineDurationS(this.#project.robot.drive, this.#routine.moves);
    const fixes = compared.map(({ change, routine, project, with: compared }, i): Fix => {
      const gain = pairedDifference(compared, confidence);
      return {
        id: change.id,
        about: change.about,
        title: change.title,
        gain,
        ballsGain: compared.meanDeliveredDifference,
        verdict: told[i] !== true ? "not told apart" : gain.value > 0 ? "helps" : "harms",
        costsS: routineDurationS(project.robot.drive, routine.moves) - nowS,
        trials: compared.trials,
      };
    });
    const sorted = [...fixes].sort((a, b) => b.gain.value - a.gain.value || b.ballsGain - a.ballsGain);
    return { successRate: base.successRate, fixes: sorted, leftOut };
  }

  #summary(id: string): StressSummary | null {
    const batches = unbroken(this.#batches.get(id) ?? []);
    return batches.length === 0 ? null : summarise(batches);
  }
}

/** The first chunk in two, so that something can be said of every change soon. */
function firstChunksOf(trials: number): readonly Chunk[] {
  const cut = Math.min(FIRST_TRIALS, trials);
  const rest = chunksOf(trials).map(({ from, to }) => ({ from: Math.max(from, cut), to }));
  return [{ from: 0, to: cut }, ...rest.filter(({ from, to }) => from < to)];
}

/** Key of the routine as it is, beside the ids of changes. */
const AS_IS = "as-is";
