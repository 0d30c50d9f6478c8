import { describe, expect, it } from "vitest";
import { bx, by, radius } from "../../../src/trial/balls.kernel.ts";
import { bigRamp, onRamp } from "../../support/ramp.ts";
import { letRoll, type SceneOptions } from "../../support/scene.ts";

/** Found by throwing odd balls at each other at random: worlds in which two balls came to stand in each other. */

/** How deep two balls ever stand in each other, mm, seen from above. */
function deepest(options: SceneOptions, i: number, j: number, durationS: number): number {
  let most = -1e9;
  letRoll(options, durationS, () => {
    const apart = Math.hypot(bx[i]! - bx[j]!, by[i]! - by[j]!);
    most = Math.max(most, 2 * Math.sqrt(radius[i]! * radius[j]!) - apart);
  });
  return most;
}

describe("two balls stand in each other by 0.1 mm at most", () => {
  it("where one comes down a slope behind the other", () => {
    const ramp = bigRamp(0.3);
    const kind = { rollingResistance: 0.0005, restitution: 0, frictionCoeff: 0 };
    const balls = [
      { ...onRamp(ramp, -30, kind, -100), kind },
      { ...onRamp(ramp, 10.02, kind, -100), kind },
    ];
    const found = deepest({ zone: ramp.zone, balls }, 0, 1, 0.2);
    expect(found).toBeGreaterThan(-0.01);
    expect(found).toBeLessThan(0.1);
  });

  it("where a heavy one rolls against a light one that lies in a corner", () => {
    const light = { diameterMm: 146, massKg: 0.002, restitution: 1 };
    const heavy = {
      diameterMm: 121,
      massKg: 0.75,
      restitution: 0.07,
      floorFrictionCoeff: 1.5,
      rollingResistance: 0.0005,
    };
    const balls = [
      { x: 73, y: 827, kind: light },
      { x: 173, y: 760, vx: -460, vy: 310, kind: heavy },
    ];
    const found = deepest({ balls }, 0, 1, 0.05);
    expect(found).toBeGreaterThan(-0.01);
    expect(found).toBeLessThan(0.1);
  });

  it("where one comes at another that spins between the robot and a wall", () => {
    // The robot stands at the lower left, its plate ends at y = 180; the first ball is at the left wall beside it.
    const between = {
      diameterMm: 40.98105525132269,
      massKg: 0.0011189925133313792,
      build: "solid",
      rollingResistance: 0.0005,
      restitution: 1,
      frictionCoeff: 0.6472245813347399,
      floorFrictionCoeff: 0.02,
    } as const;
    const coming = {
      diameterMm: 83.01807835698128,
      massKg: 0.0051118367360060216,
      build: "hollow",
      rollingResistance: 0.0005,
      restitution: 0,
      frictionCoeff: 0,
      floorFrictionCoeff: 1.5,
    } as const;
    const balls = [
      { x: 20.491, y: 186.69, vx: 0, vy: -491.1, kind: between },
      { x: 61.559, y: 254.007, vx: 16.64, vy: -455.73, kind: coming },
    ];
    const zone = { walls: { restitution: 0, frictionCoeff: 2 } };
    const found = deepest({ zone, balls }, 0, 1, 0.2);
    expect(found).toBeGreaterThan(-0.01);
    expect(found).toBeLessThan(0.1);
  });
});
