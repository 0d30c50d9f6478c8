import { describe, expect, it } from "vitest";
import { roundedCorners } from "../../../src/plan/rounding.ts";

const at = (xMm: number, yMm: number, radiusMm = 0) => ({ xMm, yMm, radiusMm });

describe("rounded corners", () => {
  it("a right angle of radius 100 begins 100 mm before the corner", () => {
    const [corner] = roundedCorners([at(0, 0), at(500, 0, 100), at(500, 400)]);
    expect(corner?.turnRad).toBeCloseTo(Math.PI / 2, 9);
    expect(corner?.tangentMm).toBeCloseTo(100, 9);
  });

  it("right turns are negative, and 60° need radius · tan 30°", () => {
    const [corner] = roundedCorners([at(0, 0), at(500, 0, 100), at(700, -200 * Math.sqrt(3))]);
    expect(corner?.turnRad).toBeCloseTo(-Math.PI / 3, 9);
    expect(corner?.tangentMm).toBeCloseTo(100 / Math.sqrt(3), 9);
  });

  it("two curves that would overlap shrink alike until they meet", () => {
    const corners = roundedCorners([at(0, 0), at(500, 0, 200), at(500, 240, 100), at(0, 240)]);
    expect(corners[0]?.radiusMm).toBeCloseTo(160, 9);
    expect(corners[1]?.radiusMm).toBeCloseTo(80, 9);
    expect(corners.reduce((sum, { tangentMm }) => sum + tangentMm, 0)).toBeCloseTo(240, 9);
  });

  it("a corner without a radius, and a way straight back, are turned on the spot", () => {
    const sharp = roundedCorners([at(0, 0), at(500, 0), at(500, 400)]);
    const back = roundedCorners([at(0, 0), at(500, 0, 100), at(0, 0)]);
    expect([sharp[0]?.radiusMm, back[0]?.radiusMm]).toEqual([0, 0]);
    expect(Math.abs(back[0]?.turnRad ?? 0)).toBeCloseTo(Math.PI, 9);
  });
});
