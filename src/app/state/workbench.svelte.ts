import type { Pool } from "../../jobs/pool.ts";
import type { Issue } from "../../model/issue.ts";
import { parseProject } from "../../model/parse.ts";
import { ballsOf, type Project } from "../../model/project.ts";
import { nominalCourse } from "../../motion/course.ts";
import { generateRoutines } from "../../plan/catalogue.ts";
import { traceRun } from "../../view/runTrace.ts";
import { SHIPPED_FIELDS } from "../fields.ts";
import type { Candidate } from "./candidate.ts";
import { Player } from "./player.svelte.ts";
import { Ranking, SEED } from "./ranking.svelte.ts";
import { findRun, type WantedRun } from "./runFinder.ts";

/** A file that could not be opened, and everything that is wrong with it. */
export interface BadFile {
  readonly name: string;
  readonly issues: readonly Issue[];
}

/** A search for a run that failed or worked. */
export interface RunSearch {
  readonly wanted: WantedRun;
  readonly looked: number;
}

/** Runs looked at before a search gives up: at 5,000 a second some seconds of one worker. */
export const SEARCH_LIMIT = 5000;

/** All that the page shows: the project, its ranking, the routine chosen and the run watched. */
export class Workbench {
  project = $state.raw<Project | null>(null);
  /** Id of the shipped field, or "" for an own file. */
  fieldId = $state("");
  fileName = $state("");
  badFile = $state.raw<BadFile | null>(null);
  /** Id of the routine chosen; "" before there is one. */
  chosenId = $state("");
  runIndex = $state(0);
  search = $state.raw<RunSearch | null>(null);
  /** A sentence about the last search or fault; "" for none. */
  notice = $state("");
  /** Whether the next run follows by itself when one has been watched to its end. */
  goesOn = $state(false);
  readonly player = new Player();
  readonly ranking: Ranking;
  readonly chosen = $derived(this.#find(this.chosenId));
  readonly rank = $derived.by(
    () => this.ranking.candidates.findIndex((each) => each.routine.id === this.chosenId) + 1,
  );
  readonly #routine = $derived(this.chosen?.routine ?? null);
  readonly course = $derived(
    this.project && this.#routine ? nominalCourse(this.project, this.#routine.moves) : null,
  );
  readonly #pool: Pool;
  #loading = new AbortController();
  #choseSelf = false;

  constructor(pool: Pool) {
    this.#pool = pool;
    this.ranking = new Ranking(pool);
    this.ranking.onRound = () => this.#followBest();
    this.player.onEnd = () => {
      if (this.goesOn) void this.showRun(this.runIndex + 1);
    };
  }

  async openField(id: string): Promise<void> {
    const field = SHIPPED_FIELDS.find((each) => each.id === id);
    if (field) this.#open(await field.load(), `${field.id}.json`, field.id);
  }

  async openFile(file: File): Promise<void> {
    this.#open(await file.text(), file.name, "");
  }

  /** Shows a routine and its run of the present number. */
  choose(id: string): void {
    this.#choseSelf = true;
    this.#choose(id);
  }

  /** Shows the run of a number; keeps playing if a run was being watched. */
  showRun(index: number): Promise<void> {
    return this.#showRun(index, this.player.playing || this.player.atEnd);
  }

  async #showRun(index: number, watching: boolean): Promise<void> {
    const project = this.project;
    const routine = this.#routine;
    if (!project || !routine || index < 0) return;
    const signal = this.#newLoading();
    this.runIndex = index;
    try {
      const task = { kind: "record", seed: SEED, index } as const;
      const { outcome, recording } = await this.#pool.run(project, routine, task, { signal, urgent: true });
      if (signal.aborted) return;
      this.player.show({ outcome, recording, trace: traceRun(recording) });
      if (watching && !reducedMotion()) this.player.play();
    } catch (reason) {
      this.#report(reason, signal);
    }
  }

  /** Shows the next run that failed or worked, if there is one among the next thousands. */
  async findRun(wanted: WantedRun): Promise<void> {
    const project = this.project;
    const candidate = this.chosen;
    if (!project || !candidate) return;
    const signal = this.#newLoading();
    this.search = { wanted, looked: 0 };
    const source = {
      batches: candidate.batches,
      balls: ballsOf(project).length,
      more: (from: number, to: number) => {
        const task = { kind: "stress", seed: SEED, from, to } as const;
        return this.#pool.run(project, candidate.routine, task, { signal, urgent: true });
      },
    };
    try {
      const index = await findRun(source, wanted, this.runIndex, SEARCH_LIMIT, (looked) => {
        if (!signal.aborted) this.search = { wanted, looked };
      });
      if (signal.aborted) return;
      this.search = null;
      if (index === null) this.notice = `No run ${wanted} among ${SEARCH_LIMIT} looked at.`;
      else await this.showRun(index);
    } catch (reason) {
      this.#report(reason, signal);
    }
  }

  cancelSearch(): void {
    this.#newLoading();
  }

  #open(text: string, name: string, fieldId: string): void {
    const parsed = parseProject(text);
    if (!parsed.ok) {
      this.badFile = { name, issues: parsed.issues };
      return;
    }
    this.#newLoading();
    this.badFile = null;
    this.fieldId = fieldId;
    this.fileName = name;
    this.chosenId = "";
    this.runIndex = 0;
    this.#choseSelf = false;
    this.player.show(null);
    this.project = parsed.value;
    void this.ranking.start(parsed.value, generateRoutines(parsed.value));
  }

  /** Shows the best so far, unless someone chose a routine or began to watch. */
  #followBest(): void {
    const best = this.ranking.candidates[0];
    const untouched =
      !this.#choseSelf && !this.player.playing && this.player.timeS === 0 && this.runIndex === 0;
    if (best && untouched) this.#choose(best.routine.id);
  }

  #choose(id: string): void {
    if (id === this.chosenId || !this.#find(id)) return;
    const watching = this.player.playing || this.player.atEnd;
    this.chosenId = id;
    this.player.show(null);
    void this.#showRun(this.runIndex, watching);
  }

  #find(id: string): Candidate | null {
    return this.ranking.candidates.find((each) => each.routine.id === id) ?? null;
  }

  #newLoading(): AbortSignal {
    this.#loading.abort();
    this.#loading = new AbortController();
    this.search = null;
    this.notice = "";
    return this.#loading.signal;
  }

  #report(reason: unknown, signal: AbortSignal): void {
    if (signal.aborted) return;
    this.search = null;
    this.notice = `This did not work: ${reason instanceof Error ? reason.message : String(reason)}`;
  }
}

function reducedMotion(): boolean {
  return matchMedia("(prefers-reduced-motion: reduce)").matches;
}
