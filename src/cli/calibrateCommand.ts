import type { ProjectFile } from "../model/parse.ts";
import type { Project } from "../model/project.ts";
import { applyCalibration, type FieldChange } from "../practice/applyCalibration.ts";
import { type Calibration, calibrate } from "../practice/calibrate.ts";
import { readMeasurements } from "../practice/measurements.ts";
import { calibrationLines, warningWords } from "../report/calibrationWords.ts";
import { calibrationFigures } from "../report/decisionFigures.ts";
import { keptTexts as t } from "../texts/english/kept.ts";
import { type Keep, keepIssues, writeKept } from "./keepDecision.ts";
import { FINE, print, printJson, reject } from "./output.ts";
import { loadProjectFile, readText } from "./projectFile.ts";
import { tableText } from "./table.ts";

export interface CalibrateInput {
  /** The table of tests. */
  readonly file: string;
  readonly project: string | null;
  readonly json: boolean;
  readonly keep: Keep;
}

/** `wedgeward calibrate`. @returns the exit code */
export function calibrateCommand({ file, project: named, json, keep }: CalibrateInput): number {
  const parsed = loadProjectFile(named);
  if (!parsed.ok) return reject(named ?? "the default project", parsed.issues, json);
  const text = readText(file);
  const measured = text.ok ? readMeasurements(text.value) : text;
  if (!measured.ok) return reject(file, measured.issues, json);
  const wrong = keepIssues(keep, parsed.value);
  if (wrong.length > 0) return reject("the command line", wrong, json);
  const { project } = parsed.value;
  const found = calibrate(measured.value, project.robot.drive);
  const applied = applyCalibration(project, found);
  const { changes } = applied;
  if (text.ok) keepMeasured(keep, parsed.value, applied.project, found, text.value);
  if (json) {
    const { warnings, ...quantities } = found;
    printJson({ project: project.name, ...quantities, warnings: warnings.map(warningWords), changes });
  } else {
    const kept = keep.file === null ? [] : ["", t.written(keep.file)];
    print([calibrationText(project, found, changes), ...kept].join("\n"));
  }
  return FINE;
}

/** The project with the measured values in it, the table, and an entry of the notebook. */
function keepMeasured(
  keep: Keep,
  file: ProjectFile,
  project: Project,
  found: Calibration,
  table: string,
): void {
  // As on the page: what parts cells in a file's text is no tab.
  const measurements = table
    .replace(/^\uFEFF/, "")
    .replace(/\r\n?/g, "\n")
    .replaceAll("\t", ";");
  const inputs = { project: file.project, routines: [], measurements, seed: 0, trials: 0 };
  const decision = {
    kind: "calibration",
    title: t.measured,
    figures: calibrationFigures(found),
    inputs,
  } as const;
  writeKept(keep, file, decision, { project, record: { measurements } });
}

function calibrationText(project: Project, found: Calibration, changes: readonly FieldChange[]): string {
  const lines = calibrationLines(found);
  const rows = lines.map(({ what, value, range, count }) => [what, value, range, String(count)]);
  const errorMm = found.squareErrorMm;
  return [
    lines.length === 0
      ? "No test was made often enough to tell anything: make each at least three times."
      : tableText([["measured", "value", "likely between", "tests"], ...rows], [false, true, true, true]),
    "",
    ...lines.map(({ what, meaning }) => `${what}: ${meaning}`),
    ...(errorMm === null ? [] : [`After a square the robot ends ${errorMm.toFixed(0)} mm off on average.`]),
    ...found.warnings.map((warning) => `! ${warningWords(warning)}`),
    "",
    `In the project file (${project.name}) this changes`,
    ...(changes.length === 0 ? ["  nothing"] : changes.map(changeText)),
  ].join("\n");
}

function changeText({ path, from, to, allowed }: FieldChange): string {
  const before = Number(from.toPrecision(4));
  return `  ${path}: ${before} → ${to}${allowed ? "" : " (not possible: outside what a project may hold)"}`;
}
