import { readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { parseProjectFile } from "../../src/model/parse.ts";
import { generateRoutines } from "../../src/plan/catalogue.ts";
import { runCommand, runForJson, stoppedCommand } from "../support/command.ts";
import { shippedProject } from "../support/projectFiles.ts";
import { tempDirectory } from "../support/tempDirectory.ts";

interface FixJson {
  readonly seed: number;
  readonly fixes: readonly {
    readonly gain: { readonly value: number; readonly low: number; readonly high: number };
  }[];
  readonly leftOut: readonly { readonly reason: string }[];
  readonly worths: readonly { readonly ballsShare: { readonly value: number } }[];
  readonly dependence: { readonly shares: readonly object[] };
}

const routine =
  [...generateRoutines(shippedProject())].sort((a, b) => a.moves.length - b.moves.length)[0]?.id ?? "none";

describe("wedgeward fix", () => {
  it("gives the same for one worker and for two", async () => {
    const args = ["fix", "--routine", routine, "--trials", "30", "--seed", "4"];
    const one = await runForJson<FixJson>(...args, "--workers", "1");
    expect(await runForJson<FixJson>(...args, "--workers", "2")).toEqual(one);
    expect(one.seed).toBe(4);
    expect(one.fixes.length).toBeGreaterThan(8);
    for (const { gain } of one.fixes) {
      expect(gain.low).toBeLessThanOrEqual(gain.value);
      expect(gain.high).toBeGreaterThanOrEqual(gain.value);
    }
    for (const { reason } of one.leftOut) expect(reason).toMatch(/\w\.$/);
    expect(one.dependence.shares).toHaveLength(4);
  });

  it("says it in words, and writes the row that is taken down as a decision, never over a file", async () => {
    const file = join(tempDirectory(), "kept.json");
    const keep = ["--keep", file, "--take", "2", "--note", "A file does it."];
    const args = ["fix", "--routine", routine, "--trials", "20"];
    const { code, stdout } = await runCommand(...args, ...keep);
    expect(code).toBe(0);
    const read = parseProjectFile(readFileSync(file, "utf8"));
    if (!read.ok) throw new Error(JSON.stringify(read.issues));
    const [decision, ...others] = read.value.record.decisions;
    expect(others).toEqual([]);
    expect(decision).toMatchObject({ kind: "fix", reason: "A file does it." });
    // The second row of the list, with the change, the routine and the runs by which it can be tried again.
    expect(stdout).toMatch(new RegExp(`^ *2 +${decision?.title} `, "m"));
    const { change, routines, trials, project } = decision!.inputs;
    expect([change, routines.map(({ id }) => id), trials]).toEqual([
      expect.stringMatching(/\w/),
      [routine],
      20,
    ]);
    expect(project).toEqual(shippedProject());
    expect(read.value.project).toEqual(shippedProject());
    expect(stdout).toContain(file);
    const again = await runCommand(...args, ...keep);
    expect([again.code, again.stderr]).toEqual([2, expect.stringMatching(/--keep: .*left as it is/)]);
    expect(stdout).toMatch(/As it is: every ball home in \d+(\.\d)? of 100 runs/);
    expect(stdout).toMatch(/turn error halved +[+−]?\d+ of 100 runs \([+−]?\d+ to [+−]?\d+\)/);
    expect(stdout).toMatch(/what the balls home depend on/);
  });

  it("stopped with Ctrl-C prints what is known", async () => {
    const ended = await stoppedCommand(["fix", "--routine", routine, "--trials", "1000000", "--json"]);
    expect(ended.code).toBe(130);
    const known = JSON.parse(ended.stdout) as FixJson & { readonly stopped: boolean };
    expect([known.stopped, known.worths]).toEqual([true, null]);
  });

  it("wants a routine, and knows its own ids only", async () => {
    expect((await runCommand("fix")).code).toBe(2);
    const unknown = await runCommand("fix", "--routine", "nonsense");
    expect([unknown.code, unknown.stderr]).toEqual([2, expect.stringMatching(/no routine of that id/)]);
  });
});
