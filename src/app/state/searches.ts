import type { FixList } from "../../jobs/fixes.ts";
import type { SensorWorth } from "../../jobs/sensorWorth.ts";
import type { Project } from "../../model/project.ts";
import type { Routine } from "../../model/routine.ts";
import { Finder } from "./finder.svelte.ts";
import type { Workers } from "./workers.ts";

// Both jobs are fetched when first needed: the page opens sooner without them.

/** Runs of the routine as it is and with each change: differences of about five in a hundred can be told. */
const FIX_TRIALS = 300;
/** Runs of each equipment: differences of about ten in a hundred can be told. */
const SENSOR_TRIALS = 100;

/** What to fix on the robot or in the routine. */
export type FixFinder = Finder<[project: Project, routine: Routine, seed: number], FixList>;

export function fixFinder(pool: Workers): FixFinder {
  return new Finder(async (course, project, routine, seed) => {
    const { findFixes } = await import("../../jobs/fixes.ts");
    const result = await findFixes(pool, project, routine, { seed, trials: FIX_TRIALS, ...course });
    return { result, status: result.status };
  });
}

/** What each sensor would be worth; rows of part of the runs are not shown. */
export type SensorFinder = Finder<[project: Project, seed: number], SensorWorth>;

export function sensorFinder(pool: Workers): SensorFinder {
  return new Finder(async (course, project, seed) => {
    const { worthOfSensors } = await import("../../jobs/sensorWorth.ts");
    const result = await worthOfSensors(pool, project, { seed, trials: SENSOR_TRIALS, ...course });
    return { result, status: "done" };
  });
}
