import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { withArmsAt } from "../../src/model/arms.ts";
import { robotOutline } from "../../src/model/outline.ts";
import type { Project } from "../../src/model/project.ts";
import type { HingedShape } from "../../src/model/robot.ts";
import type { Move } from "../../src/model/routine.ts";
import { Walker } from "../../src/motion/walker.ts";
import { arms } from "../../src/trial/arms.kernel.ts";
import { bx, by, energyOf } from "../../src/trial/balls.kernel.ts";
import { compileTrial } from "../../src/trial/compile.ts";
import { armsAt } from "../../src/trial/playback.ts";
import { robot } from "../../src/trial/robot.kernel.ts";
import { recordTrial, runTrial } from "../../src/trial/run.ts";
import { mirroredMove, mirroredPoints, mirroredProject } from "../support/mirror.ts";
import { overlapWatch, signedDistance } from "../support/overlaps.ts";
import { watchTrial } from "../support/probe.ts";
import { shippedProject } from "../support/projectFiles.ts";
import { routineOf } from "../support/scene.ts";

const SEED = 11;
const DEEPEST_MM = 0.1;

const base = shippedProject("swinging-arms.json");
const shape = base.robot.shape as HingedShape;

/** The shipped robot with other arms, in a zone of another size, now and then with a post in it, lifted into the zone. */
const anyArmed: fc.Arbitrary<Project> = fc
  .record({
    openAngleRad: fc.double({ min: 0, max: 1, noNaN: true }),
    closedAngleRad: fc.double({ min: -0.66, max: -0.1, noNaN: true }),
    swingRateRadPerS: fc.double({ min: 0.5, max: 6, noNaN: true }),
    hingeAsideMm: fc.constantFrom(70, 66),
    widthMm: fc.integer({ min: 700, max: 1100 }),
    post: fc.boolean(),
    insetMm: fc.integer({ min: 130, max: 250 }),
  })
  .map(({ widthMm, post, insetMm, ...swing }) => ({
    ...base,
    zone: {
      ...base.zone,
      widthMm,
      keepOuts: post ? [{ xMm: 460, yMm: 250, widthMm: 30, heightMm: 30 }] : [],
    },
    rules: { ...base.rules, timeLimitS: 25 },
    robot: {
      ...base.robot,
      shape: { ...shape, ...swing },
      entry: { ...base.robot.entry, insetMm },
    },
  }));

const anyMove: fc.Arbitrary<Move> = fc.oneof(
  fc.record({
    kind: fc.constant("arms" as const),
    to: fc.constantFrom("open" as const, "closed" as const),
    durationS: fc.constantFrom(0.2, 0.8, 1.5),
  }),
  fc.record({
    kind: fc.constant("drive" as const),
    distanceMm: fc.integer({ min: -300, max: 500 }),
    speedMmPerS: fc.integer({ min: 60, max: 250 }),
  }),
  fc.record({
    kind: fc.constant("turn" as const),
    angleRad: fc.double({ min: -3, max: 3, noNaN: true }),
    rateRadPerS: fc.double({ min: 0.4, max: 2, noNaN: true }),
  }),
);
const anyMoves = fc.array(anyMove, { minLength: 3, maxLength: 9 });

