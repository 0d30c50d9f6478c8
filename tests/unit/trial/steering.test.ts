import { describe, expect, it } from "vitest";
import type { Project } from "../../../src/model/project.ts";
import type { Move } from "../../../src/model/routine.ts";
import type { Sensor } from "../../../src/model/sensor.ts";
import { SENSOR_PRESETS } from "../../../src/model/sensorPresets.ts";
import { compileTrial } from "../../../src/trial/compile.ts";
import { robotAt } from "../../../src/trial/playback.ts";
import { recordTrial } from "../../../src/trial/run.ts";
import { PLAIN_ROBOT, routineOf } from "../../support/scene.ts";
import { sensingProject } from "../../support/sensingScene.ts";

const gyro = { ...SENSOR_PRESETS["rate-gyro"], kind: "gyro", errorSdRad: 0.002, driftSdRadPerS: 0 } as const;

/** Turns come out 5 % short or long, and straights curve. */
function drifting(sensors: readonly Sensor[]): Project {
  const project = sensingProject(sensors, [{ xMm: 1100, yMm: 100 }]);
  const { drift } = PLAIN_ROBOT;
  const systematic = { ...drift.systematic, turnScaleSd: 0.05, curvatureSdRadPerMm: 2e-4 };
  return { ...project, robot: { ...project.robot, drift: { ...drift, systematic } } };
}

const MOVES: readonly Move[] = [
  { kind: "drive", distanceMm: 300, speedMmPerS: 200 },
  { kind: "turn", angleRad: -1.2, rateRadPerS: 2 },
  { kind: "drive", distanceMm: 250, speedMmPerS: 200 },
  { kind: "turn", angleRad: 2.0, rateRadPerS: 2 },
];

/** Standard deviation of the final heading about the commanded one, rad. */
function headingSd(project: Project, program: boolean): number {
  const routine = { ...routineOf(MOVES), ...(program ? { program: MOVES } : {}) };
  const plan = compileTrial(project, routine);
  let sum = 0;
  for (let index = 0; index < 60; index++) {
    const { outcome, recording } = recordTrial(plan, 5, index);
    const off = robotAt(recording, outcome.timeS).headingRad - (Math.PI / 2 - 1.2 + 2.0);
    sum += off * off;
  }
  return Math.sqrt(sum / 60);
}

describe("a heading gyro", () => {
  it.each([false, true])("takes the place of turn drift and curvature (as a program: %s)", (program) => {
    expect(headingSd(drifting([]), program)).toBeGreaterThan(0.03);
    const steered = headingSd(drifting([gyro]), program);
    // The last turn's own error, drawn with 0.002 rad: 60 draws lie within a third of it.
    expect(steered).toBeGreaterThan(0.0013);
    expect(steered).toBeLessThan(0.0027);
  });

  it("drifts with time", () => {
    const slow = { ...gyro, driftSdRadPerS: 0.01 };
    expect(headingSd(drifting([slow]), false)).toBeGreaterThan(0.02);
  });
});

describe("a contact switch", () => {
  const toWall: readonly Move[] = [{ kind: "toWall", distanceMm: 700, overrunMm: 150, speedMmPerS: 150 }];
  const timeS = (sensors: readonly Sensor[]) =>
    recordTrial(compileTrial(sensingProject(sensors, [{ xMm: 1100, yMm: 100 }]), routineOf(toWall)), 1, 0)
      .outcome.timeS;

  it("ends a drive to the wall when the robot is pressed against it", () => {
    const blind = timeS([]);
    const felt = timeS([SENSOR_PRESETS["contact-switch"]]);
    expect(blind - felt).toBeGreaterThan(0.5);
    expect(felt).toBeGreaterThan(700 / 150);
  });

  it("at the back feels nothing of a wall in front", () => {
    expect(timeS([{ kind: "bump", name: "back", side: "back" }])).toBe(timeS([]));
  });
});

describe("an unknown corner", () => {
  it("is drawn anew for each trial, every allowed one about as often", () => {
    const project = sensingProject([], [{ xMm: 600, yMm: 450 }]);
    const corners = ["upper-right", "upper-left", "lower-right"] as const;
    const unknown = { ...project, rules: { ...project.rules, wedgeCorners: corners } };
    const plan = compileTrial(unknown, routineOf([]));
    const drawn = Array.from({ length: 120 }, (_, index) => recordTrial(plan, 3, index).recording.corner);
    for (const corner of corners) {
      const count = drawn.filter((each) => each === corner).length;
      // 40 expected, standard deviation 5.2.
      expect(Math.abs(count - 40)).toBeLessThan(21);
    }
    expect(recordTrial(compileTrial(project, routineOf([])), 3, 0).recording.corner).toBeUndefined();
  });
});
