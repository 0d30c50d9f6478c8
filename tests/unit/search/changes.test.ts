import { describe, expect, test } from "vitest";
import { checkProject } from "../../../src/model/check.ts";
import type { Move } from "../../../src/model/routine.ts";
import { nominalCourse } from "../../../src/motion/course.ts";
import { RoutineMaker } from "../../../src/plan/maker.ts";
import { proposeChanges } from "../../../src/search/change.ts";
import { response, usableFactors } from "../../../src/search/factors.ts";
import { routineParts, strayTouchCount, withParts } from "../../../src/search/routineParts.ts";
import { compileTrial } from "../../../src/trial/compile.ts";
import { runBatch } from "../../../src/trial/run.ts";
import { shippedProject } from "../../support/projectFiles.ts";
import { routineOf } from "../../support/scene.ts";

const project = shippedProject();
const routine = new RoutineMaker(project).make("herd-outer-c0-q-b-v100") ?? routineOf([]);

describe("what can be changed", () => {
  const proposed = proposeChanges(project, routine);
  const madeOf = (id: string) => proposed.find((each) => each.id === id)?.made;

  test("is sound and feasible, or left out with a reason", () => {
    expect(new Set(proposed.map(({ id }) => id)).size).toBe(proposed.length);
    for (const { id, made, reason } of proposed) {
      expect([id, made === null]).toEqual([id, reason !== null]);
      if (made === null) continue;
      expect(checkProject(made.project)).toEqual([]);
      expect(JSON.stringify(made)).not.toBe(JSON.stringify({ project, routine }));
      expect(nominalCourse(made.project, made.routine.moves).blockedMoves).toEqual([]);
    }
    expect(proposed.filter(({ made }) => made !== null).length).toBeGreaterThan(12);
  });

  test("a wider pusher is 20 mm wider at the tips, and the routine is planned anew", () => {
    const made = madeOf("wider");
    const [before, after] = [project.robot.shape, made?.project.robot.shape];
    if (before.kind !== "arms" || after?.kind !== "arms") throw new Error("the usual robot has arms");
    const tips = (shape: typeof before): number => 2 * shape.armLengthMm * Math.sin(shape.armAngleRad);
    expect(tips(after) - tips(before)).toBeCloseTo(20, 9);
    expect(made?.routine.id).toBe(routine.id);
    expect(JSON.stringify(made?.routine.moves)).not.toBe(JSON.stringify(routine.moves));
  });

  test("slower is ten per cent slower in every drive", () => {
    const [was, is] = [routine.moves[0], madeOf("slower")?.routine.moves[0]];
    if (was?.kind !== "drive" || is?.kind !== "drive") throw new Error("it begins with a drive");
    expect(is.speedMmPerS).toBeCloseTo(0.9 * was.speedMmPerS, 12);
    expect(is.distanceMm).toBe(was.distanceMm);
  });

  test("an error that is halved is halved in all its parts, and no other is", () => {
    const { drift } = project.robot;
    const { systematic, random } = drift;
    const half = {
      turnScaleMean: systematic.turnScaleMean / 2,
      turnScaleSd: systematic.turnScaleSd / 2,
    };
    expect(madeOf("turn-half")?.project.robot.drift).toEqual({
      ...drift,
      systematic: { ...systematic, ...half },
      random: { ...random, turnSdFrac: random.turnSdFrac / 2, turnSdRad: random.turnSdRad / 2 },
    });
    expect(random.turnSdRad * random.turnSdFrac * systematic.turnScaleSd).toBeGreaterThan(0);
  });

  test("does not apply to a robot without arms, and says so", () => {
    const plate = shippedProject("plate-robot.json");
    const own = routineOf([{ kind: "drive", distanceMm: 200, speedMmPerS: 100 }]);
    const arms = proposeChanges(plate, own).find(({ id }) => id === "arms-out");
    expect(arms).toMatchObject({ made: null, reason: "This robot's outline has no such part." });
  });

  test("a change that would run the robot into a wall is left out", () => {
    // Turning beside the wall just fits; 20 mm more do not.
    const own = routineOf([
      { kind: "drive", distanceMm: 700 - 85, speedMmPerS: 200 },
      { kind: "turn", angleRad: 3, rateRadPerS: 1 },
    ]);
    const deeper = proposeChanges(project, own).find(({ id }) => id === "deeper");
    expect(deeper?.made).toBeNull();
    expect(deeper?.reason).toMatch(/run into something in move \d/);
  });
});

