import { EndType, inflatePaths, JoinType } from "clipper2-ts";
import * as oracle from "polyclip-ts";
import { describe, expect, test } from "vitest";
import { offsetOf } from "../../src/geometry/offset.ts";
import {
  differenceOf,
  intersectionOf,
  type Region,
  regionAreaMm2,
  regionOutlineMm,
  unionOf,
} from "../../src/geometry/region.ts";
import type { Ring } from "../../src/geometry/ring.kernel.ts";
import { RandomStream } from "../../src/num/stream.ts";

/** polyclip-ts: another algorithm (sweep line with exact predicates), another author, floating point instead of a grid. */
type Polygons = Parameters<typeof oracle.union>[0];

/** The areas are shares of a zone in the end: the grid may cost a millionth of it. */
const ZONE_MM2 = 1200 * 900;

/** A star-shaped outline with corners on the 1 µm grid, counter-clockwise, somewhere in a zone of 1200 × 900 mm. */
function star(random: RandomStream, corners: number): Ring {
  const cx = 300 + 600 * random.uniform();
  const cy = 300 + 300 * random.uniform();
  const ring: number[] = [];
  for (let i = 0; i < corners; i++) {
    const angle = ((i + 0.8 * random.uniform()) / corners) * 2 * Math.PI;
    const radius = 80 + 260 * random.uniform();
    ring.push(onGrid(cx + radius * Math.cos(angle)), onGrid(cy + radius * Math.sin(angle)));
  }
  return ring;
}

const onGrid = (mm: number): number => Math.round(mm * 1000) / 1000;

function stars(seed: number, count: number): readonly Ring[] {
  const random = new RandomStream().open(seed, 0, 0);
  return Array.from({ length: count }, () => star(random, 3 + random.below(9)));
}

function polygonOf(ring: Ring): [number, number][][] {
  const points: [number, number][] = [];
  for (let i = 0; i < ring.length; i += 2) points.push([ring[i]!, ring[i + 1]!]);
  return [points];
}

function oracleUnion(rings: readonly Ring[]): Polygons {
  const [first, ...rest] = rings.map((ring) => [polygonOf(ring)] as Polygons);
  return oracle.union(first!, ...rest) as Polygons;
}

function areaOf(polygons: Polygons): number {
  let sum = 0;
  for (const polygon of polygons as [number, number][][][]) {
    polygon.forEach((ring, k) => {
      let twice = 0;
      ring.forEach(([x, y], i) => {
        const [nextX, nextY] = ring[(i + 1) % ring.length]!;
        twice += x * nextY - nextX * y;
      });
      sum += (k === 0 ? 1 : -1) * Math.abs(twice / 2);
    });
  }
  return sum;
}

function expectSameArea(region: Region, polygons: Polygons): void {
  const area = areaOf(polygons);
  expect(area).toBeGreaterThan(0);
  expect(Math.abs(regionAreaMm2(region) - area)).toBeLessThanOrEqual(1e-6 * ZONE_MM2);
}

// Its own default takes every last bit of a coordinate for real and cannot close rings whose edges nearly coincide.
oracle.setPrecision(1e-7);

describe("areas agree with polyclip-ts to a millionth of the zone", () => {
  test.each([1, 2, 3, 4, 5, 6, 7, 8])(
    "union, intersection and difference of random outlines, seed %i",
    (seed) => {
      const a = stars(seed, 8);
      const b = stars(seed + 100, 8);
      const [ours, others] = [unionOf(a), unionOf(b)];
      expectSameArea(ours, oracleUnion(a));
      expectSameArea(
        intersectionOf(ours, others),
        oracle.intersection(oracleUnion(a), oracleUnion(b)) as Polygons,
      );
      expectSameArea(
        differenceOf(ours, others),
        oracle.difference(oracleUnion(a), oracleUnion(b)) as Polygons,
      );
    },
  );

  // The offset's definition, put together by the other library: the region and a many-sided capsule along every edge.
  test.each([1, 2])("growing, against a union of capsules, seed %i", (seed) => {
    const region = unionOf(stars(seed, 3));
    const capsules = region.flatMap((ring) => capsulesAlong(ring, 22, 90));
    const holes = region.filter((ring) => regionAreaMm2([ring]) < 0);
    const filled = oracleUnion(region.filter((ring) => regionAreaMm2([ring]) > 0));
    const solid = holes.length === 0 ? filled : oracle.difference(filled, oracleUnion(holes));
    const grown = areaOf(oracle.union(solid, oracleUnion(capsules)) as Polygons);
    // A chord of 4° takes 22²·h³/12 off its piece of arc, 4 mm² in 20 rad of arcs; the grid does the rest.
    expect(regionAreaMm2(offsetOf(region, 22, "outside", 0.005))).toBeGreaterThanOrEqual(grown - 5);
    expect(regionAreaMm2(offsetOf(region, 22, "inside", 0.005))).toBeLessThanOrEqual(grown + 5);
  });
});

describe("offsets agree with the joins of clipper2-ts itself", () => {
  test.each([1, 2, 3, 4, 5, 6])("growing and shrinking, seed %i", (seed) => {
    const region = unionOf(stars(seed, 6));
    for (const distance of [-35, -8, -0.5, 0.3, 5, 20, 60]) {
      const theirs = libraryOffsetArea(region, distance);
      const inside = regionAreaMm2(offsetOf(region, distance, "inside", 0.005));
      const outside = regionAreaMm2(offsetOf(region, distance, "outside", 0.005));
      // Its chords are as good as ours: 0.005 mm along the outline at most, a share below 1e-4 here.
      expect(Math.abs((inside + outside) / 2 - theirs)).toBeLessThanOrEqual(1e-4 * theirs + 1);
      // Half a grid step each way on every corner.
      expect(inside).toBeLessThanOrEqual(outside + 0.001 * regionOutlineMm(region));
    }
  });
});

function libraryOffsetArea(region: Region, distanceMm: number): number {
  const paths = region.map((ring) => {
    const path = [];
    for (let i = 0; i < ring.length; i += 2) {
      path.push({ x: Math.round(ring[i]! * 1000), y: Math.round(ring[i + 1]! * 1000) });
    }
    return path;
  });
  const grown = inflatePaths(paths, distanceMm * 1000, JoinType.Round, EndType.Polygon, 2, 5);
  return regionAreaMm2(grown.map((path) => path.flatMap(({ x, y }) => [x / 1000, y / 1000])));
}

function capsulesAlong(ring: Ring, radius: number, sides: number): readonly Ring[] {
  return Array.from({ length: ring.length / 2 }, (_, i) => {
    const j = (i + 1) % (ring.length / 2);
    const ends = [
      { x: ring[2 * i]!, y: ring[2 * i + 1]! },
      { x: ring[2 * j]!, y: ring[2 * j + 1]! },
    ] as const;
    const along = Math.atan2(ends[1].y - ends[0].y, ends[1].x - ends[0].x);
    const capsule: number[] = [];
    for (const [end, start] of [
      [ends[1], along - Math.PI / 2],
      [ends[0], along + Math.PI / 2],
    ] as const) {
      for (let k = 0; k <= sides / 2; k++) {
        const angle = start + (k * 2 * Math.PI) / sides;
        capsule.push(onGrid(end.x + radius * Math.cos(angle)), onGrid(end.y + radius * Math.sin(angle)));
      }
    }
    return capsule;
  });
}
