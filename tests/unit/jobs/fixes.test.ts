import { describe, expect, test } from "vitest";
import { dependenceOn } from "../../../src/jobs/dependence.ts";
import { type FixList, findFixes } from "../../../src/jobs/fixes.ts";
import { partWorths } from "../../../src/jobs/partWorths.ts";
import type { Move } from "../../../src/model/routine.ts";
import { RoutineMaker } from "../../../src/plan/maker.ts";
import { compareRoutines } from "../../../src/score/compare.ts";
import { summarise } from "../../../src/score/stress.ts";
import { proposeChanges } from "../../../src/search/change.ts";
import { compileTrial } from "../../../src/trial/compile.ts";
import { runBatch } from "../../../src/trial/run.ts";
import { inlineWorkers } from "../../support/inlineWorkers.ts";
import { shippedProject } from "../../support/projectFiles.ts";
import { routineOf } from "../../support/scene.ts";

const project = shippedProject();
const drive = (distanceMm: number): Move => ({ kind: "drive", distanceMm, speedMmPerS: 250 });
const turn = (angleRad: number): Move => ({ kind: "turn", angleRad, rateRadPerS: 2 });
/** From the middle of the zone one push into the corner, and one to each side of it. */
const routine = routineOf([
  drive(265),
  turn(-1.2),
  drive(300),
  turn(0.21),
  drive(555),
  drive(-555),
  turn(0.3),
  drive(250),
  drive(-250),
  turn(-0.6),
  drive(450),
  drive(-450),
]);

describe("what to fix", () => {
  const options = { seed: 2, trials: 12 };

  test("is the same however the work is shared out, and what a paired comparison gives", async () => {
    const list = await findFixes(inlineWorkers("first"), project, routine, options);
    expect(await findFixes(inlineWorkers("last"), project, routine, options)).toEqual(list);
    expect(list.status).toBe("done");
    const proposed = proposeChanges(project, routine);
    expect(list.fixes.length + list.leftOut.length).toBe(proposed.length);
    const gains = list.fixes.map(({ gain }) => gain.value);
    expect(gains).toEqual([...gains].sort((a, b) => b - a));
    const slower = list.fixes.find(({ id }) => id === "slower");
    const made = proposed.find(({ id }) => id === "slower")?.made;
    if (!made) throw new Error("slower is always possible");
    const summaryOf = (p: typeof project, r: typeof routine) =>
      summarise([runBatch(compileTrial(p, r), 2, 0, 12)]);
    const compared = compareRoutines(summaryOf(made.project, made.routine), summaryOf(project, routine));
    // The same difference; a wider range, as all ranges of the list are to hold at once.
    expect(slower?.gain.value).toBe(compared.successDifference.value);
    expect(slower?.gain.low).toBeLessThan(compared.successDifference.low);
    expect(slower?.gain.high).toBeGreaterThan(compared.successDifference.high);
    expect(slower?.costsS).toBeGreaterThan(0);
  });

  test("is told bit by bit, each change by a few runs first, and with verdicts at the end only", async () => {
    const told: FixList[] = [];
    const onKnown = (soFar: FixList) => told.push(soFar);
    const all = await findFixes(inlineWorkers(), project, routine, { seed: 2, trials: 40, onKnown });
    const [first] = told;
    expect(first?.fixes.length).toBeGreaterThan(5);
    expect(first?.fixes.length).toBeLessThan(all.fixes.length);
    expect(new Set(first?.fixes.map(({ trials }) => trials))).toEqual(new Set([25]));
    expect(told.flatMap(({ fixes }) => fixes).every(({ verdict }) => verdict === "not told apart")).toBe(
      true,
    );
    const gainsOf = ({ fixes }: FixList) => fixes.map(({ id, gain }) => [id, gain]);
    expect(gainsOf(told.at(-1) ?? all)).toEqual(gainsOf(all));
    expect(all.fixes.every(({ trials }) => trials === 40)).toBe(true);
  });

  test("is told as far as it is known when the work is stopped", async () => {
    const controller = new AbortController();
    let stressed = 0;
    const workers = inlineWorkers("first", (kind) => {
      if (kind === "stress" && ++stressed === 4) controller.abort();
    });
    const list = await findFixes(workers, project, routine, { ...options, signal: controller.signal });
    expect(list.status).toBe("stopped");
    expect(list.fixes).toHaveLength(2);
    expect(list.successRate?.trials).toBe(12);
    expect(list.dependence).toBeNull();
  });
});

