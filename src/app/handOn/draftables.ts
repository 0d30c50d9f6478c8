import type { FixList } from "../../jobs/fixes.ts";
import type { Project } from "../../model/project.ts";
import type { DecisionInputs, DecisionKind } from "../../model/record.ts";
import type { Routine } from "../../model/routine.ts";
import { calibrate } from "../../practice/calibrate.ts";
import { readMeasurements } from "../../practice/measurements.ts";
import { calibrationFigures, fixFigures } from "../../report/decisionFigures.ts";
import { keptTexts } from "../../texts/english/kept.ts";
import { notebookTexts as t } from "../../texts/english/notebook.ts";

/** Something a decision can be made from now. */
export interface Draftable {
  readonly id: string;
  /** As an entry of a list. */
  readonly words: string;
  readonly kind: DecisionKind;
  readonly title: string;
  readonly inputs: DecisionInputs;
  /** null: they have to be found out first. */
  readonly figures: readonly string[] | null;
}

interface Standing {
  readonly project: Project | null;
  readonly routine: Routine | null;
  /** In the order of their ranks. */
  readonly others: readonly Routine[];
  readonly measurements: string;
  readonly fixes: FixList | null;
  readonly seed: number;
}

/** Runs of both routines that a decision compares. */
const TRIALS = 1000;
/** Routines and changes offered. */
const OFFERED = 12;
/** A title's length in a file, and room for what stands around it. */
const TITLE_LENGTH = 180;

/** What can be written down as a decision: routines to compare, measurements, changes that were tried. */
export function draftables({
  project,
  routine,
  others,
  measurements,
  fixes,
  seed,
}: Standing): readonly Draftable[] {
  if (!project) return [];
  const found: Draftable[] = [];
  const read = measurements.trim() === "" ? null : readMeasurements(measurements);
  if (read?.ok) {
    found.push({
      ...{ id: "calibration", words: t.measurements, kind: "calibration" },
      title: keptTexts.measured,
      inputs: { project, routines: routine ? [routine] : [], measurements, seed, trials: 0 },
      figures: calibrationFigures(calibrate(read.value, project.robot.drive)),
    });
  }
  if (!routine) return found;
  for (const fix of fixes?.fixes.slice(0, OFFERED) ?? []) {
    if (!fixes) break;
    found.push({
      ...{ id: `fix ${fix.id}`, words: t.change(fix.title), kind: "fix", title: fix.title },
      inputs: {
        ...{ project, routines: [routine], change: fix.id, measurements: "" },
        ...{ seed, trials: fixes.trials },
      },
      figures: fixFigures(fix, fixes),
    });
  }
  for (const other of others.filter(({ id }) => id !== routine.id).slice(0, OFFERED)) {
    found.push({
      ...{ id: `other ${other.id}`, words: t.comparison(other.label), kind: "comparison" },
      title: keptTexts.keptRoutine(routine.label).slice(0, TITLE_LENGTH),
      inputs: { project, routines: [routine, other], measurements: "", seed, trials: TRIALS },
      figures: null,
    });
  }
  return found;
}
