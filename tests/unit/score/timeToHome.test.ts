import { describe, expect, test } from "vitest";
import { timeToHome, whenToStop } from "../../../src/score/timeToHome.ts";
import { fateBatch } from "../../support/fates.ts";

const fates = fateBatch(2, [
  // Run 0: both home, at 10 s and 4 s.
  { homeAtS: 10 },
  { homeAtS: 4 },
  // Run 1: one home at 6 s; the other came at 3 s and left the wedge at 8 s.
  { homeAtS: 6 },
  { loss: "left-wedge", homeAtS: 3, lossAtS: 8, move: 2 },
  // Run 2: nothing home.
  { loss: "never-touched" },
  { loss: "left-pusher", lossAtS: 5, move: 1 },
  // Run 3: one home at 10 s.
  { homeAtS: 10 },
  { loss: "rolled-out", lossAtS: 7, move: 1 },
]);

describe("time to home", () => {
  const curve = timeToHome(fates, 12);

  test("counts runs with at least k balls home for good by each second", () => {
    expect(curve.timesS).toEqual([0, 1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12]);
    expect(curve.curves.map(({ balls }) => balls)).toEqual([1, 2]);
    expect(curve.curves[0]?.shareFrac).toEqual([
      0, 0, 0, 0, 0.25, 0.25, 0.5, 0.5, 0.5, 0.5, 0.75, 0.75, 0.75,
    ]);
    expect(curve.curves[1]?.shareFrac).toEqual([0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0.25, 0.25, 0.25]);
  });

  test("thins a long run out but keeps its end", () => {
    const { timesS } = timeToHome(fates, 3000.5);
    expect(timesS.length).toBeLessThan(245);
    expect(timesS.at(-1)).toBe(3000.5);
  });

  test("without trials knows nothing", () => {
    expect(timeToHome(fateBatch(2, []), 5)).toMatchObject({ trials: 0, bandFrac: 1 });
  });
});

describe("when to stop", () => {
  test("is after the last move that brings anything", () => {
    const { best, savedS, moments } = whenToStop(fates, [2, 6, 9, 11, 20], 120);
    // By 11 s: three balls home in four runs, both in run 0; the last move adds nothing.
    expect(best).toMatchObject({ move: 3, timeS: 11, meanHome: 1 });
    expect(savedS).toBe(9);
    expect(moments.map(({ meanHome }) => meanHome)).toEqual([0, 0.75, 0.5, 1, 1]);
  });

  test("is before the move that sweeps a ball off the wedge", () => {
    const swept = fateBatch(1, [{ loss: "left-wedge", homeAtS: 3, lossAtS: 8, move: 2 }, { homeAtS: 4 }]);
    expect(whenToStop(swept, [2, 5, 9, 12], 120).best).toMatchObject({ move: 1, timeS: 5, meanHome: 1 });
  });

  test("is not before the move that brings one ball more in a hundred runs, but before one in a thousand", () => {
    const late = (runs: number) =>
      fateBatch(1, [{ homeAtS: 15 }, ...Array.from({ length: runs - 1 }, () => ({ homeAtS: 5 }))]);
    expect(whenToStop(late(100), [10, 20], 120).best?.timeS).toBe(20);
    expect(whenToStop(late(1000), [10, 20], 120).best?.timeS).toBe(10);
  });

  test("is earlier where seconds are worth something", () => {
    // At 6 s 0.75 balls, at 11 s 1 ball: the 0.25 are worth 5 s at 0.05 balls a second, and not at 0.06.
    expect(whenToStop(fates, [2, 6, 9, 11, 20], 120, 0.04).best?.timeS).toBe(11);
    expect(whenToStop(fates, [2, 6, 9, 11, 20], 120, 0.06).best?.timeS).toBe(6);
  });

  test("leaves out moves that the time limit cuts", () => {
    const { moments, savedS } = whenToStop(fates, [2, 6, 9, 11, 20], 10);
    expect(moments).toHaveLength(3);
    expect(savedS).toBe(4);
    expect(whenToStop(fates, [20], 10)).toEqual({ moments: [], best: null, savedS: 0 });
  });
});
