import { writeFileSync } from "node:fs";
import type { Pool } from "../jobs/pool.ts";
import { stressTest } from "../jobs/stressTest.ts";
import { findWeakness } from "../jobs/weakness.ts";
import type { Project } from "../model/project.ts";
import type { Routine } from "../model/routine.ts";
import { nominalCourse } from "../motion/course.ts";
import { generateRoutines } from "../plan/catalogue.ts";
import { moveWords } from "../report/moveWords.ts";
import { type Alternative, jurySheet } from "../report/sheet/jurySheet.ts";
import { findRoutine } from "./findRoutine.ts";
import { interruptSignal, STOPPED } from "./interrupt.ts";
import { newFileIssues } from "./newFile.ts";
import { FINE, print, printJson, reject } from "./output.ts";
import { commandProgress } from "./progress.ts";
import { loadProject } from "./projectFile.ts";
import { withPool } from "./withPool.ts";

export interface SheetInput {
  readonly project: string | null;
  readonly routine: string;
  readonly out: string;
  readonly trials: number;
  readonly seed: number;
  readonly workers: number;
  readonly json: boolean;
}

/** Share of the work that the alternatives are, roughly. */
const ALTERNATIVES_FRAC = 0.3;

/** `wedgeward sheet`: one file for the jury. @returns the exit code */
export async function sheetCommand(input: SheetInput): Promise<number> {
  const { seed, trials, workers, out, json } = input;
  const parsed = loadProject(input.project);
  if (!parsed.ok) return reject(input.project ?? "the default project", parsed.issues, json);
  const project = parsed.value;
  const found = findRoutine(project, input.routine);
  if (!found.ok) return reject("the command line", found.issues, json);
  const routine = found.value;
  if (routine.program !== undefined) return reject("the command line", [cannotShow(routine.id)], json);
  const taken = newFileIssues(out);
  if (taken.length > 0) return reject("the command line", taken, json);
  const signal = interruptSignal();
  const progress = commandProgress();
  const facts = await withPool(workers, async (pool) => {
    const options = { seed, trials, signal };
    const { summary, status } = await stressTest(pool, project, routine, options);
    if (status === "stopped") return null;
    const alternatives = await alternativesTo(pool, project, routine, options, (frac) =>
      progress.show(ALTERNATIVES_FRAC * frac, "other patterns on the same placements"),
    );
    if (alternatives === null) return null;
    const weakness = await findWeakness(pool, project, routine, {
      ...options,
      onProgress: (frac, what) =>
        progress.show(ALTERNATIVES_FRAC + (1 - ALTERNATIVES_FRAC) * frac, `last done: ${what}`),
    });
    const { failings } = weakness;
    return weakness.status === "stopped" || failings === null
      ? null
      : { summary, alternatives, weakness, failings };
  }).finally(() => progress.end());
  if (facts === null) {
    print("Stopped; no sheet was written.");
    return STOPPED;
  }
  const { summary, alternatives, weakness, failings } = facts;
  const { successRate, meanDelivered } = summary;
  writeFileSync(
    out,
    jurySheet({
      ...{ project, routine, seed, successRate, meanDelivered, weakness, failings, alternatives },
      durationS: nominalCourse(project, routine.moves).durationS,
      steps: routine.moves.map(moveWords),
      projectArgument: input.project ?? "",
    }),
  );
  if (json) printJson({ project: project.name, routine: routine.id, seed, trials, out, successRate });
  else print(`The sheet is ${out}. Open it in a browser; print it from there, on paper or as PDF.`);
  return FINE;
}

/** One routine of each other pattern, best first; null when stopped. */
async function alternativesTo(
  pool: Pool,
  project: Project,
  routine: Routine,
  options: { readonly seed: number; readonly trials: number; readonly signal: AbortSignal },
  onProgress: (doneFrac: number) => void,
): Promise<readonly Alternative[] | null> {
  const seen = new Set([routine.pattern]);
  const others = generateRoutines(project).filter(({ pattern, program }) => {
    if (program !== undefined || seen.has(pattern)) return false;
    seen.add(pattern);
    return true;
  });
  const found: Alternative[] = [];
  for (const [i, other] of others.entries()) {
    const { summary, status } = await stressTest(pool, project, other, options);
    if (status === "stopped") return null;
    const { durationS } = nominalCourse(project, other.moves);
    found.push({ label: other.label, successRate: summary.successRate, durationS });
    onProgress((i + 1) / others.length);
  }
  return found.sort((a, b) => b.successRate.value - a.successRate.value);
}

function cannotShow(id: string) {
  const message = "A routine that decides on the way has no one path to draw; choose one without sensors.";
  return {
    code: "no-path",
    path: "--routine",
    message,
    got: id,
    expected: "a routine that is a list of moves",
  };
}
