import { describe, expect, it } from "vitest";
import { dashes } from "../../../src/view/dashes.ts";
import { chord, hatch, type Segment } from "../../../src/view/hatch.ts";

const SQUARE = [
  { x: 0, y: 0 },
  { x: 10, y: 0 },
  { x: 10, y: 10 },
  { x: 0, y: 10 },
];

const length = ({ from, to }: Segment) => Math.sqrt((to.x - from.x) ** 2 + (to.y - from.y) ** 2);
const total = (segments: readonly Segment[]) => segments.reduce((sum, each) => sum + length(each), 0);

describe("hatching", () => {
  it("cuts a square along its middle", () => {
    const line = chord(SQUARE, { x: 0, y: 1 }, 4);
    expect(line && length(line)).toBe(10);
    expect(line?.from.y).toBe(4);
  });

  it("gives nothing for a line that misses", () => {
    expect(chord(SQUARE, { x: 0, y: 1 }, 12)).toBeNull();
  });

  it("crosses a corner once, not twice", () => {
    const diagonal = chord(SQUARE, { x: Math.SQRT1_2, y: -Math.SQRT1_2 }, 0);
    expect(diagonal && length(diagonal)).toBeCloseTo(10 * Math.SQRT2, 9);
  });

  it("fills the outline: strokes times gap is nearly its area", () => {
    const gap = 0.05;
    for (const direction of [0, 0.3, Math.PI / 4, 2]) {
      const covered = total(hatch(SQUARE, direction, gap)) * gap;
      expect(covered).toBeGreaterThan(99);
      expect(covered).toBeLessThan(101);
    }
  });

  it("keeps every stroke inside the outline", () => {
    for (const { from, to } of hatch(SQUARE, 0.7, 1.3)) {
      for (const { x, y } of [from, to]) {
        expect(Math.min(x, y)).toBeGreaterThanOrEqual(-1e-9);
        expect(Math.max(x, y)).toBeLessThanOrEqual(10 + 1e-9);
      }
    }
  });
});

describe("dashes", () => {
  it("cover their share of a straight line", () => {
    const line = [
      { x: 0, y: 0 },
      { x: 100, y: 0 },
    ];
    const cut = dashes(line, 6, 4);
    expect(cut).toHaveLength(10);
    expect(total(cut)).toBeCloseTo(60, 9);
  });

  it("run on around a corner", () => {
    const line = [
      { x: 0, y: 0 },
      { x: 3, y: 0 },
      { x: 3, y: 7 },
    ];
    // One dash of 6: 3 before the corner, 3 after.
    expect(dashes(line, 6, 4)).toEqual([
      { from: { x: 0, y: 0 }, to: { x: 3, y: 0 } },
      { from: { x: 3, y: 0 }, to: { x: 3, y: 3 } },
    ]);
  });

  it("skip points that coincide", () => {
    const point = { x: 5, y: 5 };
    expect(dashes([point, point], 6, 4)).toEqual([]);
  });
});
