import { describe, expect, it } from "vitest";
import { letRoll } from "../support/scene.ts";

const SOLID = { build: "solid", rollingResistance: 0, floorFrictionCoeff: 0.12 } as const;

describe("sliding to rolling, by the engine", () => {
  // Halliday/Resnick, Fundamentals of Physics, ch. 11: v = 5/7 v₀, t = 2 v₀/(7 μ g). Data of a worked example: v₀ 5 m/s, μ 0.12.
  it("a solid ball that starts sliding rolls at 5/7 of its speed", () => {
    const zone = { widthMm: 60000, heightMm: 9000 };
    const [end] = letRoll({ zone, balls: [{ x: 300, y: 500, vx: 5000, sx: 0, sy: 0, kind: SOLID }] }, 2);
    expect(end!.vx).toBeCloseTo((5 / 7) * 5000, 6);
    expect(end!.sx).toBeCloseTo((5 / 7) * 5000, 6);
  });

  it("a rolling ball stops after v²/(2cg)", () => {
    const [end] = letRoll({ balls: [{ x: 300, y: 500, vx: 300, kind: { rollingResistance: 0.02 } }] }, 10);
    expect(end!.x).toBeCloseTo(300 + 300 ** 2 / (2 * 0.02 * 9810), 6);
    expect(end!.vx).toBe(0);
  });

  it("a solid ball that rolls into a frictionless wall keeps 3/7 of its speed", () => {
    const [end] = letRoll(
      {
        balls: [
          {
            x: 1000,
            y: 500,
            vx: 500,
            kind: { ...SOLID, restitution: 1, frictionCoeff: 0, floorFrictionCoeff: 0.3 },
          },
        ],
      },
      1,
    );
    expect(end!.vx).toBeCloseTo((-3 / 7) * 500, 4);
  });
});
