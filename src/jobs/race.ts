import { Outlook } from "../search/outlook.ts";
import type { Race } from "../search/race.ts";
import type { RaceAnswer, RaceWork, Racing } from "../search/raceWork.ts";
import type { Workers } from "./catalogue.ts";
import type { JobOptions, JobProgress } from "./jobOptions.ts";
import { TimeLeft } from "./timeLeft.ts";

export interface RaceProgress extends JobProgress {
  /** About how many trials it will be; those of `race.doneTrials` are done. */
  readonly totalTrials: number;
}

export interface RaceOptions extends JobOptions {
  /** Time the race may take without pauses, s; without it, it runs until it is settled. */
  readonly seconds?: number | undefined;
  /** Told after every slice of work, a fraction of a second; what is known by then is in the race. */
  readonly onProgress?: ((progress: RaceProgress) => void) | undefined;
}

/** Share of the time after which the final begins, and after which it ends with the trials it has. */
const FINAL_AT = 0.82;
const END_AT = 0.97;

/** So much time says what the pace is, s. */
const PACE_S = 0.3;

/** A race in the workers: it can be stopped, and go on where it stopped. */
export class RaceRun {
  readonly race: Race;
  readonly #workers: Workers;
  readonly #outlook: Outlook;
  #work: Racing<void>;
  /** Trials and time when the last routine came in. */
  #entered = { trials: 0, workedS: 0 };
  /** What was asked for and has no answer yet. */
  #asked: IteratorResult<readonly RaceWork[], void> | null = null;

  constructor(workers: Workers, race: Race) {
    this.race = race;
    this.#workers = workers;
    this.#outlook = new Outlook(race);
    this.#work = race.run();
  }

  /**
   * Runs until it is over or stopped; called again, it goes on, or lets in what came to the race since its end. The same
   * race for any number of workers, unless `seconds` ends it early. What was known when it was stopped stays known.
   */
  async go({ signal, gate, seconds, onProgress }: RaceOptions = {}): Promise<"done" | "stopped"> {
    const { race } = this;
    const time = new TimeLeft(gate ?? null);
    const options = { signal, gate };
    try {
      if (this.#asked?.done) {
        this.#work = race.run();
        this.#asked = null;
      }
      let step = this.#asked ?? this.#work.next();
      while (!step.done) {
        this.#asked = step;
        const answers = await Promise.all(step.value.map((piece) => answerTo(this.#workers, piece, options)));
        if (seconds !== undefined) this.#keepTime(time.workedS, seconds);
        step = this.#work.next(answers);
        const doneFrac =
          seconds === undefined ? this.#outlook.doneFrac : shareOf(time.workedS, seconds, race);
        onProgress?.({ doneFrac, leftS: time.leftS(doneFrac), totalTrials: this.#outlook.totalTrials });
      }
      this.#asked = step;
      return "done";
    } catch (reason) {
      if (signal?.aborted) return "stopped";
      throw reason;
    } finally {
      time.end();
    }
  }

  /** Sees to it that the race ends in time; the pace since the last routine came in tells how many trials there is time for. */
  #keepTime(workedS: number, seconds: number): void {
    const { race } = this;
    const { budget, doneTrials } = race;
    const isEntering = race.stage === "first-look" || race.stage === "widening";
    if (isEntering) this.#entered = { trials: doneTrials, workedS };
    const sinceS = workedS - this.#entered.workedS;
    const pace = sinceS > PACE_S ? (doneTrials - this.#entered.trials) / sinceS : doneTrials / workedS;
    if (doneTrials > 0) budget.trials = doneTrials + pace * Math.max(0, seconds - workedS);
    budget.timeFrac = workedS / seconds;
    if (workedS > FINAL_AT * seconds) race.hurry();
    if (workedS > END_AT * seconds) race.wrapUp();
  }
}

/** Runs a race to its end, or until it is stopped. */
export function runRace(
  workers: Workers,
  race: Race,
  options: RaceOptions = {},
): Promise<"done" | "stopped"> {
  return new RaceRun(workers, race).go(options);
}

function shareOf(workedS: number, seconds: number, race: Race): number {
  return race.stage === "over" ? 1 : Math.min(0.99, workedS / seconds);
}

async function answerTo(workers: Workers, work: RaceWork, options: JobOptions): Promise<RaceAnswer> {
  switch (work.kind) {
    case "make": {
      const task = { kind: "routines", ids: work.ids } as const;
      return { kind: "made", routines: await workers.run(work.project, null, task, options) };
    }
    case "refiner": {
      const { LeaderRefining } = await import("../search/leaderRefining.ts");
      return { kind: "refiner", Refining: LeaderRefining };
    }
    case "trials": {
      const { seed, from, to } = work;
      const task = { kind: "stress", seed, from, to } as const;
      try {
        return { kind: "ran", batch: await workers.run(work.project, work.routine, task, options) };
      } catch (reason) {
        if (options.signal?.aborted) throw reason;
        return { kind: "failed", reason: reason instanceof Error ? reason.message : String(reason) };
      }
    }
    default:
      return work satisfies never;
  }
}
