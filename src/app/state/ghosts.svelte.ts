import type { Project } from "../../model/project.ts";
import type { Routine } from "../../model/routine.ts";
import type { TrialOutcome } from "../../trial/outcome.ts";
import type { Recording } from "../../trial/recording.ts";
import { Work } from "./work.svelte.ts";
import type { Workers } from "./workers.ts";

/** How many runs can be seen at once. */
export const GHOST_COUNTS = [0, 25, 50, 100, 200] as const;

/** Runs asked for in one go: the drawing fills up while the rest is still being run. */
const STRIDE = 10;

/** Many runs of one routine, from run 0 on, to be seen at the same time. */
export class Ghosts {
  count = $state<number>(0);
  runs = $state.raw<readonly Recording[]>([]);
  outcomes = $state.raw<readonly TrialOutcome[]>([]);
  readonly work = new Work();
  loading = $state(false);
  readonly #pool: Workers;

  constructor(pool: Workers) {
    this.#pool = pool;
  }

  /** Runs that brought every ball home, of those on show. */
  readonly worked = $derived.by(
    () => this.outcomes.filter((outcome) => outcome.delivered.every(Boolean)).length,
  );

  async show(project: Project, routine: Routine, seed: number, count: number): Promise<void> {
    const { signal, gate, onProgress } = this.work.begin();
    this.runs = [];
    this.outcomes = [];
    this.loading = count > 0;
    try {
      for (let from = 0; from < count; from += STRIDE) {
        const indices = Array.from({ length: Math.min(STRIDE, count - from) }, (_, i) => from + i);
        const found = await Promise.all(
          indices.map((index) =>
            this.#pool.run(project, routine, { kind: "record", seed, index }, { signal, gate, urgent: true }),
          ),
        );
        if (signal.aborted) return;
        this.runs = [...this.runs, ...found.map(({ recording }) => recording)];
        this.outcomes = [...this.outcomes, ...found.map(({ outcome }) => outcome)];
        onProgress(this.runs.length / count);
      }
    } catch (reason) {
      if (!signal.aborted) throw reason;
    } finally {
      if (this.work.owns(signal)) this.loading = false;
    }
  }
}
