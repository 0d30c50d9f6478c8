import { describe, expect, it } from "vitest";
import { checkProject } from "../../../src/model/check.ts";
import { generateRoutines } from "../../../src/plan/catalogue.ts";
import { readRuns, runHeadings, runTable } from "../../../src/practice/practiceRuns.ts";
import { practicePlacements } from "../../../src/practice/proposed.ts";
import { testPlacements } from "../../../src/practice/testPlacements.ts";
import { compileTrial } from "../../../src/trial/compile.ts";
import { runTrial } from "../../../src/trial/run.ts";
import { shippedProject } from "../../support/projectFiles.ts";

const project = shippedProject();
const routine = [...generateRoutines(project)].sort((a, b) => a.moves.length - b.moves.length)[0];
if (routine === undefined) throw new Error("no routine");

describe("placements to practise on", () => {
  const { even, hard } = practicePlacements(project, routine, 12, 3);

  it("can all be laid, and a quarter of them are hard ones", () => {
    expect([even.length, hard.length]).toEqual([9, 3]);
    for (const positions of [...even, ...hard]) {
      const laid = { ...project, rules: { ...project.rules, layout: { kind: "fixed", positions } } } as const;
      expect(checkProject(laid)).toEqual([]);
    }
  });

  it("leave no large gap: every place of the zone is nearer to a ball than with drawn ones", () => {
    const farthest = (placements: readonly (readonly { xMm: number; yMm: number }[])[]): number => {
      let most = 0;
      for (let x = 100; x < 900; x += 50) {
        for (let y = 100; y < 700; y += 50) {
          const gaps = placements.flat().map((p) => Math.hypot(p.xMm - x, p.yMm - y));
          most = Math.max(most, Math.min(...gaps));
        }
      }
      return most;
    };
    const plan = compileTrial(project, routine);
    const drawn = Array.from({ length: 12 }, (_, i) => runTrial(plan, 3, i).placement);
    expect(farthest(testPlacements(project, 12, 3))).toBeLessThan(farthest(drawn));
  });

  it("are the same for the same seed, and others for another", () => {
    expect(practicePlacements(project, routine, 12, 3)).toEqual({ even, hard });
    expect(practicePlacements(project, routine, 12, 4).even).not.toEqual(even);
  });
});

describe("a table of practice runs", () => {
  const { even } = practicePlacements(project, routine, 4, 3);
  const runs = even.map((placement, i) => ({
    placement,
    home: i % 4,
    timeS: 60.5 + i,
    loss: i === 2 ? ("jammed" as const) : ("" as const),
    day: i < 2 ? "2031-04-09" : "the day after",
    note: `run ${i}`,
  }));

  it("comes back as it was written", () => {
    expect(readRuns(runTable([], runs), project)).toEqual({ ok: true, value: runs });
  });

  it("may be filled in later, with decimal commas", () => {
    const table = runTable(even).split("\n");
    table[2] = `${table[2]?.replace(/;;;;;$/, ";2;71,5;Left-Pusher;9 April;slow, but fine")}`;
    const read = readRuns(table.join("\r\n"), project);
    expect(read).toEqual({
      ok: true,
      value: [
        {
          placement: even[1],
          home: 2,
          timeS: 71.5,
          loss: "left-pusher",
          day: "9 April",
          note: "slow, but fine",
        },
      ],
    });
  });

  it("is read as it was before there were reasons and days, with headings or without", () => {
    const dayless = runTable([], runs)
      .replace(";day;", ";")
      .replaceAll(/;(2031-04-09|the day after);/g, ";");
    const withoutDays = runs.map((run) => ({ ...run, day: "" }));
    expect(readRuns(dayless, project)).toEqual({ ok: true, value: withoutDays });
    const table = dayless.replace(";loss;", ";").replaceAll(/;(jammed)?;run/g, ";run");
    const old = withoutDays.map((run) => ({ ...run, loss: "" }));
    expect(readRuns(table, project)).toEqual({ ok: true, value: old });
    expect(readRuns(table.slice(table.indexOf("\n") + 1), project)).toEqual({ ok: true, value: old });
    expect(readRuns(runTable([], runs).replace("jammed", "jamed"), project)).toMatchObject({
      ok: false,
      issues: [{ path: "line 4", message: expect.stringMatching(/Did you mean jammed/) }],
    });
  });

  it("gives everything that is wrong, by line", () => {
    const head = runHeadings(3).join(";");
    const text = [
      head,
      "1;500;300;700;500;400;600;7;x;",
      "2;5;300;700;500;400;600;3;;",
      "3;a;300;700;500;400;600;1.5;;",
    ];
    const read = readRuns(text.join("\n"), project);
    const issues = read.ok ? [] : read.issues.map(({ path, code }) => `${path} ${code}`);
    expect(issues.filter((issue) => issue.startsWith("line 2"))).toEqual([
      "line 2 bad-number",
      "line 2 bad-number",
    ]);
    expect(issues.some((issue) => issue.startsWith("line 3"))).toBe(true);
    expect(issues).toContain("line 4 not-whole");
    expect(readRuns(head, project).ok).toBe(false);
  });
});
