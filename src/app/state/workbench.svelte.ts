import type { Project } from "../../model/project.ts";
import { nominalCourse } from "../../motion/course.ts";
import type { Shown } from "../project/link.ts";
import type { Shelf } from "../project/shelf.svelte.ts";
import type { StepId } from "../steps.ts";
import type { LengthUnit } from "../words/quantity.ts";
import type { Candidate } from "./candidate.ts";
import { Coverages } from "./coverages.svelte.ts";
import { Desk } from "./desk.svelte.ts";
import { type Planner, Ranking } from "./ranking.svelte.ts";
import { Runs } from "./runs.svelte.ts";
import { SEED } from "./seed.ts";
import { readSetting, writeSetting } from "./settings.ts";
import type { Workers } from "./workers.ts";

/** After a change of the project its routines are ranked anew when this long nothing has changed, ms. */
const RANK_AFTER_MS = 350;

/** All that the page shows: the project, its ranking, the routine chosen and its runs. */
export class Workbench {
  step = $state<StepId>("routines");
  /** How lengths are shown and read. */
  lengths = $state<LengthUnit>(readSetting("lengths") === "cm" ? "cm" : "mm");
  /** Id of the routine chosen; "" before there is one. */
  chosenId = $state("");
  readonly desk: Desk;
  readonly ranking: Ranking;
  readonly runs: Runs;
  readonly coverages: Coverages;
  readonly draft = $derived.by(() => this.desk.draft);
  readonly project = $derived.by(() => this.desk.draft?.project ?? null);
  readonly chosen = $derived(this.#find(this.chosenId));
  /** Place of the chosen routine, 1 for the best. */
  readonly rank = $derived.by(
    () => this.ranking.candidates.findIndex((each) => each.routine.id === this.chosenId) + 1,
  );
  // Apart from `chosen`, which is another object with every new result.
  readonly #routine = $derived(this.chosen?.routine ?? null);
  readonly course = $derived(
    this.project && this.#routine ? nominalCourse(this.project, this.#routine.moves) : null,
  );
  /** The project that the ranking is of: `project`, or the one before its last change. */
  #ranked: Project | null = null;
  #wanted: Shown | null = null;
  #choseSelf = false;
  #timer: ReturnType<typeof setTimeout> | undefined;

  constructor(pool: Workers, planner: Planner, shelf: Shelf) {
    this.desk = new Desk(shelf);
    this.desk.onOpen = (shown) => this.#opened(shown);
    this.desk.onEdit = () => this.#edited();
    this.ranking = new Ranking(pool, planner);
    this.ranking.onPlanned = () => this.#planned();
    this.ranking.onRound = () => this.#followBest();
    this.coverages = new Coverages(pool);
    this.runs = new Runs(pool, () => {
      const { project, chosen } = this;
      return project && chosen ? { project, candidate: chosen } : null;
    });
  }

  showLengthsIn(unit: LengthUnit): void {
    this.lengths = unit;
    writeSetting("lengths", unit);
  }

  /** Shows a routine and its run of the present number. */
  choose(id: string): void {
    this.#choseSelf = true;
    this.#choose(id);
  }

  #opened(shown: Shown | null): void {
    this.#wanted = shown;
    this.#choseSelf = false;
    this.chosenId = "";
    this.runs.index = shown?.run ?? 0;
    this.runs.seed = shown?.seed ?? SEED;
    this.ranking.seed = this.runs.seed;
    this.#rank();
  }

  #edited(): void {
    clearTimeout(this.#timer);
    if (this.project === this.#ranked) return;
    // What is on show is a run of the project as it was.
    this.runs.clear();
    this.#timer = setTimeout(() => this.#rank(), RANK_AFTER_MS);
  }

  #rank(): void {
    clearTimeout(this.#timer);
    const { project, chosenId } = this;
    if (!project) return;
    this.#ranked = project;
    this.runs.clear();
    if (this.#choseSelf && chosenId !== "") {
      this.#wanted ??= { routine: chosenId, seed: this.runs.seed, run: this.runs.index, timeS: 0 };
    }
    this.chosenId = "";
    void this.ranking.start(project);
  }

  /** What a link names, or what was chosen before the project changed, is shown as soon as it is there. */
  #planned(): void {
    const wanted = this.#wanted;
    this.#wanted = null;
    if (!wanted || !this.#find(wanted.routine)) {
      this.#choseSelf = false;
      return;
    }
    this.#choseSelf = true;
    this.#choose(wanted.routine, wanted.timeS);
  }

  /** Shows the best so far, unless someone chose a routine or began to watch. */
  #followBest(): void {
    const best = this.ranking.candidates[0];
    const { player, index } = this.runs;
    const untouched = !this.#choseSelf && !player.playing && player.timeS === 0 && index === 0;
    if (best && (untouched || this.chosenId === "")) this.#choose(best.routine.id);
  }

  #choose(id: string, atS = 0): void {
    const candidate = this.#find(id);
    if (!this.project || !candidate || id === this.chosenId) return;
    const { watching } = this.runs;
    this.chosenId = id;
    this.runs.clear();
    void this.runs.show(this.runs.index, watching).then(() => {
      if (atS > 0 && this.chosenId === id) this.runs.player.seek(atS);
    });
    void this.coverages.ask(this.project, candidate.routine);
  }

  #find(id: string): Candidate | null {
    return this.ranking.candidates.find((each) => each.routine.id === id) ?? null;
  }
}
