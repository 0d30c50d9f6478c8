import { describe, expect, it } from "vitest";
import { type Optimum, type Point, simplexSearch } from "../../../src/search/simplex.ts";

function minimise(
  value: (point: Point) => number,
  start: Point,
  evaluations: number,
): Optimum & { readonly asked: readonly Point[] } {
  const asked: Point[] = [];
  const search = simplexSearch({ start, size: 0.2, smallest: 1e-6, evaluations });
  let step = search.next();
  while (!step.done) {
    asked.push(...step.value);
    step = search.next(step.value.map(value));
  }
  return { ...step.value, asked };
}

const sphere = (at: number) => (point: Point) => point.reduce((sum, x) => sum + (x - at) ** 2, 0);
/** Rosenbrock's valley (Computer J. 3 (1960) 175–184), scaled so that the box is −2 … 2; lowest, 0, at (0.75, 0.75). */
const valley = ([u = 0, v = 0]: Point) => {
  const [x, y] = [4 * u - 2, 4 * v - 2];
  return 100 * (y - x * x) ** 2 + (1 - x) ** 2;
};
/** Rastrigin's egg carton over −1.5 … 1.5, lowest, 0, at (0.5, 0.5): a local low beside every other one. */
const carton = (point: Point) =>
  point.reduce((sum, u) => {
    const x = 3 * u - 1.5;
    return sum + x * x - 10 * Math.cos(2 * Math.PI * x) + 10;
  }, 0);

describe("the downhill simplex", () => {
  it.each([2, 3, 4])("finds the bottom of a bowl in %i dimensions", (dimensions) => {
    const found = minimise(sphere(0.3), new Array(dimensions).fill(0.8), 400);
    expect(found.value).toBeLessThan(1e-8);
  });

  it("follows Rosenbrock's curved valley to its end", () => {
    const found = minimise(valley, [0.2, 0.75], 600);
    expect(found.value).toBeLessThan(1e-6);
    expect(found.point[0]).toBeCloseTo(0.75, 2);
  });

  it("starts over when it has collapsed, and so leaves a local low", () => {
    const found = minimise(carton, [0.83, 0.83], 2000);
    expect(found.restarts).toBeGreaterThan(2);
    expect(found.value).toBeLessThan(carton([0.83, 0.83]) / 2);
  });

  it("finds a lowest point on the edge of the box and asks for none outside", () => {
    const found = minimise((point) => point.reduce((sum, x) => sum + x, 0), [0.5, 0.5, 0.5], 300);
    expect(Math.max(...found.point)).toBeLessThan(1e-3);
    for (const point of found.asked) for (const x of point) expect(x >= 0 && x <= 1).toBe(true);
  });

  it("goes round where there is no value, and over plateaus", () => {
    const steps = (point: Point) => Math.floor(20 * sphere(0.35)(point));
    const holed = (point: Point) =>
      (point[0] ?? 0) > 0.5 && (point[1] ?? 0) > 0.5 ? Number.POSITIVE_INFINITY : steps(point);
    const found = minimise(holed, [0.9, 0.3], 200);
    expect(found.value).toBe(0);
  });

  it("asks for no more points than it may, and is the same every time", () => {
    for (const evaluations of [1, 3, 4, 17, 50]) {
      const found = minimise(valley, [0.2, 0.75], evaluations);
      expect(found.asked.length).toBeLessThanOrEqual(evaluations);
      expect(found.evaluations).toBe(found.asked.length);
    }
    expect(minimise(carton, [0.83, 0.83], 300)).toEqual(minimise(carton, [0.83, 0.83], 300));
  });

  it("never gives back a worse point than the best it has seen", () => {
    const found = minimise(carton, [0.9, 0.1], 150);
    expect(found.value).toBe(Math.min(...found.asked.map(carton)));
  });
});
