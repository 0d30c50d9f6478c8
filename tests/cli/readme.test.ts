import { execFile } from "node:child_process";
import { readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { promisify } from "node:util";
import { describe, expect, it } from "vitest";
import { parseArguments } from "../../src/cli/args.ts";
import { parseProject } from "../../src/model/parse.ts";
import { top } from "../support/sourceCheck.ts";
import { tempDirectory } from "../support/tempDirectory.ts";

const run = promisify(execFile);
const readme = readFileSync(join(top, "README.md"), "utf8");
const blocks = [...readme.matchAll(/```(\w*)\n([\s\S]*?)```/g)].map(([, kind = "", text = ""]) => ({
  kind,
  text,
}));
const RUN = "npm run -s wedgeward -- ";

/** As a shell parts them: what stands in quotes is one word. */
const wordsOf = (text: string): readonly string[] =>
  [...text.matchAll(/"([^"]*)"|(\S+)/g)].map(([, quoted, plain]) => quoted ?? plain ?? "");

/** The words behind `npm run -s wedgeward --`, comments off. */
const commandsOf = (text: string): readonly (readonly string[])[] =>
  text
    .split("\n")
    .flatMap((line) =>
      line.startsWith(RUN) ? [wordsOf((line.slice(RUN.length).split(" #")[0] ?? "").trim())] : [],
    );

describe("the README", () => {
  it("shows only commands that the program understands", () => {
    const lines = blocks.filter(({ kind }) => kind === "").flatMap(({ text }) => text.trim().split("\n"));
    const others = lines.filter((line) => !line.startsWith(RUN));
    expect(others).toEqual(["npm ci && npm start", "npm ci && npm test"]);
    const commands = blocks.flatMap(({ text }) => commandsOf(text));
    expect(commands.length).toBeGreaterThan(20);
    for (const words of commands)
      expect([words.join(" "), parseArguments(words, 2)]).toMatchObject([words.join(" "), { ok: true }]);
  });

  it("leads from an empty zone to a jury sheet, word for word", async () => {
    const directory = tempDirectory();
    const json = blocks.find(({ kind }) => kind === "json")?.text ?? "";
    const csv = blocks.find(({ kind }) => kind === "csv")?.text ?? "";
    expect(parseProject(json).ok).toBe(true);
    writeFileSync(join(directory, "mill.json"), json);
    writeFileSync(join(directory, "mill-tests.csv"), csv);
    const story = blocks.filter(({ text }) => text.includes("mill")).flatMap(({ text }) => commandsOf(text));
    expect(story.map(([name]) => name)).toEqual([
      "check",
      "plan",
      "steps",
      "calibrate",
      "practice",
      "practice",
      "compare",
      "sheet",
    ]);
    const runs = join(directory, "mill-runs.csv");
    const told: string[] = [];
    for (const words of story) {
      // What a team does on its floor meanwhile.
      if (words.includes("--results"))
        writeFileSync(
          runs,
          readFileSync(runs, "utf8").replace(/;;;;;$/gm, ";3;118,5;left-pusher;2031-04-09;"),
        );
      // The robot is changed: slower in turns.
      if (words.includes("mill-3.json")) {
        const after = readFileSync(join(directory, "mill-2.json"), "utf8");
        writeFileSync(
          join(directory, "mill-3.json"),
          after.replace('"turnRateDegPerS": 120', '"turnRateDegPerS": 90'),
        );
      }
      const { stdout } = await run(process.execPath, [join(top, "src/cli/launch.mjs"), ...words], {
        cwd: directory,
      });
      told.push(stdout);
    }
    expect(told[0]).toMatch(/fine/);
    expect(told[1]).toContain("herd-all-c0-b-v100");
    expect(told[2]).toContain("def routine():");
    expect(told[3]).toContain("Told to turn by 90° it turns 2.9° too little.");
    expect(told[5]).toMatch(/you got 0 of 8/);
    const sheet = readFileSync(join(directory, "mill-sheet.html"), "utf8");
    expect(sheet).toContain("The old mill: how our robot brings the balls home");
    expect(sheet).toMatch(/you got 0 of 8/);
    expect(told[6]).toContain("robot.drive.turnRateDegPerS: 120 → 90");
    expect(told[3]).toContain("Written down in mill-2.json");
    expect(sheet).toContain("No worse in the model, and the balls wander less on our floor.");
  });
});
