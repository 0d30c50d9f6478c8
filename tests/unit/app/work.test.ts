import { describe, expect, it } from "vitest";
import { Work } from "../../../src/app/state/work.svelte.ts";

describe("long work", () => {
  it("is held by its gate, and let go on", () => {
    const work = new Work();
    const { gate } = work.begin();
    work.pause();
    expect([work.paused, gate.isClosed]).toEqual([true, true]);
    work.goOn();
    expect([work.paused, gate.isClosed]).toEqual([false, false]);
  });

  it("tells how far it is, and nothing of a job that is over", () => {
    const work = new Work();
    const first = work.begin();
    first.onProgress(0.25);
    expect(work.doneFrac).toBe(0.25);
    expect(work.leftS).toBeGreaterThanOrEqual(0);
    const second = work.begin();
    expect([work.doneFrac, work.leftS]).toEqual([0, null]);
    expect(first.signal.aborted).toBe(true);
    first.onProgress(0.9);
    expect(work.doneFrac).toBe(0);
    expect([work.owns(first.signal), work.owns(second.signal)]).toEqual([false, true]);
  });

  it("that is cancelled is still the job under way: what it knows is its result", () => {
    const work = new Work();
    const { signal } = work.begin();
    work.pause();
    work.cancel();
    expect([signal.aborted, work.paused, work.owns(signal)]).toEqual([true, false, true]);
    work.drop();
    expect(work.owns(signal)).toBe(false);
  });
});
