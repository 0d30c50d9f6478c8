import { describe, expect, it } from "vitest";
import { moveDurationS } from "../../src/motion/duration.ts";
import { Trapezoid } from "../../src/motion/trapezoid.ts";
import { PLAIN_ROBOT } from "../support/scene.ts";

describe("a trapezoidal speed profile", () => {
  // t_a = V/a: actuator calculator; the rest derived: V 0.3 m/s, a 0.5 m/s², D 0.8 m: ramps 0.6 s, level 2.0667 s, in all 3.2667 s.
  it("of 0.8 m at 0.3 m/s takes 3.2667 s", () => {
    const profile = new Trapezoid().set(0.8, 0.3, 0.5);
    expect(profile.rampS).toBeCloseTo(0.6, 12);
    expect(profile.durationS - 2 * profile.rampS).toBeCloseTo(2.0667, 4);
    expect(profile.durationS).toBeCloseTo(3.2667, 4);
    const drive = { ...PLAIN_ROBOT.drive, topSpeedMmPerS: 300, accelMmPerS2: 500 };
    expect(moveDurationS(drive, { kind: "drive", distanceMm: -800, speedMmPerS: 1000 })).toBeCloseTo(
      3.2667,
      4,
    );
  });

  // Derived: V_p = √(a·D), T = 2√(D/a); D 0.1 m: 0.22361 m/s, 0.89443 s.
  it("of 0.1 m does not reach 0.3 m/s", () => {
    const profile = new Trapezoid().set(0.1, 0.3, 0.5);
    expect(profile.peak).toBeCloseTo(0.22361, 5);
    expect(profile.durationS).toBeCloseTo(0.89443, 5);
  });

  // tech-champion.com: unequal slopes, V_p = √(2abD/(a+b)); with a = b that is √(a·D). D 100, a 2, b 4 gives 16.330: b = a = 8/3 has the same peak.
  it("peaks where slopes of 2 and 4 would over a distance of 100", () => {
    const profile = new Trapezoid().set(100, 1000, 8 / 3);
    expect(profile.peak).toBeCloseTo(16.33, 3);
    // 8.165 s up and 4.082 s down.
    expect(profile.durationS).toBeCloseTo(8.165 + 4.082, 3);
  });

  it("covers its distance: the speeds add up to it, and time and distance are each other's inverse", () => {
    for (const [distance, speed, accel] of [
      [800, 300, 500],
      [100, 300, 500],
      [3.2, 2, 0.7],
    ] as const) {
      const profile = new Trapezoid().set(distance, speed, accel);
      const steps = 2000;
      let sum = 0;
      for (let n = 0; n < steps; n++) {
        sum += (profile.speedAt(((n + 0.5) * profile.durationS) / steps) * profile.durationS) / steps;
        const t = (n * profile.durationS) / steps;
        expect(profile.timeAt(profile.distanceAt(t))).toBeCloseTo(t, 6);
      }
      expect(sum / distance).toBeCloseTo(1, 5);
    }
  });
});
