import { describe, expect, it } from "vitest";
import { listing } from "../../../src/report/coder/listing.ts";
import { startWords } from "../../../src/report/coder/startWords.ts";
import { stepSheet } from "../../../src/report/coder/steps.ts";
import { stepJson } from "../../../src/report/coder/stepTable.ts";
import { changedText, shippedProject, soundProject } from "../../support/projectFiles.ts";
import { routineOf } from "../../support/scene.ts";

/** Said of the usual robot that starts elsewhere: by a doorway in this wall. */
function said(wall: string, entry: object): string {
  return startWords(
    soundProject(
      changedText((file) => {
        file.zone.doorway = { wall, centreMm: 450, widthMm: 400 };
        file.robot.entry = entry;
      }),
    ),
  );
}

describe("where a routine starts, for the person who codes it", () => {
  it("is told in every form that can hold a sentence", () => {
    const project = shippedProject();
    const sheet = stepSheet(project, routineOf([{ kind: "drive", distanceMm: 100, speedMmPerS: 100 }]));
    const start =
      "Start: the middle between the driven wheels 85 mm inside the line of the doorway's wall, in the doorway's middle; facing straight in.";
    expect(startWords(project)).toBe(start);
    for (const language of ["python", "c", "pseudo"] as const)
      expect(listing(sheet, language)).toContain(start);
    expect(stepJson(sheet)).toMatchObject({ start });
  });

  it("tells the sides as the drawing shows them, and turns as the robot makes them", () => {
    expect(said("bottom", { alongMm: -20, insetMm: 85, headingDeg: 12 })).toContain(
      "20 mm to the left of the doorway's middle, seen on the drawing; facing 12 deg to the left of straight in",
    );
    expect(said("left", { alongMm: 15, insetMm: 85, headingDeg: -5 })).toContain(
      "15 mm above the doorway's middle, seen on the drawing; facing 5 deg to the right",
    );
    expect(startWords(shippedProject("swinging-arms.json"))).toMatch(/; arms open\.$/);
  });
});
