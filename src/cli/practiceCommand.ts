import { writeFileSync } from "node:fs";
import type { Project } from "../model/project.ts";
import type { Routine } from "../model/routine.ts";
import { type Assessment, assess } from "../practice/assess.ts";
import { type DriftFit, fitDrift } from "../practice/driftFit.ts";
import { attemptsOf, type PracticeRun, readRuns, runTable } from "../practice/practiceRuns.ts";
import { practicePlacements } from "../practice/proposed.ts";
import type { Placement } from "../practice/testPlacements.ts";
import { kindWords } from "../report/placementWords.ts";
import { brierWords, daysWords, driftFitWords, updatedWords, verdictWords } from "../report/practiceWords.ts";
import { outOf100, rangeWords } from "../report/rateWords.ts";
import { routineIn } from "./findRoutine.ts";
import { newFileIssues } from "./newFile.ts";
import { FINE, print, printJson, reject } from "./output.ts";
import { loadProjectFile, readText } from "./projectFile.ts";
import { tableText } from "./table.ts";

export interface PracticeInput {
  readonly project: string | null;
  readonly routine: string;
  readonly placements: number;
  readonly seed: number;
  /** A table of runs that were made; null: placements are proposed. */
  readonly results: string | null;
  /** Where the table to fill in is written; null: nowhere. */
  readonly out: string | null;
  readonly json: boolean;
}

/** Simulated runs for each practice run, and for each drift that is tried on it. */
const RUNS = 300;
const FIT_RUNS = 60;

/** `wedgeward practice`: placements to practise on, or what the runs made say about the model. @returns the exit code */
export function practiceCommand(input: PracticeInput): number {
  const parsed = loadProjectFile(input.project);
  if (!parsed.ok) return reject(input.project ?? "the default project", parsed.issues, input.json);
  const found = routineIn(parsed.value, input.routine, input.project);
  if (!found.ok) return reject("the command line", found.issues, input.json);
  return input.results === null
    ? propose(input, parsed.value.project, found.value)
    : judge(input, input.results, parsed.value.project, found.value);
}

function propose(input: PracticeInput, project: Project, routine: Routine): number {
  const { even, hard } = practicePlacements(project, routine, input.placements, input.seed);
  const table = runTable([...even, ...hard]);
  if (input.out !== null) {
    const taken = newFileIssues(input.out);
    if (taken.length > 0) return reject("the command line", taken, input.json);
    writeFileSync(input.out, table);
  }
  if (input.json) printJson({ project: project.name, routine: routine.id, even, hard, table });
  else print(cardText(project, routine, even, hard, input.out));
  return FINE;
}

function cardText(
  project: Project,
  routine: Routine,
  even: readonly Placement[],
  hard: readonly Placement[],
  out: string | null,
): string {
  const placements = [...even, ...hard];
  const balls = placements[0]?.length ?? 0;
  const heads = Array.from({ length: balls }, (_, i) => `ball ${i + 1}`);
  const rows = placements.map((placement, i) => [
    `${i + 1}${i < even.length ? "" : " hard"}`,
    ...placement.map(({ xMm, yMm }) => `${xMm}, ${yMm}`),
    `__ of ${balls}`,
    "___ s",
    "________",
  ]);
  return [
    `${project.name}: ${placements.length} placements to practise ${routine.id}`,
    "Each place is the ball's middle: mm from the left wall, mm from the lower wall, seen from above as in the drawing.",
    ...kindLines(project),
    ...(hard.length > 0
      ? ["Those marked hard are the ones at which the routine did worst in simulated runs."]
      : []),
    "",
    tableText(
      [["run", ...heads, "home", "time", "what happened"], ...rows],
      [false, ...heads.map(() => true), true, true, false],
    ),
    "",
    out === null
      ? "--out FILE.csv writes the table to fill in; --results FILE.csv holds it against the model."
      : `The table to fill in is ${out}; hold it against the model with --results ${out}.`,
    "Fingers and hair away from moving tracks and arms; the event's rules and the venue's rules come first.",
  ].join("\n");
}

/** Which balls are of which kind, where there are several. */
function kindLines(project: Project): readonly string[] {
  const kinds = kindWords(project);
  return [...new Set(kinds)].map((kind) => {
    const balls = kinds.flatMap((each, ball) => (each === kind ? [ball + 1] : []));
    return `Ball ${balls.join(", ")}: ${kind}.`;
  });
}

function judge(input: PracticeInput, path: string, project: Project, routine: Routine): number {
  const text = readText(path);
  const read = text.ok ? readRuns(text.value, project) : text;
  if (!read.ok) return reject(path, read.issues, input.json);
  const runs = read.value;
  const assessment = assess(attemptsOf(project, routine, runs, { runs: RUNS, seed: input.seed }));
  const { verdict } = assessment;
  // Only a contradiction asks for an explanation.
  const fit =
    verdict === "worse" || verdict === "better"
      ? fitDrift(project, routine, runs, { runs: FIT_RUNS, seed: input.seed })
      : null;
  if (input.json) printJson({ project: project.name, routine: routine.id, runs, assessment, driftFit: fit });
  else print(judgementText(project, routine, runs, assessment, fit));
  return FINE;
}

function judgementText(
  project: Project,
  routine: Routine,
  runs: readonly PracticeRun[],
  assessment: Assessment,
  fit: DriftFit | null,
): string {
  const points = assessment.points.map(({ promised, observed }) => [
    `${outOf100(promised)} of 100`,
    `${outOf100(observed.value)} of 100`,
    rangeWords(observed),
    String(observed.trials),
  ]);
  return [
    `${project.name}, ${routine.id}: ${runs.length} practice runs against the model`,
    "",
    verdictWords(assessment),
    ...(fit === null ? [] : [driftFitWords(fit)]),
    ...(assessment.days === null ? [] : [daysWords(assessment.days)]),
    updatedWords(assessment),
    brierWords(assessment),
    ...(points.length > 1
      ? ["", tableText([["promised", "happened", "", "runs"], ...points], [true, true, false, true])]
      : []),
  ].join("\n");
}
