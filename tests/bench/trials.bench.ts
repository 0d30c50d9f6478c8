import { generateRoutines } from "../../src/plan/catalogue.ts";
import { compileTrial } from "../../src/trial/compile.ts";
import type { TrialPlan } from "../../src/trial/plan.ts";
import { runBatch } from "../../src/trial/run.ts";
import { defaultProject } from "./defaultProject.ts";
import { firstOfEachPattern } from "./firstOfEachPattern.ts";
import { type BenchRow, cpuSecondsOf, rowOf } from "./row.ts";

const ROUNDS = 7;
const TRIALS = 1000;
const WARM_UP_TRIALS = 500;
const SEED = 1;

/** Trials per second of processor time: a routine of each pattern, and all of them together. */
export async function bench(): Promise<readonly BenchRow[]> {
  const project = defaultProject();
  const routines = firstOfEachPattern(generateRoutines(project));
  const plans = routines.map((routine) => compileTrial(project, routine));
  let sink = 0;
  const run = (plan: TrialPlan, from: number, trials: number): void => {
    sink += runBatch(plan, SEED, from, from + trials).hashLow;
  };
  for (const plan of plans) run(plan, 0, WARM_UP_TRIALS);
  const rates: number[][] = plans.map(() => []);
  for (let round = 0; round < ROUNDS; round++) {
    // Interleaved, so that a slow moment of the machine falls on all alike.
    for (const [i, plan] of plans.entries()) {
      rates[i]?.push(TRIALS / cpuSecondsOf(() => run(plan, WARM_UP_TRIALS + round * TRIALS, TRIALS)));
    }
  }
  if (!Number.isFinite(sink)) throw new Error("the batches have no hash");
  const together = Array.from({ length: ROUNDS }, (_, round) => {
    const seconds = rates.reduce((sum, ofPlan) => sum + TRIALS / (ofPlan[round] ?? 0), 0);
    return (TRIALS * rates.length) / seconds;
  });
  const unit = "trials a second of one core";
  return [
    ...routines.map((routine, i) => rowOf(routine.id, unit, rates[i] ?? [])),
    rowOf("all of these", unit, together),
  ];
}
