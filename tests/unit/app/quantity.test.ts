import { describe, expect, it } from "vitest";
import { quantityText, readQuantity } from "../../../src/app/words/quantity.ts";

describe("typed numbers", () => {
  it.each([
    ["900", "mm", 900],
    ["90", "cm", 900],
    ["90 cm", "mm", 900],
    ["0.7 m", "mm", 700],
    ["0,7m", "cm", 700],
    [" −12,5 ", "mm", -12.5],
    [".5cm", "mm", 5],
  ] as const)("%s, shown in %s, is %f mm", (text, lengths, expected) => {
    expect(readQuantity(text, "length", lengths)).toBe(expected);
  });

  it.each(["", "wide", "9 0", "5 kg", "1e9", "1.2.3", "0x10", "Infinity"])("“%s” is no length", (text) => {
    expect(readQuantity(text, "length", "mm")).toBeNull();
  });

  it("other kinds have their own units", () => {
    expect(readQuantity("800", "mass", "mm")).toBe(0.8);
    expect(readQuantity("2 min", "time", "mm")).toBe(120);
    expect(readQuantity("20 cm/s", "speed", "mm")).toBe(200);
    expect(readQuantity("5 %", "share", "mm")).toBe(0.05);
    expect(readQuantity("45°", "angle", "mm")).toBe(45);
  });

  it("are shown as they were typed", () => {
    for (const lengths of ["mm", "cm"] as const) {
      for (const value of [0, 1, 900, 12.5, 1234.56, -40]) {
        expect(readQuantity(quantityText(value, "length", lengths), "length", lengths)).toBe(value);
      }
    }
  });
});
