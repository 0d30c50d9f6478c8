import { stressTest } from "../jobs/stressTest.ts";
import { ballsOf, type Project } from "../model/project.ts";
import type { Routine } from "../model/routine.ts";
import { lossTitle } from "../report/lossWords.ts";
import { rangeWords, rateWords } from "../report/rateWords.ts";
import { samplingWords, spreadWords } from "../report/spreadWords.ts";
import { spreadEffect } from "../score/spreadEffect.ts";
import type { StressSummary } from "../score/stress.ts";
import { LOSS_REASONS } from "../trial/outcome.ts";
import { routineIn } from "./findRoutine.ts";
import { interruptSignal, STOPPED } from "./interrupt.ts";
import { FINE, print, printJson, reject } from "./output.ts";
import { commandProgress } from "./progress.ts";
import { loadProjectFile } from "./projectFile.ts";
import { tableText } from "./table.ts";
import { withPool } from "./withPool.ts";

export interface StressInput {
  readonly project: string | null;
  readonly routine: string;
  readonly trials: number;
  readonly seed: number;
  readonly workers: number;
  readonly json: boolean;
}

/** `wedgeward stress`. @returns the exit code */
export async function stressCommand(input: StressInput): Promise<number> {
  const parsed = loadProjectFile(input.project);
  if (!parsed.ok) return reject(input.project ?? "the default project", parsed.issues, input.json);
  const { project } = parsed.value;
  const found = routineIn(parsed.value, input.routine, input.project);
  if (!found.ok) return reject("the command line", found.issues, input.json);
  const routine = found.value;
  const { seed, trials, workers } = input;
  const signal = interruptSignal();
  const progress = commandProgress();
  const onProgress = (done: number): void => progress.show(done / trials, `${done} of ${trials} trials`);
  const { status, summary } = await withPool(workers, (pool) =>
    stressTest(pool, project, routine, { seed, trials, signal, onProgress }),
  ).finally(() => progress.end());
  const isStopped = status === "stopped";
  if (input.json) printJson(stressJson(input, summary, isStopped));
  else print(stressText(project, routine, input, summary, isStopped));
  return isStopped ? STOPPED : FINE;
}

function stressJson(input: StressInput, summary: StressSummary, isStopped: boolean): object {
  return {
    routine: input.routine,
    seed: input.seed,
    trials: summary.trials,
    workers: input.workers,
    ...(isStopped ? { stopped: true } : {}),
    successRate: summary.successRate,
    meanDelivered: summary.meanDelivered,
    deliveredCounts: summary.deliveredCounts,
    losses: summary.losses,
    spread: spreadEffect(input.seed, summary),
    hash: summary.hash,
  };
}

function stressText(
  project: Project,
  routine: Routine,
  { seed }: StressInput,
  summary: StressSummary,
  isStopped: boolean,
): string {
  const stopped = isStopped ? ["Stopped early; this is what was known by then."] : [];
  if (summary.trials === 0) return [...stopped, "No trial was finished."].join("\n");
  const balls = ballsOf(project).length;
  const counts = summary.deliveredCounts.map((runs, home) => [`${home} of ${balls}`, String(runs)]);
  const spread = spreadEffect(seed, summary);
  const lost = LOSS_REASONS.map((reason) => [lossTitle(reason), String(summary.losses[reason])]);
  return [
    ...stopped,
    `${project.name}, ${routine.id}: ${routine.label}`,
    `Every ball home in ${rateWords(summary.successRate)} (${rangeWords(summary.successRate)}); ${summary.trials} trials, seed ${seed}`,
    `On average ${summary.meanDelivered.toFixed(2)} of ${balls} balls.`,
    ...(spread === null ? [] : [samplingWords(spread), spreadWords(spread)]),
    "",
    tableText([["balls home", "runs"], ...counts], [false, true]),
    "",
    tableText([["why balls were lost", "balls"], ...lost], [false, true]),
    "",
    `Fingerprint ${summary.hash}: the same on every machine for the same project, routine, seed and trials.`,
  ].join("\n");
}
