import { describe, expect, it } from "vitest";
import { CHUNK_TRIALS } from "../../../src/jobs/chunks.ts";
import { Pool } from "../../../src/jobs/pool.ts";
import type { Request } from "../../../src/jobs/protocol.ts";
import { rankByStress } from "../../../src/jobs/ranking.ts";
import { fakeThreads } from "../../support/fakeThreads.ts";
import { bareProject, bareRoutine, fakeReply } from "../../support/fakeTrials.ts";

/** Of each ten trials, how many bring the one ball home. */
const SUCCESSES: Readonly<Record<string, number>> = { poor: 2, fair: 5, good: 9 };
const routines = ["fair", "poor", "good"].map((id) => bareRoutine(id, id === "good" ? 90 : 10));
const trials = 2 * CHUNK_TRIALS;

/** Workers that know the routines they were told about, as real ones do. */
function workers(onRequest: (request: Request) => boolean = () => true) {
  const known = new Map<number, string>();
  return fakeThreads((thread, request) => {
    if (request.subject?.routine) known.set(request.key, request.subject.routine.id);
    const successes = SUCCESSES[known.get(request.key) ?? ""] ?? 0;
    const delivered = (index: number): number => Number(index % 10 < successes);
    if (onRequest(request)) queueMicrotask(() => thread.reply(fakeReply(request, 1, delivered)));
  });
}

describe("a ranking over workers", () => {
  it("puts the best first and marks what takes too long", async () => {
    const pool = new Pool(workers().start, 2);
    const { status, ranking } = await rankByStress(pool, bareProject, routines, { seed: 1, trials });
    expect(status).toBe("done");
    expect(ranking.map(({ entry }) => entry.id)).toEqual(["good", "fair", "poor"]);
    expect(ranking.map(({ fitsTime }) => fitsTime)).toEqual([false, true, true]);
    expect(ranking[0]?.entry).toMatchObject({ successRate: { value: 0.9, trials }, coverageFrac: 0.5 });
  });

  it("gives every routine its first trials before any gets more", async () => {
    const order: number[] = [];
    const { start } = workers(({ task }) => {
      if (task.kind === "stress") order.push(task.from);
      return true;
    });
    await rankByStress(new Pool(start, 1), bareProject, routines, { seed: 1, trials });
    expect(order).toEqual([0, 0, 0, CHUNK_TRIALS, CHUNK_TRIALS, CHUNK_TRIALS]);
  });

  it("says how far it is and what leads", async () => {
    const seen: [number, string | undefined][] = [];
    await rankByStress(new Pool(workers().start, 1), bareProject, routines, {
      seed: 1,
      trials,
      onProgress: ({ doneTrials, totalTrials, ranking }) => {
        seen.push([doneTrials / totalTrials, ranking()[0]?.entry.id]);
      },
    });
    expect(seen.map(([, best]) => best)).toEqual(["fair", "fair", "good", "good", "good", "good"]);
    expect(seen.at(-1)?.[0]).toBe(1);
  });

  it("stopped early ranks what has been tested", async () => {
    const controller = new AbortController();
    const { start } = workers(({ task }) => {
      const isSecondRound = task.kind === "stress" && task.from > 0;
      if (isSecondRound) controller.abort();
      return !isSecondRound;
    });
    const options = { seed: 1, trials, signal: controller.signal };
    const { status, ranking } = await rankByStress(new Pool(start, 1), bareProject, routines, options);
    expect(status).toBe("stopped");
    expect(ranking.map(({ entry }) => [entry.id, entry.summary.trials])).toEqual([
      ["good", CHUNK_TRIALS],
      ["fair", CHUNK_TRIALS],
      ["poor", CHUNK_TRIALS],
    ]);
  });

  it("stopped before anything is known is empty", async () => {
    const options = { seed: 1, trials, signal: AbortSignal.abort() };
    const result = await rankByStress(new Pool(workers().start, 1), bareProject, routines, options);
    expect(result).toEqual({ status: "stopped", ranking: [] });
  });

  it("that cannot test a routine says why, and does not go on", async () => {
    const asked: number[] = [];
    const { start } = fakeThreads((thread, { id }) => {
      asked.push(id);
      queueMicrotask(() => thread.reply({ id, ok: false, fault: "a move of no kind" }));
    });
    const ranked = rankByStress(new Pool(start, 1), bareProject, routines, { seed: 1, trials });
    await expect(ranked).rejects.toThrow("a move of no kind");
    await new Promise((resolve) => setTimeout(resolve, 10));
    // Of nine tasks; a few are under way before the news is through.
    expect(asked.length).toBeLessThan(6);
  });
});
