import { describe, expect, it } from "vitest";
import type { Move } from "../../../src/model/routine.ts";
import { branchesOf } from "../../../src/trial/branches.ts";

/** A list of moves, one for each letter; each made anew. */
const listOf = (letters: string): readonly Move[] =>
  [...letters].map((letter) => ({ kind: "wait", durationS: letter.charCodeAt(0) }));

const treeOf = (...lists: string[]) => branchesOf(lists.map(listOf));

describe("the tree of lists of moves", () => {
  it("has a stretch for what they have in common, and a branch for each way to go on", () => {
    expect(treeOf("abcd", "abx", "abcy", "ab")).toEqual({
      upTo: 2,
      lists: [0, 1, 2, 3],
      ends: [3],
      branches: [
        {
          upTo: 3,
          lists: [0, 2],
          ends: [],
          branches: [
            { upTo: 4, lists: [0], ends: [0], branches: [] },
            { upTo: 4, lists: [2], ends: [2], branches: [] },
          ],
        },
        { upTo: 3, lists: [1], ends: [1], branches: [] },
      ],
    });
  });

  it("ends for all that are the same, and at once where one is empty", () => {
    expect(treeOf("ab", "ab")).toEqual({ upTo: 2, lists: [0, 1], ends: [0, 1], branches: [] });
    const { upTo, ends, branches } = treeOf("", "a");
    expect([upTo, ends, branches.length]).toEqual([0, [0], 1]);
  });

  it("takes moves for the same only when every number is, down to the sign of nothing", () => {
    const drive = (distanceMm: number, readsMm?: number): readonly Move[] => [
      {
        kind: "drive",
        distanceMm,
        speedMmPerS: 100,
        ...(readsMm === undefined ? {} : { beside: { sensor: 0, readsMm } }),
      },
    ];
    const commonOf = (one: readonly Move[], other: readonly Move[]) => branchesOf([one, other]).upTo;
    expect(commonOf(drive(200, 150), drive(200, 150))).toBe(1);
    expect(commonOf(drive(200, 150), drive(200, 151))).toBe(0);
    expect(commonOf(drive(200, 150), drive(200))).toBe(0);
    expect(commonOf(drive(0), drive(-0))).toBe(0);
    expect(commonOf(drive(200), drive(200.0000001))).toBe(0);
  });
});
