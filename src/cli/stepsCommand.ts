import { listing } from "../report/coder/listing.ts";
import { type StepSheet, stepSheet } from "../report/coder/steps.ts";
import { stepCsv, stepJson, stepRows } from "../report/coder/stepTable.ts";
import { findRoutine } from "./findRoutine.ts";
import type { StepForm } from "./flags.ts";
import { FINE, print, printJson, reject } from "./output.ts";
import { loadProject } from "./projectFile.ts";
import { tableText } from "./table.ts";

export interface StepsInput {
  readonly project: string | null;
  readonly routine: string;
  readonly form: StepForm;
  readonly json: boolean;
}

/** `wedgeward steps`. @returns the exit code */
export function stepsCommand(input: StepsInput): number {
  const parsed = loadProject(input.project);
  if (!parsed.ok) return reject(input.project ?? "the default project", parsed.issues, input.json);
  const found = findRoutine(parsed.value, input.routine);
  if (!found.ok) return reject("the command line", found.issues, input.json);
  const sheet = stepSheet(parsed.value, found.value);
  if (input.form === "json") printJson(stepJson(sheet));
  else print(stepText(sheet, input.form));
  return FINE;
}

function stepText(sheet: StepSheet, form: Exclude<StepForm, "json">): string {
  switch (form) {
    case "table":
      return stepTable(sheet);
    case "csv":
      return stepCsv(sheet);
    case "python":
    case "c":
    case "pseudo":
      return listing(sheet, form);
    default:
      return form satisfies never;
  }
}

function stepTable(sheet: StepSheet): string {
  const { routine, robot, gain, durationS } = sheet;
  return [
    `${robot}, ${routine.id}: ${routine.label}`,
    "",
    tableText(stepRows(sheet), [true, false, true, true, true, true]),
    "",
    `In all ${durationS.toFixed(1)} s. Both wheels turn ${gain.wheelDegPerMm.toFixed(3)}° for a millimetre; ${gain.wheelDegPerTurnDeg.toFixed(3)}° each for a degree of turn`,
    `(effective gauge ${gain.effectiveGaugeMm.toFixed(1)} mm). The wheel degrees make up for the mean drift in the project: once the robot`,
    "drives with them, set the means of its systematic drift to 0.",
  ].join("\n");
}
