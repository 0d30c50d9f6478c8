import { beforeAll, describe, expect, it } from "vitest";
import type { Routine } from "../../../src/model/routine.ts";
import { type Course, nominalCourse } from "../../../src/motion/course.ts";
import { makeCatalogue } from "../../../src/plan/catalogue.ts";
import { FAMILIES } from "../../../src/plan/families.ts";
import { fittingFamilies } from "../../../src/plan/family.ts";
import { shippedProject } from "../../support/projectFiles.ts";

/** The usual zone: 1200 × 900 mm, wedge in the upper right corner with legs of 300 mm, doorway at the lower left. */
const usual = shippedProject();
let routines: readonly Routine[] = [];
beforeAll(() => {
  routines = makeCatalogue(usual).routines;
});

function first(id: string): { routine: Routine; course: Course } {
  const routine = routines.find((one) => one.id.startsWith(`${id}-`));
  if (routine === undefined) throw new Error(`no routine of ${id}`);
  return { routine, course: nominalCourse(usual, routine.moves) };
}

/** Where the robot's axle is at the end of each move "to the wall". */
function wallEnds({ routine, course }: ReturnType<typeof first>) {
  return routine.moves.flatMap((move, index) => {
    const last = course.pieces.findLast((piece) => piece.move === index)?.to;
    return move.kind === "toWall" && last !== undefined ? [{ ...last, forward: move.distanceMm > 0 }] : [];
  });
}

/** Square against the middle of the wedge, where the axle is 95 mm in front of its edge: (983, 683), facing up right. */
const onWedge = (pose: { xMm: number; yMm: number }) => Math.hypot(pose.xMm - 982.8, pose.yMm - 682.8) < 3;

const reachOf = (course: Course) => {
  const xs = course.pieces.map(({ to }) => to.xMm);
  const ys = course.pieces.map(({ to }) => to.yMm);
  return [Math.min(...xs), Math.max(...xs), Math.min(...ys), Math.max(...ys)].map(Math.round);
};

describe("every pattern", () => {
  it("has a name and an id of its own and gives routines for the usual zone", () => {
    expect(new Set(FAMILIES.map(({ id }) => id)).size).toBe(FAMILIES.length);
    expect(new Set(FAMILIES.map(({ pattern }) => pattern)).size).toBe(FAMILIES.length);
    expect(FAMILIES.length).toBeGreaterThanOrEqual(7);
    // What needs another robot has tests of its own.
    const fitting = fittingFamilies(FAMILIES, usual);
    expect(fitting.length).toBeGreaterThanOrEqual(7);
    for (const { id, pattern } of fitting) expect(first(id).routine.pattern, id).toBe(pattern);
  });

  it("is made with parameters: speed for all, square-ups for those that can", () => {
    for (const { params, id } of routines) expect(params, id).toHaveProperty("speedFrac");
    const squaring = routines.filter(({ params }) => params.squareUps === true);
    const backwards = (routine: Routine) =>
      routine.moves.some((move) => move.kind === "toWall" && move.distanceMm < 0);
    expect(squaring.length).toBeGreaterThan(30);
    expect(squaring.filter((routine) => !backwards(routine)).map(({ id }) => id)).toEqual([]);
    const plain = routines.filter(({ params }) => params.squareUps === false);
    expect(plain.filter(backwards).map(({ id }) => id)).toEqual([]);
  });
});

