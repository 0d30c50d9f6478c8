import { setFlagsFromString } from "node:v8";
import { runInNewContext } from "node:vm";
import { compileTrial } from "../../src/trial/compile.ts";
import { runBatch } from "../../src/trial/run.ts";
import { defaultProject } from "./defaultProject.ts";
import { firstRoutine } from "./firstOfEachPattern.ts";
import { numberFlag } from "./flags.ts";
import { type BenchRow, rowOf } from "./row.ts";

/** Memory over a million trials, after collecting: it must not grow. `--trials=100000` for a shorter look. */

const SEED = 1;
const TRIALS = numberFlag("trials", 1_000_000);
const PARTS = 10;
const BATCH = 1000;

export async function bench(): Promise<readonly BenchRow[]> {
  setFlagsFromString("--expose-gc");
  const collect: () => void = runInNewContext("gc");
  const project = defaultProject();
  const plan = compileTrial(project, firstRoutine(project));
  const heaps: number[] = [];
  const residents: number[] = [];
  let sink = 0;
  for (let part = 1; part <= PARTS; part++) {
    const end = Math.round((TRIALS * part) / PARTS);
    for (let from = Math.round((TRIALS * (part - 1)) / PARTS); from < end; from += BATCH) {
      sink += runBatch(plan, SEED, from, Math.min(end, from + BATCH)).hashLow;
    }
    collect();
    const { heapUsed, rss } = process.memoryUsage();
    heaps.push(heapUsed / 2 ** 20);
    residents.push(rss / 2 ** 20);
  }
  if (!Number.isFinite(sink)) throw new Error("the batches have no hash");
  return [
    rowOf(`heap over ${TRIALS} trials`, "MiB", heaps),
    rowOf("heap at the end, more than after the first tenth", "MiB", [growth(heaps)]),
    rowOf("resident at the end, more than after the first tenth", "MiB", [growth(residents)]),
  ];
}

function growth(values: readonly number[]): number {
  return (values.at(-1) ?? 0) - (values[0] ?? 0);
}
