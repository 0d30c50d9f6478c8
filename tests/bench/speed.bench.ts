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
 * Two games: one routine of each pattern, which mostly keep a ball in hand, and single pushes toward the corner, in which
 * balls roll and rest most of the time.
 */

const SEED = 1;
const ROUNDS = 7;
const COLD_TRIALS = 1000;
const COLD_ROUNDS = 5;

const GAMES = {
  patterns: plansOfPatterns,
  pushes: (project: Project) => [compileTrial(project, openFans(project))],
};
type Game = keyof typeof GAMES;
const GAME_NAMES: readonly Game[] = ["patterns", "pushes"];

/** Trials of a round: three of each routine, if there are ten; of the one that pushes enough to tell whether the means agree. */
const TRIALS: Record<Game, number> = { patterns: 30, pushes: 150 };
/** The engine runs each round's trials this often, so that it, too, is timed for a second. */
const REPEATS = 40;

const SIDES: Record<string, () => SideTrial> = {
  "engine patterns": () => engineTrial(plansOf("patterns")),
  "engine pushes": () => engineTrial(plansOf("pushes")),
  "planck patterns": () => planckTrial(plansOf("patterns")),
  "planck pushes": () => planckTrial(plansOf("pushes")),
  whole: () => engineTrial(plansOfPatterns(defaultProject())),
  // No catalogue: making it takes longer than the trials.
  cold: () => engineTrial([compileTrial(defaultProject(), openFans(defaultProject()))]),
};

function plansOf(game: Game): readonly TrialPlan[] {
  return GAMES[game](frictionless(defaultProject()));
}

/** The first routine of each pattern: trial n is number n / (how many) of routine n mod (how many). */
function plansOfPatterns(project: Project): readonly TrialPlan[] {
  return firstOfEachPattern(generateRoutines(project)).map((routine) => compileTrial(project, routine));
}

function engineTrial(plans: readonly TrialPlan[]): SideTrial {
  return (n) => {
    const plan = plans[n % plans.length];
    const index = Math.floor(n / plans.length);
    return plan === undefined ? 0 : (runBatch(plan, SEED, index, index + 1).delivered[0] ?? 0);
  };
}

function planckTrial(plans: readonly TrialPlan[]): SideTrial {
  const trials = plans.map((plan) => new PlanckTrial(plan));
  return (n) => {
    const index = Math.floor(n / trials.length);
    return trials[n % trials.length]?.run(SEED, index).delivered.filter(Boolean).length ?? 0;
  };
}

const side = SIDES[process.argv[2] ?? ""];
if (process.send !== undefined && side !== undefined) serveSide(side());

/** What one side showed, round by round. */
class Shown {
  readonly process: Side;
  readonly trials: number;
  readonly repeats: number;
  readonly rates: number[] = [];
  readonly delivered: number[] = [];

  constructor(file: string, name: string, trials: number, repeats: number) {
    this.process = new Side(file, name);
    this.trials = trials;
    this.repeats = repeats;
  }

  /** @param round negative: to warm up */
  async play(round: number): Promise<void> {
    const { trials, repeats } = this;
    const from = round < 0 ? 0 : round * trials;
    const { cpuS, delivered } = await this.process.ask({ from, to: from + trials, repeats });
    if (round < 0) return;
    this.rates.push((trials * repeats) / cpuS);
    this.delivered.push(...delivered);
  }
}

export async function bench(): Promise<readonly BenchRow[]> {
  const file = fileURLToPath(import.meta.url);
  const games = GAME_NAMES.map((game) => ({
    game,
    engine: new Shown(file, `engine ${game}`, TRIALS[game], REPEATS),
    planck: new Shown(file, `planck ${game}`, TRIALS[game], 1),
  }));
  const whole = new Shown(file, "whole", TRIALS.patterns, REPEATS);
  const all = [...games.flatMap(({ engine, planck }) => [engine, planck]), whole];
  for (let round = -1; round < ROUNDS; round++) for (const shown of all) await shown.play(round);
  for (const { process } of all) process.close();
  return [
    ...games.flatMap(({ game, engine, planck }) => rowsOf(game, engine, planck)),
    rowOf("patterns: engine, with friction, the shelf and spread", UNIT, whole.rates),
    rowOf(`engine, first ${COLD_TRIALS} trials from the start of the process`, "s", await coldStarts(file)),
  ];
}

const UNIT = "trials per second of one core";

function rowsOf(game: Game, engine: Shown, planck: Shown): readonly BenchRow[] {
  const ratios = engine.rates.map((rate, round) => rate / (planck.rates[round] ?? Number.NaN));
  return [
    rowOf(`${game}: engine`, UNIT, engine.rates),
    rowOf(`${game}: planck at 1/240 s`, UNIT, planck.rates),
    rowOf(`${game}: engine over planck`, "times", ratios),
    agreement(game, engine.delivered, planck.delivered),
  ];
}

/** The two must play the same game, or their speeds say nothing. */
function agreement(game: Game, engine: readonly number[], planck: readonly number[]): BenchRow {
  const moments = new Moments();
  for (const [i, count] of engine.entries()) moments.add(count - (planck[i] ?? Number.NaN));
  const { mean, standardError } = moments;
  if (!(Math.abs(mean) < 4 * standardError))
    throw new Error(`${game}: means differ by ${mean} ± ${standardError}`);
  const unit = `± ${standardError.toFixed(3)} a trial`;
  return rowOf(`${game}: balls delivered, engine less planck`, unit, [mean]);
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