describe("what each part is worth", () => {
  test("adds up to what the whole brings more than the way in", async () => {
    const hooks = new RoutineMaker(project).make("herd-outer-c0-q-b-v100") ?? routine;
    const worths = await partWorths(inlineWorkers(), project, hooks, { seed: 2, trials: 160, most: 2 });
    expect(worths.length).toBeGreaterThan(1);
    const way = routineOf(hooks.moves.slice(0, worths[0]?.from));
    const meanOf = (r: typeof routine): number =>
      summarise([runBatch(compileTrial(project, r), 2, 0, 40)]).meanDelivered;
    expect(meanOf(hooks)).toBeGreaterThan(0.5);
    const total = worths.reduce((sum, { ballsShare }) => sum + ballsShare.value, 0);
    expect(total).toBeCloseTo(meanOf(hooks) - meanOf(way), 9);
    // Two parts: half of what the part adds to the way in, and half of what it adds to the other one.
    const task = { kind: "parts", most: 2 } as const;
    const { variants } = await inlineWorkers().run(project, hooks, task);
    const [one, two] = worths;
    const lastOf = (part: typeof one) => hooks.moves.slice((part?.to ?? 0) - 3, part?.to);
    const onlyOf = (part: typeof one) => {
      const [only, ...more] = variants.filter(({ moves }) => {
        const ended = JSON.stringify(moves).includes(JSON.stringify(lastOf(part)).slice(1, -1));
        return ended && moves.length < hooks.moves.length - 3;
      });
      expect([only === undefined, more]).toEqual([false, []]);
      return only ?? routine;
    };
    const alone = meanOf(onlyOf(one)) - meanOf(way);
    const added = meanOf(hooks) - meanOf(onlyOf(two));
    expect(one?.ballsShare.value).toBeCloseTo((alone + added) / 2, 9);
    const rateOf = (r: typeof routine): number =>
      summarise([runBatch(compileTrial(project, r), 2, 0, 40)]).successRate.value;
    expect(one?.leaveOut.value).toBeCloseTo(rateOf(hooks) - rateOf(onlyOf(two)), 12);
    expect(two?.leaveOut.value).toBeCloseTo(rateOf(hooks) - rateOf(onlyOf(one)), 12);
  });

  test("is nothing to say of a routine that cannot be cut", async () => {
    const short = routineOf([drive(50)]);
    expect(await partWorths(inlineWorkers(), project, short, { seed: 1, trials: 80 })).toEqual([]);
  });
});

test("what the result depends on: all factors screened, the strongest split", async () => {
  const effort = { repeats: 1, rows: 4, kept: 2, trials: 4 };
  const { screened, shares } = await dependenceOn(inlineWorkers(), project, routine, { seed: 1, effort });
  expect(screened.length).toBeGreaterThan(6);
  const sizes = screened.map(({ effect }) => effect.meanSize);
  expect(sizes).toEqual([...sizes].sort((a, b) => b - a));
  expect(shares.map(({ id }) => id)).toEqual(screened.slice(0, 2).map(({ id }) => id));
  // Something of each: robot, drift, balls and routine.
  const ids = screened.map(({ id }) => id);
  for (const id of ["pusher-width", "turn-error", "rolling", "turning"]) expect(ids).toContain(id);
  for (const { share } of shares) {
    for (const { value, low, high } of [share.first, share.total]) {
      expect([value, low, high].every((each) => each >= 0 && each <= 1)).toBe(true);
    }
  }
});
