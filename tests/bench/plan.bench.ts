import { nodeThreads } from "../../src/jobs/nodeThreads.ts";
import { Pool } from "../../src/jobs/pool.ts";
import { runRace } from "../../src/jobs/race.ts";
import { generateRoutines } from "../../src/plan/catalogue.ts";
import { coverageOf } from "../../src/score/coverage.ts";
import { EVERY_BALL } from "../../src/search/objective.ts";
import { planRace } from "../../src/search/planRace.ts";
import { defaultProject } from "./defaultProject.ts";
import { type BenchRow, rowOf, secondsOf } from "./row.ts";

const ROUNDS = 3;
const TRIALS = 300;
const SEED = 1;

/** What `wedgeward plan` does on the default project, worker start and warm-up included. */
export async function bench(): Promise<readonly BenchRow[]> {
  const project = defaultProject();
  const generate = rounds(() => secondsOf(() => generateRoutines(project)));
  const routines = generateRoutines(project);
  const cover = rounds(() =>
    secondsOf(() => {
      for (const routine of routines) coverageOf(project, routine);
    }),
  );
  const rows = [
    rowOf(`find ${routines.length} routines`, "s", generate),
    rowOf("measure their coverage, one core", "s", cover),
  ];
  for (const workers of [1, 2]) {
    const seconds: number[] = [];
    for (let round = 0; round < ROUNDS; round++) {
      const start = performance.now();
      const pool = new Pool(nodeThreads(new URL("./worker.js", import.meta.url)), workers);
      const race = planRace({ project, objective: EVERY_BALL, seed: SEED, mostTrials: TRIALS, own: [] });
      await runRace(pool, race);
      pool.close();
      if (race.winner === null) throw new Error("a race without a winner");
      seconds.push((performance.now() - start) / 1000);
    }
    rows.push(rowOf(`race them, up to ${TRIALS} trials each, ${workers} workers`, "s", seconds));
  }
  return rows;
}

function rounds(measure: () => number): readonly number[] {
  return Array.from({ length: ROUNDS }, measure);
}
