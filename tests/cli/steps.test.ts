import { describe, expect, it } from "vitest";
import { runCommand, runForJson } from "../support/command.ts";
import { movesOfCsv, movesOfListing } from "../support/stepInterpreter.ts";

const ROUTINE = "fan-n5-c0-v60";
const steps = (...more: readonly string[]) => runCommand("steps", "--routine", ROUTINE, ...more);

interface StepsJson {
  readonly routine: { readonly id: string };
  readonly durationS: number;
  readonly steps: readonly { readonly number: number; readonly call: string; readonly words: string }[];
}

/** For people lengths and angles are given to the tenth, speeds whole; files keep every digit. */
function readable(words: string): string {
  return words.replace(/([\d.]+) (mm|deg)(\/s)?/g, (_, digits: string, unit: string, perSecond = "") => {
    return `${Number(Number(digits).toFixed(perSecond === "" ? 1 : 0))} ${unit}${perSecond}`;
  });
}

describe("wedgeward steps", () => {
  it("writes the same steps as table, CSV, JSON and program", async () => {
    const json = await runForJson<StepsJson>("steps", "--routine", ROUTINE);
    expect(json.routine.id).toBe(ROUTINE);
    const count = json.steps.length;
    expect(count).toBeGreaterThan(10);
    // The other forms are read back in tests/unit/report/coderSteps: a process for each takes its time.
    const [table, csv, python] = await Promise.all(
      ["table", "csv", "python"].map((form) => steps("--as", form)),
    );
    for (const { code, stderr } of [table!, csv!, python!]) expect([code, stderr]).toEqual([0, ""]);
    const moves = movesOfCsv(csv!.stdout.trimEnd());
    expect(moves).toHaveLength(count);
    expect(movesOfListing(python!.stdout, "python")).toEqual(moves);
    for (const { words } of json.steps) expect(table!.stdout).toContain(readable(words));
    expect(table!.stdout).toMatch(/A ball in the pusher (can be lost:\n {2}step \d+, |stays there)/);
    expect(table!.stdout).toContain(`In all ${json.durationS.toFixed(1)} s`);
  });

  it("writes a routine that decides as it goes, with a run of it as an example", async () => {
    const args = ["steps", "looking-robot", "--routine", "look-n1-none", "--index", "3"];
    const [table, python] = await Promise.all([runCommand(...args), runCommand(...args, "--as", "python")]);
    for (const { code, stderr } of [table, python]) expect([code, stderr]).toEqual([0, ""]);
    expect(table.stdout).toMatch(/3 {2}repeat at most 3 times, until no ball is noted:/);
    expect(table.stdout).toContain("what it drove in run 3 of seed 1 (");
    expect(table.stdout).toMatch(/ 1 {5}1 {2}drive forward 30 mm at 250 mm\/s/);
    expect(python.stdout).toContain("        if balls_noted() == 0:\n            break");
  });

  it("says which forms there are when asked for another", async () => {
    const { code, stderr, stdout } = await steps("--as", "pyhton");
    expect([code, stdout]).toEqual([2, ""]);
    expect(stderr).toContain("Did you mean python?");
    expect(stderr).toContain("table, csv, json, python, c, pseudo");
  });

  it("asks for a routine, and lists all that is wrong at once", async () => {
    const { code, stderr } = await runCommand("steps", "--as", "ada");
    expect(code).toBe(2);
    expect(stderr).toContain("--routine");
    expect(stderr).toContain("--as");
  });
});
