import { describe, expect, it } from "vitest";
import { type Invocation, parseArguments } from "../../../src/cli/args.ts";
import { COMMANDS, FLAGS } from "../../../src/cli/flags.ts";
import { helpText } from "../../../src/cli/help.ts";
import type { Issue } from "../../../src/model/issue.ts";
import { EVERY_BALL } from "../../../src/search/objective.ts";

const CORES = 3;

function accepted(line: string): Invocation {
  const parsed = parseArguments(line.split(" ").filter(Boolean), CORES);
  if (!parsed.ok) throw new Error(JSON.stringify(parsed.issues));
  return parsed.value;
}

function refused(line: string): readonly Issue[] {
  const parsed = parseArguments(line.split(" ").filter(Boolean), CORES);
  if (parsed.ok) throw new Error(`accepted: ${JSON.stringify(parsed.value)}`);
  return parsed.issues;
}

const shortly = (issues: readonly Issue[]): string[] =>
  issues.map(({ code, path }) => `${code} ${path}`.trim());

describe("the command line", () => {
  it("fills in what is left out", () => {
    expect(accepted("plan")).toEqual({
      command: "plan",
      project: null,
      trials: 300,
      seconds: null,
      objective: EVERY_BALL,
      seed: 1,
      workers: CORES,
      json: false,
    });
    expect(accepted("plan --seconds 10")).toMatchObject({ seconds: 10, trials: 2000 });
    expect(accepted("plan --seconds 10 --trials 50")).toMatchObject({ seconds: 10, trials: 50 });
    expect(accepted("stress --routine fan-1")).toMatchObject({ routine: "fan-1", trials: 2000, seed: 1 });
  });

  it("reads what the search is after", () => {
    expect(accepted("plan --aim points")).toMatchObject({ objective: { id: "points", bySecondS: null } });
    expect(accepted("plan --aim=home-by-45")).toMatchObject({ objective: { id: "home-by", bySecondS: 45 } });
    expect(shortly(refused("plan --aim home-by-0"))).toEqual(["unknown-aim --aim"]);
    expect(refused("plan --aim pionts")[0]?.message).toContain("points");
    expect(shortly(refused("stress --routine a --aim points"))).toEqual(["unknown-flag --aim"]);
  });

  it("takes flags before and after the project, with = or a space", () => {
    const expected = { project: "a.json", trials: 10, seed: 7, workers: 2, json: true };
    expect(accepted("plan --trials 10 a.json --seed=7 --workers 2 --json")).toMatchObject(expected);
  });

  it("takes the largest and the smallest numbers", () => {
    expect(accepted("stress --routine a --seed 0 --trials 1")).toMatchObject({ seed: 0, trials: 1 });
    const most = accepted("trial --routine a --seed 9007199254740991 --index 4294967295");
    expect(most).toMatchObject({ seed: Number.MAX_SAFE_INTEGER, index: 2 ** 32 - 1 });
  });

  it.each([
    ["", null],
    ["--help", null],
    ["-h", null],
    ["nonsense --help", null],
    ["plan --help", "plan"],
    ["fix a.json -h", "fix"],
  ])("explains itself for '%s'", (line, about) => {
    expect(accepted(line)).toEqual({ command: "help", about });
  });

  it("explains one command with its own flags only, and all with all", () => {
    const fix = helpText(["usual-zone"], "fix");
    expect(fix).toMatch(/^ {2}wedgeward fix \[PROJECT\] --routine ID/);
    expect(fix.match(/^ {2}--\S+/gm)).toEqual(
      COMMANDS.find(({ name }) => name === "fix")?.flags.map((flag) => `  --${flag}`),
    );
    expect(fix).toContain("PROJECT is a project file, or one of usual-zone.");
    expect(helpText(["usual-zone"], "start")).not.toMatch(/PROJECT|--json/);
    const all = helpText(["usual-zone"], null);
    for (const { usage } of COMMANDS) expect(all).toContain(`  wedgeward ${usage}\n`);
    expect(all.match(/^ {2}--\S+/gm)).toHaveLength(Object.keys(FLAGS).length);
  });

  it("tells its version", () => {
    expect(accepted("--version")).toEqual({ command: "version" });
  });
});

describe("a bad command line", () => {
  it("is reported whole", () => {
    const issues = refused("plan a.json b.json --trials ten --seed -1 --worker 2 --workers 0");
    expect(shortly(issues)).toEqual([
      "unknown-flag --worker",
      "surplus-argument",
      "bad-number --trials",
      "bad-number --seed",
      "bad-number --workers",
    ]);
    expect(issues.find(({ path }) => path === "--worker")?.message).toContain("--workers");
    expect(issues.find(({ path }) => path === "--trials")).toMatchObject({
      got: "ten",
      expected: "a whole number from 1 to 1000000",
    });
  });

  it.each(["1.5", "1e3", "0x10", "+5", "1_000", "9007199254740993", "NaN", "Infinity"])(
    "has no seed %s",
    (text) => {
      const seedIssue = refused(`plan --seed ${text}`);
      expect(shortly(seedIssue)).toEqual(["bad-number --seed"]);
    },
  );

  it("misses values, flags and files", () => {
    expect(shortly(refused("plan --trials"))).toEqual(["bad-number --trials"]);
    expect(shortly(refused("plan --trials --json"))).toEqual(["bad-number --trials"]);
    expect(shortly(refused("stress"))).toEqual(["missing-flag --routine"]);
    expect(shortly(refused("trial"))).toEqual([
      "missing-flag --routine",
      "missing-flag --seed",
      "missing-flag --index",
    ]);
    expect(shortly(refused("check"))).toEqual(["missing-file"]);
  });

  it("gives flags twice, or values to those that take none", () => {
    expect(shortly(refused("plan --seed 1 --seed 2"))).toEqual(["repeated-flag --seed"]);
    expect(shortly(refused("plan --json=yes"))).toEqual(["unwanted-value --json"]);
  });

  it("knows no such command, but a similar one", () => {
    const [issue] = refused("strss --routine a");
    expect(issue).toMatchObject({ code: "unknown-command", message: "Did you mean stress?" });
  });

  it("does not give a flag of another command", () => {
    expect(shortly(refused("plan --routine fan-1"))).toEqual(["unknown-flag --routine"]);
    expect(shortly(refused("start --json"))).toEqual(["unknown-flag --json"]);
  });
});
