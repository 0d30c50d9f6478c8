import { describe, expect, it } from "vitest";
import type { Drift } from "../../../src/model/robot.ts";
import type { Move } from "../../../src/model/routine.ts";
import { CUT_SD, DriftDrawer } from "../../../src/trial/drift.ts";
import { PLAIN_ROBOT } from "../../support/scene.ts";

const TRIALS = 4000;

function drifting(change: {
  systematic?: Partial<Drift["systematic"]>;
  random?: Partial<Drift["random"]>;
  start?: Partial<Drift["start"]>;
}): Drift {
  const { systematic, random, start } = PLAIN_ROBOT.drift;
  return {
    systematic: { ...systematic, ...change.systematic },
    random: { ...random, ...change.random },
    start: { ...start, ...change.start },
  };
}

/** What a move becomes in each of many trials. */
function realised(drift: Drift, move: Move, moveIndex = 0): { scale: number; kappaExtra: number }[] {
  const drawer = new DriftDrawer(drift, true);
  return Array.from({ length: TRIALS }, (_, trial) => {
    drawer.openTrial(5, trial);
    const out = { scale: 0, kappaExtra: 0 };
    drawer.openMove(moveIndex, move, 1, out);
    return out;
  });
}

const mean = (values: number[]): number => values.reduce((sum, value) => sum + value, 0) / values.length;
const sd = (values: number[]): number => Math.sqrt(mean(values.map((value) => (value - mean(values)) ** 2)));
/** Four standard errors of a mean and of a standard deviation of so many normals. */
const MEAN_TOLERANCE = 4 / Math.sqrt(TRIALS);
const SD_TOLERANCE = 4 / Math.sqrt(2 * TRIALS);

const drive: Move = { kind: "drive", distanceMm: 500, speedMmPerS: 100 };
const turn: Move = { kind: "turn", angleRad: -1.2, rateRadPerS: 1 };
const arc: Move = { kind: "arc", distanceMm: 400, angleRad: 0.8, speedMmPerS: 100 };

describe("drift", () => {
  it("stretches straights by mean and spread, of the run and of the move", () => {
    const drift = drifting({
      systematic: { distanceScaleMean: 0.02, distanceScaleSd: 0.03 },
      random: { distanceSdFrac: 0.04 },
    });
    const scales = realised(drift, drive).map(({ scale }) => scale);
    expect(Math.abs(mean(scales) - 1.02) / 0.05).toBeLessThan(MEAN_TOLERANCE);
    expect(Math.abs(sd(scales) / 0.05 - 1)).toBeLessThan(SD_TOLERANCE);
  });

  it("stretches turns, small ones by the part that does not depend on their size", () => {
    const drift = drifting({
      systematic: { turnScaleMean: -0.03 },
      random: { turnSdFrac: 0.01, turnSdRad: 0.02 },
    });
    for (const [angleRad, sdRad] of [
      [-1.2, Math.hypot(0.012, 0.02)],
      [0.1, Math.hypot(0.001, 0.02)],
    ] as const) {
      const angles = realised(drift, { ...turn, angleRad }).map(({ scale }) => scale * Math.abs(angleRad));
      expect(Math.abs(mean(angles) - 0.97 * Math.abs(angleRad)) / sdRad).toBeLessThan(MEAN_TOLERANCE);
      expect(Math.abs(sd(angles) / sdRad - 1)).toBeLessThan(SD_TOLERANCE);
    }
  });

  it("bends straights: the run's curve lies on the same circle forward and back, the move's own is new each time", () => {
    const drawer = new DriftDrawer(drifting({ systematic: { curvatureMeanRadPerMm: 3e-4 } }), true);
    drawer.openTrial(1, 1);
    const out = { scale: 0, kappaExtra: 0 };
    drawer.openMove(0, drive, 1, out);
    expect(out.kappaExtra).toBe(3e-4);
    drawer.openMove(1, { ...drive, distanceMm: -500 }, -1, out);
    expect(out.kappaExtra).toBe(-3e-4);
    const bends = realised(drifting({ random: { curvatureSdRadPerMm: 2e-4 } }), drive).map(
      (real) => real.kappaExtra,
    );
    expect(Math.abs(sd(bends) / 2e-4 - 1)).toBeLessThan(SD_TOLERANCE);
    expect(Math.abs(mean(bends)) / 2e-4).toBeLessThan(MEAN_TOLERANCE);
  });

  it("lets a curve come out short like a turn: its heading change scales with both, its way with the distance only", () => {
    const drift = drifting({ systematic: { distanceScaleMean: 0.1, turnScaleMean: -0.04 } });
    const [real] = realised(drift, arc);
    expect(real!.scale).toBeCloseTo(1.1, 12);
    const kappa = 0.8 / 400 + real!.kappaExtra;
    expect(kappa * 400 * real!.scale).toBeCloseTo(0.8 * 0.96 * 1.1, 12);
  });

  it("sets the robot down a little off", () => {
    const drawer = new DriftDrawer(drifting({ start: { positionSdMm: 5, headingSdRad: 0.02 } }), true);
    const starts = Array.from({ length: TRIALS }, (_, trial) => {
      drawer.openTrial(9, trial);
      return [drawer.startX, drawer.startY, drawer.startHeading];
    });
    for (const [k, spread] of [5, 5, 0.02].entries()) {
      const values = starts.map((start) => start[k]!);
      expect(Math.abs(sd(values) / spread - 1)).toBeLessThan(SD_TOLERANCE);
      expect(Math.abs(mean(values)) / spread).toBeLessThan(MEAN_TOLERANCE);
      expect(Math.max(...values.map(Math.abs))).toBeLessThanOrEqual(CUT_SD * spread);
    }
    const [x, y] = [starts.map((start) => start[0]!), starts.map((start) => start[1]!)];
    expect(Math.abs(mean(x.map((value, n) => (value * y[n]!) / 25)))).toBeLessThan(MEAN_TOLERANCE);
  });

  it("gives the same move of another routine the same luck, and its neighbours another", () => {
    const drift = drifting({ random: { distanceSdFrac: 0.05 } });
    const short = realised(drift, { ...drive, distanceMm: 100 }, 3).map(({ scale }) => scale);
    expect(realised(drift, { ...drive, distanceMm: -700 }, 3).map(({ scale }) => scale)).toEqual(short);
    const next = realised(drift, drive, 4).map(({ scale }) => scale);
    const together = mean(short.map((scale, n) => ((scale - 1) * (next[n]! - 1)) / 0.05 ** 2));
    expect(Math.abs(together)).toBeLessThan(MEAN_TOLERANCE);
  });

  it("never makes a move go backward, leaves waits alone, and can be left out", () => {
    const wild = drifting({ random: { distanceSdFrac: 2, turnSdRad: 3 } });
    expect(Math.min(...realised(wild, drive).map(({ scale }) => scale))).toBe(0);
    expect(Math.min(...realised(wild, turn).map(({ scale }) => scale))).toBe(0);
    expect(realised(wild, { kind: "wait", durationS: 1 })[0]).toEqual({ scale: 1, kappaExtra: 0 });
    const off = new DriftDrawer(wild, false);
    off.openTrial(1, 1);
    const out = { scale: 0, kappaExtra: 1 };
    off.openMove(0, drive, 1, out);
    expect([out.scale, out.kappaExtra, off.startX, off.startHeading]).toEqual([1, 0, 0, 0]);
  });
});
