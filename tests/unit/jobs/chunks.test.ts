import { describe, expect, it } from "vitest";
import { CHUNK_TRIALS, chunksOf, unbroken } from "../../../src/jobs/chunks.ts";
import type { TrialBatch } from "../../../src/trial/outcome.ts";

const batch = (from: number, to: number): TrialBatch => ({ from, to }) as TrialBatch;

describe("chunks", () => {
  it("cover every trial once, in pieces of one size", () => {
    const chunks = chunksOf(2 * CHUNK_TRIALS + 7);
    expect(chunks).toEqual([
      { from: 0, to: CHUNK_TRIALS },
      { from: CHUNK_TRIALS, to: 2 * CHUNK_TRIALS },
      { from: 2 * CHUNK_TRIALS, to: 2 * CHUNK_TRIALS + 7 },
    ]);
    expect(chunksOf(0)).toEqual([]);
    expect(chunksOf(1)).toEqual([{ from: 0, to: 1 }]);
  });
});

describe("the unbroken part", () => {
  it("is in order and ends at the first gap", () => {
    expect(unbroken([batch(30, 40), batch(10, 20), batch(0, 10)])).toEqual([batch(0, 10), batch(10, 20)]);
    expect(unbroken([batch(10, 20)])).toEqual([]);
    expect(unbroken([batch(10, 20), batch(0, 10)])).toHaveLength(2);
    expect(unbroken([])).toEqual([]);
  });
});
