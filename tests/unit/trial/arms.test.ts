import { describe, expect, it } from "vitest";
import type { Project } from "../../../src/model/project.ts";
import type { HingedShape } from "../../../src/model/robot.ts";
import type { Move } from "../../../src/model/routine.ts";
import type { PointMm } from "../../../src/model/zone.ts";
import { arms } from "../../../src/trial/arms.kernel.ts";
import { bx, by, vx, vy } from "../../../src/trial/balls.kernel.ts";
import { compileTrial } from "../../../src/trial/compile.ts";
import { armsAt } from "../../../src/trial/playback.ts";
import { recordTrial, runTrial } from "../../../src/trial/run.ts";
import { watchTrial } from "../../support/probe.ts";
import { shippedProject } from "../../support/projectFiles.ts";
import { routineOf } from "../../support/scene.ts";

const shipped = shippedProject("swinging-arms.json");
const shape = shipped.robot.shape as HingedShape;
const close: Move = { kind: "arms", to: "closed", durationS: 0.6 };
const open: Move = { kind: "arms", to: "open", durationS: 0.6 };
const still = { drift: false, spread: false };

/** The robot stands at (300, 500), heading along x; its front is at x = 395, its hinges at y = 430 and 570. */
function project(layout: Partial<HingedShape> = {}): Project {
  const { robot, zone } = shipped;
  return {
    ...shipped,
    zone: { ...zone, doorway: { ...zone.doorway, centreMm: 500 } },
    robot: {
      ...robot,
      shape: { ...shape, ...layout },
      entry: { alongMm: 0, insetMm: 300, headingRad: 0 },
    },
  };
}

const plan = (moves: readonly Move[], placement: readonly PointMm[], layout?: Partial<HingedShape>) => {
  const one = project(layout);
  const balls = [{ ...one.balls[0]!, count: placement.length }];
  return compileTrial({ ...one, balls }, routineOf(moves), { ...still, placement });
};

describe("a swinging arm", () => {
  it("strikes a resting ball with the speed that its arm has there, and the restitution of the pair", () => {
    const ball = { xMm: 455, yMm: 545 };
    const struck: number[] = [];
    const trial = plan([close], [ball]);
    watchTrial(trial, 1, 0, () => {
      const speed = Math.hypot(vx[0]!, vy[0]!);
      if (struck.length === 0 && speed > 0) {
        // Foot of the ball's middle on the left arm's inner side, from the hinge at (395, 570).
        const along = (ball.xMm - 395) * Math.cos(arms.angle) + (ball.yMm - 570) * Math.sin(arms.angle);
        struck.push(speed, 1.4 * shape.swingRateRadPerS * along);
      }
    });
    const [speed = 0, expected = 0] = struck;
    expect(expected).toBeGreaterThan(100);
    // The step in which it is struck turns the arm by half a degree.
    expect(speed / expected).toBeCloseTo(1, 1);
    expect(by[0]).toBeLessThan(ball.yMm);
  });

  it("takes its angle over its speed, and a shorter move leaves it on the way", () => {
    const { recording } = recordTrial(
      plan([close, { ...open, durationS: 0.25 }], [{ xMm: 900, yMm: 200 }]),
      1,
      0,
    );
    const swing = shape.openAngleRad - shape.closedAngleRad;
    expect(armsAt(recording, 0)).toBe(shape.openAngleRad);
    expect(armsAt(recording, 0.2)).toBeCloseTo(shape.openAngleRad - 0.2 * shape.swingRateRadPerS, 9);
    expect(armsAt(recording, swing / shape.swingRateRadPerS + 0.01)).toBe(shape.closedAngleRad);
    expect(armsAt(recording, recording.durationS)).toBeCloseTo(
      shape.closedAngleRad + 0.25 * shape.swingRateRadPerS,
      6,
    );
  });

  it("begins every run open", () => {
    const trial = plan([close], [{ xMm: 900, yMm: 200 }]);
    const first = runTrial(trial, 1, 0);
    expect(runTrial(trial, 1, 0)).toEqual(first);
    expect(armsAt(recordTrial(trial, 1, 0).recording, 0)).toBe(shape.openAngleRad);
  });

  it("stops at a wall, and says so", () => {
    // Closed, the tips are 76 mm ahead of the front; straight ahead they would be 95, and the wall is 85 mm away.
    const up: Move = { kind: "drive", distanceMm: 620, speedMmPerS: 250 };
    const { outcome, recording } = recordTrial(plan([close, up, open], [{ xMm: 200, yMm: 900 }]), 1, 0);
    expect(outcome.stalls).toBe(1);
    expect(recording.events.some(({ kind, move }) => kind === "stall" && move === 2)).toBe(true);
    const angle = armsAt(recording, recording.durationS) ?? 0;
    expect(angle).toBeLessThan(0);
    expect(shape.armLengthMm * Math.cos(angle)).toBeCloseTo(85, 1);
  });
});

describe("closing arms", () => {
  it("hold two balls between them without squeezing them: they stop as the wheels do", () => {
    const placement = [
      { xMm: 440, yMm: 478 },
      { xMm: 440, yMm: 522 },
      { xMm: 440 + 36, yMm: 500 },
    ];
    const { outcome, recording } = recordTrial(plan([close], placement, { closedAngleRad: -0.69 }), 1, 0);
    const angle = armsAt(recording, recording.durationS) ?? 0;
    for (const { xMm, yMm } of outcome.endPositions) {
      expect(xMm).toBeGreaterThan(395 + 20 - 0.1);
      expect(Math.abs(yMm - 500)).toBeLessThan(70);
    }
    expect(angle).toBeLessThan(0);
  });

  it("a robot whose arms do not move stands for as long", () => {
    const fixed = shippedProject("arm-robot.json");
    const outcome = runTrial(compileTrial(fixed, routineOf([close, open]), still), 1, 0);
    expect(outcome.timeS).toBeCloseTo(1.2, 9);
    expect(outcome.stalls).toBe(0);
    expect(bx.length).toBeGreaterThan(0);
  });
});
