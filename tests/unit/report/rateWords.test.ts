import { describe, expect, it } from "vitest";
import { meanBallsWords, outOf100, rangeWords, rateWords } from "../../../src/report/rateWords.ts";

const rate = (value: number, low: number, high: number) => ({ value, low, high, trials: 300 });

describe("rates in words", () => {
  it("are counts out of 100 with a range", () => {
    expect(rateWords(rate(0.9067, 0.8684, 0.9346))).toBe("91 of 100 runs");
    expect(rangeWords(rate(0.9067, 0.8684, 0.9346))).toBe("likely between 86 and 94");
  });

  it("say 0 and 100 only where it is none or all", () => {
    expect(outOf100(0)).toBe("0");
    expect(outOf100(1)).toBe("100");
    expect(outOf100(299 / 300)).toBe("99.6");
    expect(outOf100(0.99999)).toBe("99.9");
    expect(outOf100(1 / 300)).toBe("0.4");
    expect(outOf100(1e-6)).toBe("0.1");
  });

  it("never let the range claim more than the interval does", () => {
    expect(rangeWords(rate(1, 0.9874, 1))).toBe("likely between 98 and 100");
    expect(rangeWords(rate(0, 0, 0.0126))).toBe("likely between 0 and 2");
  });

  it("give mean balls with their number", () => {
    expect(meanBallsWords(2.94, 3)).toBe("2.9 of 3 balls");
    expect(meanBallsWords(0.5, 1)).toBe("0.5 of 1 ball");
  });
});
