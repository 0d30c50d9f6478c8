import { describe, expect, it } from "vitest";
import { type Candidate, newCandidate } from "../../../src/app/state/candidate.ts";
import { type RaceWish, showRace } from "../../../src/app/state/openRace.ts";
import { type Opener, Ranking } from "../../../src/app/state/ranking.svelte.ts";
import type { Workers } from "../../../src/app/state/workers.ts";
import type { Routine } from "../../../src/model/routine.ts";
import { wilson } from "../../../src/num/interval.ts";
import { homeBy } from "../../../src/search/objective.ts";
import { Race } from "../../../src/search/race.ts";
import { coinProject, coinRoutine, tossBatch } from "../../support/pretendRace.ts";

/** Routine coin7 brings its ball home in 35 of 100 runs. */
const coins = (count: number): readonly Routine[] => Array.from({ length: count }, (_, n) => coinRoutine(n));
const RATE = 0.05;

/** Workers that answer at once; `before` sees every task and may throw. */
function workers(before: (routine: Routine) => void = () => {}): Workers {
  const run = async (
    _: unknown,
    routine: Routine,
    task: { seed: number; from: number; to: number },
    {
      signal,
      gate,
    }: { signal?: AbortSignal; gate?: { isClosed: boolean; watch(cb: () => void): void } } = {},
  ) => {
    await Promise.resolve();
    if (gate?.isClosed) await new Promise<void>((resolve) => gate.watch(resolve));
    signal?.throwIfAborted();
    before(routine);
    const number = Number(routine.id.slice("coin".length));
    return tossBatch(number, RATE * number, task.seed, task.from, task.to);
  };
  return { run } as unknown as Workers;
}

/** Opens races of the team's own routines alone. */
const opener =
  (pool: Workers): Opener =>
  async (wish) =>
    showRace(pool, new Race({ ...wish, mostTrials: 300, firstIds: [], moreIds: [] }));

const idsOf = (ranking: Ranking): string[] => ranking.candidates.map(({ routine }) => routine.id);

