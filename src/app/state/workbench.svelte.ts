import type { RatedPlacement } from "../../jobs/hardPlacements.ts";
import type { Project } from "../../model/project.ts";
import { nominalCourse } from "../../motion/course.ts";
import { EVERY_BALL, nameOf, type Objective, objectiveNamed } from "../../search/objective.ts";
import { runNoticeTexts } from "../../texts/english/runNotice.ts";
import { type LengthUnit, sayLengthsIn } from "../../texts/lengths.ts";
import type { Shown } from "../project/link.ts";
import type { Shelf } from "../project/shelf.svelte.ts";
import type { StepId } from "../steps.ts";
import type { Candidate } from "./candidate.ts";
import { Coverages } from "./coverages.svelte.ts";
import { Desk } from "./desk.svelte.ts";
import { Ghosts } from "./ghosts.svelte.ts";
import { nextTask } from "./nextTask.ts";
import { type OwnRoutine, OwnRoutines } from "./ownRoutines.svelte.ts";
import { type Opener, Ranking } from "./ranking.svelte.ts";
import { Runs } from "./runs.svelte.ts";
import { type FixFinder, fixFinder, type SensorFinder, sensorFinder } from "./searches.ts";
import { SEED } from "./seed.ts";
import { readSetting, writeSetting } from "./settings.ts";
import { WeakSpots } from "./weakSpots.svelte.ts";
import type { Workers } from "./workers.ts";

/** An own routine that was changed is run anew when this long nothing has changed, ms. */
const RUN_AFTER_MS = 150;
/**
 * A single change of the project is answered at once. While more follow, as in a drag, its routines are ranked anew so often, or when the
 * hand has rested; where the first answer is slow to come, it is waited for a little longer. All ms.
 */
const RANK_REST_MS = 150;
const RANK_GAP_MS = 300;
const RANK_PATIENCE_MS = 900;

