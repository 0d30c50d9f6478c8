import { Gate } from "../../jobs/gate.ts";
import type { RaceProgress } from "../../jobs/race.ts";
import type { Project } from "../../model/project.ts";
import type { Routine } from "../../model/routine.ts";
import type { Rate } from "../../num/interval.ts";
import type { MissingFamily } from "../../plan/catalogueIds.ts";
import { EVERY_BALL, type Objective } from "../../search/objective.ts";
import { rankingTexts } from "../../texts/english/ranking.ts";
import type { Candidate } from "./candidate.ts";
import type { Fronts, OpenRace, RaceWish } from "./openRace.ts";
import { SEED } from "./seed.ts";

/** Opens a race; rejects with an Error. */
export type Opener = (wish: RaceWish) => Promise<OpenRace>;

/** The list is shown anew at most this often, ms: rows must not dance. The first rows come at once, the next ones soon. */
const PUBLISH_MS = 1000;
const PUBLISH_FIRST_MS = 60;
/** So many of the best routines come first when the project has changed: they are seldom far off in the new one. */
const LEADERS = 4;
const NO_FRONTS: Fronts = { time: [], moves: [] };

export type RankingStatus = "idle" | "running" | "paused" | "stopped" | "done" | "failed";

/** Ranks a project's routines by a race in the workers, and shows it while it goes on. */
export class Ranking {
  /** Best first. */
  candidates = $state.raw<readonly Candidate[]>([]);
  /** Trade-offs between time or moves and success. */
  fronts = $state.raw<Fronts>(NO_FRONTS);
  status = $state<RankingStatus>("idle");
  readonly paused = $derived(this.status === "paused");
  /** What is being done, in words. */
  doing = $state("");
  /** Share of this work that is done, 0 … 1; null while that cannot be said. */
  doneFrac = $state<number | null>(null);
  /** Seconds it will still take; null while nobody can say. */
  leftS = $state<number | null>(null);
  /** Patterns that give no routine for this project, and why. */
  missing = $state.raw<readonly MissingFamily[]>([]);
  /** What the search says of itself once the winner is settled, in sentences. */
  notes = $state.raw<readonly string[]>([]);
  /** What went wrong, for the status "failed". */
  fault = $state("");
  /** Whether all of the catalogue has its first result. */
  hasFirstLook = $state(false);
  /** The best: by fresh runs, else of those with most runs the one that promises most. */
  readonly best = $derived(bestOf(this.candidates));
  /** What was the best before the last change, once its routines had all been tried; null where nothing was changed. */
  before = $state.raw<Rate | null>(null);
  /** What is best. */
  objective = $state.raw<Objective>(EVERY_BALL);
  /** Called when the order is worth acting on: with the first rows, and when another stage begins. */
  onRound: () => void = () => {};
  /** Called when the list was shown anew. */
  onShown: () => void = () => {};
  /** Id of the routine on show: it stays in the list. */
  shownId: () => string = () => "";
  /** Of the runs that are shown, and of the fresh ones that the final figures come from; used from the next start on. */
  seed = SEED;
  readonly #open: Opener;
  #wish: RaceWish | null = null;
  #race: OpenRace | null = null;
  #abort = new AbortController();
  #gate = new Gate();
  #publishAt = 0;
  #publishGapMs = 0;
  /** Ids of the best once all had been tried, of this project or one before. */
  #leaders: readonly string[] = [];
  #stage = "";

  constructor(open: Opener) {
    this.#open = open;
  }

  /** Drops whatever is under way and starts over. Resolves when all is done or stopped. */
  async start(
    project: Project,
    own: readonly Routine[] = [],
    wantedIds: readonly string[] = [],
  ): Promise<void> {
    this.#abort.abort();
    const { objective, seed } = this;
    if (this.fronts.time.length > 0) this.before = this.best?.figure ?? null;
    this.#wish = { project, objective, seed, own, wantedIds, previewIds: this.#leaders };
    this.#race = null;
    this.#stage = "";
    this.candidates = [];
    this.fronts = NO_FRONTS;
    this.missing = [];
    this.notes = [];
    this.hasFirstLook = false;
    await this.resume();
  }

