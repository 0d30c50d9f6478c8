import { describe, expect, test } from "vitest";
import { comparePair } from "../../../src/jobs/comparing.ts";
import { RoutineMaker } from "../../../src/plan/maker.ts";
import { summarise } from "../../../src/score/stress.ts";
import { type PairVerdict, pairVerdict } from "../../../src/search/pairVerdict.ts";
import { compileTrial } from "../../../src/trial/compile.ts";
import { runBatch } from "../../../src/trial/run.ts";
import { inlineWorkers } from "../../support/inlineWorkers.ts";
import { shippedProject } from "../../support/projectFiles.ts";

const project = shippedProject();
const maker = new RoutineMaker(project);
const sideOf = (id: string) => {
  const routine = maker.make(id);
  if (!routine) throw new Error(`no routine ${id}`);
  return { project, routine };
};
const sides = [sideOf("herd-outer-c0-q-b-v100"), sideOf("loop-long-v100")] as const;
const OPTIONS = { seed: 4, trials: 120 };

const summaryOf = ({ routine }: (typeof sides)[number], to: number) =>
  summarise([runBatch(compileTrial(project, routine), OPTIONS.seed, 0, to)]);

describe("comparing two routines in workers", () => {
  test("is what the trials of both say, however the work is shared out, told on the way by those both have done", async () => {
    for (const order of ["first", "last"] as const) {
      const told: PairVerdict[] = [];
      const onKnown = (verdict: PairVerdict) => told.push(verdict);
      const { status, verdict } = await comparePair(inlineWorkers(order), sides, { ...OPTIONS, onKnown });
      expect(status).toBe("done");
      expect(verdict).toEqual(pairVerdict(summaryOf(sides[0], 120), summaryOf(sides[1], 120)));
      expect(told.at(-1)).toEqual(verdict);
      if (order === "first")
        expect(told[0]).toEqual(pairVerdict(summaryOf(sides[0], 100), summaryOf(sides[1], 100)));
    }
  });

  test("says what both have done when it is stopped", async () => {
    const controller = new AbortController();
    let tasks = 0;
    const workers = inlineWorkers("first", () => {
      if (++tasks === 4) controller.abort();
    });
    const { status, verdict } = await comparePair(workers, sides, { ...OPTIONS, signal: controller.signal });
    expect(status).toBe("stopped");
    expect(verdict.comparison.trials).toBe(100);
  });
});
