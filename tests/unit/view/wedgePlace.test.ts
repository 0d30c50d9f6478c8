import { describe, expect, it } from "vitest";
import type { Corner, Wedge } from "../../../src/model/zone.ts";
import { heightLinesMm, wedgePlace, wedgeSection, wedgeWords } from "../../../src/view/wedgePlace.ts";

const wedge = (changes: Partial<Wedge>): Wedge => ({
  corner: "upper-right",
  legXMm: 300,
  legYMm: 400,
  profile: "ramp",
  lipMm: 0,
  riseMm: 12,
  runMm: 20,
  ...changes,
});
const placeIn = (corner: Corner) => wedgePlace({ widthMm: 1200, heightMm: 900, wedge: wedge({ corner }) });

describe("the wedge's place", () => {
  it("is the named corner, its legs along both walls", () => {
    expect(placeIn("upper-right")).toEqual({
      corner: { xMm: 1200, yMm: 900 },
      onX: { xMm: 900, yMm: 900 },
      onY: { xMm: 1200, yMm: 500 },
      depthMm: 240,
    });
    expect(placeIn("lower-left")).toMatchObject({ corner: { xMm: 0, yMm: 0 }, onX: { xMm: 300, yMm: 0 } });
    expect(placeIn("lower-right")).toMatchObject({ onX: { xMm: 900, yMm: 0 }, onY: { xMm: 1200, yMm: 400 } });
    expect(placeIn("upper-left")).toMatchObject({ onX: { xMm: 300, yMm: 900 }, onY: { xMm: 0, yMm: 500 } });
  });
});

describe("the wedge's profile", () => {
  it("rises over the whole depth for a ramp, over its run for a shelf", () => {
    expect(wedgeSection(wedge({ lipMm: 1 }), 240)).toEqual([
      [0, 0],
      [0, 1],
      [240, 12],
      [240, 12],
    ]);
    expect(wedgeSection(wedge({ profile: "shelf" }), 240)[2]).toEqual([20, 12]);
  });

  it("has height lines only where the floor rises or falls", () => {
    expect(heightLinesMm(wedge({ profile: "flat" }), 240, 5)).toEqual([]);
    expect(heightLinesMm(wedge({ profile: "shelf" }), 240, 5).every((mm) => mm <= 20)).toBe(true);
    const ramp = heightLinesMm(wedge({}), 240, 5);
    expect(ramp).toEqual([40, 80, 120, 160, 200]);
  });

  it("is told in words with heights", () => {
    expect(wedgeWords(wedge({ profile: "flat" }))).toBe("flat mark on the floor");
    expect(wedgeWords(wedge({}))).toBe("rises to 12 mm");
    expect(wedgeWords(wedge({ profile: "shelf", lipMm: 1, riseMm: 5 }))).toBe(
      "1 mm lip, rises to 5 mm, then level",
    );
    expect(wedgeWords(wedge({ profile: "tray", lipMm: 4, riseMm: 1.5 }))).toBe("4 mm lip, falls to 1.5 mm");
  });
});
