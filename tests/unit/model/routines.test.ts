import { describe, expect, it } from "vitest";
import { parseProjectFile } from "../../../src/model/parse.ts";
import { MAX_MOVES } from "../../../src/model/parseRoutines.ts";
import { serialiseProject } from "../../../src/model/serialise.ts";
import { generateRoutines } from "../../../src/plan/catalogue.ts";
import { changedText, issuesOf, shippedProject } from "../../support/projectFiles.ts";

const move = { kind: "drive", distanceMm: 300, speedMmPerS: 200 };
const withRoutines = (routines: unknown) =>
  changedText((file) => {
    file.routines = routines;
  });

describe("own routines in a project file", () => {
  it.each(["usual-zone.json", "arm-robot.json"])(
    "%s: generated routines kept as own ones drive the same moves",
    (name) => {
      const project = shippedProject(name);
      const kept = generateRoutines(project)
        .slice(0, 12)
        .map((routine, i) => ({ ...routine, id: `own-${i}`, pattern: "own", params: { from: routine.id } }));
      const read = parseProjectFile(serialiseProject(project, kept));
      if (!read.ok) throw new Error(JSON.stringify(read.issues));
      expect(read.value.project).toEqual(project);
      for (const [i, routine] of read.value.routines.entries()) {
        expect({ ...routine, moves: [] }).toEqual({ ...kept[i], moves: [] });
        for (const [k, each] of routine.moves.entries()) {
          const before = kept[i]?.moves[k];
          expect(each.kind).toBe(before?.kind);
          for (const [key, value] of Object.entries(each))
            if (typeof value === "number")
              expect(value).toBeCloseTo(before?.[key as keyof typeof before] as unknown as number, 12);
        }
      }
      // Once read, it is written and read again without any change.
      const again = parseProjectFile(serialiseProject(project, read.value.routines));
      expect(again).toEqual(read);
    },
  );

  it("are left out of a file when there are none", () => {
    expect(serialiseProject(shippedProject(), [])).not.toContain("routines");
  });

  it("are refused with the place of what is wrong", () => {
    const text = withRoutines([
      { id: "a", label: "one", moves: [move, { kind: "drive", distanceMm: 1e9, speedMmPerS: 100 }] },
      { id: "a", label: "two", moves: [{ kind: "fly" }, { kind: "wait", durationS: "2" }, 7] },
      { id: "b", moves: [{ ...move, colour: "red" }] },
    ]);
    expect(issuesOf(text).map(({ code, path }) => [code, path])).toEqual([
      ["out-of-range", "routines[0].moves[1].distanceMm"],
      ["unknown-choice", "routines[1].moves[0].kind"],
      ["wrong-type", "routines[1].moves[1].durationS"],
      ["wrong-type", "routines[1].moves[2]"],
      ["unknown-key", "routines[2].moves[0].colour"],
      ["repeated-value", "routines[1].id"],
    ]);
  });

  it("may not hold more moves than a routine can have", () => {
    const moves = Array.from({ length: MAX_MOVES + 1 }, () => move);
    expect(issuesOf(withRoutines([{ id: "a", label: "long", moves }])).map(({ code }) => code)).toEqual([
      "too-many-entries",
    ]);
  });
});
