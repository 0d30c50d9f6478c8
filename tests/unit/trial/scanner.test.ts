import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { Program } from "../../../src/model/program.ts";
import type { Zone } from "../../../src/model/zone.ts";
import { faceDistance, facesOf } from "../../../src/motion/faces.kernel.ts";
import { compileTrial } from "../../../src/trial/compile.ts";
import { runTrial } from "../../../src/trial/run.ts";
import { PLAIN_ROBOT, sceneProject } from "../../support/scene.ts";
import { SHARP_EYE, sensingProject } from "../../support/sensingScene.ts";

const zone: Zone = {
  ...sceneProject({ balls: [] }).zone,
  keepOuts: [{ xMm: 500, yMm: 300, widthMm: 100, heightMm: 150 }],
};
const faces = facesOf(zone);

/** One ray against the faces, by the formula of two lines. */
function rayDistance(x: number, y: number, angle: number): number {
  let best = Number.POSITIVE_INFINITY;
  for (let k = 0; k < faces.length; k += 4) {
    const [ax, ay, bx, by] = faces.slice(k, k + 4) as unknown as [number, number, number, number];
    const [dx, dy] = [Math.cos(angle), Math.sin(angle)];
    const den = dx * (by - ay) - dy * (bx - ax);
    if (Math.abs(den) < 1e-12) continue;
    const t = ((ax - x) * (by - ay) - (ay - y) * (bx - ax)) / den;
    const u = ((ax - x) * dy - (ay - y) * dx) / den;
    if (t > 0 && u >= 0 && u <= 1) best = Math.min(best, t);
  }
  return best;
}

describe("the distance to walls within a beam", () => {
  it("is that of the nearest of its rays", () => {
    const place = fc.record({
      x: fc.double({ min: 20, max: 480, noNaN: true }),
      y: fc.double({ min: 20, max: 880, noNaN: true }),
      angle: fc.double({ min: -3.14, max: 3.14, noNaN: true }),
      half: fc.double({ min: 0.001, max: 0.7, noNaN: true }),
    });
    fc.assert(
      fc.property(place, ({ x, y, angle, half }) => {
        const got = faceDistance(
          faces,
          x,
          y,
          Math.cos(angle),
          Math.sin(angle),
          Math.cos(half),
          Math.sin(half),
        );
        const rays = Array.from({ length: 401 }, (_, i) => rayDistance(x, y, angle + half * (i / 200 - 1)));
        const nearest = Math.min(...rays);
        // Between two rays the distance can be a little less, never more.
        expect(got).toBeLessThanOrEqual(nearest + 1e-6);
        expect(got).toBeGreaterThan(nearest * 0.98 - 1);
      }),
      { seed: 20301, numRuns: 200 },
    );
  });

  it("is none through the doorway", () => {
    expect(faceDistance(faces, 130, 300, 0, -1, 1, 0)).toBeGreaterThan(10_000);
    expect(faceDistance(faces, 400, 300, 0, -1, 1, 0)).toBeCloseTo(300, 9);
  });
});

/** Where a scan from the middle of the zone puts the balls: read off where the robot drives to fetch them. */
function fetched(places: { xMm: number; yMm: number }[], program: Program) {
  const project = sensingProject([SHARP_EYE], places);
  const there = {
    ...project,
    robot: { ...project.robot, entry: { alongMm: 0, insetMm: 200, headingRad: 0 } },
  };
  const routine = { id: "x", pattern: "own", label: "", params: {}, moves: [], program };
  return runTrial(compileTrial(there, routine, { drift: false, spread: false }), 1, 0);
}

const corner = "upper-right";
const LOOK: Program = [
  { kind: "goTo", xMm: 300, yMm: 350, headingRad: 0, speedMmPerS: 200, corner },
  { kind: "scan", angleRad: 2 * Math.PI, rateRadPerS: 1, corner },
];

describe("a scan", () => {
  it("finds a lone ball well enough to fetch it", () => {
    for (const ball of [
      { xMm: 600, yMm: 480 },
      { xMm: 550, yMm: 300 },
      { xMm: 700, yMm: 600 },
    ]) {
      const blind = fetched([ball], [...LOOK.slice(0, 1), { kind: "fetch", speedMmPerS: 150, corner }]);
      expect(blind.delivered).toEqual([false]);
      const seen = fetched([ball], [...LOOK, { kind: "fetch", speedMmPerS: 150, corner }]);
      expect(seen.losses[0]).not.toBe("never-touched");
    }
  });

  it("notes nothing in an empty range: the question is answered no", () => {
    const ball = { xMm: 900, yMm: 300 };
    const short = { ...SHARP_EYE, rangeMm: 100 } as typeof SHARP_EYE;
    const wait: Program = [
      ...LOOK,
      {
        kind: "if",
        when: { ask: { kind: "seen" }, not: false },
        yes: [{ kind: "wait", durationS: 5 }],
        no: [],
      },
    ];
    const time = (eye: typeof SHARP_EYE) => {
      const project = sensingProject([eye], [ball]);
      const routine = { id: "x", pattern: "own", label: "", params: {}, moves: [], program: wait };
      return runTrial(compileTrial(project, routine, { drift: false }), 1, 0).timeS;
    };
    expect(time(SHARP_EYE) - time(short)).toBeCloseTo(5, 9);
  });

  it("needs a sensor that looks: without one the turn is driven and nothing is noted", () => {
    const project = sensingProject([], [{ xMm: 600, yMm: 450 }]);
    const program: Program = [...LOOK, { kind: "fetch", speedMmPerS: 150, corner }];
    const routine = { id: "x", pattern: "own", label: "", params: {}, moves: [], program };
    expect(runTrial(compileTrial(project, routine), 1, 0).losses).toEqual(["never-touched"]);
    expect(PLAIN_ROBOT.sensors).toEqual([]);
  });
});