/** All that the page shows: the project, its ranking, the routine chosen and its runs. */
export class Workbench {
  step = $state<StepId>("routines");
  /** How lengths are shown and read. */
  lengths = $state<LengthUnit>(readSetting("lengths") === "cm" ? "cm" : "mm");
  /** Id of the routine chosen; "" before there is one. */
  chosenId = $state("");
  readonly desk: Desk;
  /** For work that a step asks for itself. */
  readonly pool: Workers;
  /** Move pointed at in a list, −1 for none: its stretch lights up on the drawing. */
  litMove = $state(-1);
  /** Move under edit, −1 for none. */
  editedMove = $state(-1);
  readonly ranking: Ranking;
  readonly own: OwnRoutines;
  readonly runs: Runs;
  readonly coverages: Coverages;
  readonly weak: WeakSpots;
  readonly fixes: FixFinder;
  readonly sensors: SensorFinder;
  readonly ghosts: Ghosts;
  readonly draft = $derived.by(() => this.desk.draft);
  readonly project = $derived.by(() => this.desk.draft?.project ?? null);
  readonly chosen = $derived(this.#find(this.chosenId));
  /** The chosen routine's place in the project's own list, −1 for a generated one. */
  readonly ownIndex = $derived.by(
    () => this.desk.draft?.routines.findIndex(({ id }) => id === this.chosenId) ?? -1,
  );
  /** The routine that the chosen own one goes back to, on the same runs. */
  readonly base = $derived.by(() => {
    const from = this.chosen?.routine.params.from;
    return typeof from === "string" ? (this.own.bases.get(from) ?? null) : null;
  });
  /** Place of the chosen routine, 1 for the best. */
  readonly rank = $derived.by(
    () => this.ranking.candidates.findIndex((each) => each.routine.id === this.chosenId) + 1,
  );
  // Apart from `chosen`, which is another object with every new result.
  readonly #routine = $derived(this.chosen?.routine ?? null);
  /** The routine of the run on show: the chosen one, or that of a robot which knows where the balls lie. */
  readonly watched = $derived.by(() => this.runs.known?.routine ?? this.#routine);
  readonly course = $derived.by(() =>
    this.project && this.watched ? nominalCourse(this.project, this.watched.moves) : null,
  );
  /** The project that the ranking is of: `project`, or the one before its last change. */
  #ranked: Project | null = null;
  #rankedAtMs = Number.NEGATIVE_INFINITY;
  #wanted: Shown | null = null;
  #choseSelf = false;
  #timer: ReturnType<typeof setTimeout> | undefined;
  #raceTimer: ReturnType<typeof setTimeout> | undefined;

  constructor(pool: Workers, open: Opener, shelf: Shelf) {
    sayLengthsIn(this.lengths);
    this.pool = pool;
    this.desk = new Desk(shelf);
    this.desk.onOpen = (shown) => this.#opened(shown);
    this.desk.onEdit = () => this.#edited();
    this.ranking = new Ranking(open);
    this.ranking.objective = objectiveNamed(readSetting("aim") ?? "") ?? EVERY_BALL;
    this.ranking.onShown = () => this.#showWanted();
    this.ranking.shownId = () => this.chosenId;
    // Not in the task that has just written the list anew: together they would hold up whoever types.
    this.ranking.onRound = () => void nextTask().then(() => this.#followBest());
    this.own = new OwnRoutines(pool);
    this.coverages = new Coverages(pool);
    this.weak = new WeakSpots(pool);
    this.fixes = fixFinder(pool);
    this.sensors = sensorFinder(pool);
    this.ghosts = new Ghosts(pool);
    this.runs = new Runs(pool, () => {
      const { project, chosen } = this;
      return project && chosen ? { project, candidate: chosen } : null;
    });
  }

  showLengthsIn(unit: LengthUnit): void {
    sayLengthsIn(unit);
    this.lengths = unit;
    writeSetting("lengths", unit);
  }

  /** Ranks by another aim, from the start. */
  aimFor(objective: Objective): void {
    writeSetting("aim", nameOf(objective));
    this.ranking.objective = objective;
    this.#rank();
    // There was no change: what was best before is no measure for it.
    this.ranking.before = null;
  }

  /** Shows a routine and its run of the present number. */
  choose(id: string): void {
    this.#choseSelf = true;
    this.#choose(id);
  }

  /** Goes to a run of the chosen routine, at a second of it. */
  watch(index: number, timeS: number): void {
    this.step = "watch";
    this.runs.laid = null;
    void this.runs.show(index, false).then(() => this.runs.player.seek(timeS));
  }

  /** Goes to a layout that a search found; without drift, as it was found. */
  async watchLayout({ placement, seed }: RatedPlacement, still: boolean): Promise<void> {
    const { project } = this;
    if (!project) return;
    this.step = "watch";
    const { withoutDrift, withPlacement } = await import("../../search/variant.ts");
    if (project !== this.project) return;
    const laid = withPlacement(still ? withoutDrift(project) : project, placement);
    const words = still ? runNoticeTexts.beatsStill : runNoticeTexts.hard;
    void this.runs.lay({ project: laid, seed, words }, 0);
  }

  /** Makes an own routine out of the chosen one, to be changed by hand, and chooses it. */
  async copyChosen(): Promise<void> {
    const { chosen, draft } = this;
    if (!chosen || !draft) return;
    const { freeId, withCopy } = await import("../routine/ownForm.ts");
    if (draft !== this.draft) return;
    const { routine } = chosen;
    const id = freeId([...draft.routines.map((each) => each.id)]);
    const from = typeof routine.params.from === "string" ? routine.params.from : routine.id;
    draft.change((form) =>
      withCopy(form, routine, id, runNoticeTexts.variant(routine.label, id.slice(4)), from),
    );
    this.choose(id);
  }

  /** The own routine with its score before the last change. */
  ownOf(id: string): OwnRoutine | null {
    return this.own.find(id);
  }

  #opened(shown: Shown | null): void {
    this.#wanted = shown;
    this.#choseSelf = false;
    this.chosenId = "";
    this.runs.index = shown?.run ?? 0;
    this.runs.seed = shown?.seed ?? SEED;
    this.ranking.seed = this.runs.seed;
    this.own.seed = this.runs.seed;
    this.#rank();
    this.ranking.before = null;
  }

  #edited(): void {
    if (this.project === this.#ranked) {
      this.#ownEdited();
      return;
    }
    clearTimeout(this.#timer);
    // What is on show is a run of the project as it was.
    this.runs.clear();
    const gapMs = this.ranking.candidates.length > 0 ? RANK_GAP_MS : RANK_PATIENCE_MS;
    const leftMs = this.#rankedAtMs + gapMs - performance.now();
    // At once where it can be: workers begin before the page draws what was changed.
    if (leftMs <= 0) this.#rank();
    else this.#timer = setTimeout(() => this.#rank(), Math.min(RANK_REST_MS, leftMs));
  }

  /** An own routine on show that was changed is shown anew, once the hand rests. */
  #ownEdited(): void {
    const { project, draft, chosenId } = this;
    if (!project || !draft) return;
    const changed = this.own.update(project, draft.routines);
    clearTimeout(this.#raceTimer);
    this.#raceTimer = setTimeout(() => this.ranking.setOwn(draft.routines), RUN_AFTER_MS);
    if (chosenId !== "" && !this.#find(chosenId)) {
      this.chosenId = "";
      this.#choseSelf = false;
      this.#followBest();
    } else if (changed.includes(chosenId)) {
      this.fixes.clear();
      this.runs.clear();
      clearTimeout(this.#timer);
      this.#timer = setTimeout(() => void this.runs.show(this.runs.index, false), RUN_AFTER_MS);
    }
  }

  #rank(): void {
    clearTimeout(this.#timer);
    clearTimeout(this.#raceTimer);
    const { project, chosenId, draft } = this;
    if (!project) return;
    this.#ranked = project;
    this.#rankedAtMs = performance.now();
    this.runs.laid = null;
    this.weak.clear();
    this.fixes.clear();
    this.sensors.clear();
    this.own.update(project, draft?.routines ?? []);
    this.runs.clear();
    if (this.#choseSelf && chosenId !== "") {
      this.#wanted ??= { routine: chosenId, seed: this.runs.seed, run: this.runs.index, timeS: 0 };
    }
    this.chosenId = "";
    const wantedIds = this.#wanted ? [this.#wanted.routine] : [];
    this.#choseSelf = wantedIds.length > 0;
    void this.ranking.start(project, draft?.routines ?? [], wantedIds);
  }

  /** What a link names, or what was chosen before the project changed, is shown as soon as it is there. */
  #showWanted(): void {
    const wanted = this.#wanted;
    if (!wanted) return;
    const isThere = this.#find(wanted.routine) !== null;
    // It is the first to be tried: not there after the first look, it cannot be made.
    if (!isThere && !this.ranking.hasFirstLook) return;
    this.#wanted = null;
    this.#choseSelf = isThere;
    if (isThere) this.#choose(wanted.routine, wanted.timeS);
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
    this.editedMove = -1;
    this.litMove = -1;
    this.fixes.clear();
    this.runs.clear();
    void this.runs.show(this.runs.index, watching).then(() => {
      if (atS > 0 && this.chosenId === id) this.runs.player.seek(atS);
    });
    void this.coverages.ask(this.project, candidate.routine);
  }

  #find(id: string): Candidate | null {
    // An own routine as it is now, not as it was when it was raced last.
    const own = this.own.find(id)?.candidate;
    return own ?? this.ranking.candidates.find((each) => each.routine.id === id) ?? null;
  }
}
