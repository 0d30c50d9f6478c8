import { describe, expect, it } from "vitest";
import { parseProject } from "../../../src/model/parse.ts";
import type { Routine } from "../../../src/model/routine.ts";
import { RoutineMaker } from "../../../src/plan/maker.ts";
import { routineSketch } from "../../../src/view/routineSketch.ts";
import { shippedText } from "../../support/projectFiles.ts";

const parsed = parseProject(shippedText("usual-zone.json"));
if (!parsed.ok) throw new Error("the usual zone is sound");
const project = parsed.value;

describe("a routine in a few pixels", () => {
  it("has the zone's shape, and its way lies inside", () => {
    const routine = new RoutineMaker(project).make("herd-all-c0-q-b-v60");
    const sketch = routine && routineSketch(project, routine);
    expect(sketch).not.toBeNull();
    if (!sketch) return;
    expect([sketch.widthPx, sketch.heightPx]).toEqual([68, 52]);
    const numbers = sketch.path.match(/-?[\d.]+/g)?.map(Number) ?? [];
    expect(numbers.length).toBeGreaterThan(40);
    for (const [i, at] of numbers.entries()) {
      expect(at).toBeGreaterThan(0);
      expect(at).toBeLessThan(i % 2 === 0 ? sketch.widthPx : sketch.heightPx);
    }
  });

  it("draws the wedge in its corner", () => {
    const routine: Routine = {
      id: "own",
      pattern: "own",
      label: "own",
      params: {},
      moves: [{ kind: "drive", distanceMm: 200, speedMmPerS: 100 }],
    };
    // Upper right: 64 px long, 48 px high, within a rim of 2 px.
    expect(routineSketch(project, routine)?.wedge.split(" ")).toContain("66.0,2.0");
    expect(routineSketch(project, { ...routine, moves: [] })).toBeNull();
  });
});
