import { describe, expect, it } from "vitest";
import { judgePractice, proposePlacements } from "../../../src/jobs/practising.ts";
import { generateRoutines } from "../../../src/plan/catalogue.ts";
import { assess } from "../../../src/practice/assess.ts";
import { fitDrift } from "../../../src/practice/driftFit.ts";
import { attemptsOf } from "../../../src/practice/practiceRuns.ts";
import { practicePlacements } from "../../../src/practice/proposed.ts";
import { inlineWorkers } from "../../support/inlineWorkers.ts";
import { shippedProject } from "../../support/projectFiles.ts";

const project = shippedProject();
const routine = [...generateRoutines(project)].sort((a, b) => a.moves.length - b.moves.length)[0];
if (routine === undefined) throw new Error("no routine");

describe("practice in the workers", () => {
  const proposed = practicePlacements(project, routine, 8, 3);

  it("proposes what the practice room proposes", async () => {
    expect(await proposePlacements(inlineWorkers(), project, routine, { count: 8, seed: 3 })).toEqual(
      proposed,
    );
  });

  it("judges as the practice room does, whatever the order of the answers", async () => {
    const runs = proposed.even
      .slice(0, 5)
      .map((placement) => ({ placement, home: 0, timeS: null, loss: "" as const, day: "", note: "" }));
    const assessment = assess(attemptsOf(project, routine, runs, { runs: 300, seed: 3 }));
    const fit = fitDrift(project, routine, runs, { runs: 60, seed: 3 });
    const done: number[] = [];
    const options = { seed: 3, onProgress: (frac: number) => done.push(frac) };
    const judged = await judgePractice(inlineWorkers("last"), project, routine, runs, options);
    expect(judged.assessment).toEqual(assessment);
    expect(judged.fit).toEqual(assessment.verdict === "worse" ? fit : null);
    expect(done.at(-1)).toBeCloseTo(assessment.verdict === "worse" ? 1 : 0.25, 9);
    expect([...done].sort((a, b) => a - b)).toEqual(done);
  });
});
