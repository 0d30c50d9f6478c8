import { describe, expect, it } from "vitest";
import { checkProject } from "../../../src/model/check.ts";
import type { Project } from "../../../src/model/project.ts";
import type { Move } from "../../../src/model/routine.ts";
import { applyCalibration } from "../../../src/practice/applyCalibration.ts";
import { type Calibration, calibrate } from "../../../src/practice/calibrate.ts";
import type { Measurements } from "../../../src/practice/measurements.ts";
import { fitTurns } from "../../../src/practice/robotTests.ts";
import { compileTrial } from "../../../src/trial/compile.ts";
import { robotAt } from "../../../src/trial/playback.ts";
import { recordTrial } from "../../../src/trial/run.ts";
import { shippedProject } from "../../support/projectFiles.ts";
import { PLAIN_ROBOT, routineOf, sceneProject } from "../../support/scene.ts";
import { seededNumbers } from "../../support/seededNumbers.ts";

const NOTHING: Measurements = {
  straights: [],
  turns: [],
  squaresRight: [],
  squaresLeft: [],
  rolls: [],
  pushes: [],
  rebounds: [],
};

/** What the simulated tests are made with. */
const PLANTED = {
  distanceScale: -0.03,
  distanceSdFrac: 0.004,
  turnScale: -0.05,
  turnSdRad: 0.012,
  curvatureRadPerMm: 2e-5,
  curvatureSdRadPerMm: 6e-6,
  rollingResistance: 0.018,
  restitution: 0.88,
} as const;
type Planted = keyof typeof PLANTED;

/** Box and Muller (1958). */
function normals(seed: number): () => number {
  const random = seededNumbers(seed);
  return () => Math.sqrt(-2 * Math.log(1 - random())) * Math.cos(2 * Math.PI * random());
}

/** Where a square ends on a robot of the planted errors, each move with its own luck. */
function squareOf(normal: () => number, sideMm: number, sense: 1 | -1) {
  let [x, y, heading] = [0, 0, 0];
  for (let side = 0; side < 4; side++) {
    const way = sideMm * (1 + PLANTED.distanceScale + PLANTED.distanceSdFrac * normal());
    const bend = (PLANTED.curvatureRadPerMm + PLANTED.curvatureSdRadPerMm * normal()) * way;
    x += way * Math.cos(heading + bend / 2);
    y += way * Math.sin(heading + bend / 2);
    heading += bend + sense * (Math.PI / 2) * (1 + PLANTED.turnScale) + PLANTED.turnSdRad * normal();
  }
  return { sideMm, aheadMm: x, leftMm: y };
}

function simulated(normal: () => number, withTurns: boolean): Measurements {
  const times = <T>(count: number, make: (i: number) => T): T[] =>
    Array.from({ length: count }, (_, i) => make(i));
  return {
    straights: times(6, (i) => {
      const commandedMm = 800 + 100 * i;
      const measuredMm = commandedMm * (1 + PLANTED.distanceScale + PLANTED.distanceSdFrac * normal());
      const bend = PLANTED.curvatureRadPerMm + PLANTED.curvatureSdRadPerMm * normal();
      return { commandedMm, measuredMm, leftMm: (bend * measuredMm * measuredMm) / 2 };
    }),
    turns: times(withTurns ? 6 : 0, (i) => {
      const turns = 4 + i;
      const commandedRad = (i % 2 === 0 ? 1 : -1) * turns * (Math.PI / 2);
      const luck = Math.sqrt(turns) * PLANTED.turnSdRad * normal();
      return { commandedRad, measuredRad: commandedRad * (1 + PLANTED.turnScale) + luck, turns };
    }),
    squaresRight: times(5, () => squareOf(normal, 600, -1)),
    squaresLeft: times(5, () => squareOf(normal, 600, 1)),
    rolls: times(5, () => {
      const decel = PLANTED.rollingResistance * 9810;
      const v = 400 + 60 * normal();
      return { distanceMm: (v * v) / (2 * decel) + 2 * normal(), timeS: v / decel + 0.03 * normal() };
    }),
    pushes: [],
    rebounds: times(5, () => ({
      dropMm: 500,
      reboundMm: 500 * PLANTED.restitution ** 2 + 4 * normal(),
    })),
  };
}

function covers(found: Calibration, quantity: Planted): boolean {
  const { low, high } = found[quantity]!;
  return low <= PLANTED[quantity] && PLANTED[quantity] <= high;
}

