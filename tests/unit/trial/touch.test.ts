import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { RobotShape } from "../../../src/model/robot.ts";
import { PathTracer } from "../../../src/motion/path.kernel.ts";
import { surroundingsOf } from "../../../src/motion/surroundings.ts";
import { compileTrial } from "../../../src/trial/compile.ts";
import { touchAt } from "../../../src/trial/firstTouch.kernel.ts";
import { loadBalls, loadPlan } from "../../../src/trial/load.kernel.ts";
import { robot } from "../../../src/trial/robot.kernel.ts";
import { startingAt } from "../../support/approach.ts";
import { signedDistance } from "../../support/overlaps.ts";
import { PLAIN_ROBOT, routineOf } from "../../support/scene.ts";

/** The touch of a resting ball that the engine finds ahead, against the same motion looked at in small steps. */

const SHAPES: readonly RobotShape[] = [
  PLAIN_ROBOT.shape,
  {
    kind: "arms",
    bodyLengthMm: 170,
    bodyWidthMm: 140,
    axleFromRearMm: 75,
    armLengthMm: 95,
    armThicknessMm: 8,
    armAngleRad: 0.2,
  },
  {
    kind: "scoop",
    bodyLengthMm: 160,
    bodyWidthMm: 140,
    axleFromRearMm: 70,
    openingMm: 180,
    depthMm: 80,
    sideThicknessMm: 6,
  },
];
const CENTRE = 2000;
const R = 20;

const step = (min: number, max: number) =>
  fc.integer({ min: 0, max: 10_000 }).map((n) => min + ((max - min) * n) / 10_000);

const motion = fc.oneof(
  fc.record({ sigma: fc.constantFrom(1, -1), kappa: fc.constant(0), length: step(50, 700) }),
  fc.record({ sigma: fc.constant(0), kappa: fc.constantFrom(1, -1), length: step(0.3, 6) }),
  fc.record({ sigma: fc.constantFrom(1, -1), kappa: step(-0.01, 0.01), length: step(50, 700) }),
);

describe("the touch that is found ahead", () => {
  it("is never later than the real one, nor earlier than the touch tolerance explains", () => {
    fc.assert(
      fc.property(
        fc.constantFrom(...SHAPES),
        motion,
        step(-500, 500),
        step(-500, 500),
        (shape, { sigma, kappa, length }, dx, dy) => {
          const ball = { x: CENTRE + dx, y: CENTRE + dy };
          const project = startingAt(
            { x: CENTRE, y: CENTRE, headingRad: 0 },
            { zone: { widthMm: 2 * CENTRE, heightMm: 2 * CENTRE }, robot: { shape }, balls: [ball] },
          );
          const plan = compileTrial(project, routineOf([]), { drift: false, spread: false });
          const ring = plan.outline.footprint.map((p) => [p.xMm, p.yMm] as const);
          fc.pre(signedDistance(ring, [dx, dy]) > R + 0.01);
          loadPlan(plan);
          loadBalls(plan, 0, 0, [{ xMm: ball.x, yMm: ball.y }]);
          const path = new PathTracer(surroundingsOf(project.zone, project.robot), project.robot.drive);
          path.plan(CENTRE, CENTRE, 1, 0, 0, sigma, kappa, length);
          const found = touchAt(0, path.pieces, path.count, 0, path.stopQ);
          // Gap between ball and footprint at progress q.
          const at = new Float64Array(7);
          const gapAt = (q: number): number => {
            path.poseAt(q, at);
            const [x, y, c, s] = [ball.x - at[0]!, ball.y - at[1]!, at[2]!, at[3]!];
            return signedDistance(ring, [c * x + s * y, -s * x + c * y]) - R;
          };
          const reach = sigma === 0 ? 600 : 1 + Math.abs(kappa) * 600;
          const steps = Math.ceil((length * reach) / 0.5);
          let least = gapAt(0);
          for (let n = 1; n <= steps; n++) {
            const q = (length * n) / steps;
            if (q < Math.min(found, length) - 1e-9) least = Math.min(least, gapAt(q));
          }
          expect(least).toBeGreaterThan(0);
          // Half the touch tolerance of 0.002 mm, and a grazing pass within it.
          if (found < length) expect(Math.abs(gapAt(found))).toBeLessThan(0.0021);
          expect(robot.rate).toBe(0);
        },
      ),
      { seed: 51, numRuns: 250 },
    );
  });
});
