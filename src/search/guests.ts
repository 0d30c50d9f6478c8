import type { Project } from "../model/project.ts";
import type { Routine } from "../model/routine.ts";
import { Entrant } from "./entrant.ts";
import { finalTrials } from "./finalTrials.ts";
import { searchSeed } from "./looks.ts";
import type { Race } from "./race.ts";
import type { RaceSettings } from "./raceSettings.ts";
import { makeAll, type Racing, runSpans } from "./raceWork.ts";

/**
 * Routines that are shown beside a race and have no say in it: what somebody asks for, and what was best before a change. They run the
 * same trials, which do not count, so that all that a race finds is the same with and without them.
 */
export class Guests {
  /** The one that somebody looks at: it stays. */
  shownId = "";
  readonly #settings: RaceSettings;
  readonly #project: Project;
  readonly #all: Entrant[] = [];

  constructor({ settings, project }: Pick<Race, "settings" | "project">) {
    this.#settings = settings;
    this.#project = project;
  }

  /** Makes them and runs their first trials; the very first answer does not wait for the other guests. */
  *welcome(trials: number, isOver: () => boolean): Racing<void> {
    const { project, objective, wantedIds = [], previewIds = [] } = this.#settings;
    const [first = [], ...others] = [...new Set([...wantedIds, ...previewIds])].map((id) => [id]);
    for (const ids of [first, others.flat()]) {
      if (ids.length === 0 || isOver()) return;
      const made = yield* makeAll(project, ids);
      const here = made.filter((routine): routine is Routine => routine !== null);
      this.#all.push(...here.map((routine) => new Entrant(project, objective, routine)));
      yield* this.#run(this.#all, trials, isOver);
    }
  }

  /** Those that stay and do not take part run as many trials as those that do. */
  bringTo(entrants: readonly Entrant[], trials: number, isOver: () => boolean): Racing<void> {
    return this.#run(this.#staying(entrants), trials, isOver);
  }

  /** Fresh trials for those that stay and do not take part. */
  *finish(entrants: readonly Entrant[], isOver: () => boolean): Racing<void> {
    const { seed, mostTrials } = this.#settings;
    const staying = this.#staying(entrants).filter(({ status }) => status !== "failed");
    if (staying.length > 0) yield* finalTrials(this.#project, seed, staying, mostTrials, () => {}, isOver);
  }

  /** Those who take part, and guests: in the place of a twin that has fewer trials, or because they stay, or while they tell more than the race does. */
  among(entrants: readonly Entrant[], raceTrials: number): readonly Entrant[] {
    const twins = new Map(entrants.map((each) => [each.id, each]));
    const staying = new Set(this.#staying(entrants));
    const guests = this.#all.filter((guest) => {
      const twin = twins.get(guest.id);
      if (twin) return twin.status === "racing" && twin.trials < guest.trials;
      return staying.has(guest) || guest.trials > raceTrials;
    });
    const instead = new Set(guests.map(({ id }) => id));
    return [...guests, ...entrants.filter(({ id }) => !instead.has(id))];
  }

  #staying(entrants: readonly Entrant[]): readonly Entrant[] {
    const { wantedIds = [] } = this.#settings;
    const there = new Set(entrants.map(({ id }) => id));
    return this.#all.filter(({ id }) => !there.has(id) && (id === this.shownId || wantedIds.includes(id)));
  }

  *#run(guests: readonly Entrant[], to: number, isOver: () => boolean): Racing<void> {
    const spans = guests
      .filter((guest) => guest.trials < to)
      .map((of) => ({ of, routine: of.routine, from: of.trials, to }));
    const seed = searchSeed(this.#settings.seed, 0);
    yield* runSpans(this.#project, seed, spans, ({ of }, answer) => of.take(answer), isOver);
  }
}
