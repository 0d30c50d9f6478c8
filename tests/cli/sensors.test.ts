import { describe, expect, it } from "vitest";
import { runCommand } from "../support/command.ts";

describe("a routine that decides by its sensors", () => {
  it("is written down line by line in every form", async () => {
    const [table, json, csv] = await Promise.all([
      runCommand("steps", "looking-robot", "--routine", "look-n1-none"),
      runCommand("steps", "looking-robot", "--routine", "look-n1-none", "--as", "json"),
      runCommand("steps", "looking-robot", "--routine", "look-n1-none", "--as", "csv"),
    ]);
    expect(table.stdout).toMatch(/2 {2}look around: turn right 360 deg/);
    expect(table.stdout).toMatch(/repeat at most \d+ times, until no ball is noted/);
    const { steps } = JSON.parse(json.stdout) as { steps: { words: string }[] };
    expect(steps.slice(0, 3).map(({ words }) => words.split(" ")[0])).toEqual(["go", "look", "repeat"]);
    expect(csv.code).toBe(0);
    expect(csv.stdout).toMatch(/^4,3,,repeat,.*balls_noted/m);
  });

  it("gives the same trials on one worker and on two", async () => {
    const stress = ["stress", "unknown-corner", "--routine", "find-n1-none", "--trials", "24", "--json"];
    const [one, two] = await Promise.all([
      runCommand(...stress, "--workers", "1"),
      runCommand(...stress, "--workers", "2"),
    ]);
    expect(one.code).toBe(0);
    const hashOf = (text: string) => (JSON.parse(text) as { hash: string }).hash;
    expect(hashOf(two.stdout)).toBe(hashOf(one.stdout));
  });
});
