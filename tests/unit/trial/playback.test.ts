import { describe, expect, it } from "vitest";
import type { Move } from "../../../src/model/routine.ts";
import { compileTrial } from "../../../src/trial/compile.ts";
import { robotAt } from "../../../src/trial/playback.ts";
import { recordTrial } from "../../../src/trial/run.ts";
import { routineOf, sceneProject } from "../../support/scene.ts";

const wait: Move = { kind: "wait", durationS: 2 };

describe("playing back a robot that never moves", () => {
  // Found by a gyro that was so far off that the only turn was left out: with no piece of way at all there was no place either.
  it.each([
    ["has no moves", []],
    ["only waits", [wait]],
    ["waits twice", [wait, wait]],
  ] as const)("shows it where it %s: at its entry", (_, moves) => {
    const project = sceneProject({ balls: [{ x: 300, y: 300 }] });
    const { recording } = recordTrial(compileTrial(project, routineOf(moves)), 1, 0);
    for (const t of [0, 1, recording.durationS])
      expect(robotAt(recording, t)).toEqual({ xMm: 130, yMm: 60, headingRad: Math.PI / 2 });
  });

  it("shows it at its entry until it moves", () => {
    const project = sceneProject({ balls: [{ x: 300, y: 300 }] });
    const drive: Move = { kind: "drive", distanceMm: 100, speedMmPerS: 100 };
    const { recording } = recordTrial(compileTrial(project, routineOf([wait, drive])), 1, 0);
    expect(robotAt(recording, 1)).toEqual({ xMm: 130, yMm: 60, headingRad: Math.PI / 2 });
    expect(robotAt(recording, recording.durationS).yMm).toBeCloseTo(160, 9);
  });
});