describe("the page's ranking", () => {
  it("begins with the best of the project before, and acts on the first rows", async () => {
    const wishes: RaceWish[] = [];
    const open = opener(workers());
    const ranking = new Ranking((wish) => {
      wishes.push(wish);
      return open(wish);
    });
    const firstRows: string[] = [];
    ranking.onRound = () => {
      if (firstRows.length === 0) firstRows.push(...idsOf(ranking));
    };
    await ranking.start(coinProject, coins(9));
    expect(wishes[0]).toMatchObject({ wantedIds: [], previewIds: [] });
    expect(firstRows.length).toBeGreaterThan(0);
    const best = idsOf(ranking).slice(0, 4);
    await ranking.start(coinProject, coins(9), ["coin2"]);
    expect(wishes[1]).toMatchObject({ wantedIds: ["coin2"], previewIds: best });
  });

  it("has no guest for its best that a newcomer has left behind", () => {
    const ranking = new Ranking(opener(workers()));
    const row = (number: number, home: number, trials: number): Candidate => ({
      ...newCandidate(coinProject, coinRoutine(number)),
      ...{ figure: wilson(home, trials), trials, isFresh: false },
    });
    const bestOf = (...rows: readonly Candidate[]): string | undefined => {
      ranking.candidates = rows;
      return ranking.best?.routine.id;
    };
    expect(bestOf(row(1, 3, 10), row(2, 0, 23))).toBe("coin1");
    // Nine of ten may be luck where hundreds are tried; half of the guest's runs are none.
    expect(bestOf(row(1, 7, 10), row(2, 12, 23))).toBe("coin2");
  });

  it("is a race: the best first, the poor given up early, the best with fresh runs", async () => {
    const ranking = new Ranking(opener(workers()));
    let rounds = 0;
    ranking.onRound = () => {
      rounds += 1;
      expect(ranking.hasFirstLook).toBe(true);
    };
    await ranking.start(coinProject, coins(20));
    expect(idsOf(ranking)[0]).toBe("coin19");
    expect(ranking.candidates).toHaveLength(20);
    expect(ranking.candidates[0]).toMatchObject({ isFresh: true, trials: 300, isGivenUp: false });
    const poor = ranking.candidates.find(({ routine }) => routine.id === "coin3");
    expect(poor?.isGivenUp).toBe(true);
    expect(poor?.trials).toBeLessThan(100);
    expect(ranking.status).toBe("done");
    expect(ranking.doneFrac).toBe(1);
    expect(rounds).toBeGreaterThan(2);
    expect(ranking.notes.join(" ")).toMatch(/at most 5 of 100 searches drop the best/);
  });

  it("shows ties together, the simplest of them after the one to take", async () => {
    const alike = [4, 1, 3].map((moves, n) => ({ ...coinRoutine(20 + n, moves), id: `coin${20 + n}` }));
    const ranking = new Ranking(opener(workers()));
    await ranking.start(coinProject, [...coins(8), ...alike]);
    const tied = ranking.candidates.filter(({ isTied }) => isTied);
    expect(tied.map(({ routine }) => routine.moves.length)).toEqual([1, 3, 4]);
    expect(ranking.candidates.slice(0, 3)).toEqual(tied);
    expect(ranking.notes[0]).toContain("3 routines are too close to call");
  });

  it("knows the trade-off between moves and success", async () => {
    const ranking = new Ranking(opener(workers()));
    await ranking.start(
      coinProject,
      [4, 10, 18].map((n, i) => coinRoutine(n, i + 1)),
    );
    expect(ranking.fronts.moves.map(({ routine }) => routine.id)).toEqual(["coin4", "coin10", "coin18"]);
  });

  it("stops when cancelled, keeps what is known, and goes on from there", async () => {
    let tasks = 0;
    const ranking = new Ranking(
      opener(
        workers(() => {
          tasks += 1;
          if (tasks === 30) ranking.cancel();
        }),
      ),
    );
    await ranking.start(coinProject, coins(14));
    expect(ranking.status).toBe("stopped");
    expect(ranking.candidates).toHaveLength(14);
    expect(ranking.candidates.every(({ trials }) => trials >= 10)).toBe(true);
    await ranking.resume();
    expect(ranking.status).toBe("done");
    const whole = new Ranking(opener(workers()));
    await whole.start(coinProject, coins(14));
    expect(idsOf(ranking)).toEqual(idsOf(whole));
    expect(ranking.candidates.map(({ trials }) => trials)).toEqual(
      whole.candidates.map(({ trials }) => trials),
    );
  });

  it("holds still while paused", async () => {
    let tasks = 0;
    const ranking = new Ranking(
      opener(
        workers(() => {
          tasks += 1;
          if (tasks === 20) ranking.pause();
        }),
      ),
    );
    const started = ranking.start(coinProject, coins(14));
    await expect.poll(() => ranking.status).toBe("paused");
    // What was under way has ended.
    await new Promise((resolve) => setTimeout(resolve, 20));
    const before = tasks;
    await new Promise((resolve) => setTimeout(resolve, 20));
    expect(tasks).toBe(before);
    ranking.goOn();
    await started;
    expect(ranking.status).toBe("done");
  });

  it("leaves a routine that cannot be tested in its place, with the reason", async () => {
    const ranking = new Ranking(
      opener(
        workers((routine) => {
          if (routine.id === "coin5") throw new Error("no way through the doorway");
        }),
      ),
    );
    await ranking.start(coinProject, coins(8));
    expect(ranking.status).toBe("done");
    expect(ranking.candidates.at(-1)?.fault).toBe("no way through the doorway");
    expect(ranking.candidates.filter((each) => each.fault !== null)).toHaveLength(1);
  });

  it("can be cancelled before the race is there, and tried again", async () => {
    const ranking = new Ranking(opener(workers()));
    const started = ranking.start(coinProject, coins(3));
    ranking.cancel();
    await started;
    expect(ranking.status).toBe("stopped");
    expect(ranking.candidates).toEqual([]);
    await ranking.resume();
    expect(ranking.status).toBe("done");
  });

  it("says so when no race can be opened", async () => {
    const ranking = new Ranking(() => Promise.reject(new Error("the zone is too narrow")));
    await ranking.start(coinProject);
    expect(ranking.status).toBe("failed");
    expect(ranking.fault).toBe("the zone is too narrow");
  });

  it("forgets the project before when another one is opened meanwhile", async () => {
    const ranking = new Ranking(opener(workers()));
    const first = ranking.start(coinProject, coins(14));
    const second = ranking.start(
      coinProject,
      [16, 12, 8].map((n) => coinRoutine(n)),
    );
    await Promise.all([first, second]);
    expect(idsOf(ranking)).toEqual(["coin16", "coin12", "coin8"]);
    expect(ranking.status).toBe("done");
  });

  it("lets in what the team changes after the end, and takes out what it throws away", async () => {
    const ranking = new Ranking(opener(workers()));
    await ranking.start(coinProject, coins(6));
    ranking.setOwn([coinRoutine(2), coinRoutine(18)]);
    expect(ranking.status).toBe("running");
    await expect.poll(() => ranking.status).toBe("done");
    expect(idsOf(ranking)).toEqual(["coin18", "coin2"]);
    expect(ranking.candidates[0]).toMatchObject({ isFresh: true, trials: 300 });
  });

  it("by another aim goes by that, and has no runs to show that were cut short", async () => {
    const ranking = new Ranking(opener(workers()));
    ranking.objective = homeBy(30);
    await ranking.start(coinProject, coins(4));
    expect(ranking.candidates[0]).toMatchObject({ isFresh: true, batches: [] });
    expect(ranking.candidates[0]?.figure?.value).toBeGreaterThan(0);
  });
});
