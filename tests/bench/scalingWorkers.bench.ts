import { nodeThreads } from "../../src/jobs/nodeThreads.ts";
import { Pool } from "../../src/jobs/pool.ts";
import { stressTest } from "../../src/jobs/stressTest.ts";
import { defaultProject } from "./defaultProject.ts";
import { firstRoutine } from "./firstOfEachPattern.ts";
import { numberFlag } from "./flags.ts";
import { type BenchRow, rowOf } from "./row.ts";

/** The same stress test by one worker and by two, on the clock: what a second core is worth when it is free. */

const SEED = 1;
const ROUNDS = 5;
const TRIALS = numberFlag("trials", 4000);

export async function bench(): Promise<readonly BenchRow[]> {
  const project = defaultProject();
  const routine = firstRoutine(project);
  const pools = [1, 2].map((size) => new Pool(nodeThreads(new URL("./worker.js", import.meta.url)), size));
  const rates: number[][] = pools.map(() => []);
  const ratesOfCore: number[][] = pools.map(() => []);
  const cores: number[][] = pools.map(() => []);
  const hashes = new Set<string>();
  for (let round = -1; round < ROUNDS; round++) {
    for (const [i, pool] of pools.entries()) {
      const cpu = process.cpuUsage();
      const start = performance.now();
      const { summary } = await stressTest(pool, project, routine, { seed: SEED, trials: TRIALS });
      const seconds = (performance.now() - start) / 1000;
      const { user, system } = process.cpuUsage(cpu);
      hashes.add(summary.hash);
      if (round < 0) continue;
      rates[i]?.push(TRIALS / seconds);
      ratesOfCore[i]?.push((TRIALS * 1e6) / (user + system));
      cores[i]?.push((user + system) / 1e6 / seconds);
    }
  }
  for (const pool of pools) pool.close();
  if (hashes.size !== 1) throw new Error(`the workers disagree: ${[...hashes].join(" ")}`);
  const [one = [], two = []] = rates;
  const [oneOfCore = [], twoOfCore = []] = ratesOfCore;
  return [
    rowOf("one worker", "trials per second", one),
    rowOf("two workers", "trials per second", two),
    rowOf("two over one", "times", quotients(two, one)),
    rowOf("two over one, per second that a core was had", "times", quotients(twoOfCore, oneOfCore)),
    rowOf("cores that one had", "of the machine's", cores[0] ?? []),
    rowOf("cores that two had", "of the machine's", cores[1] ?? []),
  ];
}

function quotients(above: readonly number[], below: readonly number[]): readonly number[] {
  return above.map((value, round) => value / (below[round] ?? Number.NaN));
}
