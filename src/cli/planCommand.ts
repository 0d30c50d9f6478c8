import type { Workers } from "../jobs/catalogue.ts";
import { runRace } from "../jobs/race.ts";
import type { Project } from "../model/project.ts";
import { catalogueIds } from "../plan/catalogue.ts";
import { outOf100 } from "../report/rateWords.ts";
import { entryOrder } from "../search/entryOrder.ts";
import { EVERY_BALL } from "../search/objective.ts";
import { Race } from "../search/race.ts";
import { type Standing, standingsOf } from "../search/standing.ts";
import { variedIds } from "../search/variedIds.ts";
import { interruptSignal, STOPPED } from "./interrupt.ts";
import { FINE, print, printJson, reject } from "./output.ts";
import { type PlanResult, planJson } from "./planJson.ts";
import { PLAN_ROWS, planText } from "./planText.ts";
import { commandProgress, type Progress } from "./progress.ts";
import { loadProject } from "./projectFile.ts";
import { withPool } from "./withPool.ts";

/** With fewer trials each, more routines would only bring more luck into the choice. */
const WIDE_FROM_TRIALS = 200;

export interface PlanInput {
  readonly project: string | null;
  readonly trials: number;
  /** null: until the race is settled. */
  readonly seconds: number | null;
  readonly seed: number;
  readonly workers: number;
  readonly json: boolean;
}

/** `wedgeward plan`. @returns the exit code */
export async function planCommand(input: PlanInput, progress: Progress = commandProgress()): Promise<number> {
  const parsed = loadProject(input.project);
  if (!parsed.ok) return reject(input.project ?? "the default project", parsed.issues, input.json);
  const project = parsed.value;
  const result = await search(project, input, progress).finally(() => progress.end());
  if (input.json) printJson(planJson(project, input, result));
  else print(planText(project, input, result));
  return result.isStopped ? STOPPED : FINE;
}

async function search(project: Project, input: PlanInput, progress: Progress): Promise<PlanResult> {
  const { seed, trials, seconds, workers, json } = input;
  const signal = interruptSignal();
  const race = new Race({
    project,
    objective: EVERY_BALL,
    seed,
    mostTrials: trials,
    own: [],
    firstIds: [],
    moreIds: idsFor(project, input),
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

/** The catalogue's routines; in a search that can tell them apart also ones between and beside them. */
function idsFor(project: Project, { seconds, trials }: PlanInput): readonly string[] {
  const ids = catalogueIds(project);
  const isWide = seconds !== null || trials >= WIDE_FROM_TRIALS;
  return [...entryOrder(ids), ...(isWide ? entryOrder(variedIds(project, ids)) : [])];
}

function progressText(race: Race, totalTrials: number): string {
  const { leader } = race;
  const sofar = leader ? `; best so far ${leader.id}: ${outOf100(leader.mean)} of 100 runs` : "";
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
