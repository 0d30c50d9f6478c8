import { equipmentKey, type SensorWorth, worthOfSensors } from "../jobs/sensorWorth.ts";
import type { Project } from "../model/project.ts";
import { ballsOf } from "../model/project.ts";
import { SENSOR_PRESET_SOURCE } from "../model/sensorPresets.ts";
import { rangeWords, rateWords } from "../report/rateWords.ts";
import { equipmentWords, worthWords } from "../report/sensorWords.ts";
import { interruptSignal, STOPPED } from "./interrupt.ts";
import { FINE, print, printJson, reject } from "./output.ts";
import { commandProgress } from "./progress.ts";
import { loadProject } from "./projectFile.ts";
import { tableText } from "./table.ts";
import { withPool } from "./withPool.ts";

export interface SensorsInput {
  readonly project: string | null;
  readonly trials: number;
  readonly seed: number;
  readonly workers: number;
  readonly json: boolean;
}

/** `wedgeward sensors`. @returns the exit code */
export async function sensorsCommand(input: SensorsInput): Promise<number> {
  const parsed = loadProject(input.project);
  if (!parsed.ok) return reject(input.project ?? "the default project", parsed.issues, input.json);
  const project = parsed.value;
  const { seed, trials, workers } = input;
  const signal = interruptSignal();
  const progress = commandProgress();
  const onProgress = (doneFrac: number, what: string): void => progress.show(doneFrac, what);
  try {
    const worth = await withPool(workers, (pool) =>
      worthOfSensors(pool, project, { seed, trials, signal, onProgress }),
    ).finally(() => progress.end());
    if (input.json) printJson(worthJson(project, input, worth));
    else print(worthText(project, input, worth));
    return FINE;
  } catch (reason) {
    if (!signal.aborted) throw reason;
    // Rows that are not of the same trials must not be set side by side.
    if (input.json) printJson({ project: project.name, stopped: true, rows: [] });
    else print("Stopped early; there is nothing to compare yet.");
    return STOPPED;
  }
}

function worthJson(project: Project, { seed, trials }: SensorsInput, { own, rows }: SensorWorth): object {
  return {
    project: project.name,
    seed,
    trials,
    sensors: own ? "own" : "usual",
    rows: rows.map(({ equipment, routine, summary, worth }) => ({
      equipment: equipmentKey(equipment),
      routine,
      successRate: summary.successRate,
      meanDelivered: summary.meanDelivered,
      successDifference: worth.successDifference,
      meanDeliveredDifference: worth.meanDeliveredDifference,
      meanDeliveredDifferenceSe: worth.meanDeliveredDifferenceSe,
      pValue: worth.pValue,
    })),
  };
}

function worthText(project: Project, { seed, trials }: SensorsInput, { own, rows }: SensorWorth): string {
  const balls = ballsOf(project).length;
  const lines = rows.map((row) => [
    equipmentWords(row.equipment),
    rateWords(row.summary.successRate),
    rangeWords(row.summary.successRate),
    `${row.summary.meanDelivered.toFixed(2)} of ${balls}`,
    worthWords(row),
    row.routine,
  ]);
  const whose = own
    ? "The robot's own sensors, one at a time and together."
    : `The robot has no sensor: these are usual ones, where such robots carry them (${SENSOR_PRESET_SOURCE}).`;
  return [
    `${project.name}: what a sensor is worth, ${trials} trials each on the same placements, seed ${seed}`,
    whose,
    "",
    tableText(
      [
        ["the robot has", "every ball home in", "", "balls", "against no sensor", "with the routine"],
        ...lines,
      ],
      [false, false, false, true, false, false],
    ),
    "",
    "Each row is run with the routine that did best in other trials. Everything known is the upper bound: in each run the best of",
    "what every other row did there and of what a robot does that knows every ball's place and, all along, its own: fetching ball",
    "by ball, and the best push sequence.",
  ].join("\n");
}
