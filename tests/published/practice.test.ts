import { describe, expect, it } from "vitest";
import { evenPoints } from "../../src/geometry/evenPoints.ts";
import { betaQuantile } from "../../src/num/beta.ts";
import { betaRate } from "../../src/practice/assess.ts";

describe("the success rate after practice", () => {
  it("has the posterior Beta(1, 21) after 0 of 20 under a uniform prior: one-sided 95 % upper .132946", () => {
    // references.md M3.7, derived: 1 − 0.05^(1/21).
    expect(betaQuantile(0.95, 1, 21)).toBeCloseTo(0.132946, 6);
    const rate = betaRate(0, 20);
    expect(rate.value).toBeCloseTo(1 / 22, 12);
    // The same law in closed form: 1 − q^(1/21).
    expect((1 - rate.high) ** 21).toBeCloseTo(0.025, 9);
    expect((1 - rate.low) ** 21).toBeCloseTo(0.975, 9);
  });
});

describe("Lloyd's iteration on the unit square", () => {
  // Lloyd, IEEE Trans. Inf. Theory 28 (1982) 129–137; references.md M6.4, derived: four seeds near the middles of the quarters end on them.
  it.each([0.01, 0.08])("takes four seeds %f off the middles of the quarters to {.25, .75}²", (off) => {
    const cells = 200;
    const samples = Float64Array.from(
      Array.from({ length: cells * cells }, (_, i) => [
        ((i % cells) + 0.5) / cells,
        (Math.floor(i / cells) + 0.5) / cells,
      ]).flat(),
    );
    const middles = [0.25, 0.25, 0.75, 0.25, 0.25, 0.75, 0.75, 0.75];
    const signs = [1, -1, -0.5, 1, 1, 0.3, -1, -0.7];
    const start = middles.map((middle, i) => middle + off * (signs[i] ?? 0));
    const points = evenPoints(samples, start, 200);
    // Exact to the samples' own spacing.
    for (const [i, middle] of middles.entries())
      expect(Math.abs((points[i] ?? 0) - middle)).toBeLessThan(1 / cells);
  });
});
