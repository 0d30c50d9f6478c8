import { describe, expect, test } from "vitest";
import { generateRoutines } from "../../../src/plan/catalogue.ts";
import { compileTrial } from "../../../src/trial/compile.ts";
import { joinFates, runFates } from "../../../src/trial/fates.ts";
import { LOSS_REASONS } from "../../../src/trial/outcome.ts";
import { moveAt } from "../../../src/trial/playback.ts";
import { recordTrial, runBatch, runTrial } from "../../../src/trial/run.ts";
import { shippedProject } from "../../support/projectFiles.ts";
import { PLAIN_BALL, routineOf, sceneProject } from "../../support/scene.ts";

const project = shippedProject();
const routine = generateRoutines(project)[3] ?? routineOf([]);
const plan = compileTrial(project, routine);

describe("the fates of the balls", () => {
  const fates = runFates(plan, 5, 0, 60);

  test("are those of the single trials", () => {
    for (const index of [0, 7, 41]) {
      const outcome = runTrial(plan, 5, index);
      for (let ball = 0; ball < 3; ball++) {
        const at = 3 * index + ball;
        expect(fates.startXMm[at]).toBe(outcome.placement[ball]?.xMm);
        expect(fates.endYMm[at]).toBe(outcome.endPositions[ball]?.yMm);
        expect(LOSS_REASONS[(fates.loss[at] ?? 0) - 1] ?? null).toBe(outcome.losses[ball]);
        if (outcome.delivered[ball]) expect(fates.homeAtS[at]).toBe(outcome.deliveredAtS[ball]);
      }
    }
  });

  test("add up to the batch's losses", () => {
    const { losses, delivered } = runBatch(plan, 5, 0, 60);
    for (const [i, reason] of LOSS_REASONS.entries()) {
      expect([reason, fates.loss.filter((code) => code === 1 + i).length]).toEqual([reason, losses[i]]);
    }
    expect(fates.loss.filter((code) => code === 0).length).toBe(delivered.reduce((sum, n) => sum + n, 0));
  });

  test("name a moment that the recording shows", () => {
    const seen = new Set<string>();
    for (let at = 0; at < fates.loss.length; at++) {
      const reason = LOSS_REASONS[(fates.loss[at] ?? 0) - 1];
      if (reason === undefined || seen.has(reason)) continue;
      seen.add(reason);
      const ball = at % 3;
      const { recording } = recordTrial(plan, 5, Math.floor(at / 3));
      const timeS = fates.lossAtS[at] ?? Number.NaN;
      if (reason === "never-touched") {
        expect([timeS, fates.lossMove[at]]).toEqual([Number.NaN, -1]);
        continue;
      }
      const kinds = recording.events.filter((event) => event.ball === ball && event.timeS === timeS);
      if (reason === "left-wedge") expect(kinds.map(({ kind }) => kind)).toContain("off-wedge");
      if (reason === "rolled-out") expect(kinds.map(({ kind }) => kind)).toContain("rolled-out");
      if (reason === "jammed") expect(kinds.map(({ kind }) => kind)).toContain("jam");
      if (reason === "left-pusher") {
        const first = recording.events.find((event) => event.ball === ball && event.kind === "touched");
        expect(first?.timeS).toBeLessThanOrEqual(timeS);
        expect(Math.abs(moveAt(recording, timeS) - (fates.lossMove[at] ?? -1))).toBeLessThanOrEqual(1);
      }
    }
    expect(seen.size).toBeGreaterThanOrEqual(2);
  });

  test("are the same in pieces, in any order", () => {
    const pieces = [runFates(plan, 5, 40, 60), runFates(plan, 5, 0, 13), runFates(plan, 5, 13, 40)];
    expect(joinFates(pieces)).toEqual(fates);
    expect(() => joinFates(pieces.slice(0, 2))).toThrow(/after trial 13/);
    expect(() => joinFates([])).toThrow(/at least one/);
  });
});

describe("the move to blame, by hand", () => {
  const speedMmPerS = 200;
  const scene = (x: number, y: number, timeLimitS = 120) =>
    sceneProject({ balls: [{ x, y, kind: { ...PLAIN_BALL } }], timeLimitS });
  const fateOf = (x: number, y: number, timeLimitS?: number) => {
    // The doorway is at (130, 0), the robot enters upward: up, back, turn right, forward.
    const moves = [
      { kind: "drive", distanceMm: 300, speedMmPerS } as const,
      { kind: "drive", distanceMm: -100, speedMmPerS } as const,
      { kind: "turn", angleRad: -Math.PI / 2, rateRadPerS: 2 } as const,
      { kind: "drive", distanceMm: 200, speedMmPerS } as const,
    ];
    const made = compileTrial(scene(x, y, timeLimitS), routineOf(moves), { drift: false, spread: false });
    const { loss, lossMove, lossAtS } = runFates(made, 1, 0, 1);
    return { reason: LOSS_REASONS[(loss[0] ?? 0) - 1], move: lossMove[0], timeS: lossAtS[0] ?? Number.NaN };
  };

  test("is the one that pushed last", () => {
    expect(fateOf(130, 350)).toMatchObject({ reason: "left-pusher", move: 0 });
    expect(fateOf(420, 270)).toMatchObject({ reason: "left-pusher", move: 3 });
    expect(fateOf(900, 200)).toEqual({ reason: "never-touched", move: -1, timeS: Number.NaN });
  });

  test("is the one that the time limit cut", () => {
    const cut = fateOf(900, 200, 3);
    expect(cut).toEqual({ reason: "out-of-time", move: 2, timeS: 3 });
  });
});
