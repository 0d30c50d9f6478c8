import { describe, expect, it } from "vitest";
import type { BallKind } from "../../src/model/ball.ts";
import { compileTrial } from "../../src/trial/compile.ts";
import { ballAt, robotAt } from "../../src/trial/playback.ts";
import type { Recording } from "../../src/trial/recording.ts";
import { recordTrial } from "../../src/trial/run.ts";
import { letRoll, PLAIN_ROBOT, routineOf, sceneProject } from "../support/scene.ts";

/** Solid ball and plate of the worked example: e 0.6, μ 0.3 on the floor, a 0.15 m/s². */
const KIND: Partial<BallKind> = {
  build: "solid",
  rollingResistance: 0.15 / 9.81,
  restitution: 0.6,
  floorFrictionCoeff: 0.3,
  frictionCoeff: 0,
};
/** Ball's centre ahead of the robot's origin when they touch. */
const REACH_MM = 120 + 20;

/** A plate at a steady 0.25 m/s hits the ball at rest; the ride is long enough for it to come up again. */
function hit(): Recording {
  const project = sceneProject({
    zone: { widthMm: 4000, heightMm: 900, doorway: { wall: "left", centreMm: 450, widthMm: 300 } },
    robot: {
      surface: { restitution: 1, frictionCoeff: 0 },
      drive: { ...PLAIN_ROBOT.drive, topSpeedMmPerS: 250 },
      entry: { alongMm: 0, insetMm: 100, headingRad: 0 },
    },
    balls: [{ x: 700, y: 450, kind: KIND }],
  });
  const routine = routineOf([{ kind: "drive", distanceMm: 1500, speedMmPerS: 250 }]);
  return recordTrial(compileTrial(project, routine, { drift: false, spread: false }), 0, 0).recording;
}

const recording = hit();
const touchS = recording.events.find(({ kind }) => kind === "touched")!.timeS;
const x = (t: number): number => ballAt(recording, 0, t).xMm;
const leadAt = (t: number): number => x(t) - robotAt(recording, t).xMm - REACH_MM;

/** First second after `fromS` at which `holds` is true, to 1e-9 s; it is false at `fromS` and true `spanS` later. */
function firstTime(fromS: number, spanS: number, holds: (t: number) => boolean): number {
  let low = fromS;
  let high = fromS + spanS;
  expect([holds(low), holds(high)]).toEqual([false, true]);
  while (high - low > 1e-9) {
    const middle = (low + high) / 2;
    if (holds(middle)) high = middle;
    else low = middle;
  }
  return high;
}

describe("a plate at 0.25 m/s that hits a ball at rest", () => {
  // Textbook billiard identities, from memory, values derived: u₀ = (1+e)v = 0.4 m/s; slides 0.0133142 m in 0.0388331 s; rolls at 0.285714 m/s.
  const rollingS = firstTime(touchS + 1e-6, 0.1, (t) => ballAt(recording, 0, t).state === "rolling");

  it("sends it off at 0.4 m/s", () => {
    const step = 1e-6;
    const speed = (x(touchS + 2 * step) - x(touchS + step)) / step / 1000;
    expect(speed).toBeCloseTo(0.4, 4);
  });

  it("lets it slide 0.0133142 m in 0.0388331 s", () => {
    expect(rollingS - touchS).toBeCloseTo(0.0388331, 7);
    expect((x(rollingS) - x(touchS)) / 1000).toBeCloseTo(0.0133142, 7);
  });

  it("sees it roll on at 0.285714 m/s", () => {
    const step = 1e-5;
    const speed = (x(rollingS + step) - x(rollingS)) / step + 0.5 * 150 * step;
    expect(speed / 1000).toBeCloseTo(0.285714, 6);
  });

  // Derived: from where it rolls, the lead grows by (u₁−v)²/(2a) = 0.00425170 m.
  it("falls behind by 0.00425170 m more while it rolls", () => {
    let most = 0;
    for (let t = rollingS; t < rollingS + 0.4; t += 1e-4) most = Math.max(most, leadAt(t));
    expect((most - leadAt(rollingS)) / 1000).toBeCloseTo(0.0042517, 8);
  });

  // Derived: t = 2(u₁−v)/a after it began to roll the lead is back at what it was then, and the plate has gone on by D = 2v(u₁−v)/a = 0.119048 m.
  it("has gained that back when it has gone on by 0.119048 m", () => {
    const backS = firstTime(rollingS + 0.4, 0.1, (t) => leadAt(t) < leadAt(rollingS));
    const way = robotAt(recording, backS).xMm - robotAt(recording, rollingS).xMm;
    expect(way / 1000).toBeCloseTo(0.119048, 6);
  });

  // Derived, second implementation: lead 0.0133142 − 0.25·0.0388331 m when it begins to roll, gained on at 0.0357143 m/s, lost at 0.15 m/s²: met again 0.561775 s later.
  it("comes up with it again 0.561775 s after that", () => {
    // The engine's balls meet 0.002 mm early: from the last hundredths before, straight on.
    const [farS, nearS] = [0.02, 0.01].map((lead) =>
      firstTime(rollingS + 0.5, 0.0616, (t) => leadAt(t) < lead),
    );
    expect(2 * nearS! - farS! - rollingS).toBeCloseTo(0.561775, 6);
  });

  // Derived: a plate that stops at once leaves the ball u₁²/(2a) = 0.272109 m of rolling after the slide.
  it("would let it run 0.272109 m after the slide if it stopped", () => {
    const [end] = letRoll(
      { zone: { widthMm: 3000 }, balls: [{ x: 300, y: 500, vx: 400, sx: 0, sy: 0, kind: KIND }] },
      10,
    );
    expect((end!.x - 300) / 1000 - 0.0133142).toBeCloseTo(0.272109, 6);
  });
});
