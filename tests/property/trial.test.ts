import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { ballsOf, type Project } from "../../src/model/project.ts";
import type { Move } from "../../src/model/routine.ts";
import { distanceToWedge } from "../../src/model/zoneFrame.ts";
import { bx, by, mode, OUT, vx, vy } from "../../src/trial/balls.kernel.ts";
import { compileTrial } from "../../src/trial/compile.ts";
import { robot, shape } from "../../src/trial/robot.kernel.ts";
import { runBatch, runTrial } from "../../src/trial/run.ts";
import { mirroredMove, mirroredPoints, mirroredProject } from "../support/mirror.ts";
import { overlapWatch } from "../support/overlaps.ts";
import { watchTrial } from "../support/probe.ts";
import { shippedProject } from "../support/projectFiles.ts";
import { routineOf } from "../support/scene.ts";
import { anyMoves, anyProject } from "../support/worlds.ts";

const SEED = 7;
/** Overlap that nothing may exceed at any step, mm. */
const DEEPEST_MM = 0.1;

/** Fixed balls may lie where a robot that starts a little off stands: such a start is not the engine's doing. */
function startingTrue(project: Project): Project {
  const { drift } = project.robot;
  if (project.rules.layout.kind === "random") return project;
  return {
    ...project,
    robot: { ...project.robot, drift: { ...drift, start: { positionSdMm: 0, headingSdRad: 0 } } },
  };
}

describe("in random worlds, routines and trials", () => {
  it("nothing leaves the zone or overlaps by more than 0.1 mm at any step", () => {
    fc.assert(
      fc.property(anyProject, anyMoves, (drawn, moves) => {
        const project = startingTrue(drawn);
        const plan = compileTrial(project, routineOf(moves));
        const overlaps = overlapWatch(plan);
        for (let index = 0; index < 3; index++) {
          watchTrial(plan, SEED, index, (timeS) => {
            for (const { what, depthMm } of overlaps()) {
              if (!(depthMm <= DEEPEST_MM))
                expect.fail(`${what}: ${depthMm} mm at ${timeS} s of trial ${index}`);
            }
          });
          expectBallsAccountedFor(project);
        }
      }),
      { seed: 20261, numRuns: 150 },
    );
  });

  it("no ball is flung: none is much faster than the robot's fastest point can make it", () => {
    fc.assert(
      fc.property(anyProject, anyMoves, (project, moves) => {
        const plan = compileTrial(project, routineOf(moves));
        let tip = 0;
        watchTrial(plan, SEED, 0, () => {
          tip = Math.max(tip, robot.top * (Math.abs(robot.sigma) + Math.abs(robot.kappa) * shape.farthest));
          for (const [i] of plan.kinds.entries()) {
            // (1+e) ≤ 2 times the face's speed at one impact, more when it is hit again coming back from a wall; and what a ramp of 25 mm gives.
            expect(Math.hypot(vx[i]!, vy[i]!)).toBeLessThan(3 * tip + 700);
          }
        });
      }),
      { seed: 20266, numRuns: 150 },
    );
  });

  it("the same seed gives the same trial, alone, in any order and in a batch", () => {
    fc.assert(
      fc.property(anyProject, anyMoves, anyProject, anyMoves, (project, moves, other, otherMoves) => {
        const plan = compileTrial(project, routineOf(moves));
        const alone = [0, 1, 2].map((index) => runTrial(plan, SEED, index));
        // Something else in between, and a plan of its own.
        runTrial(compileTrial(other, routineOf(otherMoves)), SEED + 1, 5);
        const again = compileTrial(project, routineOf(moves));
        for (const index of [2, 0, 1]) expect(runTrial(again, SEED, index)).toEqual(alone[index]);
        const batch = runBatch(again, SEED, 0, 3);
        expect([...batch.delivered]).toEqual(alone.map(({ delivered }) => delivered.filter(Boolean).length));
        const parts = [runBatch(plan, SEED, 1, 3), runBatch(plan, SEED, 0, 1)];
        const sum = (lane: "hashLow" | "hashHigh") =>
          parts.reduce((total, part) => (total + part[lane]) >>> 0, 0);
        expect([sum("hashLow"), sum("hashHigh")]).toEqual([batch.hashLow, batch.hashHigh]);
      }),
      { seed: 20262, numRuns: 60 },
    );
  });

  it("other seeds and other trials are other trials", () => {
    const plan = compileTrial(
      shippedProject(),
      routineOf([{ kind: "drive", distanceMm: 500, speedMmPerS: 200 }]),
    );
    const hashes = [0, 1, 2, 3].flatMap((index) => [1, 2].map((seed) => runTrial(plan, seed, index).hash));
    expect(new Set(hashes).size).toBe(8);
  });

  it("a mirrored project, routine and placement give the mirrored result", () => {
    fc.assert(
      fc.property(anyProject, anyMoves, (project, moves) => {
        const drawn = compileTrial(project, routineOf(moves), { drift: false });
        for (let index = 0; index < 2; index++) {
          const placement = drawn.placements.draw(SEED, index);
          const plain = compileTrial(project, routineOf(moves), { drift: false, placement });
          const image = compileTrial(mirroredProject(project), routineOf(moves.map(mirroredMove)), {
            drift: false,
            placement: mirroredPoints(project.zone, placement),
          });
          const one = runTrial(plain, SEED, index);
          const other = runTrial(image, SEED, index);
          expect(other.delivered).toEqual(one.delivered);
          expect(other.losses).toEqual(one.losses);
          expect([other.jams, other.stalls]).toEqual([one.jams, one.stalls]);
          // x ↦ width − x rounds differently on either side: 1e-13 mm at the start, a thousandfold at each collision.
          for (const [i, end] of mirroredPoints(project.zone, other.endPositions).entries()) {
            expect(
              Math.hypot(end.xMm - one.endPositions[i]!.xMm, end.yMm - one.endPositions[i]!.yMm),
            ).toBeLessThan(1e-5);
          }
        }
      }),
      { seed: 20263, numRuns: 120 },
    );
  });

  it("a time limit of zero delivers only what lay on the wedge", () => {
    fc.assert(
      fc.property(anyProject, anyMoves, (project, moves) => {
        const stopped = { ...project, rules: { ...project.rules, timeLimitS: 0 } };
        const plan = compileTrial(stopped, routineOf(moves), { drift: false });
        const placement = plan.placements
          .draw(SEED, 0)
          .map((point, i) => (i === 0 ? onWedge(project) : point));
        const outcome = runTrial(
          compileTrial(stopped, routineOf(moves), { drift: false, placement }),
          SEED,
          0,
        );
        expect(outcome.timeS).toBe(0);
        // A tray or level top keeps it, a mark on the floor too; a ramp may let it roll out.
        if (project.zone.wedge.profile !== "ramp") expect(outcome.delivered[0]).toBe(true);
        for (const [i, { xMm, yMm }] of placement.entries()) {
          const startedOn = distanceToWedge(project.zone, xMm, yMm) < 0;
          if (startedOn) continue;
          expect(outcome.delivered[i]).toBe(false);
          expect(outcome.losses[i]).toBe("out-of-time");
        }
      }),
      { seed: 20264, numRuns: 100 },
    );
  });
});

