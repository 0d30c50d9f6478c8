import type { Workers } from "../jobs/catalogue.ts";
import { runRace } from "../jobs/race.ts";
import type { Project } from "../model/project.ts";
import type { Routine } from "../model/routine.ts";
import { figureWords } from "../report/objectiveWords.ts";
import type { Objective } from "../search/objective.ts";
import { planRace } from "../search/planRace.ts";
import type { Race } from "../search/race.ts";
import { type Standing, standingsOf } from "../search/standing.ts";
import { interruptSignal, STOPPED } from "./interrupt.ts";
import { FINE, print, printJson, reject } from "./output.ts";
import { type PlanResult, planJson } from "./planJson.ts";
import { PLAN_ROWS, planText } from "./planText.ts";
import { commandProgress, type Progress } from "./progress.ts";
import { loadProjectFile } from "./projectFile.ts";
import { withPool } from "./withPool.ts";

export interface PlanInput {
  readonly project: string | null;
  readonly trials: number;
  /** null: until the race is settled. */
  readonly seconds: number | null;
  readonly objective: Objective;
  readonly seed: number;
  readonly workers: number;
  readonly json: boolean;
}

/** `wedgeward plan`. @returns the exit code */
export async function planCommand(input: PlanInput, progress: Progress = commandProgress()): Promise<number> {
  const parsed = loadProjectFile(input.project);
  if (!parsed.ok) return reject(input.project ?? "the default project", parsed.issues, input.json);
  const { project, routines } = parsed.value;
  const result = await search(project, routines, input, progress).finally(() => progress.end());
  if (input.json) printJson(planJson(project, input, result));
  else print(planText(project, input, result));
  return result.isStopped ? STOPPED : FINE;
}

async function search(
  project: Project,
  own: readonly Routine[],
  input: PlanInput,
  progress: Progress,
): Promise<PlanResult> {
  const { seed, trials, seconds, workers, json, objective } = input;
  const signal = interruptSignal();
  const race = planRace({
    ...{ project, objective, seed, own },
    mostTrials: trials,
    // Where trials are the limit, every tie is worth its fresh ones.
    ...(seconds === null ? { mostTied: Number.POSITIVE_INFINITY } : {}),
  });
  return withPool(workers, async (pool) => {
    const onProgress = ({ doneFrac, totalTrials }: { doneFrac: number; totalTrials: number }): void =>
      progress.show(doneFrac, progressText(race, totalTrials));
    const status = await runRace(pool, race, { signal, seconds: seconds ?? undefined, onProgress });
    const standings = standingsOf(race);
    const shown = json ? standings : standings.slice(0, PLAN_ROWS);
    const isStopped = status === "stopped";
    const coverage = isStopped ? new Map() : await coverageFracs(pool, project, shown, signal);
    return { race, standings, coverage, isStopped: isStopped || signal.aborted };
  });
}

function progressText(race: Race, totalTrials: number): string {
  const { leader } = race;
  const { project, objective } = race.settings;
  const figure = leader?.figures?.figure;
  const sofar =
    leader && figure ? `; best so far ${leader.id}: ${figureWords(objective, figure, project)}` : "";
  return `${race.doneTrials} of about ${totalTrials} trials${sofar}`;
}

/** By id; without those that were not measured before the signal. */
async function coverageFracs(
  workers: Workers,
  project: Project,
  standings: readonly Standing[],
  signal: AbortSignal,
): Promise<ReadonlyMap<string, number>> {
  const fracs = new Map<string, number>();
  const measure = async ({ entrant: { id, routine } }: Standing): Promise<void> => {
    const { coverageFrac } = await workers.run(project, routine, { kind: "coverage" }, { signal });
    fracs.set(id, coverageFrac);
  };
  try {
    await Promise.all(standings.map(measure));
  } catch (reason) {
    if (!signal.aborted) throw reason;
  }
  return fracs;
}
