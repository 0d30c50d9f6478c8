import { coverageOf } from "../score/coverage.ts";
import { compileTrial, type TrialPlan } from "../trial/compile.ts";
import { recordTrial, runBatch } from "../trial/run.ts";
import type { Answers, Reply, Request, Subject, Task, TaskKind } from "./protocol.ts";

interface Known {
  readonly subject: Subject;
  /** Compiled when a trial is first asked for. */
  plan: TrialPlan | null;
}

/** What a worker does with a request, browser or Node: a function of its requests alone. */
export class Answerer {
  readonly #known = new Map<number, Known>();

  reply(request: Request): Reply {
    const { id, key, subject, forget, task } = request;
    for (const old of forget) this.#known.delete(old);
    if (subject) this.#known.set(key, { subject, plan: null });
    try {
      const known = this.#known.get(key);
      if (!known) throw new Error(`the worker was not told what ${key} is about`);
      return { id, ok: true, answer: answer(known, task) };
    } catch (fault) {
      return { id, ok: false, fault: fault instanceof Error ? fault.message : String(fault) };
    }
  }
}

function answer(known: Known, task: Task): Answers[TaskKind] {
  switch (task.kind) {
    case "stress":
      return runBatch(planOf(known), task.seed, task.from, task.to);
    case "record":
      return recordTrial(planOf(known), task.seed, task.index);
    case "coverage":
      return coverageOf(known.subject.project, known.subject.routine);
    default:
      return task satisfies never;
  }
}

function planOf(known: Known): TrialPlan {
  known.plan ??= compileTrial(known.subject.project, known.subject.routine);
  return known.plan;
}
