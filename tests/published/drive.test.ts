import { describe, expect, it } from "vitest";
import type { Project } from "../../src/model/project.ts";
import type { Move } from "../../src/model/routine.ts";
import { nominalCourse } from "../../src/motion/course.ts";
import { curveSpeedMmPerS } from "../../src/motion/duration.ts";
import { compileTrial } from "../../src/trial/compile.ts";
import { robotAt } from "../../src/trial/playback.ts";
import { recordTrial } from "../../src/trial/run.ts";
import { PLAIN_ROBOT, routineOf, sceneProject } from "../support/scene.ts";

/** A robot in the middle of a hall so wide that nothing is in its way. */
function hall(headingRad: number, drive = {}, drift: Project["robot"]["drift"] = PLAIN_ROBOT.drift): Project {
  const side = 40_000;
  return sceneProject({
    zone: { widthMm: side, heightMm: side, doorway: { wall: "bottom", centreMm: side / 2, widthMm: 400 } },
    robot: {
      drive: { ...PLAIN_ROBOT.drive, topSpeedMmPerS: 1000, ...drive },
      drift,
      entry: { alongMm: 0, insetMm: side / 2, headingRad: headingRad - Math.PI / 2 },
    },
    balls: [{ x: 300, y: 300 }],
  });
}

const MIDDLE = 20_000;

describe("an arc", () => {
  // Course sheet (public course code): R = l/2·(v_r+v_l)/(v_r−v_l), ω = (v_r−v_l)/l, ICC = (x − R·sin θ, y + R·cos θ).
  it("turns about the instantaneous centre that its track speeds have", () => {
    const [left, right, gauge, heading] = [0.2, 0.3, 0.12, 0.7];
    const omega = (right - left) / gauge;
    const radius = ((gauge / 2) * (right + left)) / (right - left);
    const seconds = 2;
    const arc: Move = {
      kind: "arc",
      distanceMm: ((right + left) / 2) * seconds * 1000,
      angleRad: omega * seconds,
      speedMmPerS: 1000,
    };
    const { pieces, end } = nominalCourse(hall(heading), [arc]);
    expect(pieces).toHaveLength(1);
    expect(pieces[0]!.centreXMm).toBeCloseTo(MIDDLE - 1000 * radius * Math.sin(heading), 6);
    expect(pieces[0]!.centreYMm).toBeCloseTo(MIDDLE + 1000 * radius * Math.cos(heading), 6);
    const reach = Math.hypot(end.xMm - pieces[0]!.centreXMm, end.yMm - pieces[0]!.centreYMm);
    expect(reach).toBeCloseTo(1000 * radius, 6);
  });

  // The same sheet: shifting sideways by 0.5 m takes two commands; the shortest two-arc path is π/4 m = 0.7854 m.
  it("and its mirror image shift the robot by 0.5 m in 0.7854 m", () => {
    const quarter = (angleRad: number): Move => ({
      kind: "arc",
      distanceMm: 785.398 / 2,
      angleRad,
      speedMmPerS: 100,
    });
    const { end } = nominalCourse(hall(0), [quarter(Math.PI / 2), quarter(-Math.PI / 2)]);
    expect(end.yMm - MIDDLE).toBeCloseTo(500, 2);
    expect(end.headingRad).toBeCloseTo(0, 12);
  });

  // Siegwart & Nourbakhsh, Introduction to Autonomous Mobile Robots, sec. 3.2, from memory: r 1, half track 1, wheel rates 4 and 2, θ π/2: velocity (0, 3), turn rate 1.
  it("with outer wheel at 4 and inner at 2 goes at (0, 3) and turns at 1", () => {
    const drive = { topSpeedMmPerS: 4, gaugeMm: 2, accelMmPerS2: 1e6 };
    const project = hall(Math.PI / 2, drive);
    expect(curveSpeedMmPerS(project.robot.drive, 1000, 1 / 3)).toBeCloseTo(3, 12);
    const arc: Move = { kind: "arc", distanceMm: 6, angleRad: 2, speedMmPerS: 1000 };
    const { recording } = recordTrial(compileTrial(project, routineOf([arc])), 0, 0);
    // Over a short time around t: differences of what plays back.
    const [from, to] = [1e-3, 1.001e-3].map((t) => robotAt(recording, t));
    expect((to!.xMm - from!.xMm) / 1e-6).toBeCloseTo(0, 1);
    expect((to!.yMm - from!.yMm) / 1e-6).toBeCloseTo(3, 2);
    expect((to!.headingRad - from!.headingRad) / 1e-6).toBeCloseTo(1, 3);
  });

  // Siegwart eq. 5.7: x += Δs·cos(θ+Δθ/2); its error against the arc falls to a quarter when the step is halved, Euler's to a half (public course code).
  it("is what the mid-point update tends to, four times nearer with half the step", () => {
    const [distance, angle, heading] = [500, 1.3, 0.4];
    const arc: Move = { kind: "arc", distanceMm: distance, angleRad: angle, speedMmPerS: 100 };
    const { end } = nominalCourse(hall(heading), [arc]);
    const error = (steps: number, ahead: number): number => {
      let [x, y, theta] = [MIDDLE, MIDDLE, heading];
      for (let n = 0; n < steps; n++) {
        x += (distance / steps) * Math.cos(theta + (ahead * angle) / steps);
        y += (distance / steps) * Math.sin(theta + (ahead * angle) / steps);
        theta += angle / steps;
      }
      return Math.hypot(x - end.xMm, y - end.yMm);
    };
    expect(error(100, 0.5) / error(200, 0.5)).toBeCloseTo(4, 2);
    expect(error(1000, 0) / error(2000, 0)).toBeCloseTo(2, 2);
  });

  it("backward turns the same way over the floor", () => {
    const arc: Move = { kind: "arc", distanceMm: -400, angleRad: 0.8, speedMmPerS: 100 };
    const { end } = nominalCourse(hall(0), [arc]);
    // Radius 500: backward along a circle whose centre lies to the right, heading growing by 0.8.
    expect(end.xMm - MIDDLE).toBeCloseTo(-500 * Math.sin(0.8), 6);
    expect(end.yMm - MIDDLE).toBeCloseTo(-500 * (1 - Math.cos(0.8)), 6);
    expect(end.headingRad).toBeCloseTo(0.8, 12);
  });
});

