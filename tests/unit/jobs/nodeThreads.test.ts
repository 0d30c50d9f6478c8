import { afterEach, describe, expect, it } from "vitest";
import { nodeThreads } from "../../../src/jobs/nodeThreads.ts";
import { Pool } from "../../../src/jobs/pool.ts";
import type { TaskOf } from "../../../src/jobs/protocol.ts";
import type { Project } from "../../../src/model/project.ts";
import type { Routine } from "../../../src/model/routine.ts";

const project = { name: "a zone" } as Project;
const routine: Routine = { id: "lanes", pattern: "own", label: "", params: {}, moves: [] };
const task = (seed: number): TaskOf<"stress"> => ({ kind: "stress", seed, from: 7, to: 8 });

const pools: Pool[] = [];
const poolOf = (entry: URL): Pool => {
  const pool = new Pool(nodeThreads(entry), 1);
  pools.push(pool);
  return pool;
};
afterEach(() => {
  for (const pool of pools.splice(0)) pool.close();
});

describe("worker threads of Node", () => {
  const echo = new URL("../../support/echoWorker.mjs", import.meta.url);

  it("answer", async () => {
    expect((await poolOf(echo).run(project, routine, task(1))).from).toBe(7);
  });

  it("that die of a fault are told apart from those that end", async () => {
    await expect(poolOf(echo).run(project, routine, task(2))).rejects.toThrow("a fault nobody caught");
    await expect(poolOf(echo).run(project, routine, task(3))).rejects.toThrow("exit code 3");
  });

  it("are replaced: the next task is answered", async () => {
    const pool = poolOf(echo);
    await expect(pool.run(project, routine, task(2))).rejects.toThrow();
    expect((await pool.run(project, routine, task(1))).from).toBe(7);
  });

  it("whose file is not there say so", async () => {
    const missing = new URL("./no-such-worker.mjs", import.meta.url);
    await expect(poolOf(missing).run(project, routine, task(1))).rejects.toThrow("no-such-worker.mjs");
  });
});
