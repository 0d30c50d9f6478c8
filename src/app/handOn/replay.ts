import type { Decision } from "../../model/record.ts";
import { calibrate } from "../../practice/calibrate.ts";
import { readMeasurements } from "../../practice/measurements.ts";
import { calibrationFigures, fixFigures, pairFigures } from "../../report/decisionFigures.ts";
import { notebookTexts } from "../../texts/english/notebook.ts";
import type { Workers } from "../state/workers.ts";

/**
 * The figures of a decision, made again from what it carries along, whatever the project is now; null where it was stopped or its
 * inputs do not give them.
 */
export async function replayed(
  { kind, title, inputs }: Decision,
  workers: Workers,
  signal: AbortSignal,
  onProgress: (doneFrac: number) => void,
): Promise<readonly string[] | null> {
  const { project, otherProject = project, routines, change, measurements, seed, trials } = inputs;
  const [first, second] = routines;
  switch (kind) {
    case "calibration": {
      const read = readMeasurements(measurements);
      return read.ok ? calibrationFigures(calibrate(read.value, project.robot.drive)) : null;
    }
    case "comparison": {
      if (!first || !second) return null;
      const { comparePair } = await import("../../jobs/comparing.ts");
      const sides = [
        { project, routine: first },
        { project: otherProject, routine: second },
      ] as const;
      const options = { seed, trials, signal, onProgress: (done: number) => onProgress(done / (2 * trials)) };
      const { status, verdict } = await comparePair(workers, sides, options);
      if (status === "stopped") return null;
      return pairFigures(sides, verdict.comparison);
    }
    case "fix": {
      if (!first) return null;
      const { findFixes } = await import("../../jobs/fixes.ts");
      const list = await findFixes(workers, project, first, { seed, trials, signal, onProgress });
      if (list.status === "stopped") return null;
      const fix = list.fixes.find((each) =>
        change === undefined ? each.title === title : each.id === change,
      );
      if (!fix) throw new Error(notebookTexts.notFound);
      return fixFigures(fix, list);
    }
    default:
      return kind satisfies never;
  }
}
