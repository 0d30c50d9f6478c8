import fc from "fast-check";
import { describe, expect, test } from "vitest";
import {
  differenceOf,
  GRID_MM,
  regionAreaMm2,
  regionContains,
  regionOutlineMm,
  unionOf,
} from "../../src/geometry/region.ts";
import { placed } from "../../src/geometry/ring.kernel.ts";
import { ringsNear, type SweepPiece, type SweepPose, sweepOf } from "../../src/geometry/sweep.ts";

const RUNS = { seed: 20261125, numRuns: 150 } as const;

const ORIGIN: SweepPose = { xMm: 0, yMm: 0, headingRad: 0 };

const real = (min: number, max: number) => fc.double({ min, max, noNaN: true });
/** Also small numbers, zeros and round ones: thin and degenerate parts are where a sweep can lose something. */
const length = (far: number) =>
  fc.oneof(real(-far, far), real(-0.05, 0.05), fc.constantFrom(0, far, -far / 2, 1, 1e-6));

/** A polyline in the robot's frame. */
const chain = fc
  .array(fc.tuple(length(150), length(150)), { minLength: 2, maxLength: 6 })
  .map((corners) => corners.flat());
const pose = fc.record({ xMm: real(0, 900), yMm: real(0, 900), headingRad: real(-7, 7) });

const straight = fc.tuple(pose, length(500), length(500)).map(
  ([from, dx, dy]): SweepPiece => ({
    kind: "line",
    from,
    to: { ...from, xMm: from.xMm + dx, yMm: from.yMm + dy },
    centreXMm: 0,
    centreYMm: 0,
    angleRad: 0,
  }),
);

const angle = fc.oneof(
  real(-7, 7),
  real(-1e-3, 1e-3),
  fc.constantFrom(0, Math.PI / 2, -Math.PI, 2 * Math.PI),
);
const rotation = fc
  .tuple(pose, length(400), length(400), angle)
  .map(([from, cx, cy, angleRad]): SweepPiece => {
    const centre = { centreXMm: from.xMm + cx, centreYMm: from.yMm + cy };
    return {
      kind: "rotation",
      from,
      to: poseAlong({ kind: "rotation", from, to: from, ...centre, angleRad }, 1),
      ...centre,
      angleRad,
    };
  });

/** Where the robot is when a share of the piece is done. */
function poseAlong(piece: SweepPiece, share: number): SweepPose {
  const { from, to, centreXMm, centreYMm, angleRad } = piece;
  if (piece.kind === "line") {
    return {
      xMm: from.xMm + share * (to.xMm - from.xMm),
      yMm: from.yMm + share * (to.yMm - from.yMm),
      headingRad: from.headingRad,
    };
  }
  const c = Math.cos(share * angleRad);
  const s = Math.sin(share * angleRad);
  const [x, y] = [from.xMm - centreXMm, from.yMm - centreYMm];
  return {
    xMm: centreXMm + c * x - s * y,
    yMm: centreYMm + s * x + c * y,
    headingRad: from.headingRad + share * angleRad,
  };
}

const at = (flat: readonly number[], { xMm, yMm, headingRad }: SweepPose): number[] =>
  placed(flat, xMm, yMm, Math.cos(headingRad), Math.sin(headingRad));

/** Least distance of a point from a polyline at many places of a piece. */
function leastDistance(
  flat: readonly number[],
  piece: SweepPiece,
  x: number,
  y: number,
  steps: number,
): number {
  let least = Number.POSITIVE_INFINITY;
  for (let k = 0; k <= steps; k++)
    least = Math.min(least, distance(at(flat, poseAlong(piece, k / steps)), x, y));
  return least;
}

function distance(flat: readonly number[], x: number, y: number): number {
  let least = Number.POSITIVE_INFINITY;
  for (let i = 0; i + 3 < flat.length; i += 2) {
    const [ax, ay, bx, by] = [flat[i]!, flat[i + 1]!, flat[i + 2]!, flat[i + 3]!];
    const [ex, ey] = [bx - ax, by - ay];
    const square = ex * ex + ey * ey;
    const t = square > 0 ? Math.min(1, Math.max(0, ((x - ax) * ex + (y - ay) * ey) / square)) : 0;
    least = Math.min(least, Math.hypot(x - ax - t * ex, y - ay - t * ey));
  }
  return least;
}

/** A random point of a polyline, and one at a given distance from it. */
const spot = fc.record({ edge: real(0, 0.999999), along: real(0, 1), share: real(0, 1), turn: real(0, 6.3) });

