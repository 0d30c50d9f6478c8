import { CHUNK_TRIALS } from "../../jobs/chunks.ts";
import type { Project } from "../../model/project.ts";
import type { Catalogue, MissingFamily } from "../../plan/catalogue.ts";
import { byRank, type Candidate, newCandidate, withBatch } from "./candidate.ts";
import { SEED } from "./seed.ts";
import type { Workers } from "./workers.ts";

/** Makes a project's catalogue; rejects with the signal's reason when it is aborted, or with an Error. */
export type Planner = (project: Project, signal: AbortSignal) => Promise<Catalogue>;

interface Round {
  /** Trials each routine has after the round. */
  readonly trials: number;
  /** How many of the best take part; all without it. */
  readonly best?: number;
  readonly words: string;
}

/** A first answer soon, then a firm one, then a close look at those that matter. */
const ROUNDS: readonly Round[] = [
  { trials: 20, words: "First look: 20 runs of each routine" },
  { trials: 100, words: "Second look: 100 runs of each routine" },
  { trials: 300, words: "Closer look: 300 runs of each routine" },
  { trials: 1000, best: 10, words: "The ten best: 1000 runs of each" },
];
/** The list is shown anew at most this often, ms: rows must not dance. */
const PUBLISH_MS = 1000;

export type RankingStatus = "idle" | "running" | "stopped" | "done" | "failed";

/** Ranks a project's routines by stress tests in the workers, round after round. */
export class Ranking {
  /** Best first; routines without a result yet come last. */
  candidates = $state.raw<readonly Candidate[]>([]);
  status = $state<RankingStatus>("idle");
  /** What is being done, in words. */
  doing = $state("");
  /** Share of this work that is done, 0 … 1; null while that cannot be said. */
  doneFrac = $state<number | null>(null);
  /** Patterns that give no routine for this project, and why. */
  missing = $state.raw<readonly MissingFamily[]>([]);
  /** What went wrong, for the status "failed". */
  fault = $state("");
  /** Whether every routine has its first result. */
  hasFirstLook = $state(false);
  /** Called after each round, when the order is worth acting on. */
  onRound: () => void = () => {};
  /** Called when the routines are known, before any has run. */
  onPlanned: () => void = () => {};
  /** Of all runs; used from the next start on. */
  seed = SEED;
  readonly #pool: Workers;
  readonly #planner: Planner;
  #project: Project | null = null;
  #byId = new Map<string, Candidate>();
  #abort = new AbortController();
  #publishAt = 0;
  #doneTasks = 0;
  #allTasks = 1;

  constructor(pool: Workers, planner: Planner) {
    this.#pool = pool;
    this.#planner = planner;
  }

  /** Drops whatever is under way and starts over. Resolves when all is done or stopped. */
  async start(project: Project): Promise<void> {
    this.#abort.abort();
    this.#project = project;
    this.#byId = new Map();
    this.missing = [];
    this.hasFirstLook = false;
    this.#publish(true);
    await this.resume();
  }

  /** Goes on where `cancel` stopped. */
  async resume(): Promise<void> {
    const project = this.#project;
    if (!project) return;
    const abort = new AbortController();
    this.#abort = abort;
    this.status = "running";
    this.doneFrac = null;
    if (this.#byId.size === 0 && !(await this.#plan(project, abort.signal))) return;
    this.#countTasks();
    for (const round of ROUNDS) {
      this.doing = round.words;
      await Promise.all(
        this.#takingPart(round).map((id) => this.#stress(project, id, round.trials, abort.signal)),
      );
      if (abort.signal.aborted) return;
      this.hasFirstLook = true;
      this.#publish(true);
      this.onRound();
    }
    this.status = "done";
  }

  cancel(): void {
    if (this.status !== "running") return;
    this.#abort.abort();
    this.#publish(true);
    this.status = "stopped";
  }

  /** Whether there are routines to test now. */
  async #plan(project: Project, signal: AbortSignal): Promise<boolean> {
    this.doing = "Working out routines for this zone";
    try {
      const { routines, missing } = await this.#planner(project, signal);
      if (signal.aborted) return false;
      this.#byId = new Map(routines.map((routine) => [routine.id, newCandidate(project, routine)]));
      this.missing = missing;
      this.#publish(true);
      this.onPlanned();
      return true;
    } catch (reason) {
      if (signal.aborted) return false;
      this.fault = reason instanceof Error ? reason.message : String(reason);
      this.status = "failed";
      return false;
    }
  }

  /** Ids, best first. */
  #ids(): readonly string[] {
    return [...this.#byId.values()].sort(byRank).map((candidate) => candidate.routine.id);
  }

  #takingPart(round: Round): readonly string[] {
    return this.#ids().slice(0, round.best);
  }

  async #stress(project: Project, id: string, upTo: number, signal: AbortSignal): Promise<void> {
    for (;;) {
      const candidate = this.#byId.get(id);
      if (!candidate || candidate.fault !== null || candidate.trials >= upTo || signal.aborted) return;
      const from = candidate.trials;
      const task = {
        kind: "stress",
        seed: this.seed,
        from,
        to: Math.min(upTo, from + CHUNK_TRIALS),
      } as const;
      await this.#update(id, signal, async () => {
        const batch = await this.#pool.run(project, candidate.routine, task, { signal });
        return withBatch(candidate, batch);
      });
    }
  }

  /** A routine that cannot be tested keeps its place with the reason; the others go on. */
  async #update(id: string, signal: AbortSignal, work: () => Promise<Candidate>): Promise<void> {
    const before = this.#byId.get(id);
    try {
      const after = await work();
      if (signal.aborted) return;
      this.#byId.set(id, after);
    } catch (reason) {
      if (signal.aborted || !before) return;
      this.#byId.set(id, { ...before, fault: reason instanceof Error ? reason.message : String(reason) });
    }
    this.#doneTasks += 1;
    this.doneFrac = Math.min(1, this.#doneTasks / this.#allTasks);
    this.#publish(false);
  }

  #countTasks(): void {
    const candidates = [...this.#byId.values()];
    const chunks = (upTo: number, from: number) => Math.ceil(Math.max(0, upTo - from) / CHUNK_TRIALS);
    let tasks = 0;
    for (const [index, round] of ROUNDS.entries()) {
      const before = ROUNDS[index - 1]?.trials ?? 0;
      for (const candidate of candidates.slice(0, round.best)) {
        tasks += chunks(round.trials, Math.max(before, candidate.trials));
      }
    }
    this.#doneTasks = 0;
    this.#allTasks = Math.max(1, tasks);
    this.doneFrac = 0;
  }

  #publish(now: boolean): void {
    const clock = performance.now();
    if (!now && clock < this.#publishAt) return;
    this.#publishAt = clock + PUBLISH_MS;
    this.candidates = [...this.#byId.values()].sort(byRank);
  }
}
