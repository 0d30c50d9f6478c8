import { describe, expect, it } from "vitest";
import type { Course, CoursePiece } from "../../../src/motion/course.ts";
import { layOutPath, spreadNumbers } from "../../../src/view/pathLayout.ts";
import { Viewport } from "../../../src/view/viewport.ts";

const QUARTER = Math.PI / 2;
// 1 px/mm, so that screen lengths can be read off.
const view = new Viewport({ widthMm: 1000, heightMm: 1000 }, 1000, 1000, {
  left: 0,
  right: 0,
  top: 0,
  bottom: 0,
});

const pose = (xMm: number, yMm: number, headingRad: number) => ({ xMm, yMm, headingRad });
const piece = (move: number, rest: Partial<CoursePiece>): CoursePiece => ({
  move,
  kind: "line",
  from: pose(0, 0, 0),
  to: pose(0, 0, 0),
  centreXMm: 0,
  centreYMm: 0,
  angleRad: 0,
  startS: move,
  endS: move + 1,
  ...rest,
});
const courseOf = (...pieces: CoursePiece[]): Course => ({
  pieces,
  durationS: pieces.length,
  moveStartS: pieces.map((each) => each.startS),
  armsRad: [],
  end: pose(0, 0, 0),
  blockedMoves: [],
});

const AHEAD = piece(0, { from: pose(100, 100, 0), to: pose(500, 100, 0) });
const BACK = piece(1, { from: pose(500, 100, 0), to: pose(100, 100, 0) });
const ARC = piece(2, {
  kind: "rotation",
  from: pose(500, 100, 0),
  to: pose(700, 300, QUARTER),
  centreXMm: 500,
  centreYMm: 300,
  angleRad: QUARTER,
});
const TURN = piece(3, {
  kind: "rotation",
  from: pose(700, 300, QUARTER),
  to: pose(700, 300, 0),
  centreXMm: 700,
  centreYMm: 300,
  angleRad: -QUARTER,
});

describe("the layout of a path", () => {
  it("follows an arc on its circle, with its true length", () => {
    const { strokes } = layOutPath(courseOf(ARC), view);
    const centre = view.point({ xMm: 500, yMm: 300 });
    for (const { x, y } of strokes[0]?.points ?? []) {
      expect(Math.sqrt((x - centre.x) ** 2 + (y - centre.y) ** 2)).toBeCloseTo(200, 6);
    }
    expect(strokes[0]?.points.at(-1)?.x).toBeCloseTo(view.x(700), 6);
    expect(strokes[0]?.points.at(-1)?.y).toBeCloseTo(view.y(300), 6);
    expect(strokes[0]?.lengthPx).toBeCloseTo(100 * Math.PI, 0);
  });

  it("points its arrows the way the robot drives, backward too", () => {
    const { arrows } = layOutPath(courseOf(AHEAD, BACK), view);
    const cosines = arrows.map((arrow) => [arrow.move, Math.round(Math.cos(arrow.rotation))]);
    expect(new Set(cosines.map(String))).toEqual(new Set(["0,1", "1,-1"]));
  });

  it("knows a turn on the spot, and its sense on the screen", () => {
    const { turns, strokes } = layOutPath(courseOf(TURN), view);
    expect(turns).toHaveLength(1);
    // To the right: clockwise, growing angles on the screen.
    expect((turns[0]?.toRad ?? 0) - (turns[0]?.fromRad ?? 0)).toBeCloseTo(QUARTER, 12);
    expect(strokes[0]?.points).toHaveLength(1);
  });

  it("numbers each move at most once and lets no two numbers overlap", () => {
    const zigzag = Array.from({ length: 40 }, (_, k) =>
      piece(k, {
        from: pose(100 + (k % 2) * 60, 100 + 8 * k, 0),
        to: pose(160 - (k % 2) * 60, 108 + 8 * k, 0),
      }),
    );
    const numbers = spreadNumbers(layOutPath(courseOf(...zigzag), view));
    expect(numbers.length).toBeGreaterThan(5);
    expect(new Set(numbers.map((each) => each.move)).size).toBe(numbers.length);
    for (const [i, a] of numbers.entries()) {
      for (const b of numbers.slice(i + 1)) {
        expect(Math.sqrt((a.at.x - b.at.x) ** 2 + (a.at.y - b.at.y) ** 2)).toBeGreaterThanOrEqual(19);
      }
    }
  });

  it("writes a number elsewhere along its way where a ball lies, and none on a turning place under one", () => {
    const layout = layOutPath(courseOf(AHEAD, TURN), view);
    const free = spreadNumbers(layout);
    expect(free.map(({ move }) => move)).toEqual([0, 3]);
    const taken = free.map(({ at }) => ({ at, radiusPx: 30 }));
    const moved = spreadNumbers(layout, taken);
    expect(moved.map(({ move }) => move)).toEqual([0]);
    expect(moved[0]?.at.x).not.toBeCloseTo(free[0]?.at.x ?? 0, 0);
    for (const { at } of moved) {
      for (const { at: ball } of taken) {
        expect(Math.sqrt((at.x - ball.x) ** 2 + (at.y - ball.y) ** 2)).toBeGreaterThanOrEqual(30);
      }
    }
  });
});
