import { describe, expect, test } from "vitest";
import { type Rankable, rankRoutines } from "../../../src/score/ranking.ts";

const routine = (id: string, value: number, meanDelivered: number, durationS: number): Rankable => ({
  id,
  successRate: { value, low: 0, high: 1, trials: 100 },
  meanDelivered,
  durationS,
});

const SET = [
  routine("b", 0.8, 2.7, 60),
  routine("slow", 0.8, 2.7, 61),
  routine("worse", 0.7, 2.9, 20),
  routine("best", 0.9, 2.8, 130),
  routine("a", 0.8, 2.7, 60),
  routine("B", 0.8, 2.7, 60),
  routine("many", 0.8, 2.75, 90),
];
const ORDER = ["best", "many", "B", "a", "b", "slow", "worse"];

describe("ranking", () => {
  test("by success rate, then balls delivered, then time, ties by id", () => {
    expect(rankRoutines(SET, 120).map(({ entry }) => entry.id)).toEqual(ORDER);
  });

  test("does not depend on the order given, and leaves it alone", () => {
    const backwards = [...SET].reverse();
    const copy = [...backwards];
    expect(rankRoutines(backwards, 120).map(({ entry }) => entry.id)).toEqual(ORDER);
    expect(backwards).toEqual(copy);
  });

  test("marks what takes longer than the time limit, and drops nothing", () => {
    const ranked = rankRoutines(SET, 61);
    expect(ranked.filter(({ fitsTime }) => !fitsTime).map(({ entry }) => entry.id)).toEqual(["best", "many"]);
    expect(ranked.map(({ place }) => place)).toEqual([1, 2, 3, 4, 5, 6, 7]);
    expect(rankRoutines([], 61)).toEqual([]);
  });
});
