import type { Program } from "../model/program.ts";
import type { Routine } from "../model/routine.ts";
import { programForFile } from "../model/serialiseProgram.ts";
import { carryLimits } from "../plan/carryLimits.ts";
import { carryLines } from "../report/carryWords.ts";
import { listing } from "../report/coder/listing.ts";
import { type StepSheet, stepSheet } from "../report/coder/steps.ts";
import { stepCsv, stepJson, stepRows } from "../report/coder/stepTable.ts";
import { programText } from "../report/programWords.ts";
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
  const { program } = found.value;
  if (program !== undefined) return printProgram(found.value, program, input);
  const sheet = stepSheet(parsed.value, found.value);
  const { moves } = found.value;
  if (input.form === "json") printJson(stepJson(sheet));
  else if (input.form !== "table") print(stepText(sheet, input.form));
  else {
    const carried = carryLines(carryLimits(parsed.value, moves), moves);
    print([stepText(sheet, input.form), "", ...carried].join("\n"));
  }
  return FINE;
}

/** A routine that decides by what it senses has no list of steps; its lines can be read, or taken over as JSON. */
function printProgram({ id, label }: Routine, program: Program, { form, json }: StepsInput): number {
  if (form === "json") {
    printJson({ routine: { id, label }, program: programForFile(program) });
    return FINE;
  }
  if (form === "table") {
    print(`${id}: ${label}\n\n${programText(program)}`);
    return FINE;
  }
  const message = "This routine decides by its sensors; it has no list of steps to write in this form.";
  const issue = { code: "no-list", path: "--as", message, got: form, expected: "table or json" };
  return reject("the command line", [issue], json);
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
