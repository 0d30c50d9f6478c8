import type { Project } from "../model/project.ts";
import type { Routine } from "../model/routine.ts";
import { pushField } from "../plan/push/pushField.ts";
import { coverageOf } from "../score/coverage.ts";
import { driftBudget } from "../score/driftBudget.ts";
import { sureCoverage } from "../score/sureCoverage.ts";
import { proposeChanges } from "../search/change.ts";
import { response, usableFactors } from "../search/factors.ts";
import { routineParts, withParts } from "../search/routineParts.ts";
import { worstPlacement } from "../search/worstPlacement.ts";
import { runFates } from "../trial/fates.ts";
import { recordTrial, runBatch } from "../trial/run.ts";
import { Known } from "./known.ts";
import type { Answers, Reply, Request, Task, TaskKind, TaskOf } from "./protocol.ts";

/** What is done for each kind of task: a function of the subject and the task alone. */
const ANSWERS: { readonly [K in TaskKind]: (known: Known, task: TaskOf<K>) => Answers[K] } = {
  stress: ({ plan }, { seed, from, to }) => runBatch(plan, seed, from, to),
  "all-known": ({ knowing }, { seed, from, to }) => runBatch(knowing, seed, from, to),
  record: ({ plan }, { seed, index }) => recordTrial(plan, seed, index),
  coverage: ({ subject, routine }) => coverageOf(subject.project, routine),
  fates: ({ plan }, { seed, from, to }) => runFates(plan, seed, from, to),
  "sure-coverage": ({ subject, routine }, { bounds }) => sureCoverage(subject.project, routine, bounds),
  "drift-budget": ({ subject, routine }, { bounds, wantedFrac }) =>
    driftBudget(subject.project, routine, bounds, wantedFrac),
  worst: ({ subject, routine }, { request }) => worstPlacement(subject.project, routine, request),
  changes: ({ subject, routine }) => proposeChanges(subject.project, routine),
  parts: ({ subject, routine }, { most }) => partsOf(subject.project, routine, most),
  factors: ({ subject, routine }) =>
    usableFactors(subject.project, routine).map(({ id, title }) => ({ id, title })),
  "push-field": ({ subject }) => pushField(subject.project),
  response: ({ subject, routine }, { request }) => response(subject.project, routine, request),
  routines: ({ maker }, { ids }) => ids.map((id) => maker.make(id)),
};

function partsOf(project: Project, routine: Routine, most: number): Answers["parts"] {
  const cut = routineParts(project, routine, most);
  const variants = Array.from({ length: 1 << cut.parts.length }, (_, mask) =>
    withParts(project, routine, cut, mask),
  );
  return { parts: cut.parts, variants };
}

/** What a worker does with a request, browser or Node: a function of its requests alone. */
export class Answerer {
  readonly #known = new Map<number, Known>();

  reply(request: Request): Reply {
    const { id, key, subject, forget, task } = request;
    for (const old of forget) this.#known.delete(old);
    if (subject) this.#known.set(key, new Known(subject));
    try {
      const known = this.#known.get(key);
      if (!known) throw new Error(`the worker was not told what ${key} is about`);
      return { id, ok: true, answer: answer(known, task) };
    } catch (fault) {
      return { id, ok: false, fault: fault instanceof Error ? fault.message : String(fault) };
    }
  }
}

function answer<K extends TaskKind>(known: Known, task: Task & { readonly kind: K }): Answers[TaskKind] {
  const work: (known: Known, task: TaskOf<K>) => Answers[TaskKind] = ANSWERS[task.kind];
  return work(known, task as TaskOf<K>);
}
