import type { FixList } from "../../jobs/fixes.ts";
import type { Project } from "../../model/project.ts";
import type { Routine } from "../../model/routine.ts";
import { Work } from "./work.svelte.ts";
import type { Workers } from "./workers.ts";

/** Runs of the routine as it is and with each change: differences of about five in a hundred can be told. */
const FIX_TRIALS = 300;

/** What to fix on the robot or in the routine: looked for on demand, because it takes a while. */
export class FixFinder {
  result = $state.raw<FixList | null>(null);
  status = $state<"idle" | "running" | "done" | "stopped" | "failed">("idle");
  readonly work = new Work();
  fault = $state("");
  readonly #pool: Workers;

  constructor(pool: Workers) {
    this.#pool = pool;
  }

  async find(project: Project, routine: Routine, seed: number): Promise<void> {
    this.clear();
    const work = this.work.begin();
    this.status = "running";
    try {
      // Fetched when first needed: the page opens sooner without it.
      const { findFixes } = await import("../../jobs/fixes.ts");
      const options = { seed, trials: FIX_TRIALS, ...work };
      const found = await findFixes(this.#pool, project, routine, options);
      if (!this.work.owns(work.signal)) return;
      this.result = found;
      this.status = found.status;
    } catch (reason) {
      if (!this.work.owns(work.signal)) return;
      this.fault = reason instanceof Error ? reason.message : String(reason);
      this.status = "failed";
    }
  }

  /** Forgets everything: it was about another routine. */
  clear(): void {
    this.work.drop();
    this.result = null;
    this.status = "idle";
  }
}
