import { CHUNK_TRIALS } from "../../jobs/chunks.ts";
import type { Project } from "../../model/project.ts";
import type { Routine } from "../../model/routine.ts";
import { type Candidate, newCandidate, withBatch } from "./candidate.ts";
import { SEED } from "./seed.ts";
import type { Workers } from "./workers.ts";

/** Runs of every own routine: the difference to another one is then known to about five in a hundred. */
export const OWN_TRIALS = 300;
/** After a change a routine is scored anew when this long nothing has changed, ms. */
const SCORE_AFTER_MS = 250;

/** An own routine as it is, and as it was before the last change that was scored. */
export interface OwnRoutine {
  readonly candidate: Candidate;
  readonly before: Candidate | null;
}

/** The routines that the team wrote or changed itself, scored on the same placements as all others. */
export class OwnRoutines {
  /** In the order of the project's file. */
  list = $state.raw<readonly OwnRoutine[]>([]);
  /** The routines that own ones go back to, by id, on the same runs; those that could not be made are not in it. */
  bases = $state.raw<ReadonlyMap<string, Candidate>>(new Map());
  seed = SEED;
  readonly #pool: Workers;
  #project: Project | null = null;
  #abort = new AbortController();
  #timer: ReturnType<typeof setTimeout> | undefined;

  constructor(pool: Workers) {
    this.#pool = pool;
  }

  find(id: string): OwnRoutine | null {
    return this.list.find((own) => own.candidate.routine.id === id) ?? null;
  }

  /** Takes over what stands in the project now; what is as it was keeps its score. @returns the ids that changed */
  update(project: Project, routines: readonly Routine[]): readonly string[] {
    const same = project === this.#project;
    this.#project = project;
    if (!same) this.bases = new Map();
    const changed: string[] = [];
    this.list = routines.map((routine) => {
      const old = this.find(routine.id);
      if (old && same && sameMoves(old.candidate.routine, routine)) {
        // The label may be another; the pool knows the old object.
        return {
          ...old,
          candidate: { ...old.candidate, routine: { ...routine, moves: old.candidate.routine.moves } },
        };
      }
      changed.push(routine.id);
      const scored = old && old.candidate.trials >= CHUNK_TRIALS ? old.candidate : (old?.before ?? null);
      return { candidate: newCandidate(project, routine), before: same ? scored : null };
    });
    if (changed.length === 0) return changed;
    this.#abort.abort();
    clearTimeout(this.#timer);
    this.#timer = setTimeout(() => void this.#scoreAll(project), SCORE_AFTER_MS);
    return changed;
  }

  async #scoreAll(project: Project): Promise<void> {
    const abort = new AbortController();
    this.#abort = abort;
    void this.#scoreBases(project, abort.signal);
    for (let upTo = CHUNK_TRIALS; upTo <= OWN_TRIALS; upTo += CHUNK_TRIALS) {
      await Promise.all(
        this.list.map(({ candidate }) => this.#score(project, candidate.routine, upTo, abort.signal)),
      );
      if (abort.signal.aborted) return;
    }
  }

  async #score(project: Project, routine: Routine, upTo: number, signal: AbortSignal): Promise<void> {
    const from = this.find(routine.id)?.candidate.trials ?? 0;
    if (from >= upTo || signal.aborted) return;
    const task = { kind: "stress", seed: this.seed, from, to: upTo } as const;
    try {
      const batch = await this.#pool.run(project, routine, task, { signal, urgent: true });
      if (!signal.aborted) this.#put(routine.id, (candidate) => withBatch(candidate, batch));
    } catch (reason) {
      if (signal.aborted) return;
      const fault = reason instanceof Error ? reason.message : String(reason);
      this.#put(routine.id, (candidate) => ({ ...candidate, fault }));
    }
  }

  /** Each once for a project: nobody changes them. */
  async #scoreBases(project: Project, signal: AbortSignal): Promise<void> {
    const from = this.list.flatMap(({ candidate }) => candidate.routine.params.from ?? []);
    const ids = [...new Set(from.map(String))].filter((id) => !this.bases.has(id));
    if (ids.length === 0) return;
    const options = { signal, urgent: true };
    const task = { kind: "stress", seed: this.seed, from: 0, to: OWN_TRIALS } as const;
    try {
      const made = await this.#pool.run(project, null, { kind: "routines", ids }, options);
      for (const routine of made) {
        if (routine === null) continue;
        const batch = await this.#pool.run(project, routine, task, options);
        if (signal.aborted) return;
        this.bases = new Map([...this.bases, [routine.id, withBatch(newCandidate(project, routine), batch)]]);
      }
    } catch {
      // Without its base an own routine has its own figures; what it cannot be compared with is left out.
    }
  }

  #put(id: string, change: (candidate: Candidate) => Candidate): void {
    this.list = this.list.map((own) =>
      own.candidate.routine.id === id ? { ...own, candidate: change(own.candidate) } : own,
    );
  }
}

function sameMoves(a: Routine, b: Routine): boolean {
  return JSON.stringify(a.moves) === JSON.stringify(b.moves);
}
