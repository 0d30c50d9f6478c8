import { Outlook } from "../search/outlook.ts";
import type { Race } from "../search/race.ts";
import type { RaceAnswer, RaceWork } from "../search/raceWork.ts";
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
const FINAL_AT = 0.7;
const END_AT = 0.95;

/**
 * Runs a race in the workers. The same race for any number of workers, unless `seconds` ends it early. Stopped by the
 * signal, the race keeps what is known until then.
 */
export async function runRace(
  workers: Workers,
  race: Race,
  { signal, gate, seconds, onProgress }: RaceOptions = {},
): Promise<"done" | "stopped"> {
  const time = new TimeLeft(gate ?? null);
  const outlook = new Outlook(race);
  const options = { signal, gate };
  try {
    const work = race.run();
    let step = work.next();
    while (!step.done) {
      const answers = await Promise.all(step.value.map((piece) => answerTo(workers, piece, options)));
      if (seconds !== undefined && time.workedS > FINAL_AT * seconds) race.hurry();
      if (seconds !== undefined && time.workedS > END_AT * seconds) race.wrapUp();
      step = work.next(answers);
      const doneFrac = seconds === undefined ? outlook.doneFrac : shareOf(time.workedS, seconds, race);
      onProgress?.({ doneFrac, leftS: time.leftS(doneFrac), totalTrials: outlook.totalTrials });
    }
    return "done";
  } catch (reason) {
    if (signal?.aborted) return "stopped";
    throw reason;
  } finally {
    time.end();
  }
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
