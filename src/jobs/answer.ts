import { recordTrial, runBatch } from "../trial/run.ts";
import { Known } from "./known.ts";
import type { Answers, Reply, Request, Task, TaskKind, TaskOf } from "./protocol.ts";

type Answering<K extends TaskKind> = (
  known: Known,
  task: TaskOf<K>,
  family: readonly Known[],
) => Answers[K] | Promise<Answers[K]>;

/**
 * What is done for each kind of task: a function of what it is about and the task alone. Blind routines and their runs are there at once;
 * everything else is fetched when it is first asked for, so that a page begins to rank sooner.
 */
const ANSWERS: { readonly [K in TaskKind]: Answering<K> } = {
  stress: async ({ plan }, { seed, from, to }) => runBatch(await plan, seed, from, to),
  family: async (project, task, family) => {
    const { familyTrials } = await import("./familyTrials.ts");
    return familyTrials(project, family, task);
  },
  "all-known": async ({ knowing }, { seed, from, to }) => runBatch(await knowing, seed, from, to),
  record: async ({ plan }, { seed, index }) => recordTrial(await plan, seed, index),
  fates: async ({ plan }, { seed, from, to }) => {
    const { runFates } = await import("../trial/fates.ts");
    return runFates(await plan, seed, from, to);
  },
  routines: (known, { ids }) => known.make(ids),
  coverage: async ({ subject, routine }) => {
    const { coverageOf } = await import("../score/coverage.ts");
    return coverageOf(subject.project, routine);
  },
  failings: async ({ subject, routine }, { batches }) => {
    const { failingsOf } = await import("./failings.ts");
    return failingsOf(subject.project, routine, batches);
  },
  "blind-spots": async (_, { region, diameterMm }) => {
    const { blindSpotsOf } = await import("./blindSpots.ts");
    return blindSpotsOf(region, diameterMm);
  },
  "sure-coverage": async ({ subject, routine }, { bounds }) => {
    const { sureCoverage } = await import("../score/sureCoverage.ts");
    return sureCoverage(subject.project, routine, bounds);
  },
  "sure-share": async ({ subject, routine }, { bounds }) => {
    const { sureCoverage } = await import("../score/sureCoverage.ts");
    return sureCoverage(subject.project, routine, bounds).sureFrac;
  },
  losses: async ({ subject, plan }, { placements, seed, trials }) => {
    const { meanLosses } = await import("../search/worstPlacement.ts");
    return meanLosses(subject.project, await plan, placements, seed, trials);
  },
  changes: async ({ subject, routine }) => {
    const { proposeChanges } = await import("../search/change.ts");
    return proposeChanges(subject.project, routine);
  },
  parts: async ({ subject, routine }, { most }) => {
    const { partVariants } = await import("../search/routineParts.ts");
    return partVariants(subject.project, routine, most);
  },
  factors: async ({ subject, routine }) => {
    const { usableFactors } = await import("../search/factors.ts");
    return usableFactors(subject.project, routine).map(({ id, title }) => ({ id, title }));
  },
  "push-field": async ({ subject }) => {
    const { pushField } = await import("../plan/push/pushField.ts");
    return pushField(subject.project);
  },
  "known-balls": async ({ subject }, { seed, index }) => {
    const { knownBallsRun } = await import("../search/knownBalls.ts");
    return knownBallsRun(subject.project, seed, index);
  },
  response: async ({ subject, routine }, { request }) => {
    const { response } = await import("../search/factors.ts");
    return response(subject.project, routine, request);
  },
};

/** What a worker does with a request, browser or Node: a function of its requests alone. */
export class Answerer {
  readonly #known = new Map<number, Known>();

  /** Subjects are taken in before this returns, so that requests may come while an earlier one waits for its code. */
  async reply(request: Request): Promise<Reply> {
    const { id, forget, task, family = [] } = request;
    for (const old of forget) this.#known.delete(old);
    for (const { key, subject } of [request, ...family])
      if (subject) this.#known.set(key, new Known(subject));
    try {
      const members = family.map(({ key }) => this.#knownOf(key));
      return { id, ok: true, answer: await answer(this.#knownOf(request.key), task, members) };
    } catch (fault) {
      return { id, ok: false, fault: fault instanceof Error ? fault.message : String(fault) };
    }
  }

  #knownOf(key: number): Known {
    const known = this.#known.get(key);
    if (!known) throw new Error(`the worker was not told what ${key} is about`);
    return known;
  }
}

function answer<K extends TaskKind>(
  known: Known,
  task: Task & { readonly kind: K },
  family: readonly Known[],
): Answers[TaskKind] | Promise<Answers[TaskKind]> {
  const work: (
    known: Known,
    task: TaskOf<K>,
    family: readonly Known[],
  ) => Answers[TaskKind] | Promise<Answers[TaskKind]> = ANSWERS[task.kind];
  return work(known, task as TaskOf<K>, family);
}