describe("drift", () => {
  const square = (sign: 1 | -1): Move[] =>
    [0, 1, 2, 3].flatMap((): Move[] => [
      { kind: "drive", distanceMm: 2000, speedMmPerS: 200 },
      { kind: "turn", angleRad: (sign * Math.PI) / 2, rateRadPerS: 1 },
    ]);

  // Borenstein & Feng, IEEE T-RA 12 (1996): square of 2 m with a true track 4 % wider than assumed; x −0.2252 m either way round (public course code; y ∓0.2702 reproduced independently).
  it("of a track that is 4 % too wide returns from a square of 2 m at −0.2252 m", () => {
    const { systematic } = PLAIN_ROBOT.drift;
    const drift = { ...PLAIN_ROBOT.drift, systematic: { ...systematic, turnScaleMean: 1 / 1.04 - 1 } };
    for (const sign of [1, -1] as const) {
      const plan = compileTrial(hall(0, {}, drift), routineOf(square(sign)));
      const { recording } = recordTrial(plan, 0, 0);
      const end = robotAt(recording, recording.durationS);
      expect((end.xMm - MIDDLE) / 1000).toBeCloseTo(-0.2252, 4);
      expect((sign * (end.yMm - MIDDLE)) / 1000).toBeCloseTo(0.2702, 4);
    }
  });

  // The same for a right wheel 0.5 % too large: x −0.1702 m clockwise, 0.2313 m the other way (reproduced exactly). P9.8.
  it("of a right wheel 0.5 % too large returns at −0.1702 and 0.2313 m", () => {
    const { systematic } = PLAIN_ROBOT.drift;
    // Of wheels of 1 and 1.005, 0.2 m apart: mean 1.0025 in length and turn, and 0.005/1.0025 over the gauge of curvature.
    const mean = 1.0025;
    const curvature = 0.005 / mean / 200;
    const drift = {
      ...PLAIN_ROBOT.drift,
      systematic: {
        ...systematic,
        distanceScaleMean: mean - 1,
        turnScaleMean: mean - 1,
        curvatureMeanRadPerMm: curvature,
      },
    };
    const endX = (sign: 1 | -1, corner: Move): number => {
      const moves = square(sign).map((move) => (move.kind === "turn" ? corner : move));
      const { recording } = recordTrial(compileTrial(hall(0, {}, drift), routineOf(moves)), 0, 0);
      return (robotAt(recording, recording.durationS).xMm - MIDDLE) / 1000;
    };
    for (const [sign, published] of [
      [-1, -0.1702],
      [1, 0.2313],
    ] as const) {
      // Such wheels carry the axle's middle along by 0.0025·π/4 of the gauge in each quarter turn: an arc that short instead,
      // commanded so that with its own drift it turns by 1.0025 of a quarter.
      const alongMm = 0.0025 * (Math.PI / 4) * 200;
      const corner: Move = {
        kind: "arc",
        distanceMm: (sign * alongMm) / mean,
        angleRad: (sign * ((Math.PI / 2) * mean - curvature * alongMm)) / mean ** 2,
        speedMmPerS: 10,
      };
      expect(endX(sign, corner)).toBeCloseTo(published, 4);
      // The model's robot turns about the axle's middle itself, which puts it 0.1 mm off here.
      const onTheSpot: Move = { kind: "turn", angleRad: (sign * Math.PI) / 2, rateRadPerS: 1 };
      expect(Math.abs(endX(sign, onTheSpot) - published)).toBeLessThan(1.5e-4);
    }
  });
});
