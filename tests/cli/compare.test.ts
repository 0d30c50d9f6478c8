import { readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { parseProjectFile } from "../../src/model/parse.ts";
import { runCommand, runForJson } from "../support/command.ts";
import { tempDirectory } from "../support/tempDirectory.ts";

interface CompareJson {
  readonly trials: number;
  readonly both: number;
  readonly onlyFirst: number;
  readonly onlySecond: number;
  readonly neither: number;
  readonly pValue: number;
  readonly better: string;
  readonly successDifference: { readonly value: number; readonly low: number; readonly high: number };
  readonly changed: readonly object[];
  readonly anytime: { readonly settled: string | null };
}

const GOOD = "mix-hooks-rings-short-c0-q-v100";
const POOR = "fan-n5-c0-v100";

describe("wedgeward compare", () => {
  it("tells a good routine from a poor one, the same for any number of workers", async () => {
    const [one, two] = await Promise.all(
      ["1", "2"].map((workers) =>
        runForJson<CompareJson>("compare", GOOD, POOR, "--trials", "150", "--workers", workers),
      ),
    );
    expect(two).toEqual(one);
    expect(one).toMatchObject({ trials: 150, better: "first", anytime: { settled: "first" } });
    const { both = 0, onlyFirst = 0, onlySecond = 0, neither = 0 } = one ?? {};
    expect(both + onlyFirst + onlySecond + neither).toBe(150);
    expect(one?.successDifference.value).toBeCloseTo((onlyFirst - onlySecond) / 150, 12);
  });

  it("says in words that a routine is as good as itself", async () => {
    const { code, stdout, stderr } = await runCommand("compare", POOR, POOR, "--trials", "20");
    expect([code, stderr]).toEqual([0, ""]);
    expect(stdout).toMatch(/only the first 0, only the second 0/);
    expect(stdout).toMatch(/Too close to call/);
  });

  it("tells two robots apart by the same routine in two projects", async () => {
    const flags = ["--project", "usual-zone", "--other-project", "plate-robot", "--trials", "60"];
    const same = await runForJson<CompareJson>("compare", GOOD, GOOD, "--trials", "60");
    const robots = await runForJson<CompareJson>("compare", GOOD, GOOD, ...flags);
    expect(same).toMatchObject({ onlyFirst: 0, onlySecond: 0, better: "alike" });
    expect(robots.both + robots.onlyFirst).toBe(same.both);
    expect(robots.onlyFirst + robots.onlySecond).toBeGreaterThan(0);
    // Without anything kept, what differs is said as well.
    expect(robots.changed).toContainEqual({ path: "robot.shape.kind", from: "plate", to: "arms" });
    expect(same.changed).toEqual([]);
    const missing = await runCommand("compare", GOOD, GOOD, "--other-project", "no-such-robot");
    expect(missing.code).toBe(2);
    expect(missing.stderr).toMatch(/no-such-robot/);
  });

  it("writes two robots down as a decision that can be run again, and never over a file", async () => {
    const file = join(tempDirectory(), "kept.json");
    const keep = ["--keep", file, "--note", "It pushes more at once."];
    const args = ["compare", POOR, POOR, "--project", "usual-zone", "--other-project", "plate-robot"];
    const done = await runCommand(...args, "--trials", "30", ...keep);
    expect([done.code, done.stderr]).toEqual([0, ""]);
    const read = parseProjectFile(readFileSync(file, "utf8"));
    if (!read.ok) throw new Error(JSON.stringify(read.issues));
    const [decision] = read.value.record.decisions;
    expect(decision).toMatchObject({ kind: "comparison", reason: "It pushes more at once." });
    expect(decision?.date).toMatch(/^\d{4}-\d\d-\d\d$/);
    expect(decision?.figures).toContain("Changed: robot.shape.kind: plate → arms.");
    const { project, otherProject, routines } = decision!.inputs;
    expect([project.robot.name, otherProject?.robot.name]).toEqual(["Arm robot", "Plate robot"]);
    expect(routines.map(({ id }) => id)).toEqual([POOR, POOR]);
    expect(done.stdout).toContain("robot.shape.kind: plate → arms");
    const again = await runCommand(...args, ...keep);
    expect([again.code, again.stderr]).toEqual([2, expect.stringMatching(/--keep: .*left as it is/)]);
    const alone = await runCommand("compare", POOR, GOOD, "--note", "why");
    expect([alone.code, alone.stderr]).toEqual([2, expect.stringMatching(/A note goes with --keep/)]);
  });

  it("lists what is wrong with either side", async () => {
    const { code, stderr } = await runCommand("compare", "nothing-1", "nothing-2");
    expect(code).toBe(2);
    expect(stderr).toMatch(/nothing-1/);
    expect(stderr).toMatch(/nothing-2/);
    expect((await runCommand("compare", POOR)).code).toBe(2);
  });
});
