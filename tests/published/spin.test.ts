import { describe, expect, it } from "vitest";
import type { TrialOptions } from "../../src/trial/plan.ts";
import { inRobot, startingAt } from "../support/approach.ts";
import { inTheLimit, runInMotion } from "../support/inMotion.ts";

const R_MM = 20;
const D_MM = 120;
const MIDDLE_MM = 2000;
/** A small body and one arm, whose left face lies so that a ball touching it has its centre on the ray from the axle. */
const ARM = [
  [-40, -40],
  [40, -40],
  [40, -R_MM - 8],
  [700, -R_MM - 8],
  [700, -R_MM],
  [40, -R_MM],
  [40, 40],
  [-40, 40],
].map(([xMm, yMm]) => ({ xMm: xMm!, yMm: yMm! }));

/**
 * A spin on the spot at an even rate, the ball before the arm and rolling with it from the start, no friction between
 * them, a floor on which it rolls at once: where the ball is at the end, as a multiple of its first distance.
 */
function flungOut(degrees: number, rate: number, rollingResistance: number, options: TrialOptions): number {
  const kind = {
    diameterMm: 2 * R_MM,
    build: "solid",
    rollingResistance,
    frictionCoeff: 0,
    floorFrictionCoeff: 1e3,
  } as const;
  const at = { x: MIDDLE_MM + D_MM, y: MIDDLE_MM, vx: 0, vy: rate * D_MM };
  const project = startingAt(
    { x: MIDDLE_MM, y: MIDDLE_MM, headingRad: 0 },
    {
      zone: { widthMm: 2 * MIDDLE_MM, heightMm: 2 * MIDDLE_MM },
      robot: {
        shape: { kind: "polygon", outline: ARM, pusherEdges: [4] },
        surface: { restitution: 0, frictionCoeff: 0 },
      },
      balls: [{ ...at, kind }],
    },
  );
  const spin = { sigma: 0, kappa: 1, length: (degrees * Math.PI) / 180, rate };
  const { ball, pose } = runInMotion(project, at, spin, options);
  return inRobot(pose, { xMm: ball.x, yMm: ball.y }).xMm / D_MM;
}

/** Over a turn of 0.1 ms, the shortest step of the engine, nothing can be told. */
const stepFor = (rate: number): number => (rate > 2 ? 1 / 2000 : 1 / 4000);
const limitOf = (degrees: number, rate: number, c: number): number =>
  inTheLimit(stepFor(rate), (options) => flungOut(degrees, rate, c, options));

describe("a ball before a radial arm that spins on the spot", () => {
  // Bead on a rod, derived: r = d·cosh Θ whatever the rate: 45° 1.324609 d, 90° 2.509178 d.
  it.each([
    [45, 0.5, 1.324609],
    [90, 0.5, 2.509178],
  ])(
    "after %f° at %f rad/s is at %f of its distance, without rolling resistance",
    (degrees, rate, factor) => {
      expect(limitOf(degrees, rate, 1e-9)).toBeCloseTo(factor, 6);
    },
  );

  it("is flung as far at ten times the rate", () => {
    expect(limitOf(90, 5, 1e-9)).toBeCloseTo(2.509178, 6);
  });

  // Derived: with a rolling deceleration of 0.1962 m/s² and d = 0.12 m, after 90°: 1.2642 d at 0.5 rad/s, 2.1674 d at 1.5, 2.4750 d at 5. A slow spin keeps the ball, a fast one flings it.
  it.each([
    [0.5, 1.2642],
    [1.5, 2.1674],
    [5, 2.475],
  ])("after 90° at %f rad/s is at %f of its distance, slowed by 0.1962 m/s²", (rate, factor) => {
    expect(limitOf(90, rate, 0.02)).toBeCloseTo(factor, 4);
  });

  it("is flung as far, within 0.5 %, at the step the trials use", () => {
    for (const [rate, c, factor] of [
      [0.5, 1e-9, 2.509178],
      [5, 1e-9, 2.509178],
      [0.5, 0.02, 1.2642],
      [1.5, 0.02, 2.1674],
      [5, 0.02, 2.475],
    ] as const) {
      const share = flungOut(90, rate, c, {}) / factor;
      expect(share, `${rate} rad/s`).toBeGreaterThan(0.995);
      expect(share, `${rate} rad/s`).toBeLessThan(1.005);
    }
  });
});
