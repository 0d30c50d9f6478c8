import { describe, expect, it } from "vitest";
import { ballRadiiMm, type RegionRun, regionRuns } from "../../../src/view/regionLayout.ts";
import { hatchRegion } from "../../../src/view/ringHatch.ts";
import { Viewport } from "../../../src/view/viewport.ts";
import { inRegion } from "../../../src/view/zoneMap.ts";
import { shippedProject } from "../../support/projectFiles.ts";

/** A square of 100 mm with a square hole of 40 mm in its middle. */
const HOLED = [
  [0, 0, 100, 0, 100, 100, 0, 100],
  [30, 30, 30, 70, 70, 70, 70, 30],
];
/** One pixel a millimetre; off the whole pixels, so that no stroke runs along an edge. */
const [LEFT, TOP] = [1.11, 1.23];
const viewport = new Viewport({ widthMm: 100, heightMm: 100 }, 100 + LEFT, 100 + TOP, {
  left: LEFT,
  right: 0,
  top: TOP,
  bottom: 0,
});

describe("a hatched region", () => {
  it.each([0, Math.PI / 4, -Math.PI / 4])("is filled without its hole, strokes at %f", (directionRad) => {
    // No line falls on an edge.
    const gapPx = 0.37;
    const strokes = hatchRegion(HOLED, viewport, directionRad, gapPx);
    let length = 0;
    for (const { from, to } of strokes) {
      length += Math.hypot(to.x - from.x, to.y - from.y);
      const inside = inRegion(HOLED, (from.x + to.x) / 2 - LEFT, 100 + TOP - (from.y + to.y) / 2);
      expect(inside || Math.hypot(to.x - from.x, to.y - from.y) < 1e-9).toBe(true);
    }
    // Their length times the gap is the area.
    expect(length * gapPx).toBeGreaterThan(0.98 * (10_000 - 1600));
    expect(length * gapPx).toBeLessThan(1.02 * (10_000 - 1600));
  });
});

it("a place lies in a region, in its hole, or outside", () => {
  expect([inRegion(HOLED, 10, 50), inRegion(HOLED, 50, 50), inRegion(HOLED, 120, 50)]).toEqual([
    true,
    false,
    false,
  ]);
});

const areaOf = (runs: readonly RegionRun[]) =>
  runs.reduce((sum, run) => sum + (run.toMm - run.fromMm) * run.stepMm, 0);

describe("the shaded start region", () => {
  it("has a shade for each size of ball, the larger the smaller", () => {
    const project = shippedProject();
    const [group] = project.balls;
    if (!group) throw new Error("no balls");
    const large = { ...group, kind: { ...group.kind, diameterMm: 60 } };
    const mixed = { ...project, balls: [large, group, large] };
    expect(ballRadiiMm(mixed)).toEqual([20, 30]);
    const [small = 0, big = 0] = ballRadiiMm(mixed).map((radius) => areaOf(regionRuns(mixed, radius)));
    expect(big).toBeGreaterThan(0.5 * small);
    expect(big).toBeLessThan(0.97 * small);
  });

  it("has nearly the area in which the placements fall, and none for fixed spots", () => {
    const project = shippedProject();
    const area = areaOf(regionRuns(project, 20));
    // Zone less wedge, robot and margins: between half and all of the floor.
    expect(area).toBeGreaterThan(0.6 * 1200 * 900);
    expect(area).toBeLessThan(1140 * 840);
    const fixed = { kind: "fixed" as const, positions: [] };
    expect(regionRuns({ ...project, rules: { ...project.rules, layout: fixed } }, 20)).toEqual([]);
  });
});