describe("squaring up once more", () => {
  const drive = (distanceMm: number): Move => ({ kind: "drive", distanceMm, speedMmPerS: 200 });
  const turn = (angleRad: number): Move => ({ kind: "turn", angleRad, rateRadPerS: 1 });
  const squared = (moves: readonly Move[]) =>
    proposeChanges(project, routineOf(moves)).find(({ id }) => id === "square-up");

  test("backs up to the wall behind and comes out again to the same place", () => {
    const moves = [drive(300), turn(-Math.PI / 2), drive(400)];
    const change = squared(moves);
    const made = change?.made;
    expect(change?.title).toBe("squaring up once more, before move 3");
    expect(made?.routine.moves).toHaveLength(5);
    expect(made?.routine.moves[2]).toMatchObject({ kind: "toWall" });
    const [before, after] = [moves, made?.routine.moves ?? []].map(
      (each) => nominalCourse(project, each).end,
    );
    expect(after?.xMm).toBeCloseTo(before?.xMm ?? 0, 1);
    expect(after?.yMm).toBeCloseTo(before?.yMm ?? 0, 1);
  });

  test("needs a wall square behind, and a run", () => {
    expect(squared([drive(300), turn(-0.7), drive(400)])?.reason).toMatch(/wall square behind/);
    expect(squared([turn(0.1)])?.made).toBeNull();
    // The last push has none behind it, the one before has.
    const moves = [drive(300), turn(-Math.PI / 2), drive(400), turn(0.3), drive(150)];
    expect(squared(moves)?.title).toMatch(/before move 3$/);
  });

  test("can be done at every chance, and still ends where it did", () => {
    const moves = [drive(300), turn(-Math.PI / 2), drive(400), drive(-300), drive(250)];
    const every = proposeChanges(project, routineOf(moves)).find(({ id }) => id === "square-up-always");
    expect(every?.title).toBe("squaring up at every chance, 2 times more");
    expect(every?.made?.routine.moves.filter(({ kind }) => kind === "toWall")).toHaveLength(2);
    const [before, after] = [moves, every?.made?.routine.moves ?? []].map(
      (each) => nominalCourse(project, each).end,
    );
    expect(after?.xMm).toBeCloseTo(before?.xMm ?? 0, 1);
  });
});

describe("the parts of a routine", () => {
  const parts = routineParts(project, routine, 6);

  test("follow one another to its end", () => {
    expect(parts.parts.length).toBeGreaterThan(2);
    expect(parts.parts.length).toBeLessThanOrEqual(6);
    for (const [i, part] of parts.parts.entries()) {
      expect(part.to).toBe(parts.parts[i + 1]?.from ?? routine.moves.length);
    }
  });

  test("all together are the routine; none leave the way in", () => {
    const all = (1 << parts.parts.length) - 1;
    expect(withParts(project, routine, parts, all)).toEqual(routine);
    expect(withParts(project, routine, parts, 0).moves).toEqual(routine.moves.slice(0, parts.parts[0]?.from));
  });

  test("can be left out in any combination without running into anything", () => {
    for (let mask = 0; mask < 1 << parts.parts.length; mask++) {
      const some = withParts(project, routine, parts, mask);
      expect([mask, strayTouchCount(project, some)]).toEqual([mask, 0]);
    }
  });

  test("that are kept are driven from where they were", () => {
    const last = parts.parts.length - 1;
    const only = withParts(project, routine, parts, 1 << last);
    const { end } = nominalCourse(project, only.moves);
    const whole = nominalCourse(project, routine.moves).end;
    expect(end.xMm).toBeCloseTo(whole.xMm, 1);
    expect(end.yMm).toBeCloseTo(whole.yMm, 1);
  });
});

describe("the response to factors", () => {
  test("at the middle of every range is the routine itself, at the same luck", () => {
    const factors = usableFactors(project, routine);
    expect(factors.length).toBeGreaterThan(6);
    const request = { seed: 4, trials: 20 };
    const drifts = factors.filter(({ id }) => id.endsWith("error")).map(({ id }) => id);
    const plain = response(project, routine, { ...request, factors: [], point: [] });
    expect(response(project, routine, { ...request, factors: drifts, point: drifts.map(() => 0.5) })).toBe(
      plain,
    );
    // Without the spread of friction, rolling and bounce, which factors set themselves.
    const steady = runBatch(compileTrial(project, routine, { spread: false }), 4, 0, 20);
    expect(plain).toBe(steady.delivered.reduce((sum, count) => sum + count, 0) / 20);
    const asDrawn = runBatch(compileTrial(project, routine), 4, 0, 20);
    expect(asDrawn.hashLow).not.toBe(steady.hashLow);
    expect(() => response(project, routine, { ...request, factors: ["luck"], point: [1] })).toThrow(
      RangeError,
    );
  });
});
