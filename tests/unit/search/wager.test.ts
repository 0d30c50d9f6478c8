import { describe, expect, it } from "vitest";
import { RandomStream } from "../../../src/num/stream.ts";
import { clearlyWorse } from "../../../src/search/elimination.ts";
import { evidenceOfLead, Wager } from "../../../src/search/wager.ts";

/** One trial of two routines with equal chances that share part of their luck. */
function alike(stream: RandomStream): number {
  const luck = stream.uniform();
  const own = stream.uniform();
  const other = stream.uniform();
  // The shared luck decides seven of ten trials.
  if (luck < 0.7) return 0;
  return Number(own < 0.4) - Number(other < 0.4);
}

describe("a wager against the lead being luck", () => {
  it("is won by luck no more often than it says, however often one looks: 4,000 games of 300 looks", () => {
    const stream = new RandomStream();
    let won = 0;
    for (let game = 0; game < 4000; game++) {
      stream.open(11, game, 0);
      const wager = new Wager();
      for (let look = 0; look < 300; look++) wager.add(alike(stream));
      if (wager.evidence >= 20) won++;
    }
    // Ville: at most 5 %; the share itself is known to ±0.7 points.
    expect(won / 4000).toBeLessThanOrEqual(0.05);
    expect(won).toBeGreaterThan(4);
  });

  it("keeps its mean capital at 1 when there is no lead", () => {
    const stream = new RandomStream();
    let sum = 0;
    for (let game = 0; game < 20_000; game++) {
      stream.open(12, game, 0);
      const wager = new Wager();
      for (let look = 0; look < 5; look++) wager.add(alike(stream));
      sum += wager.now;
    }
    expect(sum / 20_000).toBeCloseTo(1, 1);
  });

  it("is won soon when there is one", () => {
    const first = Array.from({ length: 60 }, (_, t) => Number(t % 10 < 7));
    const second = Array.from({ length: 60 }, (_, t) => Number(t % 10 < 2));
    expect(evidenceOfLead(first, second)).toBeGreaterThan(10_000);
    expect(evidenceOfLead(second, first)).toBeLessThan(1.5);
  });

  it("grows as a capital at fixed stakes does", () => {
    const wager = new Wager();
    wager.add(1);
    // Mean of 1.05, 1.12, 1.25, 1.45, 1.7, 1.95.
    expect(wager.now).toBeCloseTo(8.52 / 6, 12);
    wager.add(-1);
    expect(wager.evidence).toBeCloseTo(8.52 / 6, 12);
    expect(wager.now).toBeLessThan(1);
  });

  it("does not run over after very many wins", () => {
    const ones = new Array(3000).fill(1);
    expect(Number.isFinite(evidenceOfLead(ones, new Array(3000).fill(0)))).toBe(true);
  });
});

describe("elimination", () => {
  const contender = (id: string, scores: readonly number[]) => ({ id, scores });

  it("drops what is clearly worse and keeps what may be as good", () => {
    const leader = contender(
      "good",
      Array.from({ length: 80 }, (_, t) => Number(t % 10 < 8)),
    );
    const near = contender(
      "near",
      Array.from({ length: 80 }, (_, t) => Number(t % 10 < 7)),
    );
    const poor = contender("poor", new Array(80).fill(0));
    expect(clearlyWorse(leader, [near, poor], 500).map(({ id }) => id)).toEqual(["poor"]);
  });

  it("asks for more the more take part", () => {
    const leader = contender("good", new Array(14).fill(1));
    const poor = contender("poor", new Array(14).fill(0));
    expect(clearlyWorse(leader, [poor], 2)).toEqual([poor]);
    expect(clearlyWorse(leader, [poor], 5000)).toEqual([]);
  });

  it("keeps the best of many in all but few races: 300 races of 40", () => {
    const stream = new RandomStream();
    let lost = 0;
    for (let race = 0; race < 300; race++) {
      stream.open(13, race, 0);
      const rates = Array.from({ length: 40 }, (_, i) => (i === 0 ? 0.62 : 0.3 + 0.3 * stream.uniform()));
      const scores = rates.map(() => [] as number[]);
      let alive = rates.map((_, i) => i);
      for (const look of [20, 45, 100]) {
        for (const i of alive) {
          const own = scores[i];
          while (own && own.length < look) own.push(Number(stream.uniform() < (rates[i] ?? 0)));
        }
        const sum = (i: number) => (scores[i] ?? []).reduce((total, score) => total + score, 0);
        const [lead = 0] = [...alive].sort((a, b) => sum(b) - sum(a));
        const others = alive.filter((i) => i !== lead).map((i) => ({ id: `${i}`, scores: scores[i] ?? [] }));
        const out = clearlyWorse({ id: `${lead}`, scores: scores[lead] ?? [] }, others, 40);
        alive = alive.filter((i) => !out.some(({ id }) => id === `${i}`));
      }
      if (!alive.includes(0)) lost++;
      else expect(alive.length).toBeLessThan(40);
    }
    expect(lost / 300).toBeLessThanOrEqual(0.05);
  });
});
