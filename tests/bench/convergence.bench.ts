import type { Project } from "../../src/model/project.ts";
import type { Routine } from "../../src/model/routine.ts";
import { Moments } from "../../src/num/moments.ts";
import { generateRoutines } from "../../src/plan/catalogue.ts";
import { compileTrial } from "../../src/trial/compile.ts";
import { LOSS_REASONS } from "../../src/trial/outcome.ts";
import { runBatch } from "../../src/trial/run.ts";
import { defaultProject } from "./defaultProject.ts";
import { firstOfEachPattern } from "./firstOfEachPattern.ts";
import { numberFlag } from "./flags.ts";
import { type BenchRow, rowOf } from "./row.ts";

/**
 * What the step for lasting contact does to the results, on the default project with everything on. Every step runs the
 * same trials as the finest, so that the differences are paired. The default step should be the coarsest whose bias is
 * below BIAS_BALLS.
 */

const SEED = 1;
const PER_SECOND = [15, 30, 60, 120, 240, 480, 960];
const FINEST_PER_SECOND = 1920;
const BIAS_BALLS = 0.005;
/** For the first routine of each pattern. */
const TRIALS = numberFlag("trials", 1000);

/** One trial's balls, in the order of WHAT. */
type Tally = readonly number[];
const WHAT = ["delivered", ...LOSS_REASONS];

export async function bench(): Promise<readonly BenchRow[]> {
  const project = defaultProject();
  const routines = firstOfEachPattern(generateRoutines(project));
  const finest = tallies(project, routines, FINEST_PER_SECOND);
  const biases = PER_SECOND.map((perSecond) => {
    const these = tallies(project, routines, perSecond);
    return { perSecond, bias: WHAT.map((_, k) => over(these, finest, k)) };
  });
  const rows = WHAT.flatMap((what, k) => {
    const shown = biases.filter(({ bias }) => bias[k]!.variance > 0);
    if (shown.length === 0) return [];
    return [
      row(`${what} at 1/${FINEST_PER_SECOND} s`, over(finest, null, k)),
      ...shown.map(({ perSecond, bias }) => row(`${what} at 1/${perSecond} s, more than that`, bias[k]!)),
    ];
  });
  return [
    ...rows,
    rowOf(`coarsest step with biases below ${BIAS_BALLS} balls`, "a second", [coarsest(biases)]),
  ];
}

/** The coarsest step from which on, through all finer ones, the bias of the mean stays small. */
function coarsest(biases: readonly { perSecond: number; bias: readonly Moments[] }[]): number {
  let good = FINEST_PER_SECOND;
  for (const { perSecond, bias } of [...biases].reverse()) {
    if (Math.abs(bias[0]!.mean) >= BIAS_BALLS) break;
    good = perSecond;
  }
  return good;
}

function tallies(project: Project, routines: readonly Routine[], perSecond: number): readonly Tally[] {
  const plans = routines.map((routine) => compileTrial(project, routine, { contactStepS: 1 / perSecond }));
  return plans.flatMap((plan) =>
    Array.from({ length: TRIALS }, (_, i) => {
      const { delivered, losses } = runBatch(plan, SEED, i, i + 1);
      return [delivered[0] ?? 0, ...losses];
    }),
  );
}

/** Mean and error of entry k, less the same of other tallies, trial by trial. */
function over(these: readonly Tally[], others: readonly Tally[] | null = null, k = 0): Moments {
  const moments = new Moments();
  for (const [i, tally] of these.entries()) moments.add((tally[k] ?? 0) - (others?.[i]?.[k] ?? 0));
  return moments;
}

function row(what: string, { mean, standardError }: Moments): BenchRow {
  return rowOf(what, `± ${(1000 * standardError).toFixed(1)} balls in 1,000 trials`, [1000 * mean]);
}
