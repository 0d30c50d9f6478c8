import type { FixList } from "../../jobs/fixes.ts";
import type { Project } from "../../model/project.ts";
import type { Routine } from "../../model/routine.ts";
import type { Workers } from "./workers.ts";

/** Runs of the routine as it is and with each change: differences of about five in a hundred can be told. */
const FIX_TRIALS = 300;

/** What to fix on the robot or in the routine: looked for on demand, because it takes a while. */
export class FixFinder {
  result = $state.raw<FixList | null>(null);
  status = $state<"idle" | "running" | "done" | "stopped" | "failed">("idle");
  doneFrac = $state(0);
  fault = $state("");
  readonly #pool: Workers;
  #abort = new AbortController();

  constructor(pool: Workers) {
    this.#pool = pool;
  }

  async find(project: Project, routine: Routine, seed: number): Promise<void> {
    this.clear();
    const abort = new AbortController();
    this.#abort = abort;
    this.status = "running";
    const onProgress = (doneFrac: number) => {
      if (!abort.signal.aborted) this.doneFrac = doneFrac;
    };
    try {
      // Fetched when first needed: the page opens sooner without it.
      const { findFixes } = await import("../../jobs/fixes.ts");
      const options = { seed, trials: FIX_TRIALS, signal: abort.signal, onProgress };
      const found = await findFixes(this.#pool, project, routine, options);
      if (abort !== this.#abort) return;
      this.result = found;
      this.status = found.status;
    } catch (reason) {
      if (abort !== this.#abort) return;
      this.fault = reason instanceof Error ? reason.message : String(reason);
      this.status = "failed";
    }
  }

  /** Stops; what is known by then is shown. */
  cancel(): void {
    this.#abort.abort();
  }

  /** Forgets everything: it was about another routine. */
  clear(): void {
    this.#abort.abort();
    this.#abort = new AbortController();
    this.result = null;
    this.status = "idle";
    this.doneFrac = 0;
  }
}
