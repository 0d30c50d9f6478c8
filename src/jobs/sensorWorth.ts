import { ballsOf, type Project } from "../model/project.ts";
import type { Routine } from "../model/routine.ts";
import { type Sensor, sideOf } from "../model/sensor.ts";
import { perfectRoutine } from "../plan/perfect.ts";
import { idOf, recipesOf } from "../plan/recipe.ts";
import { sensingIds } from "../plan/sensingPlan.ts";
import { usualSensors } from "../plan/usualSensors.ts";
import { bestOfEach } from "../score/bestOfEach.ts";
import { type Comparison, compareRoutines } from "../score/compare.ts";
import { rankRoutines } from "../score/ranking.ts";
import { type StressSummary, summarise } from "../score/stress.ts";
import { chunksOf } from "./chunks.ts";
import { inTurn } from "./inTurn.ts";
import type { JobOptions } from "./jobOptions.ts";
import type { Pool } from "./pool.ts";

/**
 * Routines are chosen by other trials than those that count, so that luck in choosing is not taken for worth: all blind ones by a few,
 * then a short list and those that sense by more.
 */
const LISTING_TRIALS = 40;
const SHORT_LIST = 8;
const LEAST_CHOOSING = 120;
const CHOOSING_SHARE = 0.5;

/** What the robot knows: nothing but its commands, one sensor, all of them, or everything. */
export type Equipment =
  | { readonly kind: "none" }
  | { readonly kind: "one"; readonly sensor: Sensor }
  | { readonly kind: "all" }
  | { readonly kind: "perfect" };

export interface SensorRow {
  readonly equipment: Equipment;
  /** Id of the routine that was chosen for it. */
  readonly routine: string;
  readonly summary: StressSummary;
  /** Against the robot without sensors, on the same placements with the same luck. */
  readonly worth: Comparison;
}

export interface SensorWorth {
  /** The robot's own sensors, or, where it has none, the usual ones. */
  readonly own: boolean;
  readonly rows: readonly SensorRow[];
}

export interface SensorWorthOptions extends JobOptions {
  readonly seed: number;
  readonly trials: number;
  readonly onProgress?: ((doneFrac: number, what: string) => void) | undefined;
}

/**
 * What each sensor is worth: for each equipment the routine that does best in other trials, run on the same placements.
 * Everything known is the upper bound: in each trial the best of fetching ball by ball without drift, of the push sequence for its
 * placement, and of what every other equipment did, so that knowing everything is never worth less than knowing something. Rejects
 * when stopped.
 */
export async function worthOfSensors(
  pool: Pick<Pool, "run">,
  project: Project,
  options: SensorWorthOptions,
): Promise<SensorWorth> {
  const { sensors } = project.robot;
  const fitted = sensors.length > 0 ? sensors : usualSensors(project);
  const bench = new Workbench(pool, options);
  const equipments: readonly Equipment[] = [
    { kind: "none" },
    ...fitted.map((sensor): Equipment => ({ kind: "one", sensor })),
    ...(fitted.length > 1 ? [{ kind: "all" } as const] : []),
  ];
  const tested: Omit<SensorRow, "worth">[] = [];
  for (const [i, equipment] of equipments.entries()) {
    options.onProgress?.((i + 1) / (equipments.length + 2), equipmentKey(equipment));
    const there = withSensors(project, sensorsOf(equipment, fitted));
    tested.push({ equipment, ...(await bench.best(there)) });
  }
  const blind = withSensors(project, []);
  const tests = [await bench.perfect(blind), ...tested.map((row) => row.summary)];
  options.onProgress?.((equipments.length + 1) / (equipments.length + 2), "perfect");
  const summary = bestOfEach(tests, [await bench.sequences(blind, bestOfEach(tests))]);
  tested.push({ equipment: { kind: "perfect" }, routine: perfectRoutine(project).id, summary });
  const none = tested[0]?.summary ?? summary;
  return {
    own: sensors.length > 0,
    rows: tested.map((row) => ({ ...row, worth: compareRoutines(row.summary, none) })),
  };
}

export function equipmentKey(equipment: Equipment): string {
  return equipment.kind === "one" ? equipment.sensor.name : equipment.kind;
}

function sensorsOf(equipment: Equipment, fitted: readonly Sensor[]): readonly Sensor[] {
  switch (equipment.kind) {
    case "one":
      return [equipment.sensor];
    case "all":
      return fitted;
    case "none":
    case "perfect":
      return [];
    default:
      return equipment satisfies never;
  }
}

