import { readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { beforeAll, describe, expect, it } from "vitest";
import { runCommand } from "../support/command.ts";
import { top } from "../support/sourceCheck.ts";
import { tempDirectory } from "../support/tempDirectory.ts";

let directory: string;
let bad: string;

beforeAll(() => {
  directory = tempDirectory();
  bad = join(directory, "bad.json");
  const project = JSON.parse(readFileSync(join(top, "fields/usual-zone.json"), "utf8"));
  project.zone.widthMm = "wide";
  project.zone.hieghtMm = 900;
  project.rules.timeLimitS = -5;
  writeFileSync(bad, JSON.stringify(project));
});

describe("a bad project file", () => {
  it.each([
    ["plan"],
    ["stress", "--routine", "x"],
    ["trial", "--routine", "x", "--seed", "1", "--index", "0"],
  ])("stops %s, which lists everything that is wrong", async (command, ...flags) => {
    const { code, stdout, stderr } = await runCommand(command, bad, ...flags);
    expect([code, stdout]).toEqual([2, ""]);
    expect(stderr).toMatch(/zone\.widthMm: .*\n +found .*; allowed: /);
    expect(stderr).toContain("zone.hieghtMm: ");
    expect(stderr).toContain("rules.timeLimitS: ");
  });

  it("is one JSON object where that was asked for", async () => {
    const { code, stdout, stderr } = await runCommand("plan", bad, "--json");
    expect([code, stderr]).toEqual([2, ""]);
    const { source, issues } = JSON.parse(stdout) as { source: string; issues: { path: string }[] };
    expect(source).toBe(bad);
    expect(issues.map(({ path }) => path)).toEqual(
      expect.arrayContaining(["zone.widthMm", "zone.hieghtMm", "rules.timeLimitS"]),
    );
  });

  it.each([
    ["is no JSON", "{"],
    ["is no text", new Uint8Array([0x7b, 0xff, 0xfe])],
    ["is empty", ""],
    ["is far too large", `{"note": "${"x".repeat(1_100_000)}"}`],
  ])("that %s is an issue, not a fault", async (_, content) => {
    const file = join(directory, "other.json");
    writeFileSync(file, content);
    const { code, stdout, stderr } = await runCommand("check", file);
    expect([code, stderr]).toEqual([2, ""]);
    expect(stdout).toContain("1 thing to mend");
  });

  it("that is not there is an issue, with the shipped project that was perhaps meant", async () => {
    const { code, stderr } = await runCommand("plan", "usual-zon");
    expect(code).toBe(2);
    expect(stderr).toContain("usual-zone");
    expect(await runCommand("check", directory)).toMatchObject({ code: 2 });
  });
});

describe("wedgeward check", () => {
  it("finds the shipped project fine, by path and by name", async () => {
    const { code, stdout } = await runCommand("check", "fields/usual-zone.json", "usual-zone");
    expect(code).toBe(0);
    expect(stdout.match(/: fine \(The usual zone, 1200 × 900 mm, 3 balls\)/g)).toHaveLength(2);
  });

  it("checks all files, though the first is bad", async () => {
    const { code, stdout } = await runCommand("check", bad, "usual-zone");
    expect(code).toBe(2);
    expect(stdout).toContain("zone.widthMm");
    expect(stdout).toContain("usual-zone: fine");
  });
});

describe("a bad command line", () => {
  it("gets every complaint at once, and exit code 2", async () => {
    const { code, stdout, stderr } = await runCommand("plan", "--trials", "0", "--seed", "x", "--wat");
    expect([code, stdout]).toEqual([2, ""]);
    for (const flag of ["--trials", "--seed", "--wat"]) expect(stderr).toContain(`${flag}: `);
  });

  it("with an unknown routine gets the nearest ids", async () => {
    const { code, stderr } = await runCommand("stress", "--routine", "no-such-routine-1");
    expect(code).toBe(2);
    expect(stderr).toMatch(/--routine: .*\n +found no-such-routine-1; allowed: \S+, \S+, \S+/);
  });
});

describe("help and version", () => {
  it("go to standard output", async () => {
    const help = await runCommand("--help");
    expect([help.code, help.stderr]).toEqual([0, ""]);
    for (const command of ["plan", "stress", "trial", "check"])
      expect(help.stdout).toContain(`wedgeward ${command} `);
    const version = await runCommand("--version");
    expect(version).toEqual({ code: 0, stdout: "0.1.0\n", stderr: "" });
  });
});
