import { readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import type { TeamRecord } from "../../src/model/record.ts";
import { serialiseProject } from "../../src/model/serialise.ts";
import { generateRoutines } from "../../src/plan/catalogue.ts";
import { runCommand, runForJson } from "../support/command.ts";
import { shippedProject } from "../support/projectFiles.ts";
import { tempDirectory } from "../support/tempDirectory.ts";

const routine = [...generateRoutines(shippedProject())].sort((a, b) => a.moves.length - b.moves.length)[0];
const ARGS = ["sheet", "--routine", routine?.id ?? "none", "--trials", "40"];
const fresh = (): string => join(tempDirectory(), "sheet.html");

describe("wedgeward sheet", () => {
  it("writes one file that needs nothing else, the same for one worker and two", async () => {
    const [file, other] = [fresh(), fresh()];
    const done = await runForJson<{ readonly successRate: { readonly value: number } }>(
      ...[...ARGS, "--workers", "1", "--out", file],
    );
    await runForJson(...ARGS, "--workers", "2", "--out", other);
    const html = readFileSync(file, "utf8");
    expect(readFileSync(other, "utf8")).toBe(html);
    // Self-contained: no script, nothing fetched.
    expect(html).not.toMatch(/<script|<link|<img|src=|href=|url\((?!#)/);
    expect(html).toContain("40 simulated runs");
    expect(html).toContain(`${Math.round(100 * done.successRate.value)}`);
    expect(html.match(/<svg /g)?.length).toBeGreaterThanOrEqual(4);
    // Every other pattern of blind routines stands beside it.
    const patterns = new Set(generateRoutines(shippedProject()).map(({ pattern }) => pattern));
    const shown = html.match(/<td class="range">/g)?.length ?? 0;
    expect(shown + Number(/(\d+) other patterns did no better/.exec(html)?.[1])).toBe(patterns.size);
    for (const part of [
      "Why this routine",
      "The evidence",
      "Where it fails",
      "What the model leaves out",
      "Run it again",
    ])
      expect(html).toContain(`<h2>${part}</h2>`);
    expect(html).toContain(`--routine ${routine?.id} --seed 1 --index N`);
  });

  it("is as long as asked for and holds practice and decisions of the project", async () => {
    const project = shippedProject();
    const placement = project.balls.flatMap(({ count }) =>
      Array.from({ length: count }, (_, i) => ({ xMm: 300 + 150 * i, yMm: 400 })),
    );
    const entry = { placement, hard: false, home: 0, timeS: 50, day: "", loss: "", note: "" };
    const inputs = { project, routines: [], measurements: "", seed: 1, trials: 0 };
    const decision = {
      date: "2031-04-09",
      kind: "calibration",
      title: "Measured turns",
      figures: ["3 % short"],
    };
    const record = {
      measurements: "",
      practice: Array.from({ length: 6 }, () => ({ ...entry, routine: routine?.id ?? "" })),
      decisions: [{ ...decision, reason: "Tape & patience", inputs }],
    } as const;
    const file = join(tempDirectory(), "own.json");
    writeFileSync(file, serialiseProject(project, [], record as unknown as TeamRecord));
    const sheets = await Promise.all(
      [["--pages", "1", "--for", "visitors"], ["--with-steps"]].map(async (more) => {
        const out = fresh();
        await runForJson("sheet", file, ...ARGS.slice(1), "--out", out, ...more);
        return readFileSync(out, "utf8");
      }),
    );
    for (const html of sheets) {
      expect(html).toMatch(/The model promised [\d.]+ of 100, you got 0 of 6/);
      expect(html).toContain("2031-04-09: Measured turns");
      expect(html).toContain("Tape &amp; patience");
    }
    const [visitors = "", engineers = ""] = sheets;
    expect(visitors).toContain("<h2>On the real floor</h2>");
    expect(visitors).not.toContain("Appendix");
    expect(engineers).toContain("Appendix: the steps");
    expect(visitors.length).toBeLessThan(engineers.length);
  });

  it("never writes over a file, and asks for one", async () => {
    const missing = await runCommand(...ARGS);
    expect([missing.code, missing.stderr]).toEqual([2, expect.stringMatching(/--out/)]);
    const there = await runCommand(...ARGS, "--out", "package.json");
    expect([there.code, there.stderr]).toEqual([2, expect.stringMatching(/left as it is/)]);
  });
});
