import { nodeThreads } from "../../src/jobs/nodeThreads.ts";
import { Pool } from "../../src/jobs/pool.ts";
import { rankByStress } from "../../src/jobs/ranking.ts";
import { generateRoutines } from "../../src/plan/catalogue.ts";
import { coverageOf } from "../../src/score/coverage.ts";
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
      const { ranking } = await rankByStress(pool, project, routines, { seed: SEED, trials: TRIALS });
      pool.close();
      if (ranking.length !== routines.length) throw new Error("a routine is missing");
      seconds.push((performance.now() - start) / 1000);
    }
    rows.push(rowOf(`rank them, ${TRIALS} trials each, ${workers} workers`, "s", seconds));
  }
  return rows;
}

function rounds(measure: () => number): readonly number[] {
  return Array.from({ length: ROUNDS }, measure);
}
