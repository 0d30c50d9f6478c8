import { describe, expect, test } from "vitest";
import type { Move } from "../../src/model/routine.ts";
import { canTurnSomewhere, reachMm } from "../../src/model/turningRoom.ts";
import { routineDurationS } from "../../src/motion/duration.ts";
import { evenly } from "../../src/plan/place.ts";
import { PLAIN_ROBOT, sceneProject } from "../support/scene.ts";

describe("parallel lanes", () => {
  // Fewest lanes n = ⌈W/w⌉: W 0.9, w 0.18 → 5; W 1.2 → 7; the trap 0.9/0.06 = 15.000000000000002 → 15. Derived. references.md M1.3.
  test.each([
    [900, 180, 5],
    [1200, 180, 7],
    [0.9, 0.06, 15],
  ])("%f wide in lanes of %f take %i", (width, lane, count) => {
    expect(evenly(0, width, lane)).toHaveLength(count + 1);
  });

  // T = n(L − w)/v + (n − 1)(w/v + π/ω), no ramps; v 0.2 m/s, ω 1.5 rad/s, w 0.18 m. Derived, second implementation. references.md M1.3.
  test.each([
    ["5 long", 5, 1200, 37.4776],
    ["7 short", 7, 900, 43.1664],
  ])("%s lanes take their time", (_, lanes, lengthMm, seconds) => {
    const drive = {
      ...PLAIN_ROBOT.drive,
      topSpeedMmPerS: 200,
      turnRateRadPerS: 1.5,
      accelMmPerS2: 1e9,
    };
    const ahead = (distanceMm: number): Move => ({ kind: "drive", distanceMm, speedMmPerS: 200 });
    const quarter: Move = { kind: "turn", angleRad: Math.PI / 2, rateRadPerS: 1.5 };
    const moves = Array.from({ length: lanes }, (_, i): Move[] => {
      const lane = ahead(lengthMm - 180);
      return i === 0 ? [lane] : [quarter, ahead(180), quarter, lane];
    }).flat();
    expect(routineDurationS(drive, moves)).toBeCloseTo(seconds, 4);
  });
});

describe("room to turn", () => {
  // Half diagonal of 0.20 × 0.16 m: 0.128062 m, the clearance it needs to spin. Derived. references.md M1.7, M6.5.
  const body = {
    kind: "plate",
    bodyLengthMm: 200,
    bodyWidthMm: 160,
    axleFromRearMm: 100,
    plateWidthMm: 160,
    plateReachMm: 0,
  } as const;

  test("a robot of 0.20 × 0.16 m sweeps a circle of 0.128062 m", () => {
    const corners = [-100, 100].flatMap((xMm) => [-80, 80].map((yMm) => ({ xMm, yMm })));
    expect(reachMm(corners) / 1000).toBeCloseTo(0.128062, 6);
  });

  test("it can turn between walls 0.256124 m apart, not closer", () => {
    const strip = (heightMm: number): boolean => {
      const { zone, robot } = sceneProject({
        zone: { widthMm: 4000, heightMm },
        robot: { shape: body, climbsWedge: true },
        balls: [],
      });
      return canTurnSomewhere(zone, robot);
    };
    expect(strip(2 * (128.062 + 0.0005))).toBe(true);
    expect(strip(2 * (128.062 - 0.0005))).toBe(false);
  });
});
