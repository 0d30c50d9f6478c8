import { describe, expect, it } from "vitest";
import { parseProjectFile } from "../../../src/model/parse.ts";
import type { TeamRecord } from "../../../src/model/record.ts";
import { serialiseProject } from "../../../src/model/serialise.ts";
import { generateRoutines } from "../../../src/plan/catalogue.ts";
import { shippedProject } from "../../support/projectFiles.ts";

const project = shippedProject();
const carried = shippedProject("tray-corner.json");
const [first] = generateRoutines(carried);
if (first === undefined) throw new Error("no routine");
// As a file gives it back: an own routine.
const routine = { ...first, pattern: "own", params: {} };

const record: TeamRecord = {
  measurements: "test;commanded;measured\nstraight;1000;981,5\n",
  practice: [
    {
      ...{ routine: first.id, placement: [{ xMm: 105, yMm: 300 }], hard: true },
      ...{ home: 0, timeS: 61.5, loss: "jammed", day: "2031-04-09", note: "stuck; left wall" },
    },
    {
      ...{ routine: first.id, placement: [], hard: false },
      ...{ home: null, timeS: null, loss: "", day: "", note: "" },
    },
  ],
  decisions: [
    {
      ...{ date: "2031-04-09", kind: "fix", title: "A wider plate", figures: ["4 of 100 more"] },
      reason: "It fits the doorway.\nAnd it is light.",
      inputs: {
        ...{ project: carried, routines: [routine], change: "wider", measurements: "" },
        ...{ seed: 7, trials: 300 },
      },
    },
  ],
};

describe("what a team writes down", () => {
  it("is kept in the project's file, inputs of decisions included", () => {
    const text = serialiseProject(project, [], record);
    const read = parseProjectFile(text);
    if (!read.ok) throw new Error(JSON.stringify(read.issues));
    expect(read.value.project).toEqual(project);
    const [decision] = read.value.record.decisions;
    expect(decision?.inputs.project).toEqual(carried);
    expect(decision?.inputs.change).toBe("wider");
    expect(decision?.inputs.routines.map(({ id }) => id)).toEqual([routine.id]);
    expect(read.value.record.practice).toEqual(record.practice);
    expect(serialiseProject(read.value.project, [], read.value.record)).toBe(text);
  });

  it("leaves files without it as they were", () => {
    expect(serialiseProject(project)).not.toContain("record");
  });
});
