import { ballsOf, type Project } from "../../model/project.ts";
import type { KnownBallsRun } from "../../search/knownBalls.ts";
import { runNoticeTexts } from "../../texts/english/runNotice.ts";
import { traceRun } from "../../view/runTrace.ts";
import type { Candidate } from "./candidate.ts";
import { Player } from "./player.svelte.ts";
import type { WantedRun } from "./runFinder.ts";
import { SEED } from "./seed.ts";
import type { Workers } from "./workers.ts";

/** A search for a run that failed or worked. */
export interface RunSearch {
  readonly wanted: WantedRun;
  readonly looked: number;
}

/** Runs looked at before a search gives up: at 5,000 a second one second of one worker. */
export const SEARCH_LIMIT = 5000;

/** What runs are of. */
export interface RunSubject {
  readonly project: Project;
  readonly candidate: Candidate;
}

/** Balls laid by hand, or by a search, instead of by the rule. */
export interface Laid {
  /** The project with these places as its layout. */
  readonly project: Project;
  readonly seed: number;
  /** Where they come from, as a sentence. */
  readonly words: string;
}

/** A placement for which the best way is wanted; what is aborted is no longer on show. */
interface PlanWish {
  readonly project: Project;
  readonly seed: number;
  readonly index: number;
  readonly signal: AbortSignal;
}

/** Going through the runs of the routine on show: one at a time, by number, or in search of one that failed. */
export class Runs {
  index = $state(0);
  seed = $state(SEED);
  search = $state.raw<RunSearch | null>(null);
  /** A sentence about the last search or fault; "" for none. */
  notice = $state("");
  /** Whether the next run follows by itself when one has been watched to its end. */
  goesOn = $state(false);
  /** null: the placement of the run's number. */
  laid = $state.raw<Laid | null>(null);
  /** Instead of the routine on show: what a robot does that knows where the balls lie. */
  knowing = $state(false);
  /** The run on show is not the one asked for yet: that is being looked for, or being run. */
  busy = $state(false);
  /** The run on show, if it is one of a robot that knows. */
  known = $state.raw<KnownBallsRun | null>(null);
  readonly player = new Player();
  readonly #pool: Workers;
  readonly #subject: () => RunSubject | null;
  #loading = new AbortController();
  #wish: PlanWish | null = null;
  #planning = false;

  constructor(pool: Workers, subject: () => RunSubject | null) {
    this.#pool = pool;
    this.#subject = subject;
    this.player.onEnd = () => {
      if (this.goesOn) void this.show(this.index + 1);
    };
  }

  /** Whether a run has been watched, or is being watched: the next one then starts by itself. */
  get watching(): boolean {
    return this.player.playing || this.player.atEnd;
  }

  /** Takes the run away, before another project or routine comes. */
  clear(): void {
    this.#newLoading();
    this.known = null;
    this.player.show(null);
  }

  /** Shows the run of a number of the present routine. */
  async show(index: number, watching = this.watching): Promise<void> {
    const subject = this.#subject();
    if (index < 0) return;
    const signal = this.#newLoading();
    this.index = index;
    if (!subject) return;
    this.busy = true;
    try {
      const { candidate } = subject;
      const project = this.laid?.project ?? subject.project;
      const task = { kind: "record", seed: this.laid?.seed ?? this.seed, index } as const;
      const options = { signal, urgent: true };
      if (!this.knowing) this.known = null;
      // While balls are dragged they follow the hand at once, and the best way as soon as it is known.
      const routine = this.known?.routine ?? candidate.routine;
      const { outcome, recording } = await this.#pool.run(project, routine, task, options);
      if (signal.aborted) return;
      this.player.show({ outcome, recording, trace: traceRun(recording) });
      if (this.knowing) await this.#plan({ project, seed: task.seed, index, signal });
      if (watching && !signal.aborted && !reducedMotion()) this.player.play();
    } catch (reason) {
      this.#report(reason, signal);
    } finally {
      this.#rest(signal);
    }
  }

  /** Lays the balls as told, or by the rule again (null), and shows the run of the present number. */
  async lay(laid: Laid | null, index = this.index): Promise<void> {
    this.laid = laid;
    await this.show(index, false);
  }

  /** Shows the same placement to a robot that knows where the balls lie, or (false) to the routine again. */
  async know(knowing: boolean): Promise<void> {
    if (this.knowing === knowing) return;
    this.knowing = knowing;
    await this.show(this.index, false);
  }

  /** Shows the next run that failed or worked, if there is one among the next thousands. */
  async find(wanted: WantedRun): Promise<void> {
    const subject = this.#subject();
    if (!subject) return;
    const { project, candidate } = subject;
    const signal = this.#newLoading();
    this.laid = null;
    this.busy = true;
    this.search = { wanted, looked: 0 };
    const source = {
      batches: candidate.batches,
      balls: ballsOf(project).length,
      more: (from: number, to: number) => {
        const task = { kind: "stress", seed: this.seed, from, to } as const;
        return this.#pool.run(project, candidate.routine, task, { signal, urgent: true });
      },
    };
    try {
      const { findRun } = await import("./runFinder.ts");
      const index = await findRun(source, wanted, this.index, SEARCH_LIMIT, (looked) => {
        if (!signal.aborted) this.search = { wanted, looked };
      });
      if (signal.aborted) return;
      this.search = null;
      if (index === null) this.notice = runNoticeTexts.noRun[wanted](SEARCH_LIMIT);
      else await this.show(index);
    } catch (reason) {
      this.#report(reason, signal);
    } finally {
      this.#rest(signal);
    }
  }

  /** One plan at a time, the latest wish next: a drag asks for more of them than a worker can make. */
  async #plan(wish: PlanWish): Promise<void> {
    this.#wish = wish;
    if (this.#planning) return;
    this.#planning = true;
    try {
      for (let now = this.#takeWish(); now !== null; now = this.#takeWish()) {
        const { project, seed, index, signal } = now;
        const task = { kind: "known-balls", seed, index } as const;
        const known = await this.#pool.run(project, null, task, { urgent: true });
        if (!this.knowing) return;
        this.known = known;
        if (signal.aborted) continue;
        this.player.show({ ...known, trace: traceRun(known.recording) });
      }
    } finally {
      this.#planning = false;
    }
  }

  #takeWish(): PlanWish | null {
    const wish = this.#wish;
    this.#wish = null;
    return wish;
  }

  cancelSearch(): void {
    this.#newLoading();
  }

  #newLoading(): AbortSignal {
    this.#loading.abort();
    this.#loading = new AbortController();
    this.search = null;
    this.notice = "";
    this.busy = false;
    return this.#loading.signal;
  }

  /** What was asked for is on show, or cannot be; something else may have been asked for meanwhile. */
  #rest(signal: AbortSignal): void {
    if (!signal.aborted) this.busy = false;
  }

  #report(reason: unknown, signal: AbortSignal): void {
    if (signal.aborted) return;
    this.search = null;
    this.notice = runNoticeTexts.failed(reason instanceof Error ? reason.message : String(reason));
  }
}

function reducedMotion(): boolean {
  return matchMedia("(prefers-reduced-motion: reduce)").matches;
}
