import type { RaceSettings } from "./raceSettings.ts";
import { makeAll, type Racing, runSpans } from "./raceWork.ts";
import { refine, type Tried, type Trying } from "./refinement.ts";
import { LEAST_TRIES, TRIES, triesTrials } from "./tries.ts";

/** Refines several routines side by side, so that there is work for all workers; each point on the same trials. */
export class LeaderRefining {
  readonly #settings: RaceSettings;
  readonly #seed: number;
  readonly #most: number;

  /** @param most trials it may take in all, about */
  constructor(settings: RaceSettings, seed: number, most = Number.POSITIVE_INFINITY) {
    this.#settings = settings;
    this.#seed = seed;
    this.#most = most;
  }

  /** @returns what was tried for each id, best first; nothing for those whose search was not over */
  *run(
    ids: readonly string[],
    onTrials: (trials: number) => void,
    isOver: () => boolean,
  ): Racing<readonly (readonly Tried[])[]> {
    const mean = this.#most / Math.max(1, ids.length * TRIES);
    const trials = Math.max(LEAST_TRIES, Math.min(triesTrials(this.#settings.mostTrials), Math.round(mean)));
    const searches = ids.map((id): Trying<readonly Tried[]> => refine(this.#settings.project, id, TRIES));
    let steps = searches.map((search) => search.next());
    while (!isOver() && steps.some(({ done }) => !done)) {
      const asked = steps.map((step) => (step.done ? [] : step.value));
      const worths = yield* this.#worths([...new Set(asked.flat())], trials, onTrials);
      steps = steps.map((step, i) => {
        if (step.done) return step;
        return searches[i]?.next((asked[i] ?? []).map((id) => worths.get(id) ?? null)) ?? step;
      });
    }
    return steps.map((step) => (step.done ? step.value : []));
  }

  *#worths(
    ids: readonly string[],
    trials: number,
    onTrials: (trials: number) => void,
  ): Racing<ReadonlyMap<string, number>> {
    const { objective, project } = this.#settings;
    const judged = objective.projectFor(project);
    const made = yield* makeAll(project, ids);
    const sums = new Map<string, number>();
    const spans = made
      .filter((routine) => routine !== null)
      .map((routine) => ({ of: routine.id, routine, from: 0, to: trials }));
    yield* runSpans(judged, this.#seed, spans, ({ of }, answer) => {
      if (answer.kind !== "ran") return;
      const scores = objective.scoresOf(answer.batch, judged);
      sums.set(
        of,
        scores.reduce((sum, score) => sum + score, sums.get(of) ?? 0),
      );
      onTrials(scores.length);
    });
    const sign = objective.isBetter(1, 0) ? 1 : -1;
    return new Map([...sums].map(([id, sum]) => [id, (sign * sum) / trials]));
  }
}
