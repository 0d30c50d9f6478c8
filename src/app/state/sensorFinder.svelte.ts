import type { SensorWorth } from "../../jobs/sensorWorth.ts";
import type { Project } from "../../model/project.ts";
import { Work } from "./work.svelte.ts";
import type { Workers } from "./workers.ts";

/** Runs of each equipment: differences of about ten in a hundred can be told. */
const SENSOR_TRIALS = 100;

/** What each sensor would be worth: looked for on demand, because it takes a while. Rows of part of the runs are not shown. */
export class SensorFinder {
  result = $state.raw<SensorWorth | null>(null);
  status = $state<"idle" | "running" | "done" | "stopped" | "failed">("idle");
  readonly work = new Work();
  fault = $state("");
  readonly #pool: Workers;

  constructor(pool: Workers) {
    this.#pool = pool;
  }

  async find(project: Project, seed: number): Promise<void> {
    this.clear();
    const work = this.work.begin();
    this.status = "running";
    try {
      // Fetched when first needed: the page opens sooner without it.
      const { worthOfSensors } = await import("../../jobs/sensorWorth.ts");
      const options = { seed, trials: SENSOR_TRIALS, ...work };
      const found = await worthOfSensors(this.#pool, project, options);
      if (!this.work.owns(work.signal)) return;
      this.result = found;
      this.status = "done";
    } catch (reason) {
      if (!this.work.owns(work.signal)) return;
      this.fault = reason instanceof Error ? reason.message : String(reason);
      this.status = work.signal.aborted ? "stopped" : "failed";
    }
  }

  /** Forgets everything: it was about another project. */
  clear(): void {
    this.work.drop();
    this.result = null;
    this.status = "idle";
  }
}
