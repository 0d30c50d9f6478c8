import { writeFileSync } from "node:fs";
import { basename, isAbsolute } from "node:path";
import { type Evidence, gatherEvidence, timeOf } from "../jobs/evidence.ts";
import { type Judgement, judgePractice } from "../jobs/practising.ts";
import type { Parsed } from "../model/issue.ts";
import type { ProjectFile } from "../model/parse.ts";
import { ballsOf } from "../model/project.ts";
import type { Routine } from "../model/routine.ts";
import type { Outcome } from "../practice/driftFit.ts";
import { madeRuns } from "../practice/entries.ts";
import { readRuns } from "../practice/practiceRuns.ts";
import { jurySheet } from "../report/sheet/jurySheet.ts";
import type { SheetChoice } from "../report/sheet/sheetFacts.ts";
import { routineIn } from "./findRoutine.ts";
import { interruptSignal, STOPPED } from "./interrupt.ts";
import { newFileIssues } from "./newFile.ts";
import { FINE, print, printJson, reject } from "./output.ts";
import { commandProgress } from "./progress.ts";
import { loadProjectFile, readText } from "./projectFile.ts";
import { withPool } from "./withPool.ts";

export interface SheetInput {
  readonly project: string | null;
  readonly routine: string;
  readonly out: string;
  readonly choice: SheetChoice;
  /** A table of practice runs; null: those of the project's file. */
  readonly results: string | null;
  readonly trials: number;
  readonly seed: number;
  readonly workers: number;
  readonly json: boolean;
}

/** Share of the work that the evidence is; the rest are the practice runs. */
const EVIDENCE_FRAC = 0.9;

/** `wedgeward sheet`: gathers all that speaks for a routine and writes it down for the jury. @returns the exit code */
export async function sheetCommand(input: SheetInput): Promise<number> {
  const { seed, trials, out, json } = input;
  const parsed = loadProjectFile(input.project);
  if (!parsed.ok) return reject(input.project ?? "the default project", parsed.issues, json);
  const { project, record } = parsed.value;
  const found = routineIn(parsed.value, input.routine, input.project);
  if (!found.ok) return reject("the command line", found.issues, json);
  const routine = found.value;
  const taken = newFileIssues(out);
  if (taken.length > 0) return reject("the command line", taken, json);
  const made = outcomesOf(input, parsed.value, routine);
  if (!made.ok) return reject(input.results ?? "", made.issues, json);
  const facts = await gathered(input, parsed.value, routine, made.value);
  if (facts === null) {
    print("Stopped; no sheet was written.");
    return STOPPED;
  }
  const { evidence, practice } = facts;
  const durationS = timeOf(project, routine, evidence.summary);
  const { decisions } = record;
  writeFileSync(
    out,
    jurySheet(
      {
        ...{ project, routine, seed, durationS, evidence, practice, decisions },
        projectArgument: shownFile(input.project ?? ""),
      },
      input.choice,
    ),
  );
  const { successRate } = evidence.summary;
  if (json) printJson({ project: project.name, routine: routine.id, seed, trials, out, successRate });
  else print(`The sheet is ${out}. Open it in a browser; print it from there, on paper or as PDF.`);
  return FINE;
}

function outcomesOf(
  { results }: SheetInput,
  { project, record }: ProjectFile,
  { id }: Routine,
): Parsed<readonly Outcome[]> {
  if (results === null) return { ok: true, value: madeRuns(record.practice, id, ballsOf(project).length) };
  const text = readText(results);
  return text.ok ? readRuns(text.value, project) : text;
}

/** A file as the sheet names it: whole paths hold what is nobody's business on paper, such as a user's name. */
function shownFile(file: string): string {
  return isAbsolute(file) ? basename(file) : file;
}

/** null when stopped. */
async function gathered(
  { seed, trials, workers }: SheetInput,
  { project }: ProjectFile,
  routine: Routine,
  outcomes: readonly Outcome[],
): Promise<{ readonly evidence: Evidence; readonly practice: Judgement | null } | null> {
  const signal = interruptSignal();
  const progress = commandProgress();
  return withPool(workers, async (pool) => {
    const evidence = await gatherEvidence(pool, project, routine, {
      ...{ seed, trials, signal },
      onProgress: (frac, what) => progress.show(EVIDENCE_FRAC * frac, `last done: ${what}`),
    });
    if (evidence === null) return null;
    if (outcomes.length === 0) return { evidence, practice: null };
    const practice = await judgePractice(pool, project, routine, outcomes, {
      ...{ seed, signal },
      onProgress: (frac) => progress.show(EVIDENCE_FRAC + (1 - EVIDENCE_FRAC) * frac, "practice runs"),
    }).catch((reason: unknown) => {
      if (signal.aborted) return null;
      throw reason;
    });
    return practice === null ? null : { evidence, practice };
  }).finally(() => progress.end());
}
