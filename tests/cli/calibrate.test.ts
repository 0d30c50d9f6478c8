import { readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { parseProjectFile } from "../../src/model/parse.ts";
import { runCommand, runForJson } from "../support/command.ts";
import { shippedProject } from "../support/projectFiles.ts";
import { tempDirectory } from "../support/tempDirectory.ts";

const directory = tempDirectory();

function file(name: string, text: string): string {
  const path = join(directory, name);
  writeFileSync(path, text);
  return path;
}

const TABLE = [
  "test;given;measured;more",
  "straight;1000;985;12",
  "straight;1000;983,5;15",
  "straight;1500;1478;31",
  "turn;900;871;10",
  "turn;900;868,5;10",
  "turn;-900;-874;10",
  "roll;1210;3,4",
  "roll;1300;3,55",
  "rebound;305;252",
  "rebound;305;249",
].join("\n");

interface Json {
  readonly turnScale: { readonly value: number; readonly low: number; readonly high: number };
  readonly wheelRatio: object | null;
  readonly changes: readonly { readonly path: string; readonly to: number; readonly allowed: boolean }[];
}

describe("wedgeward calibrate", () => {
  it("prints what was measured and what it changes in the project", async () => {
    const path = file("tests.csv", TABLE);
    const { code, stdout, stderr } = await runCommand("calibrate", path, "--project", "plate-robot");
    expect([code, stderr]).toEqual([0, ""]);
    expect(stdout).toMatch(/turn, real over commanded +−3\.20 %/);
    expect(stdout).toContain("Told to turn by 90° it turns 2.9° too little.");
    expect(stdout).toMatch(/robot\.drift\.systematic\.turnScaleMean: \S+ → -0\.03204/);
    const json = await runForJson<Json>("calibrate", path, "--project", "plate-robot");
    expect(json.turnScale.value).toBeCloseTo(-86.5 / 2700, 6);
    expect(json.turnScale.low).toBeLessThan(json.turnScale.value);
    expect(json.changes.find(({ path: at }) => at.endsWith("turnScaleMean"))).toMatchObject({
      allowed: true,
    });
  });

  it("writes what was measured into a new file, with the decision and its table, never over a file", async () => {
    const path = file("kept.csv", TABLE);
    const kept = join(directory, "kept.json");
    const args = ["calibrate", path, "--project", "plate-robot", "--keep", kept, "--note", "It stops short."];
    const { code, stdout } = await runCommand(...args);
    expect([code, stdout]).toEqual([0, expect.stringContaining(kept)]);
    const read = parseProjectFile(readFileSync(kept, "utf8"));
    if (!read.ok) throw new Error(JSON.stringify(read.issues));
    const { project, record } = read.value;
    expect(project.robot.drift.systematic.turnScaleMean).toBeCloseTo(-0.03204, 5);
    expect(record.measurements.trim()).toBe(TABLE);
    expect(record.decisions).toHaveLength(1);
    expect(record.decisions[0]).toMatchObject({ kind: "calibration", reason: "It stops short." });
    // The project as it was, and the table: from these the figures come again.
    expect(record.decisions[0]?.inputs.project).toEqual(shippedProject("plate-robot.json"));
    expect(record.decisions[0]?.inputs.measurements.trim()).toBe(TABLE);
    const again = await runCommand(...args);
    expect([again.code, again.stderr]).toEqual([2, expect.stringMatching(/--keep: .*left as it is/)]);
  });

  it("lists all that is wrong with the table, and with the command", async () => {
    const bad = await runCommand("calibrate", file("bad.csv", "strait,1,2\nroll,5,x\n"));
    expect(bad.code).toBe(2);
    expect(bad.stderr).toContain("line 1");
    expect(bad.stderr).toContain("line 2");
    const none = await runCommand("calibrate", "--projekt");
    expect(none.code).toBe(2);
    expect(none.stderr).toContain("Name the table of your tests.");
    expect(none.stderr).toContain("Did you mean --project?");
    const lost = await runCommand("calibrate", join(directory, "no-such.csv"));
    expect([lost.code, lost.stdout]).toEqual([2, ""]);
  });
});
