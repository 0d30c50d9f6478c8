import { describe, expect, test } from "vitest";
import { pushCoefficient, reboundRestitution, rollCoefficient } from "../../src/practice/ballTests.ts";
import { letRoll, stateOf } from "../support/scene.ts";

describe("rolling resistance from tape and stopwatch", () => {
  // oxfordcroquet.com: a lawn of speed 12 takes 12 s for 35 yd: a 0.4445 m/s², c 0.0453. references.md P2.12.
  test("35 yd in 12 s: 0.0453", () => {
    expect(rollCoefficient({ distanceMm: 35 * 914.4, timeS: 12 })).toBeCloseTo(0.0453, 4);
  });

  // Alciatore, Colorado State University, Physics FAQ: at c 0.01 a ball of 1 m/s rolls 5.097 m in 10.19 s. references.md P2.4.
  test("5.097 m in 10.19 s: 0.01", () => {
    expect(rollCoefficient({ distanceMm: 5097, timeS: 10.19 })).toBeCloseTo(0.01, 4);
  });

  // Derived: at c 0.02 a ball let go at 0.25 m/s by a plate that brakes at 0.5 m/s² ends 96.8 mm before it (references.md M2.7).
  test("pushed at 250 mm/s, a gap of 96.8 mm: 0.0200", () => {
    expect(pushCoefficient({ speedMmPerS: 250, gapMm: 96.8 }, 500)).toBeCloseTo(0.02, 4);
  });

  test("what the trial lets roll is measured back", () => {
    let stopS = 0;
    const kind = { rollingResistance: 0.0137, build: "solid" } as const;
    const [end] = letRoll(
      { zone: { widthMm: 9000 }, balls: [{ x: 300, y: 500, vx: 700, kind }] },
      20,
      (t) => {
        if (stopS === 0 && stateOf(0).vx === 0) stopS = t;
      },
    );
    expect(rollCoefficient({ distanceMm: end!.x - 300, timeS: stopS })).toBeCloseTo(0.0137, 6);
  });
});

// √(rebound/drop), worked out by hand from the ball standards. references.md P1.3 to P1.6, 1.9, 1.10, 1.13.
test.each([
  ["ITTF Technical Leaflet T3, B.7", 305, 240, "0.8871"],
  ["ITTF Technical Leaflet T3, B.7", 305, 260, "0.9233"],
  ["ITTF Technical Leaflet T3, B.7, plastic that is not celluloid", 305, 265, "0.9321"],
  ["ITTF table rule", 300, 230, "0.8756"],
  ["ITF Rules of Tennis, Appendix I", 2540, 1350, "0.7290"],
  ["ITF Rules of Tennis, Appendix I", 2540, 1470, "0.7607"],
  ["ITF Rules of Tennis, Appendix I, 53 in from 100 in", 2540, 1346.2, "0.7280"],
  ["ITF Rules of Tennis, Appendix I, 58 in from 100 in", 2540, 1473.2, "0.7616"],
  ["ITF Rules of Tennis, Appendix I, high altitude", 2540, 1220, "0.6930"],
  ["USA Racquetball, rule 2.2", 2540, 1727.2, "0.8246"],
  ["USA Racquetball, rule 2.2", 2540, 1828.8, "0.8485"],
  // Told to the top of the ball: 7.4 cm come off (1.13).
  ["USA Pickleball Equipment Standards", 1981, 762 - 74, "0.589"],
  ["USA Pickleball Equipment Standards", 1981, 864 - 74, "0.631"],
  // Limits from memory (1.9): 12 % at 23 °C, 26 to 33 % at 45 °C.
  ["World Squash Federation, Appendix 7", 2540, 304.8, "0.346"],
  ["World Squash Federation, Appendix 7", 2540, 660.4, "0.510"],
  ["World Squash Federation, Appendix 7", 2540, 838.2, "0.574"],
])("%s: %i mm → %i mm is a restitution of %s", (_, dropMm, reboundMm, e) => {
  expect(reboundRestitution({ dropMm, reboundMm }).toFixed(e.length - 2)).toBe(e);
});
