import { CHUNK_TRIALS } from "../../jobs/chunks.ts";
import type { Project } from "../../model/project.ts";
import type { Routine } from "../../model/routine.ts";
import { byRank, type Candidate, newCandidate, withBatch } from "./candidate.ts";
import { SEED } from "./seed.ts";
import type { Workers } from "./workers.ts";

interface Round {
  /** Trials each routine has after the round. */
  readonly trials: number;
  /** How many of the best take part; all without it. */
  readonly best?: number;
  readonly words: string;
}

/** A first answer soon, then a firm one, then a close look at those that matter. */
const ROUNDS: readonly Round[] = [
  { trials: 40, words: "First look: 40 runs of each routine" },
  { trials: 300, words: "Closer look: 300 runs of each routine" },
  { trials: 1000, best: 10, words: "The ten best: 1000 runs of each" },
];
/** The list is shown anew at most this often, ms: rows must not dance. */
const PUBLISH_MS = 250;

export type RankingStatus = "idle" | "running" | "stopped" | "done";

/** Ranks a project's routines by stress tests in the workers, round after round. */
export class Ranking {
  /** Best first; routines without a result yet come last. */
  candidates = $state.raw<readonly Candidate[]>([]);
  status = $state<RankingStatus>("idle");
  /** What is being done, in words. */
  doing = $state("");
  /** Share of this work that is done, 0 … 1. */
  doneFrac = $state(0);
  /** Whether every routine has its first result. */
  hasFirstLook = $state(false);
  /** Called after each round, when the order is worth acting on. */
  onRound: () => void = () => {};
  readonly #pool: Workers;
  #project: Project | null = null;
  #byId = new Map<string, Candidate>();
  #abort = new AbortController();
  #publishAt = 0;
  #doneTasks = 0;
  #allTasks = 1;

  constructor(pool: Workers) {
    this.#pool = pool;
  }

  /** Drops whatever is under way and starts over. Resolves when all is done or stopped. */
  async start(project: Project, routines: readonly Routine[]): Promise<void> {
    this.#abort.abort();
    this.#project = project;
    this.#byId = new Map(routines.map((routine) => [routine.id, newCandidate(project, routine)]));
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
    this.doing = "Measuring coverage";
    await Promise.all(this.#ids().map((id) => this.#cover(project, id, abort.signal)));
    if (abort.signal.aborted) return;
    this.#publish(true);
    this.status = "done";
  }

  cancel(): void {
    if (this.status !== "running") return;
    this.#abort.abort();
    this.#publish(true);
    this.status = "stopped";
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
      const task = { kind: "stress", seed: SEED, from, to: Math.min(upTo, from + CHUNK_TRIALS) } as const;
      await this.#update(id, signal, async () => {
        const batch = await this.#pool.run(project, candidate.routine, task, { signal });
        return withBatch(candidate, batch);
      });
    }
  }

  async #cover(project: Project, id: string, signal: AbortSignal): Promise<void> {
    const candidate = this.#byId.get(id);
    if (!candidate || candidate.fault !== null || candidate.coverageFrac !== null) return;
    await this.#update(id, signal, async () => {
      const { coverageFrac } = await this.#pool.run(
        project,
        candidate.routine,
        { kind: "coverage" },
        { signal },
      );
      return { ...candidate, coverageFrac };
    });
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
    tasks += candidates.filter((candidate) => candidate.coverageFrac === null).length;
    this.#doneTasks = 0;
    this.#allTasks = Math.max(1, tasks);
    this.doneFrac = 0;
  }

  #publish(now: boolean): void {
    this.doneFrac = Math.min(1, this.#doneTasks / this.#allTasks);
    const clock = performance.now();
    if (!now && clock < this.#publishAt) return;
    this.#publishAt = clock + PUBLISH_MS;
    this.candidates = [...this.#byId.values()].sort(byRank);
  }
}
