import { describe, expect, test } from "vitest";
import type { Project } from "../../../src/model/project.ts";
import type { Move } from "../../../src/model/routine.ts";
import { withoutDrift, withPlacement } from "../../../src/search/variant.ts";
import {
  lossScore,
  meanLosses,
  placementSpace,
  type WorstRequest,
  worstPlacement,
} from "../../../src/search/worstPlacement.ts";
import { compileTrial } from "../../../src/trial/compile.ts";
import { runTrial } from "../../../src/trial/run.ts";
import { answered } from "../../support/answered.ts";
import { shippedProject } from "../../support/projectFiles.ts";
import { routineOf } from "../../support/scene.ts";

const usual = shippedProject();
const oneBall: Project = { ...usual, balls: usual.balls.map((group) => ({ ...group, count: 1 })) };
const drive = (distanceMm: number): Move => ({ kind: "drive", distanceMm, speedMmPerS: 250 });
const turn = (angleRad: number): Move => ({ kind: "turn", angleRad, rateRadPerS: 2 });
/** Up, right along the middle, back: touches a part of the zone only, and pushes some of it about. */
const routine = routineOf([drive(350), turn(-Math.PI / 2), drive(600), drive(-500), turn(0.6), drive(500)]);
const EFFORT = { population: 40, generations: 8 };

/** The search, its layouts scored in so many trials each. */
function worstOf(project: Project, request: WorstRequest, trials: number) {
  const subject = request.drifts ? project : withoutDrift(project);
  const plan = compileTrial(subject, routine);
  return answered(worstPlacement(project, request), (layouts) =>
    meanLosses(subject, plan, layouts, request.seed, trials),
  );
}

describe("the worst place for one ball", () => {
  const still = withoutDrift(oneBall);
  const plan = compileTrial(still, routine);
  const score = (xMm: number, yMm: number): number => meanLosses(still, plan, [[{ xMm, yMm }]], 1, 1)[0] ?? 0;

  test("is as bad as the worst of a grid of all places", () => {
    const space = placementSpace(oneBall);
    let worst = 0;
    for (let x = 5; x < 1200; x += 15) {
      for (let y = 5; y < 900; y += 15) {
        if (space?.allows([{ xMm: x, yMm: y }])) worst = Math.max(worst, score(x, y));
      }
    }
    const found = Array.from({ length: 6 }, (_, restart) =>
      worstOf(oneBall, { ...EFFORT, seed: 2, restart, drifts: false }, 1),
    );
    const best = Math.max(...found.map((each) => each?.score ?? 0));
    // The zone is 1500 mm across: 0.02 of the score is 30 mm, two grid steps.
    expect(best).toBeGreaterThan(worst - 0.02);
    expect(worst).toBeGreaterThan(1);
  });

  test("can be played: its trial gives the score again", () => {
    const found = worstOf(oneBall, { ...EFFORT, seed: 2, restart: 1, drifts: false }, 1);
    const laid = withPlacement(still, found?.placement ?? []);
    const outcome = runTrial(compileTrial(laid, routine), 2, 0);
    expect(outcome.placement).toEqual(found?.placement);
    expect(lossScore(laid, outcome)).toBe(found?.score);
  });
});

describe("the worst layout of three balls", () => {
  test("keeps to the rules and is worse than nine of ten drawn ones", () => {
    const found = worstOf(usual, { ...EFFORT, seed: 5, restart: 0, drifts: true }, 6);
    expect(placementSpace(usual)?.allows(found?.placement ?? [])).toBe(true);
    expect(found?.evaluations).toBe(320);
    const plan = compileTrial(usual, routine);
    // Fresh drift, and placements as the stress test draws them.
    const [again] = meanLosses(usual, plan, [found?.placement ?? []], 99, 20);
    const layouts = Array.from({ length: 40 }, (_, index) => plan.placements.draw(7, index));
    const drawn = meanLosses(usual, plan, layouts, 99, 4).sort();
    expect(again).toBeGreaterThan(drawn[35] ?? 9);
  });

  test("is a function of seed and restart", () => {
    const run = (seed: number, restart: number) =>
      worstOf(usual, { population: 10, generations: 2, seed, restart, drifts: true }, 2);
    expect(run(1, 0)).toEqual(run(1, 0));
    expect(run(1, 1)).not.toEqual(run(1, 0));
    expect(run(2, 0)).not.toEqual(run(1, 0));
  });

  test("is not looked for where the layout is fixed", () => {
    const fixed = shippedProject("practice-layout.json");
    expect(worstOf(fixed, { ...EFFORT, seed: 1, restart: 0, drifts: false }, 1)).toBeNull();
  });
});

test("a ball that rolled out counts double, one at home nothing", () => {
  const outcome = (losses: readonly (null | "rolled-out" | "never-touched")[]) =>
    ({
      losses,
      endPositions: losses.map(() => ({ xMm: 0, yMm: 0 })),
    }) as unknown as Parameters<typeof lossScore>[1];
  expect(lossScore(usual, outcome([null, null]))).toBe(0);
  expect(lossScore(usual, outcome([null, "rolled-out"]))).toBe(2);
  // (0, 0) lies 1485 − 212 mm off the wedge's long side, the diagonal measures 1500: hand-worked below.
  const off = (1200 + 900 - 300) / Math.SQRT2 / 1500;
  expect(lossScore(usual, outcome(["never-touched"]))).toBeCloseTo(1 + off, 9);
});
