import { describe, expect, it } from "vitest";
import type { Candidate } from "../../../src/app/state/candidate.ts";
import { Runs } from "../../../src/app/state/runs.svelte.ts";
import type { Workers } from "../../../src/app/state/workers.ts";
import { RoutineMaker } from "../../../src/plan/maker.ts";
import { compileTrial } from "../../../src/trial/compile.ts";
import type { TrialBatch } from "../../../src/trial/outcome.ts";
import { recordTrial } from "../../../src/trial/run.ts";
import { shippedProject } from "../../support/projectFiles.ts";

const project = shippedProject();
const routine = new RoutineMaker(project).make("fan-n5-c0-v100");
if (!routine) throw new Error("no routine");
const plan = compileTrial(project, routine);

/** Runs of which each record comes when it is let; in each third trial, from number 2 on, all three balls are home. */
function slowRuns(): { readonly runs: Runs; readonly waiting: (() => void)[] } {
  // The browser's frames are not under test here.
  globalThis.cancelAnimationFrame ??= () => {};
  const waiting: (() => void)[] = [];
  const run = (
    _project: unknown,
    _routine: unknown,
    task: { kind: string; seed: number; index: number; from: number; to: number },
    { signal }: { signal: AbortSignal },
  ) => {
    if (task.kind === "stress") return Promise.resolve(batch(task.from, task.to));
    return new Promise((resolve, reject) => {
      signal.addEventListener("abort", () => reject(signal.reason));
      waiting.push(() => resolve(recordTrial(plan, task.seed, task.index)));
    });
  };
  const candidate = { routine, batches: [] } as unknown as Candidate;
  const runs = new Runs({ run } as unknown as Workers, () => ({ project, candidate }));
  return { runs, waiting };
}

function batch(from: number, to: number): TrialBatch {
  const delivered = Uint8Array.from({ length: to - from }, (_, i) => ((from + i) % 3 === 2 ? 3 : 1));
  return { from, to, delivered } as unknown as TrialBatch;
}

/** Number of the run on show; −1 where there is none. */
const shownIn = (runs: Runs): number => runs.player.run?.outcome.index ?? -1;

describe("the runs of a routine", () => {
  it("are busy while the run on show is not the one asked for", async () => {
    const { runs, waiting } = slowRuns();
    const first = runs.show(4, false);
    expect([runs.busy, runs.index, shownIn(runs)]).toEqual([true, 4, -1]);
    waiting.shift()?.();
    await first;
    expect([runs.busy, shownIn(runs)]).toEqual([false, 4]);
    const second = runs.show(5, false);
    expect([runs.busy, runs.index, shownIn(runs)]).toEqual([true, 5, 4]);
    waiting.shift()?.();
    await second;
    expect([runs.busy, shownIn(runs)]).toEqual([false, 5]);
  });

  it("stay busy for the last one when several are asked for, and show only that", async () => {
    const { runs, waiting } = slowRuns();
    const overtaken = runs.show(1, false);
    const last = runs.show(2, false);
    await overtaken;
    expect([runs.busy, shownIn(runs)]).toEqual([true, -1]);
    for (const release of waiting) release();
    await last;
    expect([runs.busy, shownIn(runs)]).toEqual([false, 2]);
  });

  it("are busy from the moment one that worked is looked for until it is on show", async () => {
    const { runs, waiting } = slowRuns();
    const found = runs.find("worked");
    expect(runs.busy).toBe(true);
    await expect.poll(() => waiting.length).toBe(1);
    expect([runs.busy, runs.index, shownIn(runs)]).toEqual([true, 2, -1]);
    waiting.shift()?.();
    await found;
    expect([runs.busy, shownIn(runs)]).toEqual([false, 2]);
  });

  it("are at rest once a search is given up, or the run cannot be made", async () => {
    const { runs } = slowRuns();
    const given = runs.find("failed");
    runs.cancelSearch();
    await given;
    expect([runs.busy, runs.search]).toEqual([false, null]);
    const failing = { run: () => Promise.reject(new Error("no way")) } as unknown as Workers;
    const candidate = { routine, batches: [] } as unknown as Candidate;
    const broken = new Runs(failing, () => ({ project, candidate }));
    await broken.show(0, false);
    expect([broken.busy, broken.notice]).toEqual([false, expect.stringContaining("no way")]);
  });
});
