import type { Project } from "../model/project.ts";
import type { Routine } from "../model/routine.ts";
import { compileTrial } from "../trial/compile.ts";
import { runTrial } from "../trial/run.ts";
import type { Placement } from "./testPlacements.ts";

/** What the model promises for one placement. */
export interface Promised {
  /** Simulated runs in which so many balls came home, from 0 to all. */
  readonly homeCounts: readonly number[];
  readonly runs: number;
}

/** Runs a routine on one placement, each time with other drift and other values of what nobody measured. */
export function promiseOf(
  project: Project,
  routine: Routine,
  placement: Placement,
  options: { readonly runs: number; readonly seed: number },
): Promised {
  const plan = compileTrial(project, routine, { placement });
  const homeCounts = Array.from({ length: plan.kinds.length + 1 }, () => 0);
  for (let index = 0; index < options.runs; index++) {
    const home = runTrial(plan, options.seed, index).delivered.filter(Boolean).length;
    homeCounts[home] = (homeCounts[home] ?? 0) + 1;
  }
  return { homeCounts, runs: options.runs };
}

/** Probability that so many come home, never quite 0 or 1: as if half a run more had shown each number of balls (Jeffreys). */
export function chanceOf({ homeCounts, runs }: Promised, home: number): number {
  return ((homeCounts[home] ?? 0) + 0.5) / (runs + 0.5 * homeCounts.length);
}

/** Probability that every ball comes home. */
export function successChance(promised: Promised): number {
  return chanceOf(promised, promised.homeCounts.length - 1);
}

/** The placements among the first `tried` drawn ones on which fewest balls come home, worst first; of equals, the first drawn. */
export function worstDrawn(
  project: Project,
  routine: Routine,
  options: { readonly tried: number; readonly seed: number; readonly count: number },
): readonly Placement[] {
  const plan = compileTrial(project, routine);
  const runs = Array.from({ length: options.tried }, (_, index) => runTrial(plan, options.seed, index));
  return worstOf(
    runs.map(({ placement, delivered }) => ({ placement, home: delivered.filter(Boolean).length })),
    options.count,
  );
}

/** The placements of drawn runs on which fewest balls came home, on whole mm. */
export function worstOf(
  runs: readonly { readonly placement: Placement; readonly home: number }[],
  count: number,
): readonly Placement[] {
  return [...runs]
    .sort((a, b) => a.home - b.home)
    .slice(0, count)
    .map(({ placement }) =>
      placement.map(({ xMm, yMm }) => ({ xMm: Math.round(xMm), yMm: Math.round(yMm) })),
    );
}
