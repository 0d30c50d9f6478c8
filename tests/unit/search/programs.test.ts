import { describe, expect, it } from "vitest";
import { RoutineMaker } from "../../../src/plan/maker.ts";
import { proposeChanges } from "../../../src/search/change.ts";
import { routineParts } from "../../../src/search/routineParts.ts";
import { shippedProject } from "../../support/projectFiles.ts";

const project = shippedProject("looking-robot.json");
const routine = new RoutineMaker(project).make("look-n1-none")!;

describe("a routine that decides by its sensors", () => {
  it("has no parts that could be left out beforehand", () => {
    expect(routineParts(project, routine, 6).parts).toEqual([]);
  });

  it("takes changes to the robot, and none to moves that are made on the way", () => {
    const changes = proposeChanges(project, routine);
    const about = (what: string) => changes.filter((change) => change.about === what);
    expect(about("routine").length).toBeGreaterThan(0);
    for (const change of about("routine")) {
      expect(change.made).toBeNull();
      expect(change.reason).toContain("decides by its sensors");
    }
    expect(about("drift").some((change) => change.made !== null)).toBe(true);
  });
});
