import { describe, expect, it } from "vitest";
import { mcnemarExact } from "../../../src/num/mcnemar.ts";
import { RandomStream } from "../../../src/num/stream.ts";
import { pairVerdict } from "../../../src/search/pairVerdict.ts";

/** One ball: a trial is 1 or 0. */
const trialsOf = (delivered: readonly number[]) => {
  const home = delivered.reduce((sum, count) => sum + count, 0);
  return {
    indices: delivered.map((_, i) => i),
    delivered,
    deliveredCounts: [delivered.length - home, home],
  };
};

/** So many trials that only the first, only the second, and both win. */
const pair = (onlyFirst: number, onlySecond: number, both: number) => {
  const of = (first: number, second: number) => [
    ...new Array(onlyFirst).fill(first),
    ...new Array(onlySecond).fill(second),
    ...new Array(both).fill(1),
  ];
  return pairVerdict(trialsOf(of(1, 0)), trialsOf(of(0, 1)));
};

describe("two routines on the same trials", () => {
  it("are called different in at most 5 % of 10,000 null experiments that look after every trial", () => {
    const stream = new RandomStream();
    let alarms = 0;
    let naive = 0;
    for (let experiment = 0; experiment < 10_000; experiment++) {
      stream.open(21, experiment, 0);
      const first: number[] = [];
      const second: number[] = [];
      let [onlyFirst, onlySecond] = [0, 0];
      let isAlarm = false;
      for (let trial = 0; trial < 200; trial++) {
        // Half of the luck is shared; both bring every ball home in six of ten trials.
        const shared = stream.uniform() < 0.5;
        const luck = stream.uniform();
        first.push(Number(luck < 0.6));
        second.push(Number((shared ? luck : stream.uniform()) < 0.6));
        if (first[trial] === second[trial]) continue;
        if (first[trial] === 1) onlyFirst++;
        else onlySecond++;
        if (experiment < 500) isAlarm ||= mcnemarExact(onlyFirst, onlySecond) < 0.05;
      }
      if (isAlarm) naive++;
      // Its evidence is the largest so far: settled now means settled at some look.
      if (pairVerdict(trialsOf(first), trialsOf(second)).settled !== null) alarms++;
    }
    expect(alarms / 10_000).toBeLessThanOrEqual(0.05);
    expect(alarms).toBeGreaterThan(50);
    // The exact test, looked at as often, would cry wolf three times as often as it may.
    expect(naive / 500).toBeGreaterThan(0.12);
  });

  it("are settled by a clear lead, on the right side", () => {
    expect(pair(40, 5, 50).settled).toBe("first");
    expect(pair(5, 60, 50).settled).toBe("second");
    expect(pair(6, 5, 500).settled).toBeNull();
    expect(pair(40, 5, 50).comparison.better).toBe("first");
  });

  it("need so many more trials as Connor's formula says", () => {
    // p = 0.2, d = 0.04: (1.96·0.44721 + 1.28155·0.44542)² / 0.0016 = 1311 (by hand).
    const verdict = pair(12, 8, 80);
    const needed = (1.959964 * Math.sqrt(0.2) + 1.281552 * Math.sqrt(0.2 - 0.0016)) ** 2 / 0.0016;
    expect(verdict.moreTrials).toBe(Math.ceil(needed) - 100);
    expect(verdict.moreTrials).toBeGreaterThan(1190);
    expect(verdict.moreTrials).toBeLessThan(1225);
    expect(pair(90, 0, 10).moreTrials).toBe(0);
    // Five that differ, all one way, settle nothing (p = 1/16); six would (p = 1/32): 16 of these more trials at least.
    expect(pair(5, 0, 75).comparison.better).toBe("alike");
    expect(pair(5, 0, 75).moreTrials).toBeGreaterThanOrEqual(16);
    expect(pair(5, 0, 0).moreTrials).toBeGreaterThanOrEqual(1);
    expect(pair(5, 5, 10).moreTrials).toBeNull();
    expect(pair(0, 0, 0).moreTrials).toBeNull();
  });

  it("count only trials that both have run", () => {
    const verdict = pairVerdict(trialsOf([1, 1, 0, 1]), trialsOf([1, 0]));
    expect(verdict.comparison).toMatchObject({ trials: 2, both: 1, onlyFirst: 1 });
    expect([verdict.onlyFirstRuns, verdict.onlySecondRuns]).toEqual([[1], []]);
    expect(verdict.evidenceFirst).toBeGreaterThan(1);
    expect(verdict.evidenceSecond).toBe(1);
  });
});
