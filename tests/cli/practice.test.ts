import { readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { generateRoutines } from "../../src/plan/catalogue.ts";
import { runCommand, runForJson } from "../support/command.ts";
import { shippedProject } from "../support/projectFiles.ts";
import { tempDirectory } from "../support/tempDirectory.ts";

const routine =
  [...generateRoutines(shippedProject())].sort((a, b) => a.moves.length - b.moves.length)[0]?.id ?? "none";
const ARGS = ["practice", "--routine", routine];

describe("wedgeward practice", () => {
  it("prints a card, writes the table to fill in, and never over one that is there", async () => {
    const file = join(tempDirectory(), "runs.csv");
    const card = await runCommand(...ARGS, "--placements", "8", "--out", file);
    expect([card.code, card.stderr]).toEqual([0, ""]);
    expect(card.stdout).toMatch(/8 placements to practise/);
    expect(card.stdout).toMatch(/8 hard/);
    expect(readFileSync(file, "utf8").trim().split("\n")).toHaveLength(9);
    const again = await runCommand(...ARGS, "--out", file);
    expect([again.code, again.stderr]).toEqual([2, expect.stringMatching(/left as it is/)]);
  });

  it("holds filled-in runs against the model, and finds a bad robot worse", async () => {
    const file = join(tempDirectory(), "runs.csv");
    const { table } = await runForJson<{ readonly table: string }>(...ARGS, "--placements", "8");
    writeFileSync(file, table.replace(/;;;;;$/gm, ";0;61,5;never-touched;Monday;none"));
    const { assessment } = await runForJson<{
      readonly assessment: { readonly attempts: number; readonly successes: number; readonly brier: number };
    }>(...ARGS, "--results", file);
    expect(assessment).toMatchObject({ attempts: 8, successes: 0 });
    const words = await runCommand(...ARGS, "--results", file);
    expect(words.stdout).toMatch(/The model promised [\d.]+ of 100, you got 0 of 8/);
    expect(words.stdout).toMatch(/Success rate after these runs: 10 of 100, likely between 0 and 34/);
    expect(words.stdout).toMatch(/Brier score 0\.\d{3}/);
  });

  it("lists what is wrong with a table", async () => {
    const file = join(tempDirectory(), "runs.csv");
    writeFileSync(file, "1;500;300;700;500;400;600;9;;\n2;500;300;700;500;400;600;many;;\n");
    const { code, stderr } = await runCommand(...ARGS, "--results", file);
    expect([code, stderr]).toEqual([2, expect.stringMatching(/line 1[\s\S]*line 2/)]);
  });
});
