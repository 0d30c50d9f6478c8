import fc from "fast-check";
import { describe, expect, test } from "vitest";
import {
  differenceOf,
  GRID_MM,
  rectangle,
  regionAreaMm2,
  regionOutlineMm,
} from "../../src/geometry/region.ts";
import { placed } from "../../src/geometry/ring.kernel.ts";
import { ringsNear, type SweepPiece, type SweepPose, sweepOf } from "../../src/geometry/sweep.ts";

/** Pushers whose edges run along and across the way: a plate, two straight arms, a scoop; robot's frame. */
const PUSHERS: readonly (readonly number[])[] = [
  [100, -90, 100, 90],
  [130, -110, 127, -107, 127, -85, 70, -85, 70, 85, 127, 85, 127, 107, 130, 110],
  [150, -80, 147, -76, 90, 0, 147, 76, 150, 80],
  [95, -75, 185, -75, 185, -69, 95, -69, 95, 69, 185, 69, 185, 75, 95, 75],
];

interface Leg {
  readonly kind: "line" | "turn" | "arc";
  readonly size: number;
}

const legs = fc.array(
  fc.oneof(
    fc.record({
      kind: fc.constant("line" as const),
      size: fc.constantFrom(900, 600, 300, 120, -120, 45.5, 0.001, 0),
    }),
    fc.record({ kind: fc.constant("line" as const), size: fc.double({ min: -300, max: 700, noNaN: true }) }),
    fc.record({ kind: fc.constant("turn" as const), size: fc.constantFrom(1, -1, 2, -2, 0.5) }),
    fc.record({ kind: fc.constant("turn" as const), size: fc.double({ min: -2, max: 2, noNaN: true }) }),
    fc.record({ kind: fc.constant("arc" as const), size: fc.constantFrom(1, -1) }),
  ),
  { maxLength: 24 },
);

/** A way in right angles for the most part, as routines have it: edges upon edges, corners upon corners. */
function wayOf(start: SweepPose, parts: readonly Leg[]): readonly SweepPiece[] {
  let pose = start;
  return parts.map(({ kind, size }): SweepPiece => {
    const from = pose;
    const { xMm, yMm, headingRad } = from;
    const [c, s] = [Math.cos(headingRad), Math.sin(headingRad)];
    if (kind === "line") {
      pose = { xMm: xMm + size * c, yMm: yMm + size * s, headingRad };
      return { kind, from, to: pose, centreXMm: 0, centreYMm: 0, angleRad: 0 };
    }
    const radius = kind === "arc" ? 150 * size : 0;
    const angleRad = (size * Math.PI) / 2;
    const [centreXMm, centreYMm] = [xMm - radius * s, yMm + radius * c];
    const turned = headingRad + angleRad;
    pose = {
      xMm: centreXMm + radius * Math.sin(turned),
      yMm: centreYMm - radius * Math.cos(turned),
      headingRad: turned,
    };
    return { kind: "rotation", from, to: pose, centreXMm, centreYMm, angleRad };
  });
}

function movedPose(pose: SweepPose, turn: number, dx: number, dy: number): SweepPose {
  const [xMm = 0, yMm = 0] = placed([pose.xMm, pose.yMm], dx, dy, Math.cos(turn), Math.sin(turn));
  return { xMm, yMm, headingRad: pose.headingRad + turn };
}

describe("a whole way", () => {
  const pusher = fc.constantFrom(...PUSHERS);
  const start = fc.record({
    xMm: fc.constantFrom(120, 150.0005, 600),
    yMm: fc.constantFrom(80, 450.0005, 300),
    headingRad: fc.constantFrom(0, Math.PI / 2, Math.PI, -Math.PI / 2),
  });

  test("leaves the same area untouched wherever the zone lies and however it is turned", () => {
    const turn = fc.double({ min: 0.1, max: 1.4, noNaN: true });
    fc.assert(
      fc.property(pusher, start, legs, fc.constantFrom(20, 21.35), turn, (chain, from, parts, radius, by) => {
        const zone = rectangle(radius, radius, 1200 - radius, 900 - radius);
        const untouched = (angle: number, dx: number, dy: number) => {
          const pieces = wayOf(movedPose(from, angle, dx, dy), parts);
          const near = ringsNear(sweepOf([chain], movedPose(from, angle, dx, dy), pieces), radius, "inside");
          return differenceOf(
            zone.map((ring) => placed(ring, dx, dy, Math.cos(angle), Math.sin(angle))),
            near,
          );
        };
        const level = untouched(0, 0, 0);
        const turned = untouched(by, 37.123, -12.5);
        // A corner may move by a few grid steps; a thin part may change sides between a patch and a line.
        const slack = 4 * GRID_MM * (regionOutlineMm(level) + regionOutlineMm(turned)) + 1;
        expect(Math.abs(regionAreaMm2(level) - regionAreaMm2(turned))).toBeLessThanOrEqual(slack);
      }),
      { seed: 20261125, numRuns: 80 },
    );
  });

  test("leaves no more untouched than a part of it does, and no less than the outer bound says", () => {
    fc.assert(
      fc.property(pusher, start, legs, (chain, from, parts) => {
        const zone = rectangle(20, 20, 1180, 880);
        const rest = (count: number, bound: "inside" | "outside") => {
          const sweep = sweepOf([chain], from, wayOf(from, parts.slice(0, count)));
          return differenceOf(zone, ringsNear(sweep, 20, bound));
        };
        const whole = rest(parts.length, "inside");
        const half = rest(Math.ceil(parts.length / 2), "inside");
        const least = rest(parts.length, "outside");
        const slack = 4 * GRID_MM * (regionOutlineMm(whole) + regionOutlineMm(half)) + 1;
        expect(regionAreaMm2(whole)).toBeLessThanOrEqual(regionAreaMm2(half) + slack);
        expect(regionAreaMm2(least)).toBeLessThanOrEqual(regionAreaMm2(whole) + slack);
        // Both bounds stray at most 0.05 mm in the sweep and 0.05 mm in the offset.
        const gap = regionAreaMm2(whole) - regionAreaMm2(least);
        expect(gap).toBeLessThanOrEqual(0.25 * (regionOutlineMm(whole) + regionOutlineMm(least)) + slack);
      }),
      { seed: 20261125, numRuns: 80 },
    );
  });
});
