import { expect, it } from "vitest";
import { compileTrial } from "../../../src/trial/compile.ts";
import { robotAt } from "../../../src/trial/playback.ts";
import { recordTrial } from "../../../src/trial/run.ts";
import { routineOf, sceneProject } from "../../support/scene.ts";

it("leaves the robot where the time limit stopped it, however far the move would have gone", () => {
  const project = sceneProject({ balls: [{ x: 600, y: 600 }], timeLimitS: 2 });
  const routine = routineOf([{ kind: "drive", distanceMm: 700, speedMmPerS: 200 }]);
  const { recording, outcome } = recordTrial(compileTrial(project, routine, { drift: false }), 0, 0);
  expect(outcome.timeS).toBe(2);
  const cut = robotAt(recording, 2);
  expect(cut.yMm).toBeCloseTo(60 + 0.5 * 500 * 0.4 ** 2 + 200 * 1.6, 6);
  expect(robotAt(recording, 50)).toEqual(cut);
});
