import { describe, expect, it } from "vitest";
import { catalogueInWorkers, makeRoutines } from "../../../src/jobs/catalogue.ts";
import { Pool } from "../../../src/jobs/pool.ts";
import { makeCatalogue } from "../../../src/plan/catalogue.ts";
import { fakeThreads } from "../../support/fakeThreads.ts";
import { liveThreads } from "../../support/liveThreads.ts";
import { shippedProject } from "../../support/projectFiles.ts";

const usual = shippedProject();
/** One speed only: half the work. */
const project = { ...usual, settings: { ...usual.settings, speedFracs: [1] } };
const expected = makeCatalogue(project);

describe("the catalogue made in workers", () => {
  it.each([1, 2, 4])("is the same as made at once, with %i workers", async (size) => {
    const copy = structuredClone(project);
    expect(await catalogueInWorkers(new Pool(liveThreads().start, size), copy)).toEqual(expected);
  });

  it("is the same when workers die over it", async () => {
    const { start, started } = liveThreads((worker, request) => worker < 3 && request === worker);
    const copy = structuredClone(project);
    expect(await catalogueInWorkers(new Pool(start, 2), copy)).toEqual(expected);
    expect(started()).toBe(5);
  });

  it("is kept: asked for again, no worker is needed", async () => {
    const copy = structuredClone(project);
    const first = await catalogueInWorkers(new Pool(liveThreads().start, 2), copy);
    const idle = liveThreads();
    expect(await catalogueInWorkers(new Pool(idle.start, 2), copy)).toBe(first);
    expect(idle.started()).toBe(0);
  });

  it("can be cancelled and asked for anew", async () => {
    const copy = structuredClone(project);
    const controller = new AbortController();
    const silent = new Pool(fakeThreads().start, 1);
    const cancelled = catalogueInWorkers(silent, copy, { signal: controller.signal });
    controller.abort(new Error("never mind"));
    await expect(cancelled).rejects.toThrow("never mind");
    expect((await catalogueInWorkers(new Pool(liveThreads().start, 2), copy)).routines.length).toBe(
      expected.routines.length,
    );
  });

  it("says where there is no such routine", async () => {
    const id = expected.routines[0]?.id ?? "";
    const pool = new Pool(liveThreads().start, 1);
    const made = await makeRoutines(pool, project, ["fan-n99", id]);
    expect(made.map((routine) => routine?.id ?? null)).toEqual([null, id]);
  });
});
