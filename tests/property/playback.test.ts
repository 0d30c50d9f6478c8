import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { bx, by, mode, OUT, REST, ROLLING } from "../../src/trial/balls.kernel.ts";
import { compileTrial } from "../../src/trial/compile.ts";
import { ballAt, robotAt } from "../../src/trial/playback.ts";
import { robot } from "../../src/trial/robot.kernel.ts";
import { recordTrial, runTrial } from "../../src/trial/run.ts";
import { watchTrial } from "../support/probe.ts";
import { routineOf } from "../support/scene.ts";
import { anyMoves, anyProject } from "../support/worlds.ts";

const SEED = 3;
/** How far something may jump from just before a frame to the frame itself, mm. */
const JUMP_MM = 0.1;

interface Seen {
  readonly timeS: number;
  readonly robot: { readonly x: number; readonly y: number; readonly heading: number };
  readonly balls: readonly {
    readonly x: number;
    readonly y: number;
    readonly state: string;
  }[];
}

function stateName(i: number): string {
  if (mode[i] === OUT) return "out";
  if (mode[i] === REST) return "rest";
  return mode[i] === ROLLING ? "rolling" : "sliding";
}

function look(timeS: number, count: number): Seen {
  return {
    timeS,
    robot: { x: robot.x, y: robot.y, heading: robot.heading },
    balls: Array.from({ length: count }, (_, i) => ({
      x: bx[i]!,
      y: by[i]!,
      state: stateName(i),
    })),
  };
}

describe("playing a recording back", () => {
  it("gives at every frame what the trial computed, and no jumps in between", () => {
    fc.assert(
      fc.property(anyProject, anyMoves, fc.nat({ max: 50 }), (project, moves, index) => {
        const plan = compileTrial(project, routineOf(moves));
        const seen: Seen[] = [];
        const recording = watchTrial(plan, SEED, index, (timeS) => seen.push(look(timeS, plan.kinds.length)));
        expect(recording.frameTimeS).toHaveLength(seen.length);
        for (const [n, now] of seen.entries()) {
          // Two frames at one second: playing back shows the later one.
          if (seen[n + 1]?.timeS === now.timeS) continue;
          const pose = robotAt(recording, now.timeS);
          expect(Math.hypot(pose.xMm - now.robot.x, pose.yMm - now.robot.y)).toBeLessThan(JUMP_MM);
          const before = n > 0 && now.timeS - seen[n - 1]!.timeS > 1e-9 ? now.timeS - 1e-9 : null;
          if (before !== null) {
            const earlier = robotAt(recording, before);
            expect(Math.hypot(earlier.xMm - now.robot.x, earlier.yMm - now.robot.y)).toBeLessThan(JUMP_MM);
          }
          for (const [i, ball] of now.balls.entries()) {
            const at = ballAt(recording, i, now.timeS);
            expect([at.xMm, at.yMm, at.state]).toEqual([ball.x, ball.y, ball.state]);
            if (before === null) continue;
            const almost = ballAt(recording, i, before);
            expect(Math.hypot(almost.xMm - ball.x, almost.yMm - ball.y)).toBeLessThan(JUMP_MM);
          }
        }
      }),
      { seed: 41, numRuns: 80 },
    );
  });

  it("ends where the trial ended; recording changes nothing", () => {
    fc.assert(
      fc.property(anyProject, anyMoves, fc.nat({ max: 50 }), (project, moves, index) => {
        const plan = compileTrial(project, routineOf(moves));
        const { outcome, recording } = recordTrial(plan, SEED, index);
        expect(runTrial(plan, SEED, index)).toEqual(outcome);
        for (const [i, end] of outcome.endPositions.entries()) {
          const { xMm, yMm } = ballAt(recording, i, recording.durationS + 1);
          expect({ xMm, yMm }).toEqual(end);
        }
        expect([...recording.frameTimeS]).toEqual([...recording.frameTimeS].sort((a, b) => a - b));
        expect(recording.durationS).toBeGreaterThanOrEqual(outcome.timeS);
        for (const event of recording.events) expect(event.timeS).toBeLessThanOrEqual(recording.durationS);
      }),
      { seed: 42, numRuns: 80 },
    );
  });
});
