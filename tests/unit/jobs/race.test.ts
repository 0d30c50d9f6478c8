import { describe, expect, it } from "vitest";
import { Gate } from "../../../src/jobs/gate.ts";
import { Pool } from "../../../src/jobs/pool.ts";
import { runRace } from "../../../src/jobs/race.ts";
import { Guests } from "../../../src/search/guests.ts";
import { EVERY_BALL } from "../../../src/search/objective.ts";
import { Race } from "../../../src/search/race.ts";
import { liveThreads } from "../../support/liveThreads.ts";
import { shippedProject } from "../../support/projectFiles.ts";

const project = shippedProject();
const firstIds = ["loop-long-v100", "loop-short-v100", "fan-n5-c0-v100"];

const newRace = (mostTrials = 22) =>
  new Race({ project, objective: EVERY_BALL, seed: 5, mostTrials, own: [], firstIds, moreIds: [] });

/** All that a race has found out. */
const resultOf = (race: Race) =>
  race.entrants.map(({ id, status, scores, finalBatches }) => ({
    id,
    status,
    scores,
    final: finalBatches.map(({ from, hashLow, hashHigh }) => [from, hashLow, hashHigh]),
    winner: race.winner?.id,
  }));

describe("a race in workers", () => {
  it("is the same for 1, 2 and 4 workers, and when some die over it", async () => {
    const results: unknown[] = [];
    for (const [size, dies] of [
      [1, () => false],
      [2, () => false],
      [4, (worker: number, request: number) => worker < 4 && request === 3 + worker],
    ] as const) {
      const race = newRace();
      expect(await runRace(new Pool(liveThreads(dies).start, size), race)).toBe("done");
      results.push(resultOf(race));
    }
    for (const result of results.slice(1)) expect(result).toEqual(results[0]);
    expect(results[0]).toHaveLength(firstIds.length);
  });

  it("begins with what is wanted, in enough trials to say something", async () => {
    const wantedIds = ["fan-n5-c0-v100", "nothing-of-this-name", "loop-long-v80"];
    const race = new Race({ ...newRace(60).settings, wantedIds });
    race.guests = new Guests(race);
    const rows: (readonly [id: string, trials: number])[][] = [];
    await runRace(new Pool(liveThreads().start, 2), race, {
      onProgress: () => rows.push(race.listed.map(({ id, trials }) => [id, trials] as const)),
    });
    expect(rows.find((each) => each.some(([, trials]) => trials > 0))).toEqual([["fan-n5-c0-v100", 23]]);
    const both = rows.find((each) => each.filter(([, trials]) => trials > 0).length > 1);
    expect(both).toEqual([
      ["fan-n5-c0-v100", 23],
      ["loop-long-v80", 23],
    ]);
    const ids = race.listed.map(({ id }) => id);
    expect([...ids].sort()).toEqual([...new Set([...firstIds, "loop-long-v80"])].sort());
    expect(race.entrants.map(({ id }) => id)).toEqual(firstIds);
  });

  it("says how far it is, and never goes back", async () => {
    const seen: number[] = [];
    const race = newRace();
    await runRace(new Pool(liveThreads().start, 2), race, {
      onProgress: ({ doneFrac }) => seen.push(doneFrac),
    });
    expect(seen.length).toBeGreaterThan(3);
    expect(seen).toEqual([...seen].sort((a, b) => a - b));
    expect(seen.at(-1)).toBe(1);
  });

  it("pauses behind a gate and goes on to the same end", async () => {
    const gate = new Gate();
    const race = newRace();
    let paused: Promise<void> | null = null;
    const done = runRace(new Pool(liveThreads().start, 2), race, {
      gate,
      onProgress: () => {
        if (paused) return;
        gate.close();
        paused = new Promise((resolve) => setTimeout(resolve, 30)).then(() => {
          const before = race.doneTrials;
          return new Promise<void>((resolve) =>
            setTimeout(() => {
              expect(race.doneTrials).toBe(before);
              gate.open();
              resolve();
            }, 30),
          );
        });
      },
    });
    expect(await done).toBe("done");
    await paused;
    expect(race.stage).toBe("over");
    expect(race.doneTrials).toBe(2 * 22 * firstIds.length);
  });

  it("stopped keeps what is known", async () => {
    const controller = new AbortController();
    const race = newRace();
    const options = {
      signal: controller.signal,
      onProgress: () => {
        if (race.doneTrials > 0) controller.abort();
      },
    };
    expect(await runRace(new Pool(liveThreads().start, 1), race, options)).toBe("stopped");
    expect(race.entrants.length).toBeGreaterThan(0);
    expect(race.winner).not.toBeNull();
    expect(race.stage).not.toBe("over");
  });

  it("out of time still ends with a winner", async () => {
    const race = newRace(100);
    expect(await runRace(new Pool(liveThreads().start, 1), race, { seconds: 0.001 })).toBe("done");
    expect(race.stage).toBe("over");
  });

  it("keeps a routine that cannot be run in its place, with the reason", async () => {
    const pool = new Pool(liveThreads().start, 1);
    const workers = {
      run: ((asked, routine, task, options) => {
        const isFan = [routine].flat().some((each) => each?.id.startsWith("fan"));
        if (isFan) return Promise.reject(new Error("no way through the doorway"));
        return pool.run(asked, routine, task, options);
      }) as Pool["run"],
    };
    const race = newRace(20);
    await runRace(workers, race);
    const failed = race.entrants.filter(({ status }) => status === "failed");
    expect(failed.map(({ id, fault }) => [id, fault])).toEqual([
      ["fan-n5-c0-v100", "no way through the doorway"],
    ]);
    expect(race.winner?.status).toBe("final");
  });
});
