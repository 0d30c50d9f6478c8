import { describe, expect, test } from "vitest";
import { intersectionOf, regionAreaMm2 } from "../../../src/geometry/region.ts";
import type { Move } from "../../../src/model/routine.ts";
import { RoutineMaker } from "../../../src/plan/maker.ts";
import { coverageOf } from "../../../src/score/coverage.ts";
import { type DriftBounds, driftBounds, scaledBounds } from "../../../src/score/driftBounds.ts";
import { driftBudget } from "../../../src/score/driftBudget.ts";
import { sureCoverage } from "../../../src/score/sureCoverage.ts";
import { largestShift } from "../../../src/score/sureFree.ts";
import { sureTrack } from "../../../src/score/sureTrack.ts";
import { answered } from "../../support/answered.ts";
import { shippedProject } from "../../support/projectFiles.ts";

const drive = (distanceMm: number): Move => ({ kind: "drive", distanceMm, speedMmPerS: 150 });
const turn = (angleRad: number): Move => ({ kind: "turn", angleRad, rateRadPerS: 1 });
const toWall = (distanceMm: number, overrunMm: number): Move => ({
  kind: "toWall",
  distanceMm,
  overrunMm,
  speedMmPerS: 150,
});

describe("without drift", () => {
  test.each(["usual-zone.json", "plate-robot.json"])("sure coverage is coverage: %s", (name) => {
    const project = shippedProject(name);
    const routine = new RoutineMaker(project).make("diag-s90-c0-b-v60") ?? { moves: [drive(100)] };
    const plain = coverageOf(project, routine);
    const sure = sureCoverage(project, routine, driftBounds(project.robot.drift, 0));
    expect(sure.endsAt).toBeNull();
    expect(plain.coverageFrac).toBeGreaterThan(0.2);
    expect(Math.abs(sure.sureFrac - plain.coverageFrac)).toBeLessThan(plain.errorFrac + 1e-4);
    expect(Math.abs(sure.neverFrac - (1 - plain.coverageFrac))).toBeLessThan(plain.errorFrac + 1e-4);
  });
});

test("a corner is taken to move by the error of place and by the swing of the heading together", () => {
  // A corner 100 mm off swings by 100·2·sin(0.05) = 9.996 mm when the heading is 0.1 rad off.
  const error = { x: [0, 3], y: [0, 0, 4], heading: [0, 0, 0, 0.1], restMm: 0, restRad: 0 };
  expect(largestShift(error, 100)).toBeGreaterThan(5 + 9.99);
  expect(largestShift(error, 100)).toBeLessThan(5 + 10.1);
});

describe("with drift", () => {
  const project = shippedProject();
  const moves = [
    drive(250),
    turn(-Math.PI / 2),
    toWall(-90, -60),
    drive(600),
    drive(-400),
    turn(0.7),
    drive(200),
  ];
  const bounds = driftBounds(project.robot.drift, 1);
  const coverage = sureCoverage(project, { moves }, bounds);

  test("the three regions make up the floor, and what is sure is covered", () => {
    const [size] = coverage.sizes;
    const { sure = [], perhaps = [], never = [], reachableAreaMm2 = 0 } = size ?? {};
    const sum = [sure, perhaps, never].reduce((total, region) => total + regionAreaMm2(region), 0);
    expect(Math.abs(sum - reachableAreaMm2)).toBeLessThan(20);
    for (const area of [sure, perhaps, never].map(regionAreaMm2)) expect(area).toBeGreaterThan(1000);
    expect(regionAreaMm2(intersectionOf(sure, never))).toBe(0);
    const blind = coverageOf(project, { moves }).sizes[0]?.blindSpots ?? [];
    expect(regionAreaMm2(intersectionOf(sure, blind))).toBeLessThan(5);
  });

  test("wider bounds promise less", () => {
    const shares = [0, 0.5, 1, 2].map(
      (factor) => sureCoverage(project, { moves }, scaledBounds(bounds, factor)).sureFrac,
    );
    for (let i = 1; i < shares.length; i++) expect(shares[i]).toBeLessThan(shares[i - 1] ?? 0);
  });

  test("a square-up takes the heading error away, and the distance from the wall", () => {
    const track = sureTrack(project, moves.slice(0, 4), bounds);
    const [, , back, out] = track.stretches;
    expect(back?.arrived).not.toBeNull();
    expect(out?.error.heading.every((value) => value === 0)).toBe(true);
    // Squared up on the left wall: x is known to a hair, y is not.
    expect(out?.error.x.reduce((sum, value) => sum + Math.abs(value), 0)).toBe(0);
    expect(out?.error.y.reduce((sum, value) => sum + Math.abs(value), 0)).toBeGreaterThan(5);
  });

  test("a wall that may not be reached ends the promise", () => {
    const short = [...moves.slice(0, 2), toWall(-85, 0), drive(600)];
    expect(sureCoverage(project, { moves: short }, bounds).endsAt).toEqual({
      move: 2,
      reason: "may-not-reach",
    });
  });

  test("so does a turn that may hit a wall", () => {
    const near = [...moves.slice(0, 3), drive(35), turn(Math.PI / 2), drive(100)];
    const { endsAt, neverFrac } = sureCoverage(project, { moves: near }, scaledBounds(bounds, 3));
    expect(endsAt?.reason).toBe("may-hit");
    expect(neverFrac).toBe(0);
  });

  test("the budget is the drift at which a wanted share is just sure", () => {
    const wanted = 0.8 * coverageOf(project, { moves }).coverageFrac;
    const shareIn = (within: DriftBounds) => sureCoverage(project, { moves }, within).sureFrac;
    const budget = answered(driftBudget(bounds, wanted, { steps: 6 }), shareIn);
    expect(budget.isOpen).toBe(false);
    const { factor, toleranceFactor } = budget;
    expect(factor).toBeGreaterThan(0);
    expect(sureCoverage(project, { moves }, scaledBounds(bounds, factor)).sureFrac).toBeGreaterThanOrEqual(
      wanted,
    );
    const beyond = sureCoverage(project, { moves }, scaledBounds(bounds, factor + toleranceFactor));
    expect(beyond.sureFrac).toBeLessThan(wanted);
    expect(answered(driftBudget(bounds, 0.99, { steps: 2 }), shareIn)).toMatchObject({ factor: 0 });
    expect(answered(driftBudget(bounds, 0.01, { most: 0.5 }), shareIn)).toMatchObject({
      factor: 0.5,
      isOpen: true,
    });
  });
});
