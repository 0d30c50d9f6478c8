import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { Project } from "../../src/model/project.ts";
import { generateRoutines } from "../../src/plan/catalogue.ts";
import { pocketsOf } from "../../src/plan/push/pockets.ts";
import { compileTrial } from "../../src/trial/compile.ts";
import { LOSS_REASONS } from "../../src/trial/outcome.ts";
import { runBatch, runTrial } from "../../src/trial/run.ts";
import { shippedProject } from "../support/projectFiles.ts";
import { routineOf } from "../support/scene.ts";
import { anyMoves } from "../support/worlds.ts";

const RADIUS_MM = 20;

/** The usual zone with a robot that is round at the front, too large for the corners, and balls that lie in them. */
function withRoundRobot(
  positions: readonly { xMm: number; yMm: number }[],
  keepOuts: Project["zone"]["keepOuts"] = [],
): Project {
  const base = shippedProject();
  const sides = 24;
  const outline = Array.from({ length: sides }, (_, i) => ({
    xMm: 140 * Math.cos((2 * Math.PI * (i + 0.5)) / sides),
    yMm: 140 * Math.sin((2 * Math.PI * (i + 0.5)) / sides),
  }));
  const [group] = base.balls;
  return {
    ...base,
    zone: { ...base.zone, keepOuts, doorway: { wall: "bottom", centreMm: 400, widthMm: 300 } },
    balls: [{ ...group!, count: positions.length }],
    rules: { ...base.rules, layout: { kind: "fixed", positions } },
    robot: {
      ...base.robot,
      shape: { kind: "polygon", outline, pusherEdges: [22, 23, 0, 1] },
      ground: { kind: "polygon", outline },
      entry: { alongMm: 0, insetMm: 145, headingRad: 0 },
    },
  };
}

const IN_CORNERS = [
  { xMm: 24, yMm: 877 },
  { xMm: 1176, yMm: 22 },
];

describe("balls in dead pockets", () => {
  const project = withRoundRobot(IN_CORNERS);

  it("are marked dead, and others are not", () => {
    const pockets = pocketsOf(project, RADIUS_MM, 2);
    for (const { xMm, yMm } of IN_CORNERS) expect(pockets.isDead(xMm, yMm)).toBe(true);
    expect(pockets.isDead(60, 840)).toBe(false);
    expect(pockets.deadLowMm2).toBeGreaterThan(50);
  });

  it("are never even touched by any pattern", () => {
    const routines = generateRoutines(project).filter((_, i) => i % 8 === 0);
    expect(routines.length).toBeGreaterThan(10);
    const untouched = LOSS_REASONS.indexOf("never-touched");
    for (const routine of routines) {
      const { losses } = runBatch(compileTrial(project, routine), 7, 0, 12);
      // Whatever the reason is called, no ball is lost in another way and none comes home.
      expect((losses[untouched] ?? 0) + (losses[LOSS_REASONS.indexOf("out-of-time")] ?? 0)).toBe(24);
    }
  });

  it("lie where they lay after any moves", () => {
    fc.assert(
      fc.property(anyMoves, (moves) => {
        const { endPositions, delivered } = runTrial(compileTrial(project, routineOf(moves)), 3, 0);
        expect(delivered).toEqual([false, false]);
        expect(endPositions).toEqual(IN_CORNERS);
      }),
      { seed: 20261125, numRuns: 150 },
    );
  });
});

describe("balls between a keep-out and a wall", () => {
  // A pillar 100 mm off the left wall, and one 90 mm off the far wall: the robot is 280 mm across.
  const keepOuts = [
    { xMm: 100, yMm: 380, widthMm: 120, heightMm: 300 },
    { xMm: 460, yMm: 690, widthMm: 260, heightMm: 120 },
  ];
  const behind = [
    { xMm: 45, yMm: 530 },
    { xMm: 590, yMm: 860 },
  ];
  const project = withRoundRobot(behind, keepOuts);

  it("are dead where the robot cannot get in, and not at the ends of the gap", () => {
    const pockets = pocketsOf(project, RADIUS_MM, 8);
    for (const { xMm, yMm } of behind) expect(pockets.isDead(xMm, yMm)).toBe(true);
    expect(pockets.isDead(45, 330)).toBe(false);
    expect(pockets.isDead(260, 530)).toBe(false);
    expect(pockets.deadLowMm2).toBeGreaterThan(5000);
    const open = pocketsOf(withRoundRobot(behind), RADIUS_MM, 8);
    for (const { xMm, yMm } of behind) expect(open.isDead(xMm, yMm)).toBe(false);
  });

  it("lie where they lay after any moves", () => {
    fc.assert(
      fc.property(anyMoves, (moves) => {
        const { endPositions, delivered } = runTrial(compileTrial(project, routineOf(moves)), 3, 0);
        expect(delivered).toEqual([false, false]);
        expect(endPositions).toEqual(behind);
      }),
      { seed: 20261126, numRuns: 100 },
    );
  });
});
