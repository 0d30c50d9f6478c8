import { describe, expect, it } from "vitest";
import { slopeWords } from "../../../src/app/words/slopeWords.ts";
import { changedText, soundProject } from "../../support/projectFiles.ts";

/** Said of a wedge with legs of 300 and 400 mm, 240 mm deep, in the usual zone, whose balls are thin shells with a rolling resistance of 0.02. */
function said(profile: string, riseMm: number): string {
  const { zone, balls } = soundProject(
    changedText((file) => {
      file.zone.wedge = {
        corner: "upper-right",
        legXMm: 300,
        legYMm: 400,
        profile,
        lipMm: 0,
        riseMm,
        runMm: 20,
      };
    }),
  );
  return slopeWords(zone, balls);
}

describe("what a ramp does to a ball that is let go", () => {
  it("is told with both slopes where the ball rolls down again", () => {
    // 24 mm over 240 mm.
    expect(said("ramp", 24)).toContain("rises 10 mm in every 100 mm");
    // (1 + 2/3) · 0.02, as design.md has it: a shell of 0.02 stays on 3.3 mm.
    expect(said("ramp", 24)).toContain("Table-tennis ball: about 3.3 mm at most");
  });

  it("is nothing where the ball stays, nor on a wedge that is level or falls to its corner", () => {
    expect(said("ramp", 7.9)).toBe("");
    expect(said("ramp", 8.1)).not.toBe("");
    expect(said("shelf", 24)).toBe("");
  });
});
