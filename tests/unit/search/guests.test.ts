import { describe, expect, it } from "vitest";
import { Guests } from "../../../src/search/guests.ts";
import { EVERY_BALL } from "../../../src/search/objective.ts";
import { Race } from "../../../src/search/race.ts";
import { standingsOf } from "../../../src/search/standing.ts";
import { coinProject, runCoins, toss } from "../../support/pretendRace.ts";

const FIELD = 40;
/** The field's best are near one another; coins 40 and 41 are guests, better than all of it and worse. */
const rates = [...Array.from({ length: FIELD }, (_, i) => 0.3 + 0.4 * Math.sqrt(i / FIELD)), 0.95, 0.2];
const field = Array.from({ length: FIELD }, (_, i) => `coin${i}`);

function race(
  wantedIds: readonly string[],
  previewIds: readonly string[],
  budgetTrials = 5000,
  firstIds = field,
): Race {
  const settings = { project: coinProject, objective: EVERY_BALL, seed: 3, mostTrials: 250 };
  const made = new Race({ ...settings, own: [], firstIds, moreIds: [], wantedIds, previewIds, budgetTrials });
  if (wantedIds.length + previewIds.length > 0) made.guests = new Guests(made);
  return made;
}

/** All that a race has found out. */
const foundBy = (over: Race) => ({
  trials: over.doneTrials,
  winner: over.winner?.id,
  ties: over.ties.map(({ id }) => id),
  fronts: over.front(({ moves }) => moves).map(({ id }) => id),
  entrants: over.entrants.map(({ id, status, scores, freshScores }) => ({ id, status, scores, freshScores })),
});

const rowsOf = (over: Race) =>
  standingsOf(over).map(({ entrant, figure, isTied, isWinner }) => ({
    id: entrant.id,
    figure,
    isTied,
    isWinner,
  }));

describe("guests of a race", () => {
  it.each([5000, Number.POSITIVE_INFINITY])(
    "change nothing of what it finds: order, figures, ties, drops (budget %d)",
    (budget) => {
      const alone = race([], [], budget);
      const visited = race(["coin40", "coin7"], ["coin39", "coin41", "nothing"], budget);
      for (const each of [alone, visited]) runCoins(each, rates);
      expect(foundBy(visited)).toEqual(foundBy(alone));
      expect(alone.winner).not.toBeNull();
      // Who was asked for stands in the list as well; who was only shown first does not.
      const rows = rowsOf(visited);
      expect(rows.filter(({ id }) => id !== "coin40")).toEqual(rowsOf(alone));
      expect(rows.find(({ id }) => id === "coin40")).toMatchObject({ isTied: false, isWinner: false });
      const asked = visited.listed.find(({ id }) => id === "coin40");
      expect(asked).toMatchObject({ isFresh: true });
      expect(asked?.freshScores).toHaveLength(250);
    },
  );

  it("run the very trials of those who take part", () => {
    const visited = race(["coin40"], []);
    const inside = race([], [], 5000, [...field, "coin40"]);
    for (const each of [visited, inside]) runCoins(each, rates);
    const [guest, twin] = [visited.listed, inside.entrants].map((all) =>
      all.find(({ id }) => id === "coin40"),
    );
    expect(guest?.trials).toBeGreaterThan(20);
    const most = Math.min(guest?.trials ?? 0, twin?.trials ?? 0);
    expect([...(guest?.scores ?? [])].slice(0, most)).toEqual([...(twin?.scores ?? [])].slice(0, most));
    expect(guest?.freshScores).toEqual(twin?.freshScores);
  });

  it("are shown first, the very first by itself, until the race knows more", () => {
    const visited = race([], ["coin40", "coin41"]);
    const seen: string[][] = [];
    let most = 0;
    const work = visited.run();
    for (let step = work.next(); !step.done; ) {
      const listed = visited.listed.filter(({ trials }) => trials > 0);
      seen.push(listed.map(({ id }) => id));
      most = Math.max(most, ...listed.filter(({ id }) => id === "coin40").map(({ trials }) => trials));
      step = work.next(step.value.map((piece) => toss(piece, rates)));
    }
    const begun = seen.filter((ids) => ids.length > 0);
    expect(begun[0]).toEqual(["coin40"]);
    expect(begun.find((ids) => ids.length > 1)).toEqual(["coin40", "coin41"]);
    expect(most).toBe(23);
    expect(begun.at(-1)).not.toContain("coin40");
  });

  it("stay while somebody looks at them", () => {
    const visited = race([], ["coin40", "coin41"]);
    if (visited.guests) visited.guests.shownId = "coin41";
    runCoins(visited, rates);
    const ids = visited.listed.map(({ id }) => id);
    expect(ids).toContain("coin41");
    expect(ids).not.toContain("coin40");
    expect(visited.listed.find(({ id }) => id === "coin41")?.freshScores).toHaveLength(250);
  });
});
