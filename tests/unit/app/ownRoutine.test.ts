import { describe, expect, it } from "vitest";
import {
  freeId,
  withCopy,
  withMoveDoubled,
  withMoveInserted,
  withMoveShifted,
  withoutMove,
} from "../../../src/app/routine/ownForm.ts";
import { tidied, withEndAt } from "../../../src/app/routine/reshape.ts";
import { differenceWords, tellsApart } from "../../../src/app/words/differenceWords.ts";
import type { Move } from "../../../src/model/routine.ts";
import { nominalCourse } from "../../../src/motion/course.ts";
import { compareRoutines } from "../../../src/score/compare.ts";
import { shippedProject } from "../../support/projectFiles.ts";

const turn = (deg: number): Move => ({ kind: "turn", angleRad: (deg * Math.PI) / 180, rateRadPerS: 1 });
const drive = (distanceMm: number): Move => ({ kind: "drive", distanceMm, speedMmPerS: 200 });
const MOVES = [drive(300), turn(-40), drive(250), turn(-30), drive(150)];

describe("dragging the end of a move", () => {
  const project = shippedProject();
  const course = nominalCourse(project, MOVES);
  const piece = (moves: readonly Move[], at: number) => {
    const found = nominalCourse(project, moves).pieces.find(({ move }) => move === at);
    if (!found) throw new Error(`move ${at} has no path`);
    return found;
  };

  it("brings it to the place, and leaves what follows in its direction", () => {
    const start = piece(MOVES, 2).from;
    const to = { xMm: piece(MOVES, 2).to.xMm - 40, yMm: piece(MOVES, 2).to.yMm + 60 };
    const next = withEndAt(MOVES, 2, start, to);
    expect(piece(next, 2).to.xMm).toBeCloseTo(to.xMm, 6);
    expect(piece(next, 2).to.yMm).toBeCloseTo(to.yMm, 6);
    expect(piece(next, 4).from.headingRad).toBeCloseTo(piece(MOVES, 4).from.headingRad, 9);
    expect(course.blockedMoves).toEqual([]);
  });

  it("changes only the length where no turn comes before", () => {
    const start = piece(MOVES, 0).from;
    const next = withEndAt(MOVES, 0, start, { xMm: start.xMm + 80, yMm: start.yMm + 120 });
    expect(next.slice(1)).toEqual(MOVES.slice(1));
    expect(next[0]).toMatchObject({ kind: "drive" });
    expect(next[0]?.kind === "drive" ? next[0].distanceMm : 0).toBeCloseTo(120, 6);
  });

  it("writes whole millimetres and tenths of a degree", () => {
    expect(tidied(drive(123.4567))).toEqual(drive(123));
    const back = tidied(turn(12.3456));
    expect(back.kind === "turn" ? (back.angleRad * 180) / Math.PI : 0).toBeCloseTo(12.3, 9);
  });
});

describe("the list of own routines in a form", () => {
  const routine = { id: "fan", pattern: "fan", label: "Fan", params: {}, moves: MOVES };
  const form = withCopy({}, routine, freeId([]), "Ours", "fan");
  const movesOf = (next: unknown) =>
    (next as { routines: { moves: { kind: string; distanceMm?: number }[] }[] }).routines[0]?.moves.map(
      ({ kind, distanceMm }) => distanceMm ?? kind,
    );

  it("takes a copy with its moves", () => {
    expect(movesOf(form)).toEqual([300, "turn", 250, "turn", 150]);
    expect(freeId(["own-1", "own-3"])).toBe("own-2");
  });

  it("inserts, doubles, shifts and takes away", () => {
    expect(movesOf(withMoveInserted(form, 0, 1, drive(9)))).toEqual([300, 9, "turn", 250, "turn", 150]);
    expect(movesOf(withMoveDoubled(form, 0, 2))).toEqual([300, "turn", 250, 250, "turn", 150]);
    expect(movesOf(withMoveShifted(form, 0, 0, 1))).toEqual(["turn", 300, 250, "turn", 150]);
    expect(movesOf(withMoveShifted(form, 0, 0, -1))).toEqual(movesOf(form));
    expect(movesOf(withoutMove(form, 0, 4))).toEqual([300, "turn", 250, "turn"]);
  });
});

describe("the difference between two routines", () => {
  const trials = (delivered: readonly number[]) => ({
    indices: delivered.map((_, i) => i),
    delivered: [...delivered],
    deliveredCounts: [0, 0],
  });

  it("is said with its range, and whether it is sure", () => {
    const good = trials(Array.from({ length: 100 }, (_, i) => Number(i < 90)));
    const poor = trials(Array.from({ length: 100 }, (_, i) => Number(i < 60)));
    expect(differenceWords(compareRoutines(good, poor))).toMatch(/^\+30 of 100 \(likely \+\d+ to \+\d+\)$/);
    expect(tellsApart(compareRoutines(good, poor))).toBe("surely better");
    expect(differenceWords(compareRoutines(poor, good))).toMatch(/^−30 of 100/);
    expect(differenceWords(compareRoutines(good, good))).toMatch(/^±0 of 100/);
    expect(tellsApart(compareRoutines(good, good))).toBe("too close to call");
  });
});
