import { afterEach, describe, expect, it } from "vitest";
import { lengthText, sayLengthsIn, sizeText, speedText } from "../../../src/texts/lengths.ts";

describe("lengths in the unit that the page was told to use", () => {
  afterEach(() => sayLengthsIn("mm"));

  it("are millimetres at first", () => {
    expect(lengthText(640)).toBe("640 mm");
    expect(lengthText(39.96, 1)).toBe("40 mm");
    expect(lengthText(-0.2)).toBe("0 mm");
    expect(sizeText(900, 1200)).toBe("900 × 1200 mm");
    expect(speedText(199.9)).toBe("199 mm/s");
  });

  it("in centimetres keep their millimetres", () => {
    sayLengthsIn("cm");
    expect(lengthText(640)).toBe("64 cm");
    expect(lengthText(637.4)).toBe("63.7 cm");
    expect(lengthText(42.7, 1)).toBe("4.27 cm");
    expect(sizeText(905, 1200)).toBe("90.5 × 120 cm");
    expect(speedText(199.9)).toBe("19.9 cm/s");
  });
});
