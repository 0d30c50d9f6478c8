import { describe, expect, test } from "vitest";
import { GeometryError, type GeometryErrorCode } from "../../../src/geometry/error.ts";
import { bandRings, offsetOf } from "../../../src/geometry/offset.ts";
import {
  differenceOf,
  intersectionOf,
  REACH_MM,
  rectangle,
  regionAreaMm2,
  regionContains,
  regionInside,
  regionOutlineMm,
  unionOf,
} from "../../../src/geometry/region.ts";

function codeOf(act: () => unknown): GeometryErrorCode | "no error" {
  try {
    act();
    return "no error";
  } catch (fault) {
    if (fault instanceof GeometryError) return fault.code;
    throw fault;
  }
}

const frame = differenceOf(rectangle(0, 0, 100, 60), rectangle(20, 10, 80, 50));

describe("a region with a hole", () => {
  test("has the area and the outline of both its rings", () => {
    expect(regionAreaMm2(frame)).toBe(100 * 60 - 60 * 40);
    expect(regionOutlineMm(frame)).toBe(2 * 160 + 2 * 100);
  });

  test("does not contain what lies in the hole", () => {
    expect(regionContains(frame, 10, 30)).toBe(true);
    expect(regionContains(frame, 50, 30)).toBe(false);
    expect(regionContains(frame, -1, 30)).toBe(false);
  });

  test("is closed by something that fills the hole", () => {
    expect(unionOf([...frame, ...rectangle(15, 5, 85, 55)])).toHaveLength(1);
  });

  test("grows inward too", () => {
    expect(regionAreaMm2(offsetOf(frame, 20.001, "outside"))).toBeCloseTo(
      100 * 60 + 320 * 20.001 + Math.PI * 20.001 ** 2,
      -1,
    );
    expect(offsetOf(frame, 19, "inside")).toHaveLength(2);
    expect(offsetOf(frame, 21, "inside")).toHaveLength(1);
  });

  test("vanishes where it shrinks by half its width", () => {
    expect(offsetOf(frame, -10.001, "outside")).toEqual([]);
    expect(regionAreaMm2(offsetOf(frame, -4, "inside"))).toBeGreaterThan(0);
  });
});

describe("regions", () => {
  test("of no width are empty", () => {
    expect(rectangle(5, 0, 5, 10)).toEqual([]);
    expect(rectangle(0, 0, Number.NaN, 10)).toEqual([]);
    expect(unionOf([])).toEqual([]);
    expect(intersectionOf(frame, [])).toEqual([]);
    expect(regionAreaMm2(differenceOf(frame, []))).toBe(3600);
    expect(offsetOf([], 10, "inside")).toEqual([]);
  });

  test("are filled whichever way round their outline was given", () => {
    const clockwise = regionInside([0, 0, 0, 10, 10, 10, 10, 0]);
    expect(regionAreaMm2(clockwise)).toBe(100);
    expect(regionAreaMm2(unionOf([...clockwise, ...rectangle(5, 5, 20, 20)]))).toBe(100 + 225 - 25);
  });

  test("keep to a grid of 1 µm", () => {
    const [ring = []] = unionOf(rectangle(0.00049, 0, 1.00051, 1));
    expect(new Set(ring)).toEqual(new Set([0, 1.001, 1]));
  });

  test("an offset below half the grid changes nothing", () => {
    expect(regionAreaMm2(offsetOf(frame, 0.0004, "outside"))).toBe(3600);
  });

  test("say what is wrong with their numbers", () => {
    expect(codeOf(() => regionInside([0, 0, 1, 1]))).toBe("too-few-vertices");
    expect(codeOf(() => regionInside([0, 0, 1, 1, 2, 0, 3]))).toBe("odd-length");
    expect(codeOf(() => unionOf([[0, 0, 1, Number.NaN, 1, 1]]))).toBe("not-finite");
    expect(codeOf(() => unionOf([[0, 0, REACH_MM * 1.01, 0, 1, 1]]))).toBe("out-of-range");
    expect(codeOf(() => offsetOf(frame, Number.POSITIVE_INFINITY, "inside"))).toBe("not-finite");
  });
});

// Once lost 100 mm² (three corners in a row on one level line, a grid step above another) or never ended; see pathOf.
describe("level lines that turn back", () => {
  const half = (radius: number, side: 1 | -1): number[] => {
    const ring = [0.001, 0, 0, -0.001, -side * radius, -0.001];
    for (let i = 1; i < 40; i++) {
      const angle = (Math.PI * i) / 40;
      ring.push(-side * radius * Math.cos(angle), side * radius * Math.sin(angle));
    }
    return [...ring, side * radius, 0, 0, 0];
  };

  test("keep the union within its parts", () => {
    const parts = [half(75, -1), half(150, 1)];
    const sum = parts.reduce((area, ring) => area + Math.abs(regionAreaMm2([ring])), 0);
    const union = regionAreaMm2(unionOf(parts.flatMap(regionInside)));
    expect(union).toBeLessThanOrEqual(sum + 0.5);
    expect(union).toBeGreaterThanOrEqual(sum - 0.5);
  });

  test("of no height vanish", () => {
    expect(unionOf([[0, 0, 50, 0, 20, 0]])).toEqual([]);
  });
});

describe("a band round a polyline", () => {
  test("round one point is a disc", () => {
    const area = (bound: "inside" | "outside") => regionAreaMm2(unionOf(bandRings([5, 5], 20, bound)));
    expect(area("inside")).toBeLessThan(Math.PI * 400);
    expect(area("outside")).toBeGreaterThan(Math.PI * 400);
    expect(area("outside") - area("inside")).toBeLessThan(0.1 * 2 * Math.PI * 20);
  });

  test("takes no notice of corners given twice", () => {
    const [once, twice] = [
      [0, 0, 50, 0, 50, 50],
      [0, 0, 0, 0, 50, 0, 50, 0, 50, 50],
    ].map((flat) => regionAreaMm2(unionOf(bandRings(flat, 8, "inside"))));
    expect(twice).toBe(once);
  });

  test("of no width is nothing", () => {
    expect(bandRings([0, 0, 50, 0], 0, "inside")).toEqual([]);
  });
});
