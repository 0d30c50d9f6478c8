import { recordTrial, runBatch } from "../trial/run.ts";
import { Known } from "./known.ts";
import type { Answers, CommonKind, RareKind, Reply, Request, Task, TaskKind, TaskOf } from "./protocol.ts";

type Table<Kinds extends TaskKind> = {
  readonly [K in Kinds]: (known: Known, task: TaskOf<K>) => Answers[K];
};

/** What is done for each kind of task that a ranking needs: a function of the subject and the task alone. */
const ANSWERS: Table<CommonKind> = {
  stress: ({ plan }, { seed, from, to }) => runBatch(plan, seed, from, to),
  record: ({ plan }, { seed, index }) => recordTrial(plan, seed, index),
  routines: ({ maker }, { ids }) => ids.map((id) => maker.make(id)),
};

/** What a worker does with a request, browser or Node: a function of its requests alone. One request at a time. */
export class Answerer {
  readonly #known = new Map<number, Known>();
  #rare: Table<RareKind> | null = null;

  async reply(request: Request): Promise<Reply> {
    const { id, key, subject, forget, task } = request;
    for (const old of forget) this.#known.delete(old);
    if (subject) this.#known.set(key, new Known(subject));
    try {
      const known = this.#known.get(key);
      if (!known) throw new Error(`the worker was not told what ${key} is about`);
      return { id, ok: true, answer: await this.#answer(known, task) };
    } catch (fault) {
      return { id, ok: false, fault: fault instanceof Error ? fault.message : String(fault) };
    }
  }

  async #answer(known: Known, task: Task): Promise<Answers[TaskKind]> {
    if (isCommon(task)) return answer(ANSWERS, known, task);
    // A ranking is sooner there when the worker's script is short.
    this.#rare ??= (await import("./rareAnswers.ts")).RARE_ANSWERS;
    return answer(this.#rare, known, task as TaskOf<RareKind>);
  }
}

function isCommon(task: Task): task is TaskOf<CommonKind> {
  return task.kind in ANSWERS;
}

function answer<K extends TaskKind>(table: Table<K>, known: Known, task: TaskOf<K>): Answers[TaskKind] {
  const work: (known: Known, task: TaskOf<K>) => Answers[TaskKind] = table[task.kind as K];
  return work(known, task);
}
