import { readdirSync, readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { issuesOf } from "../../support/projectFiles.ts";
import { BALLS } from "./badFiles/balls.ts";
import { FIELDS } from "./badFiles/fields.ts";
import { RECORD } from "./badFiles/record.ts";
import { ROBOT } from "./badFiles/robot.ts";
import { SENSORS } from "./badFiles/sensors.ts";
import { TEXT } from "./badFiles/text.ts";
import { ZONE } from "./badFiles/zone.ts";

describe.each([
  ["the text", TEXT],
  ["single fields", FIELDS],
  ["the zone", ZONE],
  ["the robot", ROBOT],
  ["the balls", BALLS],
  ["the sensors", SENSORS],
  ["the team's record", RECORD],
])("what is wrong with %s", (_, cases) => {
  it.each(cases)("$code: $what", ({ text, code, path }) => {
    const issues = issuesOf(text);
    expect(issues.map((issue) => [issue.code, issue.path])).toEqual([[code, path]]);
    for (const { message, got, expected } of issues) {
      expect(message).toMatch(/^[A-Z].*[.?]$/);
      expect(got).not.toBe("");
      expect(expected).not.toBe("");
    }
  });
});

it("every code that the room can report has its bad file here", () => {
  const room = new URL("../../../src/model/", import.meta.url);
  const found = readdirSync(room).flatMap((name) => {
    const text = readFileSync(new URL(name, room), "utf8");
    return [...text.matchAll(/(?:code: |report\(\s*|issue\(\s*)"([a-z]+(?:-[a-z]+)+)"/g)].map(
      (match) => match[1]!,
    );
  });
  const tested = new Set(
    [...TEXT, ...FIELDS, ...ZONE, ...ROBOT, ...BALLS, ...SENSORS, ...RECORD].map(({ code }) => code),
  );
  // Reached only by placement files (parsePlacement.test.ts), by projects that were not read from a file (check.test.ts), and by
  // files with hundreds of faults (parse.test.ts).
  const elsewhere = ["bad-placement", "edge-out-of-range", "too-many-issues"];
  expect(found.length).toBeGreaterThan(40);
  expect([...new Set(found)].filter((code) => !tested.has(code)).sort()).toEqual(elsewhere);
});
