import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { parseProject } from "../../../src/model/parse.ts";
import type { Routine } from "../../../src/model/routine.ts";
import { compileTrial } from "../../../src/trial/compile.ts";
import { ballAt, robotAt } from "../../../src/trial/playback.ts";
import { recordTrial } from "../../../src/trial/run.ts";
import { pointsUntil, traceRun } from "../../../src/view/runTrace.ts";

const parsed = parseProject(readFileSync("fields/usual-zone.json", "utf8"));
if (!parsed.ok) throw new Error("usual-zone.json does not parse");
const ROUTINE: Routine = {
  id: "straight",
  pattern: "own",
  label: "straight",
  params: {},
  moves: [
    { kind: "drive", distanceMm: 500, speedMmPerS: 150 },
    { kind: "wait", durationS: 2 },
    { kind: "drive", distanceMm: -300, speedMmPerS: 150 },
  ],
};
const { recording } = recordTrial(compileTrial(parsed.value, ROUTINE), 1, 4);
const trace = traceRun(recording);

describe("the trace of a run", () => {
  it("starts and ends where the recording does", () => {
    const end = robotAt(recording, recording.durationS);
    const last = trace.robot.timeS.length - 1;
    expect(trace.robot.xMm[0]).toBeCloseTo(robotAt(recording, 0).xMm, 9);
    expect(Math.abs((trace.robot.xMm[last] ?? 0) - end.xMm)).toBeLessThan(5);
    expect(Math.abs((trace.robot.yMm[last] ?? 0) - end.yMm)).toBeLessThan(5);
    expect(trace.balls).toHaveLength(recording.ballCount);
  });

  it("passes through places of the playback, at their seconds", () => {
    for (const [ball, trail] of trace.balls.entries()) {
      for (const [i, timeS] of trail.timeS.entries()) {
        expect(trail.xMm[i]).toBe(ballAt(recording, ball, timeS).xMm);
        expect(trail.yMm[i]).toBe(ballAt(recording, ball, timeS).yMm);
      }
    }
  });

  it("adds no points while the robot waits", () => {
    const startS = recording.moveStartS[1] ?? 0;
    expect(pointsUntil(trace.robot, startS + 2) - pointsUntil(trace.robot, startS + 0.1)).toBeLessThanOrEqual(
      1,
    );
  });

  it("counts the points up to a second", () => {
    expect(pointsUntil(trace.robot, -1)).toBe(0);
    expect(pointsUntil(trace.robot, 0)).toBe(1);
    expect(pointsUntil(trace.robot, recording.durationS)).toBe(trace.robot.timeS.length);
  });
});