  /** Goes on where `cancel` stopped. */
  async resume(): Promise<void> {
    const wish = this.#wish;
    if (!wish) return;
    const abort = new AbortController();
    this.#abort = abort;
    this.#gate = new Gate();
    this.status = "running";
    this.doneFrac = null;
    this.leftS = null;
    try {
      if (this.#race === null) {
        this.doing = rankingTexts.workingOut;
        const opened = await this.#open(wish);
        if (abort.signal.aborted) return;
        this.#race = opened;
      }
      await this.#go(this.#race, abort.signal);
    } catch (reason) {
      if (abort.signal.aborted) return;
      this.fault = reason instanceof Error ? reason.message : String(reason);
      this.status = "failed";
    }
  }

  cancel(): void {
    if (this.status !== "running" && this.status !== "paused") return;
    this.#abort.abort();
    this.#publish(true);
    this.status = "stopped";
  }

  pause(): void {
    if (this.status !== "running") return;
    this.#gate.close();
    this.#publish(true);
    this.status = "paused";
  }

  /** Goes on where `pause` held. */
  goOn(): void {
    if (this.status !== "paused") return;
    this.status = "running";
    this.#gate.open();
  }

  /** The team's own routines as they stand now: what changed is raced anew, against all that is known. */
  setOwn(own: readonly Routine[]): void {
    if (this.#wish) this.#wish = { ...this.#wish, own };
    this.#race?.race.setOwn(own);
    if (this.status === "done") void this.resume();
  }

  async #go(race: OpenRace, signal: AbortSignal): Promise<void> {
    const onProgress = ({ doneFrac, leftS }: RaceProgress): void => {
      if (signal.aborted) return;
      this.doneFrac = doneFrac;
      this.leftS = leftS;
      this.#publish(false);
    };
    // What the team changes while the last runs end has to be let in as well.
    while (race.race.isOpen) {
      const ended = await race.run.go({ signal, gate: this.#gate, onProgress });
      if (ended === "stopped" || signal.aborted) return;
    }
    this.#publish(true);
    this.notes = await race.notes();
    if (signal.aborted) return;
    if (race.race.isOpen) return this.#go(race, signal);
    this.doneFrac = 1;
    this.status = "done";
    this.onRound();
  }

  #publish(isDue: boolean): void {
    const race = this.#race;
    if (!race) return;
    const { stage } = race.race;
    const isNew = stage !== this.#stage;
    this.doing = race.doing();
    const clock = performance.now();
    const isFirst = this.candidates.length === 0;
    if (!isDue && !isNew && !isFirst && clock < this.#publishAt) return;
    this.#publishGapMs = isFirst ? PUBLISH_FIRST_MS : Math.min(PUBLISH_MS, 2 * this.#publishGapMs);
    this.#publishAt = clock + this.#publishGapMs;
    if (race.race.guests) race.race.guests.shownId = this.shownId();
    this.#stage = stage;
    this.candidates = race.candidates();
    const fronts = race.fronts();
    // What is shown already need not be drawn anew.
    if (!isSame(this.fronts, fronts)) this.fronts = fronts;
    this.missing = race.missing();
    this.hasFirstLook = stage !== "first-look";
    if (this.fronts.time.length > 0)
      this.#leaders = this.candidates.slice(0, LEADERS).map(({ routine }) => routine.id);
    this.onShown();
    if ((isNew && this.hasFirstLook) || (isFirst && this.candidates.length > 0)) this.onRound();
  }
}

function isSame(a: Fronts, b: Fronts): boolean {
  const [now, then] = [
    [...b.time, null, ...b.moves],
    [...a.time, null, ...a.moves],
  ];
  return now.length === then.length && now.every((each, i) => each === then[i]);
}

function bestOf(candidates: readonly Candidate[]): Candidate | null {
  const [first = null] = candidates;
  if (first === null || first.isFresh) return first;
  const rated = candidates.filter(({ figure, isGivenUp }) => figure !== null && !isGivenUp);
  const most = rated.reduce((trials, each) => Math.max(trials, each.trials), 0);
  const low = (each: Candidate | null): number => each?.figure?.low ?? -1;
  const better = (best: Candidate | null, each: Candidate): Candidate =>
    best !== null && low(best) >= low(each) ? best : each;
  const known = rated.filter(({ trials }) => trials === most).reduce(better, null);
  // Guests from before a change have most runs at first: a newcomer whose range begins above their mean is better all the same.
  const promising = rated.reduce(better, null);
  return low(promising) > (known?.figure?.value ?? 1) ? promising : known;
}
