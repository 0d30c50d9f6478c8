import { describe, expect, it } from "vitest";
import { ballMarks, jamMarks, moveMarks } from "../../../src/app/parts/stripMarks.ts";
import type { RunEvent, RunEventKind } from "../../../src/trial/recording.ts";

const event = (kind: RunEventKind, timeS: number, ball: number): RunEvent => ({
  kind,
  timeS,
  ball,
  move: 0,
  xMm: 0,
  yMm: 0,
});
const recording = {
  durationS: 100,
  moveStartS: Float64Array.of(0, 0.2, 0.4, 30, 30.1),
  events: [event("jam", 50, 0), event("jam", 50.5, 1), event("jam", 80, 0), event("rolled-out", 60, 1)],
};
const outcome = {
  delivered: [true, false, true, false, false],
  deliveredAtS: [40, null, 40, null, null],
};

describe("marks on the time bar", () => {
  it("say of every ball when it came home, was lost, or was still out at the end", () => {
    const marks = ballMarks(outcome, recording, 400);
    expect(marks.map(({ ball, isHome, timeS }) => [ball, isHome, timeS])).toEqual([
      [0, true, 40],
      [1, false, 60],
      [2, true, 40],
      [3, false, 100],
      [4, false, 100],
    ]);
  });

  it("can all be read: two of the same second stand side by side, none beyond the end", () => {
    const places = ballMarks(outcome, recording, 400).map(({ atPx }) => atPx);
    const sorted = [...places].sort((a, b) => a - b);
    for (const [i, place] of sorted.entries()) {
      expect(place).toBeLessThanOrEqual(400);
      expect(place - (sorted[i - 1] ?? -100)).toBeGreaterThanOrEqual(20);
    }
    expect(places[0]).toBe(160);
  });

  it("are fewer where they would cover each other, and all there on a wide bar", () => {
    expect(jamMarks(recording, 400)).toEqual([50, 80]);
    expect(jamMarks(recording, 4000)).toEqual([50, 50.5, 80]);
    expect(moveMarks(recording, 400)).toEqual([0, 30]);
    expect(moveMarks(recording, 40_000)).toEqual([0, 0.2, 0.4, 30, 30.1]);
  });
});