describe.each([
  ["straight", straight],
  ["rotation", rotation],
])("what a polyline sweeps on a %s", (_, arbitraryPiece) => {
  test("every point it passes, and all within the radius, lie within the outer bound", () => {
    fc.assert(
      fc.property(
        chain,
        arbitraryPiece,
        real(0.3, 40),
        spot,
        (flat, piece, radius, { edge, along, share, turn }) => {
          const now = at(flat, poseAlong(piece, share));
          const i = 2 * Math.floor(edge * (flat.length / 2 - 1));
          const x = now[i]! + along * (now[i + 2]! - now[i]!) + (radius - 0.005) * Math.cos(turn);
          const y = now[i + 1]! + along * (now[i + 3]! - now[i + 1]!) + (radius - 0.005) * Math.sin(turn);
          const near = unionOf(ringsNear(sweepOf([flat], ORIGIN, [piece]), radius, "outside"));
          expect(regionContains(near, x, y)).toBe(true);
        },
      ),
      RUNS,
    );
  });

  test("the inner bound holds only points that it comes near", () => {
    fc.assert(
      fc.property(
        chain,
        arbitraryPiece,
        real(0.3, 40),
        real(-600, 1500),
        real(-600, 1500),
        (flat, piece, radius, x, y) => {
          const near = unionOf(ringsNear(sweepOf([flat], ORIGIN, [piece]), radius, "inside"));
          for (const [px, py] of pointsOn(near, x, y)) {
            // 400 places on a way of at most 7 rad at 750 mm: the nearest is less than 7 mm off, so the true least is close to the sampled one.
            expect(leastDistance(flat, piece, px, py, 400)).toBeLessThanOrEqual(radius + 7);
            expect(refined(flat, piece, px, py)).toBeLessThanOrEqual(radius + 0.01);
          }
        },
      ),
      { ...RUNS, numRuns: 60 },
    );
  });

  test("the inner bound is part of the outer one", () => {
    fc.assert(
      fc.property(chain, arbitraryPiece, fc.constantFrom(0, 3, 20), (flat, piece, radius) => {
        const sweep = sweepOf([flat], ORIGIN, [piece]);
        const inside = unionOf(ringsNear(sweep, radius, "inside"));
        const outside = unionOf(ringsNear(sweep, radius, "outside"));
        const slack = 2 * GRID_MM * (regionOutlineMm(inside) + regionOutlineMm(outside)) + 0.01;
        expect(regionAreaMm2(differenceOf(inside, outside))).toBeLessThanOrEqual(slack);
      }),
      RUNS,
    );
  });
});

/** The region's own corners nearest to the edge of the claim, and the point asked for where it lies inside. */
function pointsOn(region: ReturnType<typeof unionOf>, x: number, y: number): (readonly [number, number])[] {
  const points = region.flatMap((ring) => {
    const corners: [number, number][] = [];
    const stride = 2 * Math.max(1, Math.floor(ring.length / 24));
    for (let i = 0; i + 1 < ring.length; i += stride) corners.push([ring[i]!, ring[i + 1]!]);
    return corners;
  });
  return regionContains(region, x, y) ? [...points, [x, y] as const] : points;
}

/** Least distance over the whole piece: sampled, then narrowed around the best places. */
function refined(flat: readonly number[], piece: SweepPiece, x: number, y: number): number {
  const steps = 400;
  const samples = Array.from({ length: steps + 1 }, (_, k) =>
    distance(at(flat, poseAlong(piece, k / steps)), x, y),
  );
  const best = [...samples.keys()].sort((a, b) => samples[a]! - samples[b]!).slice(0, 6);
  return Math.min(...best.map((k) => narrowed(flat, piece, x, y, (k - 1) / steps, (k + 1) / steps)));
}

function narrowed(
  flat: readonly number[],
  piece: SweepPiece,
  x: number,
  y: number,
  from: number,
  to: number,
): number {
  let [low, high] = [Math.max(0, from), Math.min(1, to)];
  const value = (share: number) => distance(at(flat, poseAlong(piece, share)), x, y);
  let least = Math.min(value(low), value(high));
  for (let k = 0; k < 40; k++) {
    const third = (high - low) / 3;
    const [a, b] = [value(low + third), value(high - third)];
    least = Math.min(least, a, b);
    if (a < b) high -= third;
    else low += third;
  }
  return least;
}
