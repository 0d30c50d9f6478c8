import type { Project } from "../model/project.ts";
import type { Routine } from "../model/routine.ts";
import { type LossCount, lossesByMove } from "../score/lossCounts.ts";
import { withPlacement } from "../search/variant.ts";
import type { Workers } from "./catalogue.ts";
import type { RatedPlacement } from "./hardPlacements.ts";
import type { JobOptions } from "./jobOptions.ts";

/** What becomes of the balls on the placement that is hardest for a routine. */
export interface HardCase extends RatedPlacement {
  /** Runs 0 … of the placement's seed, and the balls in them. */
  readonly trials: number;
  readonly balls: number;
  readonly losses: readonly LossCount[];
}

const TRIALS = 60;

/** Runs the hardest placement again and looks at each ball. Rejects when cancelled. */
export async function hardCaseOf(
  workers: Workers,
  project: Project,
  routine: Routine,
  worst: RatedPlacement,
  { signal, gate }: JobOptions,
): Promise<HardCase> {
  const laid = withPlacement(project, worst.placement);
  const task = { kind: "fates", seed: worst.seed, from: 0, to: TRIALS } as const;
  const fates = await workers.run(laid, routine, task, { signal, gate });
  const told = routine.program === undefined ? fates : { ...fates, lossMove: fates.lossLine };
  return { ...worst, trials: TRIALS, balls: TRIALS * fates.balls, losses: lossesByMove(told) };
}
