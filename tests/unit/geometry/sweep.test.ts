import { describe, expect, test } from "vitest";
import { GeometryError } from "../../../src/geometry/error.ts";
import { regionAreaMm2, regionContains, unionOf } from "../../../src/geometry/region.ts";
import { type SweepLists, sweepRotation } from "../../../src/geometry/sweep.kernel.ts";
import {
  ringsNear,
  type SweepPiece,
  type SweepPose,
  sweepOf,
  sweptByOutline,
} from "../../../src/geometry/sweep.ts";

const ORIGIN: SweepPose = { xMm: 0, yMm: 0, headingRad: 0 };
const BAR = [0, -50, 0, 50];

const line = (dx: number, dy: number): SweepPiece => ({
  kind: "line",
  from: ORIGIN,
  to: { xMm: dx, yMm: dy, headingRad: 0 },
  centreXMm: 0,
  centreYMm: 0,
  angleRad: 0,
});
const rotation = (centreXMm: number, centreYMm: number, angleRad: number): SweepPiece => ({
  kind: "rotation",
  from: ORIGIN,
  to: ORIGIN,
  centreXMm,
  centreYMm,
  angleRad,
});

const area = (
  pieces: readonly SweepPiece[],
  radius: number,
  bound: "inside" | "outside",
  chain = BAR,
): number => regionAreaMm2(unionOf(ringsNear(sweepOf([chain], ORIGIN, pieces), radius, bound)));

function expectAround(pieces: readonly SweepPiece[], radius: number, expected: number, chain = BAR): void {
  expect(area(pieces, radius, "inside", chain)).toBeLessThanOrEqual(expected);
  expect(area(pieces, radius, "outside", chain)).toBeGreaterThanOrEqual(expected);
  expect(area(pieces, radius, "outside", chain) / area(pieces, radius, "inside", chain)).toBeLessThan(1.02);
}

const STADIUM = 100 * 20 + Math.PI * 100;

describe("a polyline that sweeps no width", () => {
  test("before it moves at all: a band around where it stands", () => {
    expectAround([], 10, STADIUM);
  });

  test("on a move of no length", () => {
    expectAround([line(0, 0)], 10, STADIUM);
    expectAround([rotation(30, 0, 0)], 10, STADIUM);
  });

  test("on a move along itself: the band grows longer, not wider", () => {
    expectAround([line(0, 80)], 10, STADIUM + 80 * 20);
    expectAround([line(0, -80)], 10, STADIUM + 80 * 20);
  });

  test("on a move along one of its edges: that edge still counts", () => {
    // An L: the upright sweeps 30 × 40, the level edge slides along itself.
    const corner = [0, 40, 0, 0, 60, 0];
    const near = unionOf(ringsNear(sweepOf([corner], ORIGIN, [line(30, 0)]), 5, "inside"));
    expect(regionContains(near, 85, 0)).toBe(true);
    expect(regionContains(near, 75, 4)).toBe(true);
    expect(regionContains(near, 75, 6)).toBe(false);
    expect(regionContains(near, 15, 20)).toBe(true);
  });

  test("when it turns on a circle about the centre", () => {
    // 0.01 mm long, 200 mm out: half an annulus of width 20, rounded at both ends.
    expectAround([rotation(-200, 0, Math.PI)], 10, Math.PI * 200 * 20 + Math.PI * 100, [0, 0, 0.01, 0]);
  });

  test("has no area of its own", () => {
    expect(area([], 0, "outside")).toBe(0);
  });
});

describe("a bar that turns", () => {
  test("about its middle, half a turn: the whole disc", () => {
    expectAround([rotation(0, 0, Math.PI)], 0, Math.PI * 2500);
  });

  test("about one end, a quarter: a quarter disc, either way round", () => {
    expectAround([rotation(0, -50, Math.PI / 2)], 0, (Math.PI / 4) * 10000);
    expectAround([rotation(0, -50, -Math.PI / 2)], 0, (Math.PI / 4) * 10000);
  });

  test("about a point 120 mm aside, once round: an annulus from the foot to the ends", () => {
    expectAround([rotation(-120, 0, 2 * Math.PI)], 0, Math.PI * 2500);
    expectAround([rotation(-120, 0, 2 * Math.PI)], 20, Math.PI * ((130 + 20) ** 2 - (120 - 20) ** 2));
  });

  test("more than once round sweeps no more than once", () => {
    expect(area([rotation(-120, 0, 9)], 0, "inside")).toBeCloseTo(
      area([rotation(-120, 0, 2 * Math.PI)], 0, "inside"),
      -2,
    );
  });

  test("about a far centre sweeps nearly what a straight move does", () => {
    const far = area([rotation(0, 20000, 0.005)], 0, "inside");
    expect(far).toBeCloseTo(100 * 100, -1);
  });
});

test("a curve too flat to have a centre is a straight move", () => {
  const flat: SweepPiece = { ...rotation(0, 1e15, 1e-13), to: { xMm: 100, yMm: 0, headingRad: 1e-13 } };
  expect(area([flat], 0, "inside")).toBe(100 * 100);
});

describe("a filled outline", () => {
  const square = [-10, -10, 10, -10, 10, 10, -10, 10];

  test("that does not move is itself", () => {
    expect(regionAreaMm2(sweptByOutline(square, ORIGIN, [], "inside"))).toBe(400);
  });

  test("covers its inside all the way", () => {
    const swept = sweptByOutline(square, ORIGIN, [line(100, 0)], "outside");
    expect(swept).toHaveLength(1);
    expect(regionAreaMm2(swept)).toBe(120 * 20);
  });

  test("that turns about its own middle keeps its middle", () => {
    const swept = sweptByOutline(square, ORIGIN, [rotation(0, 0, 2 * Math.PI)], "inside");
    expect(swept).toHaveLength(1);
    expect(regionAreaMm2(swept)).toBeGreaterThan(0.99 * Math.PI * 200);
    expect(regionAreaMm2(swept)).toBeLessThan(Math.PI * 200);
  });
});

describe("patches of a rotation", () => {
  // Edges that end almost along the circle: a chord of the outer arc could pass under them and the outline cross itself.
  const chains = [
    [50, 0, 100, 0, 100, 4],
    [50, 0, 100, 0, 100, -4],
    [500, 0, 1000, 0, 1000, 6],
    [500, 0, 1000, 0, 1000, -6],
    [60, 0, 60, 3, 120, 3],
    [80, -30, 90, 0, 90.02, 1.5, 90.1, 3, 140, 3],
  ];

  test.each(chains)("wind round nothing the wrong way, case %#", (...chain) => {
    for (const angle of [2, -2, 0.3, -0.3, 0.02, -0.02, 6]) {
      const lists: SweepLists = { inside: [], outside: [], threads: [] };
      sweepRotation(chain, 0, 0, angle, 0.05, lists);
      for (const ring of [...lists.inside, ...lists.outside]) {
        const onGrid = ring.map((mm) => Math.round(mm * 1000) / 1000);
        expect(regionAreaMm2([ring])).toBeGreaterThan(0);
        // Crossings are rounded to the grid; a real loop would add some 0.1 mm².
        expect(Math.abs(regionAreaMm2(unionOf([onGrid])) - regionAreaMm2([onGrid]))).toBeLessThan(0.02);
      }
    }
  });
});

test("a polyline of one corner is refused", () => {
  expect(() => sweepOf([[0, 0]], ORIGIN, [])).toThrow(GeometryError);
});
