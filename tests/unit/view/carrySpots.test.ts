import { describe, expect, test } from "vitest";
import { mapValueWords } from "../../../src/app/words/mapWords.ts";
import type { Move } from "../../../src/model/routine.ts";
import { nominalCourse } from "../../../src/motion/course.ts";
import { carryLimits } from "../../../src/plan/carryLimits.ts";
import { carrySpots, spotsNear } from "../../../src/view/carrySpots.ts";
import { shippedProject } from "../../support/projectFiles.ts";

const project = shippedProject("usual-zone.json");
const { accelMmPerS2 } = project.robot.drive;
const speedMmPerS = 240;
const moves: readonly Move[] = [
  { kind: "drive", distanceMm: 500, speedMmPerS },
  { kind: "turn", angleRad: 1, rateRadPerS: 3 },
  { kind: "drive", distanceMm: -200, speedMmPerS },
];
const course = nominalCourse(project, moves);
const spots = carrySpots(carryLimits(project, moves), moves, course, accelMmPerS2);

describe("where a ball in the pusher can be lost", () => {
  test("is the stretch in which the robot brakes, v²/2a long, and the place of a turn", () => {
    expect(spots.map(({ move, why, onSpot }) => [move, why, onSpot])).toEqual([
      [0, "brakes", false],
      [1, "turns", true],
    ]);
    const way = spots[0]?.way ?? [];
    const [start, end] = [way[0], way.at(-1)];
    const stop = course.pieces.filter(({ move }) => move === 0).at(-1)?.to;
    expect(end).toMatchObject({ xMm: stop?.xMm, yMm: stop?.yMm });
    const lengthMm = Math.hypot((end?.xMm ?? 0) - (start?.xMm ?? 0), (end?.yMm ?? 0) - (start?.yMm ?? 0));
    expect(lengthMm).toBeCloseTo(speedMmPerS ** 2 / (2 * accelMmPerS2), 6);
  });

  test("is found near a place only, and read in words with the speed at which it stays", () => {
    const end = spots[0]?.way.at(-1) ?? { xMm: Number.NaN, yMm: Number.NaN };
    const far = { xMm: end.xMm + 200, yMm: end.yMm };
    expect(spotsNear(spots, end, 30).map(({ move }) => move)).toEqual([0, 1]);
    expect(spotsNear(spots, far, 30)).toEqual([]);
    const safe = Math.floor(spots[0]?.safe ?? 0);
    expect(safe).toBeGreaterThan(0);
    expect(safe).toBeLessThan(speedMmPerS);
    const map = { kind: "carry", spots } as const;
    expect(mapValueWords("carry", map, end)).toContain(
      `move 1, when it stops: reaches 240 mm/s, a ball stays at ${safe} mm/s or less`,
    );
    expect(mapValueWords("carry", map, far)).toContain("no ball is lost here by turning or braking.");
  });
});
