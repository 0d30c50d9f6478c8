import { describe, expect, it } from "vitest";
import { readMeasurements, TEST_COLUMNS } from "../../../src/practice/measurements.ts";
import { sheetNumber } from "../../../src/practice/sheet.ts";

function issuesOf(text: string): readonly string[] {
  const parsed = readMeasurements(text);
  return parsed.ok ? [] : parsed.issues.map(({ code, path }) => `${path} ${code}`);
}

const LINES = [
  ["straight", "1000", "983.5", "-12"],
  ["turn", "-900", "-871.25", "10"],
  ["square-right", "600", "-70", "-66"],
  ["square-left", "600", "-35", "28.5"],
  ["roll", "1210", "3.4"],
  ["push", "150", "60"],
  ["rebound", "305", "252"],
];

describe("a table of tests", () => {
  const plain = readMeasurements(LINES.map((cells) => cells.join(",")).join("\n"));

  it("is read test by test", () => {
    if (!plain.ok) throw new Error(JSON.stringify(plain.issues));
    expect(plain.value).toMatchObject({
      straights: [{ commandedMm: 1000, measuredMm: 983.5, leftMm: -12 }],
      turns: [{ commandedRad: -5 * Math.PI, turns: 10 }],
      squaresRight: [{ sideMm: 600, aheadMm: -70, leftMm: -66 }],
      squaresLeft: [{ sideMm: 600, aheadMm: -35, leftMm: 28.5 }],
      rolls: [{ distanceMm: 1210, timeS: 3.4 }],
      pushes: [{ speedMmPerS: 150, gapMm: 60 }],
      rebounds: [{ dropMm: 305, reboundMm: 252 }],
    });
    expect(LINES.map(([name]) => name)).toEqual(Object.keys(TEST_COLUMNS));
  });

  it.each([
    ["semicolons and decimal commas", ";", true],
    ["tabs and decimal commas", "\t", true],
    ["semicolons and decimal points", ";", false],
  ])("is the same with %s", (_, separator, comma) => {
    const text = LINES.map((cells) =>
      cells.map((cell) => (comma ? cell.replace(".", ",") : cell)).join(separator),
    );
    const table = ["test", "given", "measured", "more"].join(separator);
    expect(readMeasurements([table, ...text].join("\r\n"))).toEqual(plain);
  });

  it("may have headings, remarks, empty lines, quotes, a byte order mark and a real minus sign", () => {
    const text = '\uFEFFTest;given;measured;\n# hall, new batteries\n\n;;;\n"straight";"1000";990;\u221212\n';
    const parsed = readMeasurements(text);
    expect(parsed.ok && parsed.value.straights).toEqual([
      { commandedMm: 1000, measuredMm: 990, leftMm: -12 },
    ]);
  });

  it("leaves out what may be left out", () => {
    const parsed = readMeasurements("straight,1000,990\nturn,90,88");
    expect(parsed.ok && [parsed.value.straights[0]!.leftMm, parsed.value.turns[0]!.turns]).toEqual([0, 1]);
  });

  it("lists everything that is wrong, each with its line", () => {
    const text = [
      "test;given;measured;more",
      "strait;1000;990",
      "straight;1000",
      "straight;eleven;990;1",
      "turn;900;-870;10",
      "roll;1210;3,4;7;8",
      "rebound;300;310",
      "push;150;1.234,5",
    ].join("\n");
    expect(issuesOf(text)).toEqual([
      "line 2 unknown-test",
      "line 3 bad-number",
      "line 4 bad-number",
      "line 5 bad-turn",
      "line 6 surplus-cell",
      "line 7 bad-rebound",
      "line 8 bad-number",
    ]);
    const parsed = readMeasurements("strait;1000;990");
    expect(!parsed.ok && parsed.issues[0]!.message).toContain("Did you mean straight?");
  });

  it("asks back where what a turn is short of was written, or a way in other units", () => {
    expect(issuesOf("turn;900;29;10\nturn;-900;-850;10\nstraight;1000;98\nstraight;1000;1490")).toEqual([
      "line 1 far-off",
      "line 3 far-off",
    ]);
    const parsed = readMeasurements("turn;900;29;10");
    expect(!parsed.ok && parsed.issues[0]!.message).toContain("Then write 871°");
    expect(!parsed.ok && parsed.issues[0]!.expected).toBe("450 to 1350 °");
  });

  it("without a test is refused", () => {
    expect(issuesOf("")).toEqual([" no-tests"]);
    expect(issuesOf("test,given,measured\n")).toEqual([" no-tests"]);
  });
});

it("numbers are plain ones", () => {
  expect(["1.5", "-2", "+.5", "1e3", "3,5"].map((cell) => sheetNumber(cell, true))).toEqual([
    1.5, -2, 0.5, 1000, 3.5,
  ]);
  for (const cell of ["", " ", "1,2,3", "0x10", "Infinity", "NaN", "12mm", "1 000"]) {
    expect(sheetNumber(cell, true), cell).toBeNaN();
  }
  expect(sheetNumber("3,5", false)).toBeNaN();
});
