import { FIRST_LOOK, looksUpTo } from "./looks.ts";
import type { Race } from "./race.ts";
import { TRIES, triesTrials } from "./tries.ts";

/** Share of the routines in a race that usually outlive a look; finalists and refined leaders of a usual race. */
const SURVIVING = 0.72;
const FINALISTS = 20;
const REFINED = 6;

/**
 * Share of a race's trials that are done, 0 … 1. How many routines will be dropped is not known before, so it is an
 * estimate: good enough to say about how long it will still take. Never falls as the race goes on, if asked in turn.
 */
export class Outlook {
  readonly #race: Race;
  #most = 0;

  constructor(race: Race) {
    this.#race = race;
  }

  get doneFrac(): number {
    const race = this.#race;
    if (race.stage === "over") return 1;
    const done = race.doneTrials;
    const { isShort, trials } = race.budget;
    const all = isShort ? trials : done + this.#trialsLeft();
    const share = done === 0 ? 0 : done / all;
    this.#most = Math.max(this.#most, Math.min(share, MOST_BEFORE_THE_END));
    return this.#most;
  }

  /** Trials the whole race takes, about. */
  get totalTrials(): number {
    const { isShort, trials } = this.#race.budget;
    if (isShort && this.#race.stage !== "over") return Math.max(Math.round(trials), this.#race.doneTrials);
    return Math.round(this.#race.doneTrials + (this.#race.stage === "over" ? 0 : this.#trialsLeft()));
  }

  #trialsLeft(): number {
    const race = this.#race;
    const { mostTrials } = race.settings;
    const finalists = race.entrants.filter(({ status }) => status === "final");
    if (race.stage === "final") {
      const count = Math.max(FINALISTS, finalists.length);
      const ran = finalists.reduce((sum, { finalBatches }) => sum + (finalBatches.at(-1)?.to ?? 0), 0);
      return Math.max(0, count * mostTrials - ran);
    }
    const refining = Math.max(0, REFINED * TRIES * triesTrials(mostTrials) - race.refiningTrials);
    return this.#racingLeft() + refining + FINALISTS * mostTrials;
  }

  #racingLeft(): number {
    const race = this.#race;
    const { firstIds, moreIds, own, mostTrials } = race.settings;
    const isEntering = race.stage === "first-look" || race.stage === "widening";
    const all = firstIds.length + moreIds.length + own.length;
    const coming = isEntering ? Math.max(0, all - race.entrants.length) : 0;
    let left = coming * Math.min(FIRST_LOOK, mostTrials);
    let racing = race.racing.length + coming;
    const reached = race.leader?.trials ?? 0;
    let before = reached;
    for (const look of looksUpTo(mostTrials)) {
      if (look <= before) continue;
      racing *= SURVIVING;
      left += racing * (look - before);
      before = look;
    }
    return left;
  }
}

/** A race that is not over is not said to be. */
const MOST_BEFORE_THE_END = 0.99;