describe("what a pattern is", () => {
  it.each(["herd", "fan", "ringin", "ringout", "carry", "mix", "loop"])(
    "%s brings every push square onto the wedge",
    (id) => {
      const ends = wallEnds(first(id)).filter(({ forward }) => forward);
      expect(ends.length).toBeGreaterThan(0);
      expect(ends.filter((pose) => !onWedge(pose))).toEqual([]);
    },
  );

  it("the fan sets out from the same place again and again", () => {
    const { course } = first("fan");
    const home = course.pieces.filter(({ from }) => Math.hypot(from.xMm - 136, from.yMm - 136) < 1);
    expect(new Set(home.map(({ move }) => move)).size).toBeGreaterThanOrEqual(5);
  });

  it("the wall loop comes near all four walls and stays out of the middle until it goes home", () => {
    const [minX = 0, maxX = 0, minY = 0, maxY = 0] = reachOf(first("loop").course);
    for (const gap of [minX, 1200 - maxX, minY, 900 - maxY]) expect(gap).toBeLessThan(200);
    const inside = first("loop").course.pieces.filter(
      ({ to }) => to.xMm > 350 && to.xMm < 650 && to.yMm > 350 && to.yMm < 550,
    );
    expect(inside).toEqual([]);
  });

  it("rings inward begin outside, rings outward end there", () => {
    const spread = (id: string) => {
      const { course, routine } = first(id);
      const turns = course.pieces.filter((piece) => routine.moves[piece.move]?.kind === "arc");
      // The lower left corner of a lap is the one whose curve ends nearest to the doorway.
      const corners = turns.filter(({ to }) => to.xMm + to.yMm < 800).map(({ to }) => to.xMm + to.yMm);
      return [corners[0] ?? 0, corners.at(-1) ?? 0];
    };
    const [inFirst = 0, inLast = 0] = spread("ringin");
    const [outFirst = 0, outLast = 0] = spread("ringout");
    expect(inFirst).toBeLessThan(inLast);
    expect(outFirst).toBeGreaterThan(outLast);
  });

  it("lanes to the closing wall each end there, one beside the other, before the closing wall runs", () => {
    const ends = wallEnds(first("close")).filter(({ forward }) => forward);
    // The front is 184.7 mm ahead of the axle; lanes along the long side end at the right wall.
    const atWall = ends.filter(({ xMm }) => Math.abs(xMm - (1200 - 184.7)) < 1).map(({ yMm }) => yMm);
    expect(atWall.length).toBeGreaterThanOrEqual(3);
    for (const [i, y] of atWall.entries()) if (i > 0) expect(y - (atWall[i - 1] ?? 0)).toBeLessThan(181);
    expect(onWedge(ends.at(-1) ?? { xMm: 0, yMm: 0 })).toBe(true);
  });

  it("diagonal lanes run side by side, straight for the target corner", () => {
    const { course } = first("diag");
    const lanes = course.pieces.filter(({ kind, from, to }) => {
      const along = (to.xMm - from.xMm + to.yMm - from.yMm) / Math.SQRT2;
      return kind === "line" && along > 150 && Math.cos(from.headingRad - Math.PI / 4) > 0.999;
    });
    const aside = lanes.map(({ from }) => Math.round((from.yMm - from.xMm) / Math.SQRT2));
    expect(new Set(aside).size).toBeGreaterThanOrEqual(5);
    expect(aside.some((a) => a < -300)).toBe(true);
    expect(aside.some((a) => a > 0)).toBe(true);
  });

  it("lanes to and fro run both ways along the long side", () => {
    const { routine, course } = first("mow");
    const headings = course.pieces
      .filter(({ kind, move, from, to }) => {
        const commanded = routine.moves[move];
        return (
          kind === "line" &&
          commanded?.kind === "drive" &&
          commanded.distanceMm > 0 &&
          Math.abs(to.xMm - from.xMm) > 300
        );
      })
      .map(({ from }) => Math.sign(Math.cos(from.headingRad)));
    expect(headings).toContain(1);
    expect(headings).toContain(-1);
  });

  it("the herding spiral leaves the outermost hooks first and ends in the middle", () => {
    const { course, routine } = first("herd");
    const curves = course.pieces.filter(({ move }) => {
      const commanded = routine.moves[move];
      return commanded?.kind === "arc" && commanded.distanceMm > 0 && Math.abs(commanded.angleRad) > 1.5;
    });
    const fromWall = curves.map(({ to }) => Math.min(1200 - to.xMm, 900 - to.yMm));
    expect(fromWall[0]).toBeLessThan(fromWall.at(-1) ?? 0);
    expect(fromWall[0]).toBeLessThan(200);
  });
});
