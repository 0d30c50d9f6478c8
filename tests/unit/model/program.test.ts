import { describe, expect, it } from "vitest";
import { parseProjectFile } from "../../../src/model/parse.ts";
import { depthOf, linesOf, type Program } from "../../../src/model/program.ts";
import type { Routine } from "../../../src/model/routine.ts";
import { serialiseProject } from "../../../src/model/serialise.ts";
import { RoutineMaker } from "../../../src/plan/maker.ts";
import { lineWords, programLines, programText } from "../../../src/report/programWords.ts";
import { shippedProject } from "../../support/projectFiles.ts";

const project = shippedProject("unknown-corner.json");
const found = new RoutineMaker(project).make("find-n1-none");
const program: Program = found?.program ?? [];

const EVERY_LINE: Program = [
  { kind: "scan", angleRad: -1, rateRadPerS: 1, corner: "upper-left" },
  {
    kind: "repeat",
    atMost: 4,
    until: { ask: { kind: "nearer", sensor: 0, thanMm: 200 }, not: true },
    steps: [{ kind: "fetch", speedMmPerS: 100, corner: "upper-left" }],
  },
  {
    kind: "if",
    when: { ask: { kind: "bumped", side: "back" }, not: false },
    yes: [{ kind: "goTo", xMm: 300, yMm: 200, headingRad: 0, speedMmPerS: 90, corner: "upper-left" }],
    no: [{ kind: "wait", durationS: 1 }],
  },
  { kind: "repeat", atMost: 2, until: null, steps: [{ kind: "turn", angleRad: 0.5, rateRadPerS: 1 }] },
];

function routinesIn(text: string): readonly Routine[] {
  const parsed = parseProjectFile(text);
  if (!parsed.ok) throw new Error(JSON.stringify(parsed.issues));
  return parsed.value.routines;
}

describe("a program in a project file", () => {
  it.each([
    ["of the catalogue", program],
    ["with every kind of line", EVERY_LINE],
  ])("%s is read back as it was written", (_, lines) => {
    expect(lines.length).toBeGreaterThan(0);
    const own = { id: "mine", pattern: "own", label: "Mine", params: {}, moves: [], program: lines };
    const once = routinesIn(serialiseProject(project, [own]));
    // Angles worked out by a pattern need not be whole numbers of file digits: once written they stay.
    expect(routinesIn(serialiseProject(project, once))).toEqual(once);
    expect(linesOf(once[0]?.program ?? []).map((line) => line.kind)).toEqual(
      linesOf(lines).map((line) => line.kind),
    );
  });
});

describe("a program in words", () => {
  it("numbers its lines as losses name them", () => {
    const lines = programLines(EVERY_LINE).filter(({ number }) => number > 0);
    expect(lines.map(({ words }) => words)).toEqual(linesOf(EVERY_LINE).map(lineWords));
    expect(lines.map(({ number }) => number)).toEqual(linesOf(EVERY_LINE).map((_, i) => i + 1));
    expect(depthOf(EVERY_LINE)).toBe(2);
  });

  it("reads like instructions", () => {
    expect(programText(EVERY_LINE).split("\n")).toEqual([
      "1  look around: turn right 57.3° and note every ball",
      "2  repeat, at most 4 times, until distance sensor 1 reads 200 mm or more",
      "3    fetch the noted ball that takes least time and push it home (corner upper left)",
      "4  if the back has run into something",
      "5    drive to x 300 mm, y 200 mm, facing 0°",
      "   otherwise",
      "6    wait 1.0 s",
      "7  repeat, at most 2 times",
      "8    turn left 28.6° on the spot",
    ]);
  });
});
