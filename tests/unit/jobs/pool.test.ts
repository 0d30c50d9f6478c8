import { getEventListeners } from "node:events";
import { describe, expect, it } from "vitest";
import { Pool } from "../../../src/jobs/pool.ts";
import type { Answers, TaskOf } from "../../../src/jobs/protocol.ts";
import type { Project } from "../../../src/model/project.ts";
import type { Routine } from "../../../src/model/routine.ts";
import { type FakeThread, fakeThreads } from "../../support/fakeThreads.ts";

const project = { name: "a zone" } as Project;
const routineOf = (id: string): Routine => ({ id, pattern: "own", label: "", params: {}, moves: [] });
const routine = routineOf("lanes");
const stress = (from: number): TaskOf<"stress"> => ({ kind: "stress", seed: 1, from, to: from + 10 });

/** A batch that says which trials it is about; the pool does not look inside. */
const batch = (from: number): Answers["stress"] => ({ from, to: from + 10 }) as Answers["stress"];

function answer(thread: FakeThread): void {
  const { id, task } = thread.request;
  thread.reply({ id, ok: true, answer: batch(task.kind === "stress" ? task.from : -1) });
}

const get = (threads: readonly FakeThread[], index: number): FakeThread => {
  const thread = threads[index];
  if (!thread) throw new Error(`worker ${index} was not started`);
  return thread;
};

describe("a pool of workers", () => {
  it("gives every task its own answer, in whatever order they come", async () => {
    const { start, threads } = fakeThreads();
    const pool = new Pool(start, 2);
    const answers = [0, 10].map((from) => pool.run(project, routine, stress(from)));
    answer(get(threads, 1));
    answer(get(threads, 0));
    expect((await Promise.all(answers)).map(({ from }) => from)).toEqual([0, 10]);
  });

  it("starts no more workers than it may, and no more than it needs", async () => {
    const { start, threads } = fakeThreads((thread) => queueMicrotask(() => answer(thread)));
    const pool = new Pool(start, 3);
    await pool.run(project, routine, stress(0));
    await pool.run(project, routine, stress(10));
    expect(threads).toHaveLength(1);
    await Promise.all([0, 1, 2, 3, 4, 5].map((n) => pool.run(project, routine, stress(n))));
    expect(threads).toHaveLength(3);
  });

  it("gives a worker one task at a time", () => {
    const { start, threads } = fakeThreads();
    const pool = new Pool(start, 1);
    void pool.run(project, routine, stress(0));
    void pool.run(project, routine, stress(10));
    expect(get(threads, 0).received).toHaveLength(1);
    answer(get(threads, 0));
    expect(get(threads, 0).received).toHaveLength(2);
  });

  it("takes urgent tasks first, in their order", async () => {
    const { start, threads } = fakeThreads();
    const pool = new Pool(start, 1);
    void pool.run(project, routine, stress(0));
    void pool.run(project, routine, stress(10));
    void pool.run(project, routine, stress(20), { urgent: true });
    void pool.run(project, routine, stress(30), { urgent: true });
    const order = [0, 1, 2].map(() => {
      answer(get(threads, 0));
      return get(threads, 0).request.task;
    });
    expect(order).toMatchObject([{ from: 20 }, { from: 30 }, { from: 10 }]);
  });

  it("sends a project and routine once to each worker", async () => {
    const { start, threads } = fakeThreads((thread) => queueMicrotask(() => answer(thread)));
    const pool = new Pool(start, 2);
    await Promise.all([0, 1, 2, 3, 4, 5].map((n) => pool.run(project, routine, stress(n))));
    await pool.run(project, routineOf("rings"), stress(0));
    const sent = threads.map((thread) =>
      thread.received.map((request) => request.subject?.routine?.id ?? ""),
    );
    expect(sent.map((ids) => ids.filter((id) => id === "lanes").length)).toEqual([1, 1]);
    expect(sent.flat().filter((id) => id === "rings")).toHaveLength(1);
  });

  it("rejects with what went wrong in the task, and keeps the worker", async () => {
    const { start, threads } = fakeThreads();
    const pool = new Pool(start, 1);
    const failed = pool.run(project, routine, stress(0));
    const next = pool.run(project, routine, stress(10));
    const thread = get(threads, 0);
    thread.reply({ id: thread.request.id, ok: false, fault: "a polygon with two corners" });
    await expect(failed).rejects.toThrow("a polygon with two corners");
    answer(thread);
    expect((await next).from).toBe(10);
    expect(threads).toHaveLength(1);
  });

  it("rejects what cannot be sent, and goes on", async () => {
    const { start, threads } = fakeThreads((thread) => queueMicrotask(() => answer(thread)));
    const pool = new Pool(start, 1);
    const unsendable = { name: () => "a function" } as unknown as Project;
    await expect(pool.run(unsendable, routine, stress(0))).rejects.toThrow(/could not be cloned/);
    await expect(pool.run(unsendable, routine, stress(0))).rejects.toThrow(/could not be cloned/);
    expect((await pool.run(project, routine, stress(10))).from).toBe(10);
    expect(threads).toHaveLength(1);
  });

  it("drops replies to anything but the task under way", async () => {
    const { start, threads } = fakeThreads();
    const pool = new Pool(start, 1);
    const first = pool.run(project, routine, stress(0));
    const thread = get(threads, 0);
    const stale = thread.request.id;
    answer(thread);
    await first;
    const second = pool.run(project, routine, stress(10));
    thread.reply({ id: stale, ok: true, answer: batch(999) });
    answer(thread);
    expect((await second).from).toBe(10);
  });
});

