import { describe, expect, it } from "vitest";
import {
  degFromRad,
  degPerMFromRadPerMm,
  radFromDeg,
  radPerMmFromDegPerM,
} from "../../../src/model/degrees.ts";

describe("degrees", () => {
  it("are the usual ones", () => {
    expect(radFromDeg(180)).toBeCloseTo(Math.PI, 15);
    expect(radFromDeg(-90)).toBeCloseTo(-Math.PI / 2, 15);
    expect(radFromDeg(0)).toBe(0);
    // 1 °/m = 0.0174… rad over 1000 mm.
    expect(radPerMmFromDegPerM(1)).toBeCloseTo(1.7453292519943296e-5, 18);
  });

  it("come back with the digits that were typed", () => {
    for (let i = -3600; i <= 3600; i++) {
      const deg = i / 20;
      expect(degFromRad(radFromDeg(deg))).toBe(deg);
      expect(degPerMFromRadPerMm(radPerMmFromDegPerM(deg))).toBe(deg);
    }
  });

  it("of angles that came from elsewhere are right to the last place", () => {
    for (let i = 1; i <= 2000; i++) {
      const rad = Math.sin(i * 1.618);
      const error = Math.abs(radFromDeg(degFromRad(rad)) - rad);
      expect(error).toBeLessThanOrEqual(Math.abs(rad) * Number.EPSILON);
    }
  });
});