function withSensors(project: Project, sensors: readonly Sensor[]): Project {
  return { ...project, robot: { ...project.robot, sensors } };
}

function count(home: readonly boolean[]): number {
  return home.filter(Boolean).length;
}

class Workbench {
  private readonly pool: Pick<Pool, "run">;
  private readonly options: SensorWorthOptions;
  private readonly choosing: number;
  private readonly shortLists = new Map<string, readonly string[]>();

  constructor(pool: Pick<Pool, "run">, options: SensorWorthOptions) {
    this.pool = pool;
    this.options = options;
    this.choosing = Math.max(LEAST_CHOOSING, Math.ceil(CHOOSING_SHARE * options.trials));
  }

  /** Ids of the blind routines that did best in the choosing trials; sensors that change nothing of how they are driven share a list. */
  private async shortList(project: Project): Promise<readonly string[]> {
    const { sensors } = project.robot;
    const steering = sensors.filter((sensor) => sensor.kind === "gyro" || sideOf(sensor) !== 0);
    const key = JSON.stringify(steering);
    const known = this.shortLists.get(key);
    if (known !== undefined) return known;
    const there = withSensors(project, steering);
    const routines = await this.make(there, recipesOf(there).map(idOf));
    const ranked = await this.rank(there, routines, LISTING_TRIALS);
    const list = ranked.slice(0, SHORT_LIST).map(({ id }) => id);
    this.shortLists.set(key, list);
    return list;
  }

  /** The best of the short list and of the routines that sense, on the trials that count. */
  async best(project: Project): Promise<{ routine: string; summary: StressSummary }> {
    const ids = [...(await this.shortList(project)), ...sensingIds(project)];
    const routines = await this.make(project, ids);
    const [best] = await this.rank(project, routines, this.choosing);
    if (best === undefined) throw new Error("no routine has room in this project");
    const { seed, trials } = this.options;
    return { routine: best.id, summary: await this.stress(project, best, seed, trials, "stress") };
  }

  perfect(project: Project): Promise<StressSummary> {
    const { seed, trials } = this.options;
    return this.stress(project, perfectRoutine(project), seed, trials, "all-known");
  }

  /** Balls that the best push sequence brings home in the trials in which others are left by `others`; 0 in the rest. */
  async sequences(project: Project, others: StressSummary): Promise<readonly number[]> {
    const { seed } = this.options;
    const all = ballsOf(project).length;
    const home: number[] = others.delivered.map(() => 0);
    const left = others.indices.flatMap((index, i) =>
      (others.delivered[i] ?? 0) < all ? [{ index, i }] : [],
    );
    await inTurn(left, async ({ index, i }) => {
      const run = await this.pool.run(project, null, { kind: "known-balls", seed, index }, this.run);
      home[i] = Math.max(count(run.still), count(run.outcome.delivered));
    });
    return home;
  }

  private async make(project: Project, ids: readonly string[]): Promise<readonly Routine[]> {
    if (ids.length === 0) return [];
    const made = await this.pool.run(project, null, { kind: "routines", ids }, this.run);
    return made.filter((routine) => routine !== null);
  }

  private async rank(
    project: Project,
    routines: readonly Routine[],
    trials: number,
  ): Promise<readonly Routine[]> {
    // Other trials than those that count: the next seed's.
    const seed = this.options.seed + 1;
    const entries = await Promise.all(
      routines.map(async (routine) => {
        const summary = await this.stress(project, routine, seed, trials, "stress");
        const { successRate, meanDelivered, meanTimeS } = summary;
        return { id: routine.id, routine, successRate, meanDelivered, durationS: meanTimeS };
      }),
    );
    return rankRoutines(entries, project.rules.timeLimitS).map(({ entry }) => entry.routine);
  }

  private async stress(
    project: Project,
    routine: Routine,
    seed: number,
    trials: number,
    kind: "stress" | "all-known",
  ): Promise<StressSummary> {
    const batches = await Promise.all(
      chunksOf(trials).map(({ from, to }) =>
        kind === "stress"
          ? this.pool.run(project, routine, { kind, seed, from, to }, this.run)
          : this.pool.run(project, routine, { kind, seed, from, to }, this.run),
      ),
    );
    return summarise(batches);
  }

  private get run(): JobOptions {
    const { signal, gate } = this.options;
    return { signal, gate };
  }
}
