import type { Issue } from "../../model/issue.ts";
import { parseProject } from "../../model/parse.ts";
import type { Project } from "../../model/project.ts";
import { nominalCourse } from "../../motion/course.ts";
import { DEFAULT_FIELD, SHIPPED_FIELDS } from "../fields.ts";
import type { Candidate } from "./candidate.ts";
import { Coverages } from "./coverages.svelte.ts";
import { type Planner, Ranking } from "./ranking.svelte.ts";
import { Runs } from "./runs.svelte.ts";
import { forgetSetting, readSetting, writeSetting } from "./settings.ts";
import type { Workers } from "./workers.ts";

/** A file that could not be opened, and everything that is wrong with it. */
export interface BadFile {
  readonly name: string;
  readonly issues: readonly Issue[];
}

/** All that the page shows: the project, its ranking, the routine chosen and its runs. */
export class Workbench {
  project = $state.raw<Project | null>(null);
  /** Id of the shipped field, or "" for an own file. */
  fieldId = $state("");
  fileName = $state("");
  badFile = $state.raw<BadFile | null>(null);
  /** Id of the routine chosen; "" before there is one. */
  chosenId = $state("");
  readonly ranking: Ranking;
  readonly runs: Runs;
  readonly coverages: Coverages;
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
  #choseSelf = false;

  constructor(pool: Workers, planner: Planner) {
    this.ranking = new Ranking(pool, planner);
    this.ranking.onRound = () => this.#followBest();
    this.coverages = new Coverages(pool);
    this.runs = new Runs(pool, () => {
      const { project, chosen } = this;
      return project && chosen ? { project, candidate: chosen } : null;
    });
  }

  /** What was open when the page was last left, else the default. */
  async openLast(): Promise<void> {
    const own = readSetting("own-file");
    const name = readSetting("own-name");
    if (own !== null && name !== null) this.#open(own, name, "");
    if (!this.project) await this.openField(readSetting("field") ?? DEFAULT_FIELD);
  }

  async openField(id: string): Promise<void> {
    const field = SHIPPED_FIELDS.find((each) => each.id === id) ?? SHIPPED_FIELDS[0];
    if (!field || !this.#open(await field.load(), `${field.id}.json`, field.id)) return;
    writeSetting("field", field.id);
    forgetSetting("own-file");
  }

  async openFile(file: File): Promise<void> {
    const text = await file.text();
    if (!this.#open(text, file.name, "")) return;
    writeSetting("own-file", text);
    writeSetting("own-name", file.name);
  }

  /** Shows a routine and its run of the present number. */
  choose(id: string): void {
    this.#choseSelf = true;
    this.#choose(id);
  }

  /** Whether it could be opened; if not, its issues are shown and nothing else changes. */
  #open(text: string, name: string, fieldId: string): boolean {
    const parsed = parseProject(text);
    if (!parsed.ok) {
      this.badFile = { name, issues: parsed.issues };
      return false;
    }
    this.runs.clear();
    this.runs.index = 0;
    this.badFile = null;
    this.fieldId = fieldId;
    this.fileName = name;
    this.chosenId = "";
    this.#choseSelf = false;
    this.project = parsed.value;
    void this.ranking.start(parsed.value);
    return true;
  }

  /** Shows the best so far, unless someone chose a routine or began to watch. */
  #followBest(): void {
    const best = this.ranking.candidates[0];
    const { player, index } = this.runs;
    const untouched = !this.#choseSelf && !player.playing && player.timeS === 0 && index === 0;
    if (best && untouched) this.#choose(best.routine.id);
  }

  #choose(id: string): void {
    const candidate = this.#find(id);
    if (!this.project || !candidate || id === this.chosenId) return;
    const { watching } = this.runs;
    this.chosenId = id;
    this.runs.clear();
    void this.runs.show(this.runs.index, watching);
    void this.coverages.ask(this.project, candidate.routine);
  }

  #find(id: string): Candidate | null {
    return this.ranking.candidates.find((each) => each.routine.id === id) ?? null;
  }
}
