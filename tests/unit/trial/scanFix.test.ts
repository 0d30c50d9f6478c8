import { describe, expect, it } from "vitest";
import type { DistanceSensor } from "../../../src/model/sensor.ts";
import { faceDistance, facesOf } from "../../../src/motion/faces.kernel.ts";
import type { Pose } from "../../../src/motion/pose.ts";
import { placeFix, type ScanReading } from "../../../src/trial/scanFix.ts";
import { SHARP_EYE, sensingProject } from "../../support/sensingScene.ts";

const eye = SHARP_EYE as DistanceSensor;
const faces = facesOf(sensingProject([eye], [{ xMm: 600, yMm: 700 }]).zone);
const believed: Pose = { xMm: 500, yMm: 400, headingRad: 0.4 };

interface Truth {
  readonly x?: number;
  readonly y?: number;
  readonly heading?: number;
  readonly turnFrac?: number;
  /** A round thing of 40 mm, in the way of the beam. */
  readonly ball?: { readonly x: number; readonly y: number };
  readonly every?: number;
}

/** Readings without error of a robot that stands and turns otherwise than it believes. */
function readingsOf(truth: Truth): readonly ScanReading[] {
  const { x = 0, y = 0, heading = 0, turnFrac = 0, ball, every = 2 } = truth;
  return Array.from({ length: Math.floor(360 / every) }, (_, i) => {
    const turnedRad = (i * every * Math.PI) / 180;
    const real = believed.headingRad + heading + (1 + turnFrac) * turnedRad;
    const px = believed.xMm + x + eye.alongMm * Math.cos(real);
    const py = believed.yMm + y + eye.alongMm * Math.sin(real);
    const [ch, sh] = [Math.cos(eye.beamHalfRad), Math.sin(eye.beamHalfRad)];
    const wall = faceDistance(faces, px, py, Math.cos(real), Math.sin(real), ch, sh);
    const [bx, by] = ball ? [ball.x - px, ball.y - py] : [1e6, 1e6];
    const ahead = bx * Math.cos(real) + by * Math.sin(real);
    const aside = Math.abs(by * Math.cos(real) - bx * Math.sin(real));
    const meets = ahead > 0 && aside < 20 + ahead * sh;
    const distanceMm = meets ? Math.min(wall, ahead - 20) : wall;
    return { headingRad: believed.headingRad + turnedRad, turnedRad, distanceMm };
  });
}

describe("a scan's readings of the walls", () => {
  it.each([
    { x: 20, y: -15, heading: 0.03, turnFrac: 0 },
    { x: -25, y: 10, heading: -0.04, turnFrac: 0.015 },
    { x: 0, y: 0, heading: 0, turnFrac: -0.02 },
    { x: 12, y: 18, heading: 0.02, turnFrac: 0.01, ball: { x: 700, y: 520 } },
  ])("tell where the robot is: $x, $y, $heading, $turnFrac", (truth) => {
    const fix = placeFix(readingsOf(truth), faces, eye, believed)!;
    expect(Math.abs(fix.xMm - truth.x)).toBeLessThan(2);
    expect(Math.abs(fix.yMm - truth.y)).toBeLessThan(2);
    expect(Math.abs(fix.headingRad - truth.heading)).toBeLessThan(0.006);
    expect(Math.abs(fix.turnFrac - truth.turnFrac)).toBeLessThan(0.002);
  });

  it("change nothing where all is as believed", () => {
    const fix = placeFix(readingsOf({}), faces, eye, believed)!;
    for (const value of Object.values(fix)) expect(Math.abs(value)).toBeLessThan(1e-9);
  });

  it("say nothing where there are few of them, or no echo", () => {
    expect(placeFix(readingsOf({ every: 30 }), faces, eye, believed)).toBeNull();
    const none = readingsOf({}).map((each) => ({ ...each, distanceMm: Number.POSITIVE_INFINITY }));
    expect(placeFix(none, faces, eye, believed)).toBeNull();
  });
});
