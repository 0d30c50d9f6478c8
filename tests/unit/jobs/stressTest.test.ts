import { describe, expect, it } from "vitest";
import { CHUNK_TRIALS } from "../../../src/jobs/chunks.ts";
import { Pool } from "../../../src/jobs/pool.ts";
import { stressTest } from "../../../src/jobs/stressTest.ts";
import { fakeThreads } from "../../support/fakeThreads.ts";
import { bareProject, bareRoutine, fakeReply } from "../../support/fakeTrials.ts";

const everyOther = (index: number): number => (index % 2 === 0 ? 2 : 1);
const routine = bareRoutine("lanes");

describe("a stress test over workers", () => {
  it("adds up the same whatever order the chunks come back in", async () => {
    const results = await Promise.all(
      [1, 3].map((workers) => {
        const { start } = fakeThreads((thread, request) => {
          const answer = (): void => thread.reply(fakeReply(request, 2, everyOther));
          // The second chunk of three comes last.
          if (request.id % 3 === 2) setTimeout(answer, 20);
          else queueMicrotask(answer);
        });
        return stressTest(new Pool(start, workers), bareProject, routine, {
          seed: 1,
          trials: 2 * CHUNK_TRIALS + 10,
        });
      }),
    );
    expect(results[0]).toEqual(results[1]);
    expect(results[0]?.status).toBe("done");
    expect(results[0]?.summary.deliveredCounts).toEqual([0, CHUNK_TRIALS + 5, CHUNK_TRIALS + 5]);
  });

  it("says how far it is", async () => {
    const { start } = fakeThreads((thread, request) =>
      queueMicrotask(() => thread.reply(fakeReply(request, 2, everyOther))),
    );
    const done: number[] = [];
    const trials = 2 * CHUNK_TRIALS + 10;
    const onProgress = (doneTrials: number): void => void done.push(doneTrials);
    await stressTest(new Pool(start, 1), bareProject, routine, { seed: 1, trials, onProgress });
    expect(done).toEqual([CHUNK_TRIALS, 2 * CHUNK_TRIALS, trials]);
  });

  it("stopped early gives what the same test with fewer trials gives", async () => {
    const controller = new AbortController();
    const { start } = fakeThreads((thread, request) => {
      if (request.task.kind !== "stress") return;
      // The third chunk never comes; the fourth does, and does not count.
      if (request.task.from === 2 * CHUNK_TRIALS) return;
      queueMicrotask(() => thread.reply(fakeReply(request, 2, everyOther)));
      if (request.task.from === 4 * CHUNK_TRIALS) controller.abort();
    });
    const pool = new Pool(start, 2);
    const options = { seed: 1, trials: 5 * CHUNK_TRIALS, signal: controller.signal };
    const { status, summary } = await stressTest(pool, bareProject, routine, options);
    expect(status).toBe("stopped");
    expect(summary.trials).toBe(2 * CHUNK_TRIALS);
    const { start: quick } = fakeThreads((thread, request) =>
      queueMicrotask(() => thread.reply(fakeReply(request, 2, everyOther))),
    );
    const short = await stressTest(new Pool(quick, 1), bareProject, routine, {
      seed: 1,
      trials: 2 * CHUNK_TRIALS,
    });
    expect(summary).toEqual(short.summary);
  });

  it("that cannot run a trial says why", async () => {
    const { start } = fakeThreads((thread, { id }) =>
      queueMicrotask(() => thread.reply({ id, ok: false, fault: "the plan has no moves" })),
    );
    const test = stressTest(new Pool(start, 2), bareProject, routine, { seed: 1, trials: 10 });
    await expect(test).rejects.toThrow("the plan has no moves");
  });
});
