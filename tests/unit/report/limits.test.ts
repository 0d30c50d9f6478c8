import { readFileSync } from "node:fs";
import { join } from "node:path";
import { expect, test } from "vitest";
import { limits, limitsAdvice } from "../../../src/report/limits.ts";
import { top } from "../../support/sourceCheck.ts";

test("the README lists the very limits the page shows, and no others", () => {
  const readme = readFileSync(join(top, "README.md"), "utf8");
  const section = readme.split("## What the model leaves out\n")[1]!.split("\n## ")[0]!;
  const rows = section.split("\n").filter((line) => line.startsWith("|"));
  expect(rows.slice(2)).toEqual(limits().map(({ leftOut, matters }) => `| ${leftOut} | ${matters} |`));
  expect(section).toContain(limitsAdvice());
});

test("every limit says what depends on it", () => {
  for (const { leftOut, matters } of limits()) {
    expect(leftOut).toMatch(/^[A-Z].*\.$/);
    expect(matters.length).toBeGreaterThan(20);
    expect(matters).not.toMatch(/\.$/);
  }
});
