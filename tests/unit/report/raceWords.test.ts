import { describe, expect, it } from "vitest";
import { figureRangeWords, figureWords } from "../../../src/report/objectiveWords.ts";
import { givenUpWords, sensingWords } from "../../../src/report/raceWords.ts";
import { EVERY_BALL, EXPECTED_POINTS, homeBy } from "../../../src/search/objective.ts";
import { Race } from "../../../src/search/race.ts";
import { coinProject, coinRoutine, raceCoins, runCoins } from "../../support/pretendRace.ts";
import { shippedProject } from "../../support/projectFiles.ts";

/** A race of a routine that senses, coin1, and a blind one, coin2. */
function raceOfTwo(rates: readonly number[], objective = EVERY_BALL): Race {
  const own = [{ ...coinRoutine(1), program: [{ kind: "wait", durationS: 1 } as const] }, coinRoutine(2)];
  const settings = { project: coinProject, objective, seed: 1, mostTrials: 300, firstIds: [], moreIds: [] };
  const race = new Race({ ...settings, own });
  runCoins(race, rates);
  return race;
}

describe("what a race says of sensing", () => {
  it("is that looking pays, where it wins, and which loss it saves", () => {
    const words = sensingWords(raceOfTwo([0, 0.9, 0.3])) ?? "";
    expect(words).toMatch(
      /^Looking pays here: the best routine that senses \(coin1\) against .*\(coin2\): \+\d+ of 100 runs/,
    );
    expect(words).toMatch(
      /The blind one loses more balls to “rolled out of the doorway”: \d+ of 100 against \d+\.$/,
    );
  });

  it("is that it does not pay, where the blind one wins", () => {
    expect(sensingWords(raceOfTwo([0, 0.3, 0.9]))).toMatch(/^Looking does not pay here: /);
  });

  it("is what both reach, by another aim", () => {
    expect(sensingWords(raceOfTwo([0, 0.9, 0.3], EXPECTED_POINTS))).toMatch(
      /^Looking pays here: the best routine that senses \(coin1\) .*\(coin2\): 0\.\d of 1 points against 0\.\d of 1 points\.$/,
    );
    expect(sensingWords(raceOfTwo([0, 0.5, 0.5], EXPECTED_POINTS))).toMatch(/^Too close to call: /);
  });

  it("is nothing without one of each", () => {
    expect(sensingWords(raceCoins([0.5, 0.6]))).toBeNull();
  });
});

describe("what a race says of those given up", () => {
  it("tells its error bound, and who is only set aside for want of time", () => {
    const rates = Array.from({ length: 120 }, (_, i) => 0.2 + i * 0.005);
    expect(givenUpWords(raceCoins([...rates, 0.99], { mostTrials: 300 })).join(" ")).toMatch(
      /^\d+ routines were dropped early; at most 5 of 100 searches drop the best\.$/,
    );
    const short = givenUpWords(raceCoins(rates, { mostTrials: 300, budgetTrials: 3000 })).join(" ");
    expect(short).toMatch(/\d+ routines were set aside after fewer runs, for want of time/);
    expect(givenUpWords(raceCoins([0.5]))).toEqual([]);
  });
});

describe("a figure in words", () => {
  const project = shippedProject();
  const figure = { value: 0.62, low: 0.571, high: 0.662, trials: 400 };

  it("counts what the aim counts", () => {
    expect(figureWords(EVERY_BALL, figure, project)).toBe("62 of 100 runs");
    expect(figureWords(homeBy(45), figure, project)).toBe("62 of 100 balls by 45 s");
    const three = { ...project, balls: project.balls.map((ball) => ({ ...ball, count: 1, points: 10 })) };
    expect(figureWords(EXPECTED_POINTS, figure, three)).toBe("6.2 of 10 points");
  });

  it("never claims too much: ends are rounded outward", () => {
    expect(figureRangeWords(EVERY_BALL, figure, project)).toBe("likely between 57 and 67");
    const three = { ...project, balls: project.balls.map((ball) => ({ ...ball, count: 1, points: 10 })) };
    expect(figureRangeWords(EXPECTED_POINTS, figure, three)).toBe("likely between 5.7 and 6.7");
  });
});