describe("while arms swing and after", () => {
  it("nothing leaves the zone or overlaps by more than 0.1 mm at any step", () => {
    let swung = 0;
    fc.assert(
      fc.property(anyArmed, anyMoves, (project, moves) => {
        const plan = compileTrial(project, routineOf(moves));
        const overlaps = overlapWatch(plan);
        for (let index = 0; index < 2; index++) {
          watchTrial(plan, SEED, index, (timeS) => {
            if (arms.angle !== plan.arms?.arms.openAngleRad) swung++;
            for (const { what, depthMm } of overlaps()) {
              if (!(depthMm <= DEEPEST_MM))
                expect.fail(`${what}: ${depthMm} mm at ${timeS} s of trial ${index}`);
            }
          });
        }
      }),
      { seed: 20271, numRuns: 60 },
    );
    expect(swung).toBeGreaterThan(1000);
  });

  it("a mirrored project, routine and placement give the mirrored result", () => {
    fc.assert(
      fc.property(anyArmed, anyMoves, (project, moves) => {
        const placement = compileTrial(project, routineOf(moves), { drift: false }).placements.draw(SEED, 0);
        const one = runTrial(compileTrial(project, routineOf(moves), { drift: false, placement }), SEED, 0);
        const image = compileTrial(mirroredProject(project), routineOf(moves.map(mirroredMove)), {
          drift: false,
          placement: mirroredPoints(project.zone, placement),
        });
        const other = runTrial(image, SEED, 0);
        expect([other.delivered, other.jams, other.stalls]).toEqual([one.delivered, one.jams, one.stalls]);
        for (const [i, end] of mirroredPoints(project.zone, other.endPositions).entries()) {
          const at = one.endPositions[i]!;
          expect(Math.hypot(end.xMm - at.xMm, end.yMm - at.yMm)).toBeLessThan(1e-5);
        }
      }),
      { seed: 20272, numRuns: 60 },
    );
  });

  it("the nominal walk and a run without drift or balls leave the arms at the same angle", () => {
    fc.assert(
      fc.property(anyArmed, anyMoves, (project, moves) => {
        const empty = { ...project, balls: [] };
        const walker = new Walker(empty);
        for (const move of moves) walker.advance(move);
        const { recording } = recordTrial(
          compileTrial(empty, routineOf(moves), { drift: false, placement: [] }),
          SEED,
          0,
        );
        fc.pre(walker.timeS < 25);
        expect(armsAt(recording, recording.durationS)).toBeCloseTo(walker.armsAngleRad, 9);
      }),
      { seed: 20273, numRuns: 60 },
    );
  });

  it("balls gain no energy once arms and robot stand", () => {
    fc.assert(
      fc.property(anyArmed, anyMoves, (project, moves) => {
        const flat: Project = {
          ...project,
          zone: { ...project.zone, wedge: { ...project.zone.wedge, profile: "flat" } },
        };
        const plan = compileTrial(flat, routineOf([...moves, { kind: "wait", durationS: 2 }]));
        let before = Number.POSITIVE_INFINITY;
        let waits = false;
        const start = new Walker(flat);
        for (const move of moves) start.advance(move);
        watchTrial(plan, SEED, 0, (timeS) => {
          const now = plan.kinds.reduce((sum, { massKg }, i) => sum + massKg * energyOf(i), 0);
          waits = timeS > start.timeS + 0.01;
          if (waits) expect(now).toBeLessThanOrEqual(before * (1 + 1e-9) + 1e-9);
          before = now;
        });
      }),
      { seed: 20274, numRuns: 40 },
    );
  });
});

describe("a ball caged by closed arms", () => {
  it("stays caged in turns and in reverse, whatever the speed", () => {
    fc.assert(
      fc.property(
        fc.integer({ min: -35, max: 35 }),
        fc.array(
          fc.oneof(
            fc.record({
              kind: fc.constant("turn" as const),
              angleRad: fc.double({ min: -3, max: 3, noNaN: true }),
              rateRadPerS: fc.double({ min: 0.4, max: 2.1, noNaN: true }),
            }),
            fc.record({
              kind: fc.constant("drive" as const),
              distanceMm: fc.integer({ min: -100, max: 100 }),
              speedMmPerS: fc.integer({ min: 60, max: 250 }),
            }),
          ),
          { minLength: 2, maxLength: 6 },
        ),
        (asideMm, carried) => {
          // Far enough from the doorway that a robot which only reverses does not take the ball out by it.
          const entry = { ...base.robot.entry, insetMm: 400 };
          const project = { ...base, robot: { ...base.robot, entry } };
          const close: Move = { kind: "arms", to: "closed", durationS: 0.6 };
          const gather: Move = { kind: "drive", distanceMm: 200, speedMmPerS: 120 };
          const placement = [
            { xMm: 655, yMm: 180 + asideMm },
            { xMm: 900, yMm: 100 },
            { xMm: 100, yMm: 900 },
          ];
          const plan = compileTrial(project, routineOf([gather, close, ...carried]), {
            drift: false,
            placement,
          });
          const closed = placedOutline();
          watchTrial(plan, SEED, 0, (timeS) => {
            if (timeS < CLOSED_AT_S) return;
            const [dx, dy] = [bx[0]! - robot.x, by[0]! - robot.y];
            const at = [robot.c * dx + robot.s * dy, robot.c * dy - robot.s * dx] as const;
            // Inside the hull of the closed robot and outside the robot itself: between the arms.
            expect(signedDistance(closed.hull, at)).toBeLessThan(0);
            expect(signedDistance(closed.ring, at)).toBeGreaterThan(19.9);
          });
        },
      ),
      { seed: 20275, numRuns: 80 },
    );
  });
});

/** 200 mm at 120 mm/s with ramps, and the swing. */
const CLOSED_AT_S = 1.907 + 0.6;

function placedOutline() {
  const { footprint } = robotOutline(withArmsAt(base.robot, shape.closedAngleRad));
  const ring = footprint.map(({ xMm, yMm }) => [xMm, yMm] as const);
  const front = Math.max(...ring.map(([x]) => x));
  // The tips' outer corners close the cage.
  const tips = ring.filter(([x]) => x > front - 12);
  const rear = ring.filter(([x]) => x < 96);
  const order = [...rear.filter(([, y]) => y < 0), ...tips, ...rear.filter(([, y]) => y > 0)];
  return { ring, hull: order };
}
