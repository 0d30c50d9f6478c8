import type { Project } from "../model/project.ts";
import type { Routine } from "../model/routine.ts";
import { carryLimits } from "../plan/carryLimits.ts";
import { carryLines } from "../report/carryWords.ts";
import { type ExampleRun, exampleCarryLines, exampleRows, exampleRun } from "../report/coder/exampleRun.ts";
import { listing } from "../report/coder/listing.ts";
import { type StepSheet, stepSheet } from "../report/coder/steps.ts";
import { stepCsv, stepJson, stepRows } from "../report/coder/stepTable.ts";
import { compileTrial } from "../trial/compile.ts";
import { recordTrial } from "../trial/run.ts";
import { routineIn } from "./findRoutine.ts";
import type { StepForm } from "./flags.ts";
import { FINE, print, printJson, reject } from "./output.ts";
import { loadProjectFile } from "./projectFile.ts";
import { tableText } from "./table.ts";

export interface StepsInput {
  readonly project: string | null;
  readonly routine: string;
  readonly form: StepForm;
  /** Which run is shown of a routine that decides as it goes. */
  readonly seed: number;
  readonly index: number;
  readonly json: boolean;
}

/** `wedgeward steps`. @returns the exit code */
export function stepsCommand(input: StepsInput): number {
  const parsed = loadProjectFile(input.project);
  if (!parsed.ok) return reject(input.project ?? "the default project", parsed.issues, input.json);
  const found = routineIn(parsed.value, input.routine, input.project);
  if (!found.ok) return reject("the command line", found.issues, input.json);
  const { project } = parsed.value;
  const sheet = stepSheet(project, found.value);
  const { form } = input;
  if (form === "json") printJson(jsonOf(input, project, found.value, sheet));
  else if (form === "table") print(tableOf(input, project, found.value, sheet));
  else print(form === "csv" ? stepCsv(sheet) : listing(sheet, form));
  return FINE;
}

function jsonOf({ seed, index }: StepsInput, project: Project, routine: Routine, sheet: StepSheet): object {
  const shown = shownRun(project, routine, seed, index);
  if (shown === null) return stepJson(sheet);
  const { run, home } = shown;
  const moves = run.steps.map(({ number, words, wheels, durationS }, i) => ({
    ...{ number, step: run.lines[i], words, wheels, durationS },
  }));
  return { ...stepJson(sheet), example: { seed, index, home, moves } };
}

function tableOf({ seed, index }: StepsInput, project: Project, routine: Routine, sheet: StepSheet): string {
  const shown = shownRun(project, routine, seed, index);
  const { moves } = routine;
  return [
    `${sheet.robot}, ${routine.id}: ${routine.label}`,
    sheet.start,
    "",
    tableText(stepRows(sheet), [true, false, true, true, true, true]),
    "",
    ...wheelLines(sheet),
    "",
    ...(shown === null
      ? carryLines(carryLimits(project, moves), moves)
      : runLines(project, shown, seed, index)),
  ].join("\n");
}

function wheelLines({ gain, durationS }: StepSheet): readonly string[] {
  const time =
    durationS === null ? "How long it takes its sensors decide." : `In all ${durationS.toFixed(1)} s.`;
  return [
    `${time} Both wheels turn ${gain.wheelDegPerMm.toFixed(3)}° for a millimetre; ${gain.wheelDegPerTurnDeg.toFixed(3)}° each for a degree of turn`,
    `(effective gauge ${gain.effectiveGaugeMm.toFixed(1)} mm). The wheel degrees make up for the mean drift in the project: once the robot`,
    "drives with them, set the means of its systematic drift to 0.",
    "Numbers are rounded for reading here; --as csv and the other forms have every digit.",
  ];
}

interface Shown {
  readonly run: ExampleRun;
  readonly home: number;
  readonly balls: number;
}

/** A run of a routine that decides; null for a list of moves, which is the same in every run. */
function shownRun(project: Project, routine: Routine, seed: number, index: number): Shown | null {
  if (routine.program === undefined) return null;
  const { outcome, recording } = recordTrial(compileTrial(project, routine), seed, index);
  const { delivered } = outcome;
  const home = delivered.filter(Boolean).length;
  return { run: exampleRun(project, routine.program, recording), home, balls: delivered.length };
}

function runLines(
  project: Project,
  { run, home, balls }: Shown,
  seed: number,
  index: number,
): readonly string[] {
  return [
    `An example, what it drove in run ${index} of seed ${seed} (${home} of ${balls} balls home; another run goes another way):`,
    "",
    tableText(exampleRows(run), [true, true, false, true, true, true, true]),
    "",
    ...exampleCarryLines(project, run),
  ];
}