describe("cancelling", () => {
  it("rejects waiting and running tasks at once, and lets the others be", async () => {
    const { start, threads } = fakeThreads();
    const pool = new Pool(start, 1);
    const controller = new AbortController();
    const { signal } = controller;
    const running = pool.run(project, routine, stress(0), { signal });
    const waiting = pool.run(project, routine, stress(10), { signal });
    const other = pool.run(project, routine, stress(20));
    controller.abort(new Error("the person pressed stop"));
    await expect(running).rejects.toThrow("the person pressed stop");
    await expect(waiting).rejects.toThrow("the person pressed stop");
    const thread = get(threads, 0);
    // The worker is still at the first task; its answer goes nowhere, then it takes the third.
    answer(thread);
    expect(thread.request.task).toMatchObject({ from: 20 });
    answer(thread);
    expect((await other).from).toBe(20);
  });

  it("listens once to a signal, however many tasks hang on it", async () => {
    const { start } = fakeThreads((thread) => queueMicrotask(() => answer(thread)));
    const pool = new Pool(start, 2);
    const { signal } = new AbortController();
    const tasks = Array.from({ length: 30 }, (_, n) => pool.run(project, routine, stress(n), { signal }));
    expect(getEventListeners(signal, "abort")).toHaveLength(1);
    expect(await Promise.all(tasks)).toHaveLength(30);
  });

  it("starts nothing for a signal that is already aborted", async () => {
    const { start, threads } = fakeThreads();
    const pool = new Pool(start, 1);
    const signal = AbortSignal.abort(new Error("too late"));
    await expect(pool.run(project, routine, stress(0), { signal })).rejects.toThrow("too late");
    expect(threads).toHaveLength(0);
  });

  it("closes the workers and rejects the rest", async () => {
    const { start, threads } = fakeThreads();
    const pool = new Pool(start, 1);
    const running = pool.run(project, routine, stress(0));
    const waiting = pool.run(project, routine, stress(10));
    pool.close();
    await expect(running).rejects.toThrow("closed");
    await expect(waiting).rejects.toThrow("closed");
    await expect(pool.run(project, routine, stress(20))).rejects.toThrow("closed");
    expect(get(threads, 0).isClosed).toBe(true);
  });
});

describe("a worker that dies", () => {
  it("is replaced, and its task done again with everything the new one needs", async () => {
    const { start, threads } = fakeThreads();
    const pool = new Pool(start, 1);
    const running = pool.run(project, routine, stress(0));
    const waiting = pool.run(project, routine, stress(10));
    get(threads, 0).die("out of memory");
    const replacement = get(threads, 1);
    expect(replacement.request.task).toMatchObject({ from: 0 });
    expect(replacement.request.subject?.routine?.id).toBe("lanes");
    answer(replacement);
    answer(replacement);
    expect([(await running).from, (await waiting).from]).toEqual([0, 10]);
  });

  it("twice over one task rejects it with the reason, and the next task goes on", async () => {
    const { start, threads } = fakeThreads();
    const pool = new Pool(start, 1);
    const running = pool.run(project, routine, stress(0));
    const waiting = pool.run(project, routine, stress(10));
    get(threads, 0).die("out of memory");
    get(threads, 1).die("out of memory again");
    await expect(running).rejects.toThrow("out of memory again");
    answer(get(threads, 2));
    expect((await waiting).from).toBe(10);
  });

  it("cannot answer any more", async () => {
    const { start, threads } = fakeThreads();
    const pool = new Pool(start, 1);
    const running = pool.run(project, routine, stress(0));
    const dead = get(threads, 0);
    dead.die("lost");
    dead.reply({ id: dead.request.id, ok: true, answer: batch(999) });
    answer(get(threads, 1));
    expect((await running).from).toBe(0);
  });

  it("while its task was cancelled is not replaced for it", async () => {
    const { start, threads } = fakeThreads();
    const pool = new Pool(start, 1);
    const controller = new AbortController();
    const running = pool.run(project, routine, stress(0), { signal: controller.signal });
    controller.abort();
    await expect(running).rejects.toThrow();
    get(threads, 0).die("lost");
    expect(threads).toHaveLength(1);
  });
});

describe("a worker that cannot be started", () => {
  it("rejects the tasks with the reason", async () => {
    const pool = new Pool(() => {
      throw new Error("workers are forbidden here");
    }, 2);
    await expect(pool.run(project, routine, stress(0))).rejects.toThrow("workers are forbidden here");
  });
});
