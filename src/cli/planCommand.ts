import { catalogueInWorkers } from "../jobs/catalogue.ts";
import {
  type RankingEntry,
  type RankingProgress,
  type RankingResult,
  rankByStress,
} from "../jobs/ranking.ts";
import { ballsOf, type Project } from "../model/project.ts";
import { countWords } from "../report/lengthWords.ts";
import { rangeWords, rateWords } from "../report/rateWords.ts";
import { sensingVerdict } from "../report/sensorWords.ts";
import { compareRoutines } from "../score/compare.ts";
import type { Ranked } from "../score/ranking.ts";
import { interruptSignal, STOPPED } from "./interrupt.ts";
import { FINE, print, printJson, reject } from "./output.ts";
import { commandProgress, type Progress } from "./progress.ts";
import { loadProject } from "./projectFile.ts";
import { tableText } from "./table.ts";
import { withPool } from "./withPool.ts";

export interface PlanInput {
  readonly project: string | null;
  readonly trials: number;
  readonly seed: number;
  readonly workers: number;
  readonly json: boolean;
}

/** Rows printed; the rest is in the JSON. A terminal still shows the best one. */
const ROWS = 20;

/** `wedgeward plan`. @returns the exit code */
export async function planCommand(input: PlanInput, progress: Progress = commandProgress()): Promise<number> {
  const parsed = loadProject(input.project);
  if (!parsed.ok) return reject(input.project ?? "the default project", parsed.issues, input.json);
  const project = parsed.value;
  const result = await ranking(project, input, progress);
  const isStopped = result.status === "stopped";
  if (input.json) printJson(planJson(project, input, result));
  else print(planText(project, input, result));
  return isStopped ? STOPPED : FINE;
}

async function ranking(project: Project, input: PlanInput, progress: Progress): Promise<RankingResult> {
  const { seed, trials, workers } = input;
  const signal = interruptSignal();
  const onProgress = (state: RankingProgress): void => {
    progress.show(state.doneTrials / state.totalTrials, progressText(state));
  };
  try {
    return await withPool(workers, async (pool) => {
      const { routines } = await catalogueInWorkers(pool, project, { signal });
      return rankByStress(pool, project, routines, { seed, trials, signal, onProgress });
    });
  } catch (reason) {
    // Stopped before there was a routine to test.
    if (signal.aborted) return { status: "stopped", ranking: [] };
    throw reason;
  } finally {
    progress.end();
  }
}

function progressText({ doneTrials, totalTrials, ranking }: RankingProgress): string {
  const best = ranking()[0]?.entry;
  const sofar = best ? `; best so far ${best.id}: ${rateWords(best.successRate)}` : "";
  return `${doneTrials} of ${totalTrials} trials${sofar}`;
}

function planJson(project: Project, { seed, trials }: PlanInput, { status, ranking }: RankingResult): object {
  return {
    project: project.name,
    seed,
    trials,
    ...(status === "stopped" ? { stopped: true } : {}),
    routines: ranking.map(({ entry, fitsTime }) => ({
      id: entry.id,
      pattern: entry.routine.pattern,
      label: entry.routine.label,
      durationS: entry.durationS,
      fitsTime,
      coverageFrac: entry.coverageFrac,
      successRate: entry.successRate,
      meanDelivered: entry.meanDelivered,
      losses: entry.summary.losses,
    })),
  };
}

function planText(project: Project, { seed, trials }: PlanInput, { status, ranking }: RankingResult): string {
  const balls = ballsOf(project).length;
  const stopped = status === "stopped" ? "Stopped early; this is what was known by then.\n" : "";
  const best = ranking[0];
  if (!best) return `${stopped}No routine was tested.`;
  const each = status === "stopped" ? `up to ${trials}` : trials;
  const head = `${project.name}: ${countWords(ranking.length, "routine")}, ${each} trials each, seed ${seed}`;
  const rows = ranking.slice(0, ROWS).map((ranked) => rowOf(ranked, balls, project.rules.timeLimitS));
  const table = tableText(
    [["", "routine", "every ball home in", "", "balls", "time", "", "covered"], ...rows],
    [true, false, false, false, true, true, false, true],
  );
  const more = ranking.length > ROWS ? [`and ${ranking.length - ROWS} more; --json lists them all.`] : [];
  return [
    `${stopped}${head}`,
    "",
    table,
    ...more,
    "",
    ...tieText(ranking),
    ...labelText(best),
    ...verdictText(ranking),
  ].join("\n");
}

function rowOf(
  { entry, place, fitsTime }: Ranked<RankingEntry>,
  balls: number,
  limitS: number,
): readonly string[] {
  const { coverageFrac } = entry;
  return [
    `${place}`,
    entry.id,
    rateWords(entry.successRate),
    rangeWords(entry.successRate),
    `${entry.meanDelivered.toFixed(2)} of ${balls}`,
    `${Math.ceil(entry.durationS)} s`,
    fitsTime ? "" : `over the ${limitS} s`,
    coverageFrac === null ? "?" : `${Math.floor(100 * coverageFrac)} %`,
  ];
}

/** How many routines a paired test on the same trials does not tell from the best one. */
function tieText(ranking: readonly Ranked<RankingEntry>[]): readonly string[] {
  const [best, ...others] = ranking;
  if (!best || others.length === 0) return [];
  if (best.entry.successRate.value === 0) return ["No routine brought every ball home in any run."];
  const isTie = ({ entry }: Ranked<RankingEntry>): boolean =>
    compareRoutines(best.entry.summary, entry.summary).better === "alike";
  const ties = others.filter(isTie).length;
  if (ties === 0) return ["The first is better than every other, by paired tests on the same trials."];
  const who = ties === 1 ? "One other is" : `${ties} others are`;
  return [
    `${who} too close to the first to call, by paired tests on the same trials; more --trials tell more.`,
  ];
}

/** Whether looking pays, where the robot can look. */
function verdictText(ranking: readonly Ranked<RankingEntry>[]): readonly string[] {
  const entries = ranking.map(({ entry }) => entry);
  const verdict = sensingVerdict(
    entries.find(({ routine }) => routine.program !== undefined),
    entries.find(({ routine }) => routine.program === undefined),
  );
  return verdict === null ? [] : [verdict];
}

function labelText({ entry }: Ranked<RankingEntry>): readonly string[] {
  return [`Best: ${entry.id}: ${entry.routine.label}`];
}
