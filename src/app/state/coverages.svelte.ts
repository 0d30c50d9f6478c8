import type { Project } from "../../model/project.ts";
import type { Routine } from "../../model/routine.ts";
import type { Workers } from "./workers.ts";

/** A routine's coverage: a share, or why it could not be measured. */
export type Measured =
  | { readonly ok: true; readonly frac: number }
  | { readonly ok: false; readonly fault: string };

/** Coverage of the routines that someone looked at: the ranking does not need it, and it takes longer than many trials. */
export class Coverages {
  /** By routine id. */
  #known = $state.raw<ReadonlyMap<string, Measured>>(new Map());
  readonly #asked = new Set<Routine>();
  readonly #pool: Workers;
  #project: Project | null = null;

  constructor(pool: Workers) {
    this.#pool = pool;
  }

  /** null while not measured. */
  of(id: string): Measured | null {
    return this.#known.get(id) ?? null;
  }

  /** Measures it, once. */
  async ask(project: Project, routine: Routine): Promise<void> {
    if (project !== this.#project) {
      this.#project = project;
      this.#known = new Map();
    }
    if (this.#asked.has(routine)) return;
    this.#asked.add(routine);
    const measured = await this.#pool.run(project, routine, { kind: "coverage" }).then(
      ({ coverageFrac }): Measured => ({ ok: true, frac: coverageFrac }),
      (reason: unknown): Measured => ({ ok: false, fault: String(reason) }),
    );
    if (project !== this.#project) return;
    this.#known = new Map([...this.#known, [routine.id, measured]]);
  }
}
