import { comparePair } from "../../src/jobs/comparing.ts";
import { nodeThreads } from "../../src/jobs/nodeThreads.ts";
import { Pool } from "../../src/jobs/pool.ts";
import { runRace } from "../../src/jobs/race.ts";
import { catalogueIds } from "../../src/plan/catalogue.ts";
import { entryOrder } from "../../src/search/entryOrder.ts";
import { EVERY_BALL } from "../../src/search/objective.ts";
import { Race } from "../../src/search/race.ts";
import { variedIds } from "../../src/search/variedIds.ts";
import { defaultProject } from "./defaultProject.ts";
import { numberFlag } from "./flags.ts";
import { type BenchRow, rowOf } from "./row.ts";

const SECONDS = numberFlag("seconds", 10);
const TIMES = 10;
const WORKERS = 2;
const SEED = 1;
/** Both winners on trials that neither search has seen. */
const JUDGE_SEED = 77;
const JUDGE_TRIALS = 4000;

/**
 * What `wedgeward plan --seconds 10` finds on the default project, held against a search with ten times the time; in
 * points of a hundred on fresh trials that both share. `--seconds=5` makes both shorter.
 */
export async function bench(): Promise<readonly BenchRow[]> {
  const project = defaultProject();
  const ids = catalogueIds(project);
  const moreIds = [...entryOrder(ids), ...entryOrder(variedIds(project, ids))];
  const search = async (seconds: number): Promise<Race> => {
    const settings = { project, objective: EVERY_BALL, seed: SEED, mostTrials: 2000, own: [], firstIds: [] };
    const race = new Race({ ...settings, moreIds });
    const pool = new Pool(nodeThreads(new URL("./worker.js", import.meta.url)), WORKERS);
    await runRace(pool, race, { seconds });
    pool.close();
    return race;
  };
  const start = performance.now();
  const short = await search(SECONDS);
  const took = (performance.now() - start) / 1000;
  const long = await search(TIMES * SECONDS);
  if (!short.winner || !long.winner) throw new Error("a search without a winner");
  const pool = new Pool(nodeThreads(new URL("./worker.js", import.meta.url)), WORKERS);
  const sides = [
    { project, routine: short.winner.routine },
    { project, routine: long.winner.routine },
  ] as const;
  const { verdict } = await comparePair(pool, sides, { seed: JUDGE_SEED, trials: JUDGE_TRIALS });
  pool.close();
  const { both, onlyFirst, onlySecond, trials, successDifference } = verdict.comparison;
  const behind = {
    value: -successDifference.value,
    low: -successDifference.high,
    high: -successDifference.low,
  };
  return [
    rowOf(`a race of ${SECONDS} s`, "s", [took]),
    rowOf("routines in it", "routines", [short.entrants.length]),
    rowOf("trials in it", "trials", [short.doneTrials]),
    rowOf(`routines in one of ${TIMES * SECONDS} s`, "routines", [long.entrants.length]),
    rowOf("trials in that", "trials", [long.doneTrials]),
    rowOf(`the short one's winner, ${short.winner.id}`, "of 100", [(100 * (both + onlyFirst)) / trials]),
    rowOf(`the long one's winner, ${long.winner.id}`, "of 100", [(100 * (both + onlySecond)) / trials]),
    rowOf("the short one is behind by", "points", [100 * behind.value]),
    rowOf("at least", "points", [100 * behind.low]),
    rowOf("at most", "points", [100 * behind.high]),
  ];
}
