import { describe, expect, it } from "vitest";
import { brakingSpeed, type Carry, carryOf, curveRate, runOnMm } from "../../../src/plan/carry.ts";
import { reachOf } from "../../../src/plan/reach.ts";
import { shippedProject } from "../../support/projectFiles.ts";
import { PLAIN_BALL } from "../../support/scene.ts";

const arms = shippedProject("usual-zone.json").robot;
const plate = shippedProject("plate-robot.json").robot;

const carry: Carry = {
  coneRad: Math.PI / 2,
  holds: true,
  depthMm: 70,
  seatMm: 115,
  halfWidthMm: 70,
  ballDecelMmPerS2: 200,
  robotDecelMmPerS2: 500,
};

describe("carrying a ball", () => {
  it("a ball runs on farther than the robot brakes", () => {
    // From 200 mm/s the ball needs 40000/400 = 100 mm, the robot 40000/1000 = 40 mm.
    expect(runOnMm(carry, 200)).toBeCloseTo(60, 9);
    expect(runOnMm({ ...carry, ballDecelMmPerS2: 800 }, 200)).toBe(0);
  });

  it("brakes from a speed at which the ball stays within the pusher", () => {
    const speed = brakingSpeed(carry);
    expect(runOnMm(carry, speed)).toBeLessThan(70);
    expect(runOnMm(carry, speed)).toBeGreaterThan(35);
    expect(brakingSpeed({ ...carry, ballDecelMmPerS2: 600 })).toBe(Number.POSITIVE_INFINITY);
  });

  it("turns so slowly that rolling resistance outweighs what throws the ball outward", () => {
    const rate = curveRate(carry, 0);
    expect(rate * rate * carry.seatMm).toBeLessThan(carry.ballDecelMmPerS2);
    // In a wider curve the outermost ball is the fastest: the rate falls so that it can still be braked.
    expect(curveRate(carry, 300)).toBeLessThan(rate);
    expect(curveRate(carry, 300) * 370).toBeLessThan(brakingSpeed(carry));
  });

  it("needs a pusher deeper than a ball's radius: arms hold, a plate does not", () => {
    expect(carryOf(reachOf(arms), arms.drive, [PLAIN_BALL])).toMatchObject({ holds: true });
    expect(carryOf(reachOf(plate), plate.drive, [PLAIN_BALL])).toMatchObject({ holds: false, depthMm: 0 });
  });

  it("goes by the ball that rolls the easiest and the one that is the largest", () => {
    const steel = { ...PLAIN_BALL, rollingResistance: 0.002 };
    const big = { ...PLAIN_BALL, diameterMm: 60 };
    const { ballDecelMmPerS2, seatMm } = carryOf(reachOf(arms), arms.drive, [PLAIN_BALL, steel, big]);
    expect(ballDecelMmPerS2).toBeCloseTo(19.62, 9);
    expect(seatMm).toBeCloseTo(95 + 30, 9);
  });
});
