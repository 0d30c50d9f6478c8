import { describe, expect, it } from "vitest";
import { RoutineMaker } from "../../../src/plan/maker.ts";
import { recipeOf } from "../../../src/plan/recipe.ts";
import { LeaderRefining } from "../../../src/search/leaderRefining.ts";
import { searchSeed } from "../../../src/search/looks.ts";
import { EVERY_BALL } from "../../../src/search/objective.ts";
import { Race } from "../../../src/search/race.ts";
import { refine } from "../../../src/search/refinement.ts";
import { Tuning } from "../../../src/search/tuning.ts";
import { tossBatch } from "../../support/pretendRace.ts";
import { shippedProject } from "../../support/projectFiles.ts";

const project = shippedProject();
const START = "herd-all-c0-v60";

/** Percent of the top speed, and lanes' spacing in steps, of an id. */
function settingsOf(id: string): { readonly speed: number; readonly spacing: number } {
  const recipe = recipeOf(project, id);
  if (recipe === null) throw new Error(`${id} is no id`);
  return { speed: Math.round(100 * recipe.speedFrac), spacing: recipe.turned.spacingFrac ?? 85 };
}

/** A bowl: best at 72 % speed. */
const worthOf = (id: string): number => 1 - ((settingsOf(id).speed - 72) / 50) ** 2;

describe("tuning", () => {
  it("begins at the routine itself, and gives ids that can be made", () => {
    const tuning = Tuning.of(project, START);
    expect(tuning).not.toBeNull();
    expect(tuning?.idAt(tuning.start)).toBe(START);
    const corner = tuning?.idAt(tuning.start.map(() => 1)) ?? "";
    expect(corner).not.toBe(START);
    expect(recipeOf(project, corner)).not.toBeNull();
  });

  it("has nothing to vary about a routine that no pattern made", () => {
    expect(Tuning.of(project, "ours")).toBeNull();
  });
});

describe("refinement", () => {
  it("goes to the best speed without asking twice", () => {
    const asked: string[] = [];
    const search = refine(project, START, 40);
    let step = search.next();
    while (!step.done) {
      asked.push(...step.value);
      step = search.next(step.value.map(worthOf));
    }
    expect(new Set(asked).size).toBe(asked.length);
    expect(asked.length).toBeLessThanOrEqual(40);
    const [best] = step.value;
    expect(Math.abs(settingsOf(best?.id ?? "").speed - 72)).toBeLessThanOrEqual(2);
    expect(best?.worth).toBe(Math.max(...asked.map(worthOf)));
  });

  it("in a race lets the refined routines join, and one of them wins", () => {
    const maker = new RoutineMaker(project);
    const settings = { project, objective: EVERY_BALL, seed: 3, mostTrials: 400, own: [], moreIds: [] };
    const race = new Race({ ...settings, firstIds: [START, "loop-long-v100"] });
    const numbers = new Map<string, number>();
    const seeds = { refining: new Set<number>(), others: new Set<number>() };
    const work = race.run();
    for (let step = work.next(); !step.done; ) {
      step = work.next(
        step.value.map((piece) => {
          if (piece.kind === "make") return { kind: "made", routines: piece.ids.map((id) => maker.make(id)) };
          if (piece.kind === "refiner") return { kind: "refiner", Refining: LeaderRefining };
          seeds[race.stage === "refining" ? "refining" : "others"].add(piece.seed);
          const { id } = piece.routine;
          const number = numbers.get(id) ?? numbers.size;
          numbers.set(id, number);
          const rate = id.startsWith("herd") ? worthOf(id) : 0.3;
          return {
            kind: "ran",
            batch: threeBalls(tossBatch(number, rate, piece.seed, piece.from, piece.to)),
          };
        }),
      );
    }
    // Trials that chose where to look next have no say in the race: those who join prove themselves on others. The joiners enter
    // while it still refines.
    const joint = [...seeds.refining].filter((seed) => seeds.others.has(seed));
    expect(joint).toEqual([searchSeed(3, 0)]);
    expect(seeds.refining).toContain(searchSeed(3, 1));
    expect(race.refiningTrials).toBeGreaterThan(1000);
    expect(race.entrants.length).toBeGreaterThan(4);
    expect(race.winner?.id).not.toBe(START);
    expect(worthOf(race.winner?.id ?? "")).toBeGreaterThan(worthOf(START) + 0.02);
  });
});

/** All three balls of the project where the coin says yes. */
const threeBalls = (batch: ReturnType<typeof tossBatch>) => ({
  ...batch,
  delivered: batch.delivered.map((count) => 3 * count),
  losses: batch.losses.map((balls) => 3 * balls),
});
