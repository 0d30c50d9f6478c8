import { describe, expect, it } from "vitest";
import { compileTrial } from "../../../src/trial/compile.ts";
import { ballAt, robotAt } from "../../../src/trial/playback.ts";
import type { Recording } from "../../../src/trial/recording.ts";
import { recordTrial } from "../../../src/trial/run.ts";
import { startingAt } from "../../support/approach.ts";
import { eventsOf } from "../../support/probe.ts";
import { routineOf } from "../../support/scene.ts";

const SPEED_MM_PER_S = 150;
/** Ball's centre ahead of the robot's origin when the plate touches it. */
const REACH_MM = 120 + 20;

/** A plate drives a ball 20 mm before it through a zone of 4 m, for `distanceMm`. */
function push(distanceMm: number): Recording {
  const kind = {
    build: "hollow",
    diameterMm: 40,
    rollingResistance: 0.02,
    restitution: 0,
    frictionCoeff: 0.3,
  } as const;
  const project = startingAt(
    { x: 400, y: 450, headingRad: 0 },
    {
      zone: { widthMm: 4000, heightMm: 900, walls: { restitution: 0, frictionCoeff: 0.3 } },
      balls: [{ x: 560, y: 450, kind }],
    },
  );
  const routine = routineOf([{ kind: "drive", distanceMm, speedMmPerS: SPEED_MM_PER_S }]);
  return recordTrial(compileTrial(project, routine, { drift: false, spread: false }), 0, 0).recording;
}

describe("a ball that rides before a plate", () => {
  it("stays before it all the way, in steps of up to half a second", () => {
    const recording = push(3000);
    for (let t = 2; t < 19; t += 0.01) {
      const lead = ballAt(recording, 0, t).xMm - robotAt(recording, t).xMm;
      expect(Math.abs(lead - REACH_MM), `at ${t} s`).toBeLessThan(0.02);
    }
    const riding = [...recording.frameTimeS].filter((t) => t > 2 && t < 19);
    expect(riding.length).toBeLessThan(17 / 0.25);
  });

  // Found by comparing means: the jam took back the whole last step of the ride, and with it 0.7 balls in 100 trials.
  it("jams at the wall, not where its last long step began", () => {
    const recording = push(3600);
    const [jam] = eventsOf(recording, "jam");
    expect(jam).toBeDefined();
    expect(ballAt(recording, 0, recording.durationS).xMm).toBeGreaterThan(4000 - 20 - 0.3);
    expect(robotAt(recording, recording.durationS).xMm).toBeGreaterThan(4000 - 40 - 120 - 0.3);
  });
});
