import { comparePair } from "../../src/jobs/comparing.ts";
import { nodeThreads } from "../../src/jobs/nodeThreads.ts";
import { Pool } from "../../src/jobs/pool.ts";
import { runRace } from "../../src/jobs/race.ts";
import type { Routine } from "../../src/model/routine.ts";
import { EVERY_BALL } from "../../src/search/objective.ts";
import { planRace } from "../../src/search/planRace.ts";
import type { Race } from "../../src/search/race.ts";
import { defaultProject } from "./defaultProject.ts";
import { numberFlag } from "./flags.ts";
import { type BenchRow, rowOf } from "./row.ts";

const TRIALS = numberFlag("trials", 14_000);
const TIMES = numberFlag("times", 10);
const WORKERS = 2;
/** Each search has its own luck, so that the two are not alike for having seen the same placements. */
const SEEDS = { short: 1, long: 2 };
/** Both winners on trials that neither search has seen. */
const JUDGE_SEED = 77;
const JUDGE_TRIALS = 4000;

/**
 * What a short race finds on the default project, held against a search with ten times the trials; in points of a hundred
 * on fresh trials that both share. Both get trials instead of seconds, so that the load of the machine does not matter;
 * the time is the processors' own, of all workers together. The usual 14,000 are what two cores run in about ten seconds; `--trials=20000` makes both longer.
 */
export async function bench(): Promise<readonly BenchRow[]> {
  const project = defaultProject();
  const search = async (budgetTrials: number, seed: number): Promise<Search> => {
    const settings = { project, objective: EVERY_BALL, seed, mostTrials: 2000, own: [], budgetTrials };
    const race = planRace(settings);
    const pool = new Pool(nodeThreads(new URL("./worker.js", import.meta.url)), WORKERS);
    const before = process.cpuUsage();
    await runRace(pool, race);
    const { user, system } = process.cpuUsage(before);
    pool.close();
    if (!race.winner) throw new Error("a search without a winner");
    return { race, winner: race.winner.routine, cpuS: (user + system) / 1e6 };
  };
  const short = await search(TRIALS, SEEDS.short);
  const long = await search(TIMES * TRIALS, SEEDS.long);
  const pool = new Pool(nodeThreads(new URL("./worker.js", import.meta.url)), WORKERS);
  const sides = [
    { project, routine: short.winner },
    { project, routine: long.winner },
  ] as const;
  const { verdict } = await comparePair(pool, sides, { seed: JUDGE_SEED, trials: JUDGE_TRIALS });
  pool.close();
  const { both, onlyFirst, onlySecond, trials, successDifference } = verdict.comparison;
  return [
    ...rowsOf("the short race", short),
    ...rowsOf(`the one with ${TIMES} times the trials`, long),
    rowOf(`the short one's winner, ${short.winner.id}`, "of 100", [(100 * (both + onlyFirst)) / trials]),
    rowOf(`the long one's winner, ${long.winner.id}`, "of 100", [(100 * (both + onlySecond)) / trials]),
    rowOf("the short one is behind by", "points", [-100 * successDifference.value]),
    rowOf("at least", "points", [-100 * successDifference.high]),
    rowOf("at most", "points", [-100 * successDifference.low]),
  ];
}

interface Search {
  readonly race: Race;
  readonly winner: Routine;
  readonly cpuS: number;
}

function rowsOf(what: string, { race, cpuS }: Search): readonly BenchRow[] {
  return [
    rowOf(`${what}: trials`, "trials", [race.doneTrials]),
    rowOf(`${what}: routines in it`, "routines", [race.entrants.length]),
    rowOf(`${what}: time of all processors`, "s", [cpuS]),
  ];
}
