import { describe, expect, it, vi } from "vitest";
import type { BallKind } from "../../src/model/ball.ts";
import { compileTrial, type TrialOptions } from "../../src/trial/compile.ts";
import { watchTrial } from "../support/probe.ts";
import { routineOf, sceneProject, stateOf } from "../support/scene.ts";

/** What the robot's faces have given the ball: sum of the normal impulses over its mass, mm/s. */
const given = vi.hoisted(() => ({ impulse: 0 }));

// The engine as it is, but for a counter at its impulses: without rebound a face's impulse is the closing speed it met.
vi.mock("../../src/trial/impulse.kernel.ts", async (original) => {
  const real = await original<typeof import("../../src/trial/impulse.kernel.ts")>();
  const strikeFace: typeof real.strikeFace = (...contact) => {
    const closing = real.strikeFace(...contact);
    given.impulse += closing;
    return closing;
  };
  return { ...real, strikeFace };
});

const FROM_S = 5;
const UNTIL_S = 25;

/**
 * A plate drives a ball straight on at 200 mm/s, long after the first touch: its mean push in weights of the ball, and the
 * mean roll of the ball.
 */
function steadyPush(
  kind: Partial<BallKind>,
  friction: number,
  options: TrialOptions = {},
): { weights: number; rollMmPerS: number } {
  const project = sceneProject({
    zone: { widthMm: 9000, heightMm: 900, doorway: { wall: "left", centreMm: 450, widthMm: 300 } },
    robot: {
      surface: { restitution: 0, frictionCoeff: friction },
      entry: { alongMm: 0, insetMm: 100, headingRad: 0 },
    },
    balls: [{ x: 300, y: 450, kind: { ...kind, frictionCoeff: friction } }],
  });
  const routine = routineOf([{ kind: "drive", distanceMm: 6000, speedMmPerS: 200 }]);
  const plan = compileTrial(project, routine, { drift: false, spread: false, ...options });
  const seen: { timeS: number; impulse: number; roll: number }[] = [];
  watchTrial(plan, 0, 0, (timeS) => {
    if (timeS < FROM_S) given.impulse = 0;
    else if (timeS < UNTIL_S) seen.push({ timeS, impulse: given.impulse, roll: stateOf(0).sx });
  });
  const [first, last] = [seen[0]!, seen.at(-1)!];
  return {
    weights: (last.impulse - first.impulse) / (last.timeS - first.timeS) / 9810,
    rollMmPerS: seen.reduce((sum, { roll }) => sum + roll, 0) / seen.length,
  };
}

describe("a plate that drives a rolling ball steadily ahead", () => {
  // Textbook mechanics, derived, second implementation: N = ρ·m·g/(1 − μ(1+ρ)), ρ the lever arm form of the rolling resistance; ρ 0.02: 0.025126 mg at μ 0.2, 0.040816 mg at μ 0.5.
  it.each([
    ["solid", 0.02 / 1.4, 0, 0.02],
    ["solid", 0.02 / 1.4, 0.2, 0.025126],
    ["hollow", (0.02 * 3) / 5, 0.2, 0.025126],
    ["solid", 0.02 / 1.4, 0.5, 0.040816],
    ["hollow", (0.02 * 3) / 5, 0.5, 0.040816],
  ] as const)(
    "%s, c %f, μ %f: presses with %f of its weight",
    (build, rollingResistance, friction, weights) => {
      const kind = { build, rollingResistance, floorFrictionCoeff: 0.4 };
      expect(steadyPush(kind, friction).weights).toBeCloseTo(weights, 6);
    },
  );

  // The same: the denominator vanishes near μ = 1, where the ball stops rolling and slides. So near to it the push of a whole
  // ride step would stop the ball at once: small steps.
  it("of friction 0.9 lets it roll, of friction 1.2 stops its rolling", () => {
    const kind = { build: "solid", rollingResistance: 0.01, floorFrictionCoeff: 0.2 } as const;
    const fine = { contactStepS: 1 / 4000 };
    expect(steadyPush(kind, 0.9, fine).rollMmPerS).toBeGreaterThan(195);
    expect(steadyPush(kind, 1.2, fine).rollMmPerS).toBeLessThan(1);
  });
});
