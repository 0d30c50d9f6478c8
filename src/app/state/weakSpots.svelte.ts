import type { Weakness } from "../../jobs/weakness.ts";
import type { Project } from "../../model/project.ts";
import type { Routine } from "../../model/routine.ts";
import { nominalCourse } from "../../motion/course.ts";
import type { PushField } from "../../plan/push/pushField.ts";
import type { CarrySpot } from "../../view/carrySpots.ts";
import type { ZoneMap } from "../../view/zoneMap.ts";
import { Work } from "./work.svelte.ts";
import type { Workers } from "./workers.ts";

/** Runs looked at. */
export const WEAK_TRIALS = 1000;

/** What can lie over the drawing. */
export const LAYERS = ["none", "heat", "touched", "sure", "pushes", "carry"] as const;
export type Layer = (typeof LAYERS)[number];

/** The weak sides of one routine at a time: found on demand, with progress, and cancelled when something else is asked. */
export class WeakSpots {
  result = $state.raw<Weakness | null>(null);
  status = $state<"idle" | "running" | "done" | "stopped" | "failed">("idle");
  readonly work = new Work();
  fault = $state("");
  layer = $state<Layer>("heat");
  /** The map of the layer; null where there is none yet. */
  readonly map = $derived.by(() => mapOf(this.layer, this.result, this.field, this.carried));
  /** Seconds home from every place of the project; null while not known. */
  field = $state.raw<PushField | null>(null);
  /** The same as a map, where it is to be seen while balls are laid. */
  readonly secondsMap = $derived.by(() =>
    this.shadesSeconds ? mapOf("pushes", null, this.field, null) : null,
  );
  shadesSeconds = $state(false);
  /** Where the routine can lose a ball in its pusher; null while not known, and for one that decides its moves as it goes. */
  carried = $state.raw<readonly CarrySpot[] | null>(null);
  #fieldOf: Project | null = null;
  readonly #pool: Workers;
  #project: Project | null = null;
  #routine: Routine | null = null;

  constructor(pool: Workers) {
    this.#pool = pool;
  }

  /** Looks for them unless that was done, or is under way, for this very routine. */
  async look(project: Project, routine: Routine, seed: number): Promise<void> {
    const known = project === this.#project && routine.moves === this.#routine?.moves;
    if (known && this.status !== "stopped" && this.status !== "idle") return;
    this.clear();
    this.#project = project;
    this.#routine = routine;
    this.status = "running";
    void this.#mapCarried(project, routine);
    const work = this.work.begin();
    try {
      // Fetched when first needed: the page opens sooner without it.
      const { findWeakness } = await import("../../jobs/weakness.ts");
      const onKnown = (soFar: Weakness): void => {
        if (this.work.owns(work.signal)) this.result = soFar;
      };
      const options = { seed, trials: WEAK_TRIALS, ...work, onKnown };
      const found = await findWeakness(this.#pool, project, routine, options);
      if (!this.work.owns(work.signal)) return;
      this.result = found;
      this.status = found.status;
      // Half a second of a worker: not before what is on show.
      void this.mapPushes(project);
    } catch (reason) {
      if (!this.work.owns(work.signal)) return;
      this.fault = reason instanceof Error ? reason.message : String(reason);
      this.status = "failed";
    }
  }

  /** The routine does not matter for it: made once for a project. */
  async mapPushes(project: Project): Promise<void> {
    if (project === this.#fieldOf) return;
    this.#fieldOf = project;
    this.field = null;
    const field = await this.#pool
      .run(project, null, { kind: "push-field" }, { urgent: true })
      .catch(() => null);
    if (project === this.#fieldOf) this.field = field;
  }

  /** Some hundred moves take a millisecond or two; only the code for it has to be fetched. */
  async #mapCarried(project: Project, routine: Routine): Promise<void> {
    if (routine.program !== undefined) {
      if (this.layer === "carry") this.layer = "heat";
      return;
    }
    const [{ carryLimits }, { carrySpots }] = await Promise.all([
      import("../../plan/carryLimits.ts"),
      import("../../view/carrySpots.ts"),
    ]);
    if (project !== this.#project || routine !== this.#routine) return;
    const { moves } = routine;
    const course = nominalCourse(project, moves);
    this.carried = carrySpots(carryLimits(project, moves), moves, course, project.robot.drive.accelMmPerS2);
  }

  clear(): void {
    this.work.drop();
    this.carried = null;
    this.result = null;
    this.#project = null;
    this.#routine = null;
    this.status = "idle";
  }
}

function mapOf(
  layer: Layer,
  weakness: Weakness | null,
  field: PushField | null,
  carried: readonly CarrySpot[] | null,
): ZoneMap | null {
  if (layer === "carry") return carried ? { kind: "carry", spots: carried } : null;
  if (layer === "pushes") return field ? { kind: "seconds", field } : null;
  const touched = weakness?.coverage?.sizes[0];
  const sure = weakness?.sure?.sizes[0];
  if (layer === "heat" && weakness?.failings) return { kind: "heat", map: weakness.failings.map };
  if (layer === "touched" && weakness && touched) {
    const parts = [
      { look: "good", region: touched.touched },
      { look: "bad", region: touched.blindSpots },
    ] as const;
    return { kind: "regions", parts, circles: weakness.blindSpots };
  }
  if (layer === "sure" && sure) {
    const parts = [
      { look: "good", region: sure.sure },
      { look: "open", region: sure.perhaps },
      { look: "bad", region: sure.never },
    ] as const;
    return { kind: "regions", parts, circles: [] };
  }
  return null;
}
