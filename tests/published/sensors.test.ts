import { describe, expect, it } from "vitest";
import type { Move } from "../../src/model/routine.ts";
import { SENSOR_PRESETS } from "../../src/model/sensorPresets.ts";
import { faceDistance } from "../../src/motion/faces.kernel.ts";
import { RandomStream } from "../../src/num/stream.ts";
import { compileTrial } from "../../src/trial/compile.ts";
import { CUT_SD } from "../../src/trial/drift.ts";
import { robotAt } from "../../src/trial/playback.ts";
import { recordTrial } from "../../src/trial/run.ts";
import { Scanner } from "../../src/trial/scanner.ts";
import { soundMPerS } from "../../src/trial/sound.ts";
import { STREAMS } from "../../src/trial/streams.ts";
import { routineOf } from "../support/scene.ts";
import { SHARP_EYE, sensingProject } from "../support/sensingScene.ts";

const DEGREE = Math.PI / 180;

function openStream(index: number): RandomStream {
  const stream = new RandomStream();
  stream.open(3, index, STREAMS.gyro);
  return stream;
}

describe("the beam of a distance sensor", () => {
  // Siegwart & Nourbakhsh, Introduction to Autonomous Mobile Robots, p. 106 (opening 20° to 40°); width at 0.5 m by elementary geometry: 0.176, 0.268, 0.364 m. references.md P11.6.
  it.each([
    [20, 0.176],
    [30, 0.268],
    [40, 0.364],
  ])("of %d° is %f m wide at 0.5 m", (degrees, widthM) => {
    const half = (degrees / 2) * DEGREE;
    /** Reads a thing 1 mm wide whose near end is so far aside, square to the beam, 0.5 m before the sensor. */
    const sees = (asideMm: number, sign: 1 | -1): boolean => {
      const thing = Float64Array.from([500, sign * asideMm, 500, sign * (asideMm + 1)]);
      return Number.isFinite(faceDistance(thing, 0, 0, 1, 0, Math.cos(half), Math.sin(half)));
    };
    for (const sign of [1, -1] as const) {
      // The width is printed to the millimetre, half of it to half a millimetre.
      expect(sees(500 * widthM - 0.25, sign)).toBe(true);
      expect(sees(500 * widthM + 0.25, sign)).toBe(false);
    }
  });
});

describe("the speed of sound", () => {
  // Unit tables, references.md P11.4: 331.30 m/s in air of 0 °C, 343.21 of 20 °C, 346.13 of 25 °C.
  it.each([
    [0, 331.3],
    [20, 343.21],
    [25, 346.13],
  ])("in air of %d °C is %f m/s", (airC, metresPerS) => {
    expect(soundMPerS(airC)).toBeCloseTo(metresPerS, 2);
  });

  it("is 343 m/s at 20 °C", () => {
    // Siegwart & Nourbakhsh, Introduction to Autonomous Mobile Robots, eq. 4.8.
    expect(Math.round(soundMPerS(20))).toBe(343);
  });

  /** What an echo sensor reads of a wall. */
  function reading(airC: number, wallMm: number): number {
    const eye = { ...SHARP_EYE, alongMm: 0, airC };
    const { zone } = sensingProject([eye], []);
    const scanner = new Scanner(eye, zone, [20], openStream(3));
    return scanner.read(zone.widthMm - wallMm, 300, 1, 0);
  }

  it("makes an echo timed as in air of 20 °C read 1.7 % long in air of 10 °C", () => {
    // d = c·t/2, Siegwart & Nourbakhsh, eq. 4.7, p. 105; references.md P11.5 prints 1.7 %, cut: P11.4's formula gives 1.75.
    const longPercent = ((reading(10, 1000) - reading(20, 1000)) / 1000) * 100;
    expect(Math.floor(longPercent * 10) / 10).toBe(1.7);
    expect(reading(20, 1000)).toBeCloseTo(1000, 9);
  });
});

describe("a gyro whose rate is off", () => {
  /** Heading error in which the robot ends, in degrees, for a rate that is off by one standard deviation: the gyro errs by its rate alone. */
  function headingErrorDeg(rateDegPerS: number, seconds: number, index: number): number {
    const gyro = { ...SENSOR_PRESETS["rate-gyro"], errorSdRad: 0, driftSdRadPerS: rateDegPerS * DEGREE };
    const turn: Move = { kind: "turn", angleRad: Math.PI / 2, rateRadPerS: 2 };
    const { robot, rules, ...rest } = sensingProject([gyro], [{ xMm: 1100, yMm: 100 }]);
    // With room to turn.
    const entry = { ...robot.entry, alongMm: 400, insetMm: 400 };
    const plan = compileTrial(
      { ...rest, robot: { ...robot, entry }, rules: { ...rules, timeLimitS: 600 } },
      routineOf([{ kind: "wait", durationS: seconds - 1 }, turn]),
    );
    const { outcome, recording } = recordTrial(plan, 3, index);
    const errorDeg = (robotAt(recording, outcome.timeS).headingRad - Math.PI) / DEGREE;
    const stream = openStream(index);
    return (errorDeg / outcome.timeS / stream.normalCut(CUT_SD)) * seconds;
  }

  // Woodman, An introduction to inertial navigation (2007), from memory: an error of the rate adds up to rate·t. El-Sheimy & Youssef, Satellite Navigation (2020), Table 1: commercial grade 0.1 °/s, so 12° after 120 s. Borenstein & Feng, Gyrodometry (1996), second hand: 10 °/min typical, 20° after 120 s.
  it.each([
    ["0.1 °/s", 0.1, 12],
    ["10 °/min", 10 / 60, 20],
  ])("by %s ends up %f °/s · 120 s = %d° off", (_, rate, degrees) => {
    // Each trial draws its rate from a normal law (tests/unit/num): by how much more than one standard deviation is taken out, so that nothing of chance is left.
    for (let index = 0; index < 8; index++) expect(headingErrorDeg(rate, 120, index)).toBeCloseTo(degrees, 9);
  });
});