describe("planted parameters", () => {
  const REPEATS = 2000;
  const quantities = Object.keys(PLANTED) as Planted[];
  // 95 ± 1.5 %: three standard errors of a share of 95 % in 2,000 repetitions.
  const WITHIN = 3 * Math.sqrt((0.95 * 0.05) / REPEATS);

  it.each([
    ["turns", true],
    ["squares alone", false],
  ])("lie in the intervals in 95 of 100 repetitions, with %s", (_, withTurns) => {
    const normal = normals(51);
    const covered = new Map<Planted, number>();
    for (let n = 0; n < REPEATS; n++) {
      const found = calibrate(simulated(normal, withTurns), PLAIN_ROBOT.drive);
      for (const quantity of quantities) {
        if (found[quantity] === null) continue;
        covered.set(quantity, (covered.get(quantity) ?? 0) + (covers(found, quantity) ? 1 : 0));
      }
    }
    expect(covered.size).toBe(withTurns ? quantities.length : quantities.length - 1);
    for (const [quantity, count] of covered) {
      expect(Math.abs(count / REPEATS - 0.95), `${quantity}: ${count}`).toBeLessThan(WITHIN);
    }
  });

  it("come out of tests that the trial's own drive has made", () => {
    const side = 9000;
    const { drift } = PLAIN_ROBOT;
    const systematic = {
      ...drift.systematic,
      distanceScaleMean: PLANTED.distanceScale,
      turnScaleMean: PLANTED.turnScale,
      curvatureMeanRadPerMm: PLANTED.curvatureRadPerMm,
    };
    const random = {
      distanceSdFrac: PLANTED.distanceSdFrac,
      turnSdFrac: 0,
      turnSdRad: PLANTED.turnSdRad,
      curvatureSdRadPerMm: PLANTED.curvatureSdRadPerMm,
    };
    const hall = sceneProject({
      zone: { widthMm: side, heightMm: side, doorway: { wall: "bottom", centreMm: side / 2, widthMm: 400 } },
      robot: {
        drift: { ...drift, systematic, random },
        entry: { alongMm: 0, insetMm: side / 2, headingRad: 0 },
      },
      balls: [{ x: 300, y: 300 }],
    });
    const found = calibrate(measuredInTrials(hall), PLAIN_ROBOT.drive);
    for (const quantity of [
      "distanceScale",
      "turnScale",
      "curvatureRadPerMm",
      "turnSdRad",
      "distanceSdFrac",
    ] as const) {
      expect(covers(found, quantity), quantity).toBe(true);
    }
    expect(found.effectiveGaugeMm!.value).toBeCloseTo(120 / 0.95, 0);
  });
});

/** Straights, ten quarter turns and squares, driven by the engine from the middle of a hall, heading up. */
function measuredInTrials(hall: Project): Measurements {
  const ahead = (distanceMm: number): Move => ({ kind: "drive", distanceMm, speedMmPerS: 200 });
  const quarter = (sense: number): Move => ({
    kind: "turn",
    angleRad: (sense * Math.PI) / 2,
    rateRadPerS: 2,
  });
  const end = (moves: readonly Move[], trial: number) => {
    const { recording } = recordTrial(compileTrial(hall, routineOf(moves)), 7, trial);
    const pose = robotAt(recording, recording.durationS);
    return { aheadMm: pose.yMm - 4500, leftMm: 4500 - pose.xMm, headingRad: pose.headingRad };
  };
  const trials = [0, 1, 2, 3, 4, 5, 6, 7];
  const square = (sense: number) => [0, 1, 2, 3].flatMap(() => [ahead(600), quarter(sense)]);
  const squares = (sense: number) => trials.map((n) => ({ sideMm: 600, ...end(square(sense), n) }));
  return {
    ...NOTHING,
    straights: trials.map((n) => {
      const { aheadMm, leftMm } = end([ahead(1200)], n);
      return { commandedMm: 1200, measuredMm: aheadMm, leftMm };
    }),
    turns: trials.map((n) => {
      const commandedRad = 5 * Math.PI;
      const { headingRad } = end(
        Array.from({ length: 10 }, () => quarter(1)),
        n,
      );
      // The angle left over tells the sum, once the full turns are added.
      const over = headingRad - Math.PI / 2 - commandedRad;
      return { commandedRad, measuredRad: commandedRad + nearest(over), turns: 10 };
    }),
    squaresRight: squares(-1),
    squaresLeft: squares(1),
  };
}

