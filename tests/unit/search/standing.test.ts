import { describe, expect, it } from "vitest";
import { standingsOf } from "../../../src/search/standing.ts";
import { raceCoins } from "../../support/pretendRace.ts";

describe("the standings of a race", () => {
  const race = raceCoins([0.9, 0.5, 0.1, 0.9], { mostTrials: 200, moves: (n) => 1 + n });
  const standings = standingsOf(race);

  it("are by success rate, each with the trials behind it", () => {
    const rates = standings.map(({ summary }) => summary.successRate.value);
    expect(standings).toHaveLength(4);
    expect(rates).toEqual([...rates].sort((a, b) => b - a));
    expect(standings[0]?.summary.trials).toBe(200);
  });

  it("take fresh trials where there are any, and say so", () => {
    for (const { entrant, isFresh, summary } of standings) {
      expect(isFresh).toBe(entrant.finalBatches.length > 0);
      const from = isFresh ? entrant.finalBatches : entrant.raceBatches;
      expect(summary.trials).toBe(from.at(-1)?.to);
    }
    expect(standings.filter(({ isFresh }) => !isFresh).length).toBeGreaterThan(0);
  });

  it("mark the ties", () => {
    const tied = standings.filter(({ isTied }) => isTied).map(({ entrant }) => entrant.id);
    expect(tied.sort()).toEqual(["coin0", "coin3"]);
  });
});
