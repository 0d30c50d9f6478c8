import { describe, expect, it } from "vitest";
import { signedArea } from "../../../src/geometry/polygon.ts";
import { robotOutline } from "../../../src/model/outline.ts";
import { convexPieces } from "../../support/convexPieces.ts";
import { SHIPPED, shippedProject } from "../../support/projectFiles.ts";

/** An L: 30 × 10 and 10 × 20. */
const ELL = [
  { xMm: 0, yMm: 0 },
  { xMm: 30, yMm: 0 },
  { xMm: 30, yMm: 10 },
  { xMm: 10, yMm: 10 },
  { xMm: 10, yMm: 30 },
  { xMm: 0, yMm: 30 },
];

describe("convex pieces", () => {
  it("of an L are two rectangles or the like", () => {
    const pieces = convexPieces(ELL, 12);
    expect(pieces).toHaveLength(2);
    expect(pieces.reduce((sum, piece) => sum + signedArea(piece), 0)).toBe(500);
  });

  it("have no more corners than allowed", () => {
    expect(convexPieces(ELL, 3).map((piece) => piece.length)).toEqual([3, 3, 3, 3]);
  });

  it.each(SHIPPED)("of the robot of %s are convex and fill it", (name) => {
    const { footprint } = robotOutline(shippedProject(name).robot);
    const pieces = convexPieces(footprint, 12);
    const filled = pieces.reduce((sum, piece) => sum + signedArea(piece), 0);
    expect(filled).toBeCloseTo(signedArea(footprint), 6);
    for (const piece of pieces) {
      for (const [i, a] of piece.entries()) {
        const b = piece[(i + 1) % piece.length]!;
        const c = piece[(i + 2) % piece.length]!;
        const turn = (b.xMm - a.xMm) * (c.yMm - a.yMm) - (b.yMm - a.yMm) * (c.xMm - a.xMm);
        expect(turn).toBeGreaterThan(0);
      }
    }
  });
});
