import { describe, expect, it } from "vitest";
import { wheelGain, wheelTurns } from "../../src/report/coder/wheels.ts";
import { PLAIN_ROBOT } from "../support/scene.ts";

/** A robot without drift whose wheels have this radius, this far apart, mm. */
function robotOn(radiusMm: number, gaugeMm: number) {
  return { ...PLAIN_ROBOT, drive: { ...PLAIN_ROBOT.drive, gaugeMm, wheelDiameterMm: 2 * radiusMm } };
}

describe("what the wheels of the step sheet turn", () => {
  // Borenstein, Everett & Feng, Where am I? (1996), eqs 1.2 to 1.7: c = πD/(n·C). Public course code: r 0.045 m, one turn of the wheel is 0.282743 m. references.md P8.5.
  it("is 360° over 0.282743 m on wheels of 0.045 m radius", () => {
    const { wheelDegPerMm } = wheelGain(robotOn(45, 200));
    expect(360 / wheelDegPerMm / 1000).toBeCloseTo(0.282743, 6);
    const turns = wheelTurns(robotOn(45, 200), { kind: "drive", distanceMm: 282.743, speedMmPerS: 100 });
    expect(turns?.leftDeg).toBeCloseTo(360, 3);
    expect(turns?.rightDeg).toBeCloseTo(360, 3);
  });

  // Public course checker: 308 of 2464 ticks a turn each way, r 0.05 m, gauge 0.2 m: the robot turns by π/8 = 0.392699. references.md P8.6.
  it("is an eighth of a turn, one back and one forward, for π/8 on the spot at r 0.05 m and 0.2 m of gauge", () => {
    const turns = wheelTurns(robotOn(50, 200), { kind: "turn", angleRad: 0.392699, rateRadPerS: 1 });
    const ticks = (degrees: number): number => (degrees / 360) * 2464;
    expect(ticks(turns?.rightDeg ?? 0)).toBeCloseTo(308, 3);
    expect(ticks(turns?.leftDeg ?? 0)).toBeCloseTo(-308, 3);
  });
});

describe("wheels of different size", () => {
  // Borenstein & Feng, IEEE T-RA 12 (1996), eqs 4.28 to 4.33: c_L = 2/(E_d + 1), c_R = 2/(1/E_d + 1), their sum 2. Public course checker: E_d 1.0037568 over 0.2 m of gauge, R 53.336 m: 0.9981251 and 1.0018749 for what a wheel travels per turn. references.md P9.5, 9.6.
  it("are made up for by turning them in the inverse ratio", () => {
    const { systematic } = PLAIN_ROBOT.drift;
    // Which way: a right wheel that is the larger bends the path to the left.
    const drift = { ...PLAIN_ROBOT.drift, systematic: { ...systematic, curvatureMeanRadPerMm: 1 / 53_336 } };
    const { leftFactor, rightFactor } = wheelGain({ ...robotOn(20, 200), drift });
    // The factors of the source multiply what a wheel travels in a turn, these what it is turned: each wheel's is the other's.
    expect(rightFactor).toBeCloseTo(0.9981251, 7);
    expect(leftFactor).toBeCloseTo(1.0018749, 7);
    // R is printed to half a millimetre, which is worth 3.5e-8 here, E_d to 5e-8.
    expect(Math.abs(leftFactor / rightFactor - 1.0037568)).toBeLessThan(8.5e-8);
  });
});
