import { describe, expect, test } from "vitest";
import { RandomStream } from "../../src/num/stream.ts";
import { dkwHalfWidth, timeToHome } from "../../src/score/timeToHome.ts";
import { fateBatch } from "../support/fates.ts";

describe("a band that holds a whole distribution function", () => {
  // Dvoretzky, Kiefer and Wolfowitz (1956) with Massart's constant (1990): n ≥ ln(2/α)/(2ε²); 738 for ε = α = 0.05.
  test("is ± 0.05 at 738 trials and just wider at 737", () => {
    expect(dkwHalfWidth(738)).toBeLessThanOrEqual(0.05);
    expect(dkwHalfWidth(737)).toBeGreaterThan(0.05);
    expect(dkwHalfWidth(4612)).toBeLessThanOrEqual(0.02);
  });

  test("holds the true curve at every second in at least 95 of 100 repetitions", () => {
    // One ball that comes home at a second spread evenly over 0 … 100: the true share at t is t/100.
    const stream = new RandomStream();
    const repetitions = 1000;
    let held = 0;
    for (let repetition = 0; repetition < repetitions; repetition++) {
      stream.open(11, repetition, 0);
      const rows = Array.from({ length: 60 }, () => ({ homeAtS: 100 * stream.uniform() }));
      const { timesS, curves, bandFrac } = timeToHome(fateBatch(1, rows), 100);
      const shares = curves[0]?.shareFrac ?? [];
      if (timesS.every((t, i) => Math.abs((shares[i] ?? 0) - t / 100) <= bandFrac)) held++;
    }
    // The band promises 950; three standard errors of chance are 21. All of them would mean that it is far too wide.
    expect(held).toBeGreaterThan(929);
    expect(held).toBeLessThan(1000);
  });
});
