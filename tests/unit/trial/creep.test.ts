import { describe, expect, it } from "vitest";
import { depthOf, edgeDepth } from "../../../src/trial/wedge.kernel.ts";
import { bigRamp, onRamp } from "../../support/ramp.ts";
import { letRoll } from "../../support/scene.ts";

describe("a ball that stands on a lip a little steeper than its rolling resistance holds", () => {
  // Found in a trial that took 277,897 steps: each ended where the ball's crawl did, and the next began it anew.
  it.each([
    [-0.565, 12],
    [-0.6, 6],
    [-1, 3],
  ])("at %f mm rolls off in some seconds and some thousand steps", (depthMm, seconds) => {
    const kind = { build: "solid", diameterMm: 40, rollingResistance: 0.02 } as const;
    const ramp = bigRamp(0.2, { lipMm: 1, riseMm: 5 });
    let steps = 0;
    letRoll({ zone: ramp.zone, balls: [onRamp(ramp, depthMm, kind)] }, seconds, () => {
      steps++;
    });
    expect(depthOf(0)).toBeLessThan(edgeDepth[0]!);
    expect(steps).toBeLessThan(300 * seconds);
  });
});
