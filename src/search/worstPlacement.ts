import { ballsOf, type Project } from "../model/project.ts";
import { startRegion } from "../model/startRegion.ts";
import type { PointMm } from "../model/zone.ts";
import { distanceToWedge } from "../model/zoneFrame.ts";
import { RandomStream } from "../num/stream.ts";
import type { TrialOutcome } from "../trial/outcome.ts";
import type { TrialPlan } from "../trial/plan.ts";
import { runTrial } from "../trial/run.ts";
import { crossEntropy } from "./crossEntropy.ts";

/** How much one run of the search does. */
export interface WorstEffort {
  readonly population: number;
  readonly generations: number;
}

export interface WorstRequest extends WorstEffort {
  readonly seed: number;
  /** Number of this run: others find other hills. */
  readonly restart: number;
  /** false: for a robot that does exactly what it is told; another run of the search. */
  readonly drifts: boolean;
}

/** A layout that is hard for a routine. */
export interface HardPlacement {
  readonly placement: readonly PointMm[];
  /** Mean of `lossScore` over its trials: 0 all home … twice the number of balls. */
  readonly score: number;
  /** Placements looked at. */
  readonly evaluations: number;
}

/** A loss is worse the farther from home the ball ends: 1 + distance from the wedge over the zone's diagonal, so that the search has a slope to follow between whole balls. */
export function lossScore(project: Project, outcome: TrialOutcome): number {
  const { zone } = project;
  const diagonal = Math.sqrt(zone.widthMm * zone.widthMm + zone.heightMm * zone.heightMm);
  let score = 0;
  for (const [ball, reason] of outcome.losses.entries()) {
    if (reason === null) continue;
    const end = outcome.endPositions[ball];
    const far = end === undefined ? 1 : Math.max(0, distanceToWedge(zone, end.xMm, end.yMm)) / diagonal;
    score += 1 + (reason === "rolled-out" ? 1 : Math.min(1, far));
  }
  return score;
}

/** Laid balls from numbers in [0, 1], two a ball, and back whether the rules of the layout allow them. Null for a fixed layout. */
export function placementSpace(project: Project): {
  readonly dimensions: number;
  readonly lay: (point: readonly number[]) => readonly PointMm[];
  readonly allows: (placement: readonly PointMm[]) => boolean;
} | null {
  const region = startRegion(project);
  if (region === undefined) return null;
  const radii = ballsOf(project).map((kind) => kind.diameterMm / 2);
  const { widthMm, heightMm } = project.zone;
  const lay = (point: readonly number[]): readonly PointMm[] =>
    radii.map((radius, i) => {
      const inset = radius + region.wallMarginMm;
      return {
        xMm: placeable(inset + (point[2 * i] ?? 0) * (widthMm - 2 * inset)),
        yMm: placeable(inset + (point[2 * i + 1] ?? 0) * (heightMm - 2 * inset)),
      };
    });
  const allows = (placement: readonly PointMm[]): boolean =>
    placement.every(({ xMm, yMm }, i) => {
      const radius = radii[i] ?? 0;
      if (!region.allows(xMm, yMm, radius)) return false;
      return placement.slice(0, i).every((other, j) => {
        const apart = radius + (radii[j] ?? 0) + region.spacingMm;
        const dx = other.xMm - xMm;
        const dy = other.yMm - yMm;
        return dx * dx + dy * dy >= apart * apart;
      });
    });
  return { dimensions: 2 * radii.length, lay, allows };
}

/** To hundredths of a millimetre, so that a layout can be written down and is the same run again. */
function placeable(mm: number): number {
  return Math.round(100 * mm) / 100;
}

/** Layouts to be scored go out, their mean losses come back in the same order. */
export type Laying = Generator<readonly (readonly PointMm[])[], HardPlacement | null, ArrayLike<number>>;

/**
 * One run of the search for a layout that a routine brings home worst: cross-entropy on `lossScore`; whoever runs the
 * generator scores the layouts of a generation (`meanLosses`). The score it reports is the one it was chosen by, and so too
 * bad with drift: score it again on fresh seeds.
 *
 * @returns null for a project whose layout is fixed
 */
export function* worstPlacement(
  project: Project,
  { seed, restart, drifts, population, generations }: WorstRequest,
): Laying {
  const space = placementSpace(project);
  if (space === null) return null;
  const search = crossEntropy(
    new RandomStream().open(seed, restart, drifts ? SEARCH_STREAM : SEARCH_STREAM + 1),
    {
      // The first run looks everywhere, the others begin around a layout of their own.
      ...(restart > 0 ? { startSd: START_SD } : {}),
      dimensions: space.dimensions,
      population,
      generations,
      accepts: (point) => space.allows(space.lay(point)),
    },
  );
  let step = search.next();
  while (!step.done) step = search.next(yield step.value.map(space.lay));
  const found = step.value;
  if (found === null) return null;
  return { placement: space.lay(found.point), score: found.score, evaluations: found.evaluations };
}

/** Half of the first layouts lie within a sixth of the zone of the one they begin around. */
const START_SD = 0.2;
/** Far from the streams that trials draw from (trial/streams). */
const SEARCH_STREAM = 3_000_000_000;

/** Mean of `lossScore` over the trials 0 … trials − 1 of each layout: all see the same drift. */
export function meanLosses(
  project: Project,
  plan: TrialPlan,
  placements: readonly (readonly PointMm[])[],
  seed: number,
  trials: number,
): Float64Array {
  return Float64Array.from(placements, (placement) => {
    const laid = { ...plan, placement };
    let sum = 0;
    for (let index = 0; index < trials; index++) sum += lossScore(project, runTrial(laid, seed, index));
    return sum / trials;
  });
}
