import { fileURLToPath } from "node:url";
import type { Project } from "../../src/model/project.ts";
import { Moments } from "../../src/num/moments.ts";
import { generateRoutines } from "../../src/plan/catalogue.ts";
import { compileTrial } from "../../src/trial/compile.ts";
import type { TrialPlan } from "../../src/trial/plan.ts";
import { runBatch } from "../../src/trial/run.ts";
import { frictionless, openFans } from "../support/frictionless.ts";
import { PlanckTrial } from "../support/planckTrial.ts";
import { defaultProject } from "./defaultProject.ts";
import { firstOfEachPattern } from "./firstOfEachPattern.ts";
import { type BenchRow, rowOf } from "./row.ts";
import { Side, type SideTrial, serveSide } from "./side.ts";

/**
 * The engine beside planck at 1/240 s: the same zone, footprint, routines, drift and placements, no friction at faces and
 * no height of the wedge, since planck can have neither. Processor time, each library in a process of its own, in turns.
 */

const SEED = 1;
const ROUNDS = 7;
/** Three trials of each routine, if there are ten. */
const TRIALS = 30;
/** The engine runs each round's trials this often, so that both sides take about as long. */
const REPEATS = 40;
const COLD_TRIALS = 1000;
const COLD_ROUNDS = 5;

const SIDES: Record<string, () => SideTrial> = {
  engine: () => engineTrial(plansOf(frictionless(defaultProject()))),
  whole: () => engineTrial(plansOf(defaultProject())),
  // No catalogue: making it takes longer than the trials.
  cold: () => engineTrial([compileTrial(defaultProject(), openFans(defaultProject()))]),
  planck: () => {
    const trials = plansOf(frictionless(defaultProject())).map((plan) => new PlanckTrial(plan));
    return (n) =>
      trials[n % trials.length]?.run(SEED, Math.floor(n / trials.length)).delivered.filter(Boolean).length ??
      0;
  },
};

/** The first routine of each pattern: trial n is number n / (how many) of routine n mod (how many). */
function plansOf(project: Project): readonly TrialPlan[] {
  return firstOfEachPattern(generateRoutines(project)).map((routine) => compileTrial(project, routine));
}

function engineTrial(plans: readonly TrialPlan[]): SideTrial {
  return (n) => {
    const plan = plans[n % plans.length];
    const index = Math.floor(n / plans.length);
    return plan === undefined ? 0 : (runBatch(plan, SEED, index, index + 1).delivered[0] ?? 0);
  };
}

const COMPARED = ["engine", "planck", "whole"];

const side = SIDES[process.argv[2] ?? ""];
if (process.send !== undefined && side !== undefined) serveSide(side());

export async function bench(): Promise<readonly BenchRow[]> {
  const file = fileURLToPath(import.meta.url);
  const sides = COMPARED.map((name) => ({ name, process: new Side(file, name) }));
  const rates = emptySeries();
  const delivered = emptySeries();
  for (let round = -1; round < ROUNDS; round++) {
    for (const { name, process } of sides) {
      const from = round < 0 ? 0 : round * TRIALS;
      const to = from + TRIALS;
      const repeats = name === "planck" ? 1 : REPEATS;
      const answer = await process.ask({ from, to, repeats });
      if (round < 0) continue;
      rates[name]?.push(((to - from) * repeats) / answer.cpuS);
      delivered[name]?.push(...answer.delivered);
    }
  }
  for (const { process } of sides) process.close();
  const { engine = [], whole = [], planck = [] } = rates;
  const unit = "trials per second of one core";
  return [
    rowOf("engine", unit, engine),
    rowOf("planck at 1/240 s", unit, planck),
    rowOf(
      "engine over planck",
      "times",
      engine.map((rate, round) => rate / (planck[round] ?? Number.NaN)),
    ),
    agreement(delivered),
    rowOf("engine, with friction, the shelf and spread", unit, whole),
    rowOf(`engine, first ${COLD_TRIALS} trials from the start of the process`, "s", await coldStarts(file)),
  ];
}

function emptySeries(): Record<string, number[]> {
  return Object.fromEntries(COMPARED.map((name) => [name, []]));
}

/** The two must play the same game, or their speeds say nothing. */
function agreement({ engine = [], planck = [] }: Record<string, number[]>): BenchRow {
  const moments = new Moments();
  for (const [i, count] of engine.entries()) moments.add(count - (planck[i] ?? Number.NaN));
  const { mean, standardError } = moments;
  if (!(Math.abs(mean) < 4 * standardError)) throw new Error(`means differ by ${mean} ± ${standardError}`);
  return rowOf("balls delivered, engine less planck", `± ${standardError.toFixed(3)} a trial`, [mean]);
}

/** Processor time from nothing: node's own start, loading, and compiling while it runs. */
async function coldStarts(file: string): Promise<readonly number[]> {
  const seconds: number[] = [];
  for (let round = 0; round < COLD_ROUNDS; round++) {
    const fresh = new Side(file, "cold");
    const { startCpuS, cpuS } = await fresh.ask({ from: 0, to: COLD_TRIALS, repeats: 1 });
    fresh.close();
    seconds.push(startCpuS + cpuS);
  }
  return seconds;
}
