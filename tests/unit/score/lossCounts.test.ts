import { expect, test } from "vitest";
import { lossesByMove } from "../../../src/score/lossCounts.ts";
import { fateBatch } from "../../support/fates.ts";

test("losses are counted by reason and move, most first, with runs to play", () => {
  const fates = fateBatch(
    2,
    [
      { homeAtS: 5 },
      { loss: "left-pusher", lossAtS: 7, move: 3 },
      { loss: "left-pusher", lossAtS: 8, move: 3 },
      { loss: "left-pusher", lossAtS: 9, move: 5 },
      { loss: "never-touched" },
      { loss: "never-touched" },
      { loss: "never-touched" },
      { loss: "jammed", lossAtS: 4, move: 3 },
    ],
    10,
  );
  expect(lossesByMove(fates)).toEqual([
    {
      reason: "never-touched",
      move: null,
      balls: 3,
      // Two of four runs, by Wilson's formula (z² = 3.8415): (0.5 ± 1.96·√(1/16 + 3.8415/64)/(1 + 3.8415/4)…): 0.150 to 0.850.
      runs: { value: 0.5, low: expect.closeTo(0.15, 3), high: expect.closeTo(0.85, 3), trials: 4 },
      shareFrac: 3 / 7,
      examples: [
        { index: 12, ball: 0, timeS: null },
        { index: 12, ball: 1, timeS: null },
        { index: 13, ball: 0, timeS: null },
      ],
    },
    {
      reason: "left-pusher",
      move: 3,
      balls: 2,
      runs: expect.objectContaining({ value: 0.5, trials: 4 }),
      shareFrac: 2 / 7,
      examples: [
        { index: 10, ball: 1, timeS: 7 },
        { index: 11, ball: 0, timeS: 8 },
      ],
    },
    expect.objectContaining({ reason: "jammed", move: 3, balls: 1 }),
    expect.objectContaining({ reason: "left-pusher", move: 5, balls: 1 }),
  ]);
  expect(lossesByMove(fateBatch(1, [{ homeAtS: 1 }]))).toEqual([]);
});
