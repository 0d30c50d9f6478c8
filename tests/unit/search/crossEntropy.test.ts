import { describe, expect, test } from "vitest";
import { RandomStream } from "../../../src/num/stream.ts";
import { type CrossEntropyOptions, crossEntropy } from "../../../src/search/crossEntropy.ts";
import { answered } from "../../support/answered.ts";

type Score = (point: readonly number[]) => number;

const climb = (score: Score, from: RandomStream, options: CrossEntropyOptions) =>
  answered(crossEntropy(from, options), (points) => points.map(score));

const stream = (restart = 0): RandomStream => new RandomStream().open(4, restart, 9);

describe("cross-entropy", () => {
  const TOP = [0.2, 0.9, 0.5, 0.31, 0.77, 0.64];
  const distance = (point: readonly number[]): number =>
    Math.hypot(...TOP.map((value, i) => value - (point[i] ?? 0)));

  test("climbs to the top of one hill in six dimensions", () => {
    const found = climb((point) => -distance(point), stream(), {
      dimensions: 6,
      population: 100,
      generations: 30,
    });
    expect(found?.evaluations).toBe(3000);
    expect(-(found?.score ?? -1)).toBeLessThan(0.05);
  });

  test("finds a planted pit that covers a thousandth of the square, with a slope around it, by restarts", () => {
    // A broad hill elsewhere is the trap: some restarts end there.
    const score = ([x = 0, y = 0]: readonly number[]): number => {
      const pit = Math.hypot(x - 0.83, y - 0.12);
      const hill = 0.6 - Math.hypot(x - 0.3, y - 0.6);
      return Math.max(hill, pit < 0.018 ? 1 : 0.7 - 3 * pit);
    };
    const found = Array.from({ length: 8 }, (_, restart) =>
      climb(score, stream(restart), {
        dimensions: 2,
        population: 40,
        generations: 8,
        ...(restart > 0 ? { startSd: 0.2 } : {}),
      }),
    );
    expect(found[0]?.score).toBeLessThan(1);
    expect(Math.max(...found.map((each) => each?.score ?? 0))).toBe(1);
  });

  test("keeps to what is allowed, and says when nothing is", () => {
    const options = { dimensions: 2, population: 30, generations: 6 };
    const half = climb(([x = 0]) => x, stream(), { ...options, accepts: ([x = 0]) => x < 0.4 });
    expect(half?.score).toBeLessThan(0.4);
    expect(half?.score).toBeGreaterThan(0.39);
    expect(climb(() => 1, stream(), { ...options, accepts: () => false })).toBeNull();
  });

  test("is the same every time", () => {
    const run = () =>
      climb((point) => -distance(point), stream(3), { dimensions: 6, population: 20, generations: 5 });
    expect(run()).toEqual(run());
  });
});
