import { describe, expect, it } from "vitest";
import { findRun, type RunSource } from "../../../src/app/state/runFinder.ts";
import type { TrialBatch } from "../../../src/trial/outcome.ts";

const BALLS = 3;

/** A batch in which the named runs failed and all others worked. */
function batch(from: number, to: number, failed: readonly number[]): TrialBatch {
  const delivered = Uint8Array.from({ length: to - from }, (_, i) => (failed.includes(from + i) ? 1 : BALLS));
  const none = new Float64Array(to - from);
  return {
    from,
    to,
    delivered,
    timeS: none,
    points: none,
    losses: new Float64Array(6),
    hashLow: 0,
    hashHigh: 0,
    jams: 0,
    stalls: 0,
  };
}

/** A routine whose first 50 runs are known; notes what more is asked for. */
function source(failed: readonly number[]): RunSource & { readonly asked: [number, number][] } {
  const asked: [number, number][] = [];
  return {
    batches: [batch(0, 50, failed)],
    balls: BALLS,
    asked,
    more: (from, to) => {
      asked.push([from, to]);
      return Promise.resolve(batch(from, to, failed));
    },
  };
}
const ignore = () => {};

describe("looking for a run", () => {
  it("takes what is known without asking", async () => {
    const runs = source([7, 20]);
    expect(await findRun(runs, "failed", 7, 1000, ignore)).toBe(20);
    expect(runs.asked).toEqual([]);
  });

  it("asks for more, from where the known runs end", async () => {
    const runs = source([7, 123]);
    expect(await findRun(runs, "failed", 7, 1000, ignore)).toBe(123);
    expect(runs.asked[0]?.[0]).toBe(50);
  });

  it("finds a run that worked among failed ones", async () => {
    const failed = Array.from({ length: 30 }, (_, i) => i);
    expect(await findRun(source(failed), "worked", 0, 1000, ignore)).toBe(30);
  });

  it("comes back to an earlier run when there is none ahead", async () => {
    expect(await findRun(source([3]), "failed", 10, 200, ignore)).toBe(3);
  });

  it("gives up after its limit and says how far it got", async () => {
    const looked: number[] = [];
    const runs = source([]);
    expect(await findRun(runs, "failed", 0, 400, (count) => looked.push(count))).toBeNull();
    expect(Math.max(...runs.asked.map(([, to]) => to))).toBe(401);
    expect(looked.at(-1)).toBe(401);
    expect([...looked].sort((a, b) => a - b)).toEqual(looked);
  });

  it("passes a fault on", async () => {
    const runs = { ...source([]), more: () => Promise.reject(new Error("worker gone")) };
    await expect(findRun(runs, "failed", 0, 400, ignore)).rejects.toThrow("worker gone");
  });
});
