import { describe, expect, it } from "vitest";
import { Moments } from "../../../src/num/moments.ts";
import type { Entrant } from "../../../src/search/entrant.ts";
import { Field } from "../../../src/search/field.ts";
import { looksUpTo, searchSeed } from "../../../src/search/looks.ts";
import { EVERY_BALL } from "../../../src/search/objective.ts";
import { isTie } from "../../../src/search/tie.ts";
import { coinProject, coinRoutine, raceCoins, runCoins } from "../../support/pretendRace.ts";

const rateOf = (entrant: Entrant | null): number => {
  const delivered = entrant?.finalBatches.flatMap((batch) => [...batch.delivered]) ?? [];
  return delivered.reduce((sum, count) => sum + count, 0) / delivered.length;
};

describe("a race", () => {
  it("finds the best of many, drops the poor early and gives the close ones the trials", () => {
    const rates = Array.from({ length: 60 }, (_, i) => 0.1 + (i % 20) * 0.02);
    const race = raceCoins([...rates, 0.9], { mostTrials: 300 });
    expect(race.winner?.id).toBe("coin60");
    expect(race.stage).toBe("over");
    const dropped = race.entrants.filter(({ status }) => status === "dropped");
    expect(dropped.length).toBeGreaterThan(30);
    for (const each of dropped) expect(each.trials).toBeLessThan(300);
    expect(race.doneTrials).toBeLessThan(61 * 120 + 20 * 300);
    expect(race.winner?.finalBatches.at(-1)?.to).toBe(300);
  });

  it("reports a winner's rate that is not flattered: 150 races of 100 equal routines", () => {
    const reported = new Moments();
    const flattered = new Moments();
    for (let seed = 0; seed < 150; seed++) {
      const race = raceCoins(new Array(100).fill(0.5), { seed, mostTrials: 40 });
      reported.add(rateOf(race.winner));
      flattered.add(race.leader?.mean ?? 0);
    }
    expect(Math.abs(reported.mean - 0.5)).toBeLessThan(3 * reported.standardError);
    expect(reported.standardError).toBeLessThan(0.01);
    // What it would say from the trials that made it the winner.
    expect(flattered.mean).toBeGreaterThan(0.6);
  });

  it("calls what it cannot tell apart a tie, the simplest first", () => {
    const race = raceCoins([0.7, 0.7, 0.7, 0.1], { mostTrials: 100, moves: (n) => 9 - 2 * n });
    expect(race.ties.map(({ moves }) => moves)).toEqual([5, 7, 9]);
    const best = Math.max(...race.ties.map(({ mean }) => mean));
    expect(best - (race.winner?.mean ?? 0)).toBeLessThanOrEqual(0.01);
    expect(race.entrants.find(({ id }) => id === "coin3")?.status).not.toBe("racing");
  });

  it("recommends the simplest of those as good as the leader", () => {
    const race = raceCoins([1, 1, 1, 0.2], { mostTrials: 60, moves: (n) => 9 - 2 * n });
    expect(race.winner?.id).toBe("coin2");
    // Eight trials do not tell these two apart; the simpler one is still not recommended.
    const rough = raceCoins([0.95, 0.6], { mostTrials: 8, moves: (n) => 9 - 2 * n, seed: 2 });
    expect(rough.ties.map(({ id }) => id)).toEqual(["coin1", "coin0"]);
    expect(rough.winner?.id).toBe("coin0");
  });

  it("takes out of a tie what the fresh trials tell from the winner", () => {
    let outrun = 0;
    for (let seed = 1; seed <= 60; seed++) {
      const race = raceCoins([0.9, 0.6, 0.85], { mostTrials: 30, seed });
      const { winner, ties } = race;
      for (const each of race.entrants.filter((entrant) => entrant.isFresh && entrant !== winner)) {
        const isWorse = (each.figures?.figure.value ?? 0) < (winner?.figures?.figure.value ?? 0);
        const isTold = isWorse && !isTie(winner?.freshScores ?? [], each.freshScores);
        if (isTold) expect(ties).not.toContain(each);
        if (isTold && isTie(race.leader?.scores ?? [], each.scores)) outrun++;
      }
    }
    expect(outrun).toBeGreaterThan(0);
  });

  it("gives the trade-off fronts fresh trials too", () => {
    // The more moves, the better.
    const race = raceCoins([0, 0.2, 0.5, 0.95], { mostTrials: 200, moves: (n) => 1 + n });
    // What never works is no offer.
    expect(race.front(({ moves }) => moves).map(({ id }) => id)).toEqual(["coin1", "coin2", "coin3"]);
    for (const entrant of race.entrants.slice(1)) expect(entrant.finalBatches.at(-1)?.to).toBe(200);
    expect(rateOf(race.winner)).toBeGreaterThan(0.85);
  });

  it("never uses a trial twice: the final's seed is the user's, the race's is not", () => {
    expect(searchSeed(1, 0)).not.toBe(1);
    expect(new Set([0, 1, 2].flatMap((p) => [searchSeed(1, p), searchSeed(2, p)])).size).toBe(6);
    expect(Number.isSafeInteger(searchSeed(7, 0))).toBe(true);
  });

  it("looks ever less often, and last at the end", () => {
    expect(looksUpTo(10)).toEqual([10]);
    expect(looksUpTo(100)).toEqual([10, 15, 23, 35, 53, 80, 100]);
  });

  it("of nothing has no winner", () => {
    const race = raceCoins([]);
    expect(race.winner).toBeNull();
    expect(race.stage).toBe("over");
  });

  it("leaves out a routine of the catalogue that repeats another's moves, and none of the team's own", () => {
    const field = new Field(coinProject, EVERY_BALL);
    const [first, second] = [coinRoutine(1), { ...coinRoutine(1), id: "again" }];
    expect(field.add([first, second, first]).map(({ id }) => id)).toEqual(["coin1"]);
    expect(field.setOwn([second]).map(({ id }) => id)).toEqual(["again"]);
    expect(field.setOwn([second])).toEqual([]);
    expect(field.setOwn([{ ...coinRoutine(2), id: "again" }])).toHaveLength(1);
    expect(field.setOwn([])).toEqual([]);
    expect(field.entrants.map(({ id }) => id)).toEqual(["coin1"]);
  });

  it("that has to be short sees all of the field, keeps to its trials, and still finds the best", () => {
    const rates = Array.from({ length: 300 }, (_, i) => 0.1 + (i % 50) * 0.01);
    const budgetTrials = 12_000;
    const race = raceCoins([...rates, 0.95], { mostTrials: 2000, budgetTrials });
    expect(race.winner?.id).toBe("coin300");
    for (const each of race.entrants) expect(each.trials).toBeGreaterThan(0);
    expect(race.doneTrials).toBeLessThan(1.1 * budgetTrials);
    expect(race.entrants.filter(({ status }) => status === "aside").length).toBeGreaterThan(150);
    expect(race.winner?.isFresh).toBe(true);
  });

  it("lets in what the team changed after its end, and settles anew", () => {
    const rates = [0.5, 0.6, 0.95];
    const race = raceCoins(rates.slice(0, 2), { mostTrials: 200 });
    const before = race.entrants.map(({ trials }) => trials);
    expect(race.winner?.id).toBe("coin1");
    expect(race.isOpen).toBe(false);
    race.setOwn([coinRoutine(0), coinRoutine(1), coinRoutine(2)]);
    expect(race.isOpen).toBe(true);
    runCoins(race, rates);
    expect(race.winner?.id).toBe("coin2");
    expect(race.winner?.finalBatches.at(-1)?.to).toBe(200);
    expect(race.entrants.slice(0, 2).map(({ trials }) => trials)).toEqual(before);
    race.setOwn([coinRoutine(0)]);
    runCoins(race, rates);
    expect(race.entrants.map(({ id }) => id)).toEqual(["coin0"]);
    expect(race.winner?.id).toBe("coin0");
  });
});
