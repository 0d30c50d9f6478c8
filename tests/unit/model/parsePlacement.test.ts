import { describe, expect, it } from "vitest";
import { parsePlacement } from "../../../src/model/parsePlacement.ts";
import { shippedProject } from "../../support/projectFiles.ts";

const project = shippedProject();
const good = [
  { xMm: 500, yMm: 300 },
  { xMm: 700, yMm: 500 },
  { xMm: 400, yMm: 600 },
];

function issuesOf(text: string) {
  const parsed = parsePlacement(text, project);
  return parsed.ok ? [] : parsed.issues.map(({ code, path }) => `${code} ${path}`.trim());
}

describe("a placement file", () => {
  it("is a list of places, one for each ball", () => {
    expect(parsePlacement(JSON.stringify(good), project)).toEqual({ ok: true, value: good });
  });

  it("gives everything that is wrong with it at once", () => {
    expect(issuesOf('[{ "xMm": "5", "yMm": 1e999 }, { "xMm": 1, "zMm": 2 }]')).toEqual([
      "bad-placement",
      "wrong-type [0].xMm",
      "not-finite [0].yMm",
      "missing-key [1].yMm",
      "unknown-key [1].zMm",
    ]);
    expect(issuesOf('{ "xMm": 1 }')).toEqual(["wrong-type"]);
    expect(issuesOf("balls here and there")).toEqual([expect.stringMatching(/^invalid-json/)]);
  });

  it("has only places where a ball can lie", () => {
    const outside = [{ xMm: 5, yMm: 300 }, good[0], { xMm: 510, yMm: 300 }];
    const issues = issuesOf(JSON.stringify(outside));
    expect(issues.some((issue) => issue.endsWith("[0]"))).toBe(true);
    expect(issues.some((issue) => issue.endsWith("[2]") || issue.endsWith("[1]"))).toBe(true);
  });
});
