import { describe, expect, it } from "vitest";
import { STEPS, stepOfPath } from "../../../src/app/steps.ts";
import { parseProject } from "../../../src/model/parse.ts";
import { changedText } from "../../support/projectFiles.ts";

/** Step of each thing that is wrong with a changed usual zone. */
function stepsOf(change: Parameters<typeof changedText>[0]): readonly string[] {
  const read = parseProject(changedText(change));
  return read.ok ? [] : read.issues.map(({ path }) => stepOfPath(path));
}

describe("the step in which something is to be mended", () => {
  it("is the one where it is typed", () => {
    expect(stepsOf((file) => (file.zone.widthMm = -1))).toEqual(["zone"]);
    expect(stepsOf((file) => (file.rules.timeLimitS = -1))).toEqual(["zone"]);
    expect(stepsOf((file) => (file.robot.massKg = -1))).toEqual(["robot"]);
  });

  it("is Practice for a run's seconds, not Zone", () => {
    const run = { routine: "herd-all-c0-q-b-v60", placement: [{ xMm: 600, yMm: 500 }], home: 1, timeS: -3 };
    expect(stepsOf((file) => (file.record = { practice: [run] }))).toEqual(["practice"]);
  });

  it("is one there is, whatever the path", () => {
    for (const path of ["", "name", "record.decisions[0].date", "record.measurements", "routines[0].moves"]) {
      expect(STEPS).toContain(stepOfPath(path));
    }
    expect(stepOfPath("record.decisions[0].date")).toBe("jury");
  });
});