/** The angle less full turns, in (−π, π]. */
function nearest(angleRad: number): number {
  return angleRad - 2 * Math.PI * Math.round(angleRad / (2 * Math.PI));
}

describe("what was measured too seldom", () => {
  it("gives nothing rather than a guess, and says so", () => {
    const one = { commandedMm: 1000, measuredMm: 990, leftMm: 3 };
    const found = calibrate({ ...NOTHING, straights: [one] }, PLAIN_ROBOT.drive);
    expect(found.distanceScale).toBeNull();
    expect(found.turnScale).toBeNull();
    expect(found.warnings).toEqual(["too-few"]);
  });

  it("squares of different sides are left out with a warning", () => {
    const runs = [600, 600].map((sideMm) => ({ sideMm, aheadMm: -30, leftMm: 10 }));
    const mixed = {
      ...NOTHING,
      squaresRight: runs,
      squaresLeft: runs.map((run) => ({ ...run, sideMm: 700 })),
    };
    const found = calibrate(mixed, PLAIN_ROBOT.drive);
    expect(found.turnScale).toBeNull();
    expect(found.warnings).toContain("sides-differ");
  });

  it("turns and squares that contradict each other are pointed out", () => {
    const normal = normals(52);
    const tests = simulated(normal, true);
    const turns = tests.turns.map((turn) => ({ ...turn, measuredRad: turn.commandedRad * 1.05 }));
    expect(calibrate(tests, PLAIN_ROBOT.drive).warnings).toEqual([]);
    expect(calibrate({ ...tests, turns }, PLAIN_ROBOT.drive).warnings).toEqual(["turns-and-squares-differ"]);
  });
});

it("many turns in a row count as the many they are", () => {
  // One turn off by 2°, ten in a row off by 2°·√10: the same scatter per turn, about a scale of 0.
  const quarter = Math.PI / 2;
  const off = (turns: number, share: number) => ({
    commandedRad: turns * quarter,
    measuredRad: turns * quarter + share * Math.sqrt(turns),
    turns,
  });
  const fit = fitTurns([off(1, 0.035), off(1, -0.035), off(10, 0.035), off(10, -0.035)]);
  expect(fit!.turnScale.value).toBeCloseTo(0, 12);
  expect(fit!.turnSdRad.value).toBeCloseTo(0.035 * Math.sqrt(4 / 3), 12);
});

describe("use in the project", () => {
  const project = shippedProject();
  const found = calibrate(simulated(normals(53), true), project.robot.drive);

  it("writes the measured values where the trial takes them from, and keeps the project sound", () => {
    const { project: after, changes } = applyCalibration(project, found);
    const { systematic, random } = after.robot.drift;
    expect(systematic.turnScaleMean).toBeCloseTo(found.turnScale!.value, 4);
    expect(systematic.turnScaleSd).toBeCloseTo(found.turnScale!.se, 5);
    expect(systematic.curvatureMeanRadPerMm).toBeCloseTo(found.curvatureRadPerMm!.value, 7);
    expect(random.turnSdRad).toBeCloseTo(found.turnSdRad!.value, 5);
    expect(after.balls[0]!.kind.rollingResistance).toBeCloseTo(found.rollingResistance!.value, 4);
    expect(checkProject(after)).toEqual([]);
    expect(changes.every(({ allowed }) => allowed)).toBe(true);
    expect(changes.map(({ path }) => path)).toContain("robot.drift.systematic.distanceScaleMean");
    expect(applyCalibration(after, found).changes).toEqual([]);
  });

  it("leaves alone what was not measured", () => {
    const nothing = calibrate(NOTHING, project.robot.drive);
    const applied = applyCalibration(project, nothing);
    expect(applied.changes).toEqual([]);
    expect(applied.project).toEqual(project);
  });

  it("refuses what no project may hold, and says so", () => {
    const mad = { ...found, turnScale: { ...found.turnScale!, value: -0.7 } };
    const { project: after, changes } = applyCalibration(project, mad);
    const change = changes.find(({ path }) => path.endsWith("turnScaleMean"));
    expect(change).toMatchObject({ to: -0.7, allowed: false });
    expect(after.robot.drift.systematic.turnScaleMean).toBe(project.robot.drift.systematic.turnScaleMean);
  });
});
