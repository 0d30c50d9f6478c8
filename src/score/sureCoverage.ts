import type { Bound } from "../geometry/arc.ts";
import { differenceOf, intersectionOf, type Region, regionAreaMm2, unionOf } from "../geometry/region.ts";
import type { Ring } from "../geometry/ring.kernel.ts";
import { ringsNear, sweepOf } from "../geometry/sweep.ts";
import { robotOutline } from "../model/outline.ts";
import type { Project } from "../model/project.ts";
import type { Routine } from "../model/routine.ts";
import { entryPose } from "../motion/entry.ts";
import type { Pose } from "../motion/pose.ts";
import type { DriftBounds } from "./driftBounds.ts";
import { isExact } from "./poseError.ts";
import { pusherChains } from "./pusher.ts";
import { reachableFloor } from "./reachable.ts";
import { type Chains, type Part, partsOf } from "./sureParts.ts";
import { sureRun } from "./sureRun.ts";
import { type SureTrack, sureTrack, type TrackEnd } from "./sureTrack.ts";

/** Sure coverage for balls of one size. The three regions make up the reachable floor. Flat rings, mm. */
export interface SizeSureCoverage {
  readonly diameterMm: number;
  readonly count: number;
  readonly reachableAreaMm2: number;
  /** Touched whatever the drift within the bounds. */
  readonly sure: Region;
  /** Touched with some drift, or nobody knows. */
  readonly perhaps: Region;
  /** Not touched with any drift within the bounds. */
  readonly never: Region;
  readonly sureFrac: number;
  readonly neverFrac: number;
}

export interface SureCoverage {
  /** Means over the balls, in [0, 1]. */
  readonly sureFrac: number;
  readonly neverFrac: number;
  readonly sizes: readonly SizeSureCoverage[];
  /** From this move on nothing is promised; null: the whole routine counts. */
  readonly endsAt: { readonly move: number; readonly reason: TrackEnd } | null;
}

/** Bounds of the error are rounded up to this share of the ball's radius: one sweep for many parts. */
const RADIUS_STEPS = 16;

/**
 * Which places of a ball's centre the pusher surely, perhaps and never touches while the drift stays within bounds. As for
 * coverageOf, a ball counts where it lies at the start, and how it is touched does not matter; with no drift at all the sure region
 * is the touched region of coverageOf.
 *
 * Two reasons make a place sure. It lies so near to the nominal sweep that the error at that moment cannot take the pusher away:
 * within the ball's radius less the error. Or a straight run passes it through the whole pusher (sureRun). A sure region is a
 * promise: it may be smaller than what is really sure, never larger.
 */
export function sureCoverage(
  project: Project,
  routine: Pick<Routine, "moves">,
  bounds: DriftBounds,
): SureCoverage {
  const track = sureTrack(project, routine.moves, bounds);
  const chains = pusherChains(robotOutline(project.robot));
  const counts = new Map<number, number>();
  for (const { kind, count } of project.balls) {
    counts.set(kind.diameterMm, (counts.get(kind.diameterMm) ?? 0) + count);
  }
  const sizes = [...counts]
    .sort(([a], [b]) => a - b)
    .map(([diameterMm, count]) => sizeOf(project, track, chains, diameterMm, count));
  const balls = sizes.reduce((sum, size) => sum + size.count, 0);
  const mean = (value: (size: SizeSureCoverage) => number): number =>
    balls === 0 ? 0 : sizes.reduce((sum, size) => sum + size.count * value(size), 0) / balls;
  return {
    sureFrac: mean((size) => size.sureFrac),
    neverFrac: mean((size) => size.neverFrac),
    sizes,
    endsAt: track.endsAt,
  };
}

function sizeOf(
  project: Project,
  track: SureTrack,
  chains: Chains,
  diameterMm: number,
  count: number,
): SizeSureCoverage {
  const { region, areaMm2 } = reachableFloor(project.zone, diameterMm / 2);
  const start = entryPose(project.zone, project.robot);
  const touched = unionOf([
    ...nearNominal(track, chains, start, diameterMm / 2),
    // Where the path is exact, what is near the nominal sweep says it all.
    ...track.stretches
      .filter((stretch) => !(isExact(stretch.error) && isExact(stretch.arrived ?? stretch.error)))
      .flatMap((stretch) => chains.flatMap((chain) => sureRun(stretch, chain, diameterMm / 2))),
  ]);
  const sure = intersectionOf(region, touched);
  const reached = track.endsAt === null ? possible(track, chains, start, diameterMm / 2) : null;
  // Where nobody knows what the robot does in the end, it may touch anything.
  const never = reached === null ? [] : differenceOf(region, reached);
  const share = (part: Region): number => (areaMm2 > 0 ? regionAreaMm2(part) / areaMm2 : 0);
  return {
    diameterMm,
    count,
    reachableAreaMm2: areaMm2,
    sure,
    perhaps: differenceOf(differenceOf(region, sure), never),
    never,
    sureFrac: share(sure),
    neverFrac: share(never),
  };
}

function nearNominal(track: SureTrack, chains: Chains, start: Pose, radiusMm: number): readonly Ring[] {
  const step = radiusMm / RADIUS_STEPS;
  const groups = new Map<number, Part["piece"][]>();
  for (const { piece, errorMm } of partsOf(track, chains, start)) {
    const left = radiusMm - Math.ceil(errorMm / step - 1e-9) * step;
    if (left > 0) groups.set(left, [...(groups.get(left) ?? []), piece]);
  }
  return ringsOf(groups, chains, start, "inside");
}

function possible(track: SureTrack, chains: Chains, start: Pose, radiusMm: number): readonly Ring[] {
  const step = radiusMm / 2;
  const groups = new Map<number, Part["piece"][]>();
  for (const { piece, errorMm } of partsOf(track, chains, start)) {
    const reachMm = radiusMm + (errorMm === 0 ? 0 : Math.ceil(errorMm / step) * step);
    groups.set(reachMm, [...(groups.get(reachMm) ?? []), piece]);
  }
  return ringsOf(groups, chains, start, "outside");
}

function ringsOf(
  groups: ReadonlyMap<number, readonly Part["piece"][]>,
  chains: Chains,
  start: Pose,
  bound: Bound,
): readonly Ring[] {
  return [...groups].flatMap(([radius, pieces]) => [
    ...ringsNear(sweepOf(chains, start, pieces), radius, bound),
  ]);
}
