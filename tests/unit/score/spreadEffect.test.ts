import { describe, expect, it } from "vitest";
import { RandomStream } from "../../../src/num/stream.ts";
import { spreadEffect } from "../../../src/score/spreadEffect.ts";
import { drawSpread, SPREAD_FACTORS } from "../../../src/trial/spread.ts";

/** A made-up stress test of one ball whose success depends on the third spread factor by ±`pull`. */
function madeUp(trials: number, pull: number) {
  const random = new RandomStream().open(5, 0, 0);
  const drawn = new Float64Array(SPREAD_FACTORS.length);
  const indices = Array.from({ length: trials }, (_, i) => i);
  const delivered = indices.map((index) => {
    drawSpread(3, index, drawn);
    return random.uniform() < 0.5 + pull * drawn[2]! ? 1 : 0;
  });
  return { indices, delivered, deliveredCounts: [0, 0] };
}

describe("spreadEffect", () => {
  it("finds a planted effect of the rolling resistance and no other", () => {
    const effect = spreadEffect(3, madeUp(20000, 0.3))!;
    const roll = effect.factors[SPREAD_FACTORS.indexOf("rollingResistance")]!;
    expect(Math.abs(roll.change - 0.6)).toBeLessThan(4 * roll.changeSe);
    for (const other of effect.factors) {
      if (other.factor !== "rollingResistance")
        expect(Math.abs(other.change)).toBeLessThan(4 * other.changeSe);
    }
    // A uniform effect of ±0.3 has the standard deviation 0.3/√3.
    expect(Math.abs(effect.modelSd - 0.3 / Math.sqrt(3))).toBeLessThan(
      (4 * roll.changeSe) / 2 / Math.sqrt(3),
    );
    expect(effect.modelShareFrac).toBeGreaterThan(0.99);
  });

  it("sees next to nothing where there is nothing", () => {
    const effect = spreadEffect(3, madeUp(20000, 0))!;
    expect(effect.modelSd).toBeLessThan(3 * effect.samplingSd);
  });

  it("needs some trials", () => {
    expect(spreadEffect(3, madeUp(4, 0))).toBeNull();
  });
});