/** Balls lie inside the zone, or went out by the doorway. */
function expectBallsAccountedFor(project: Project): void {
  const { widthMm, heightMm, doorway } = project.zone;
  for (const [i, kind] of ballsOf(project).entries()) {
    const [x, y, r] = [bx[i]!, by[i]!, kind.diameterMm / 2];
    const along = doorway.wall === "left" || doorway.wall === "right" ? y : x;
    const inGap = Math.abs(along - doorway.centreMm) <= doorway.widthMm / 2;
    if (mode[i] === OUT) expect(inGap, `ball ${i} went out at ${x}, ${y}`).toBe(true);
    else if (!inGap) {
      expect(Math.min(x, y, widthMm - x, heightMm - y), `ball ${i} lies at ${x}, ${y}`).toBeGreaterThan(
        r - DEEPEST_MM,
      );
    }
  }
}

/** A place deep on the wedge for the project's first ball, where it lies clear of both walls. */
function onWedge(project: Project): { xMm: number; yMm: number } {
  const { zone } = project;
  const { corner } = zone.wedge;
  const inset = (ballsOf(project)[0]?.diameterMm ?? 0) / 2 + 20;
  return {
    xMm: corner.endsWith("right") ? zone.widthMm - inset : inset,
    yMm: corner.startsWith("upper") ? zone.heightMm - inset : inset,
  };
}

describe("a ball straight in front of a drift-free arm robot on a straight line to the wedge", () => {
  it("arrives", () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 250, max: 600 }),
        fc.integer({ min: -30, max: 30 }),
        fc.integer({ min: 60, max: 250 }),
        fc.constantFrom("arm-robot.json", "usual-zone.json", "tray-corner.json"),
        (ballAheadMm, asideMm, speedMmPerS, name) => {
          const outcome = alongDiagonal(shippedProject(name), ballAheadMm, asideMm, speedMmPerS);
          expect(outcome.delivered).toEqual([true]);
        },
      ),
      { seed: 20265, numRuns: 150 },
    );
  });
});

/** Drives the project's robot along the zone's diagonal, head-on to a wedge with equal legs, one ball on its way. */
function alongDiagonal(project: Project, ballAheadMm: number, asideMm: number, speedMmPerS: number) {
  const { zone, robot } = project;
  const side = 1500;
  const leg = 320;
  const heading = Math.PI / 4;
  const start = 420;
  const placement = [
    {
      xMm: start + (ballAheadMm - asideMm) / Math.SQRT2,
      yMm: start + (ballAheadMm + asideMm) / Math.SQRT2,
    },
  ];
  const square: Project = {
    ...project,
    zone: {
      ...zone,
      widthMm: side,
      heightMm: side,
      doorway: { wall: "bottom", centreMm: start, widthMm: 400 },
      wedge: { ...zone.wedge, corner: "upper-right", legXMm: leg, legYMm: leg },
      keepOuts: [],
    },
    balls: [{ ...project.balls[0]!, count: 1 }],
    rules: { ...project.rules, layout: { kind: "fixed", positions: placement } },
    robot: { ...robot, entry: { alongMm: 0, insetMm: start, headingRad: heading - Math.PI / 2 } },
  };
  // Until the ground outline meets the wedge's edge, and a little longer.
  const moves: Move[] = [{ kind: "toWall", distanceMm: 1500, overrunMm: 20, speedMmPerS }];
  return runTrial(compileTrial(square, routineOf(moves), { drift: false, spread: false }), SEED, 0);
}
