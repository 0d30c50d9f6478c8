import type { Bound } from "../geometry/arc.ts";
import { differenceOf, intersectionOf, type Region, regionAreaMm2, unionOf } from "../geometry/region.ts";
import type { Ring } from "../geometry/ring.kernel.ts";
import { ringsNear, sweepOf } from "../geometry/sweep.ts";
import { robotOutline } from "../model/outline.ts";
import type { Project } from "../model/project.ts";
import type { Routine } from "../model/routine.ts";
import type { CoursePiece } from "../motion/course.ts";
import { entryPose } from "../motion/entry.ts";
import type { Pose } from "../motion/pose.ts";
import { cos, sin } from "../num/elementary.ts";
import type { DriftBounds } from "./driftBounds.ts";
import {
  errorAfter,
  headingSize,
  isExact,
  largest,
  type PoseError,
  rangeOf,
  reach,
  sumOf,
} from "./poseError.ts";
import { pusherChains } from "./pusher.ts";
import { reachableFloor } from "./reachable.ts";
import { poseAlong } from "./sureFree.ts";
import { sureRun } from "./sureRun.ts";
import { type Stretch, type SureTrack, sureTrack, type TrackEnd } from "./sureTrack.ts";

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

/** Longest parts of a stretch that share one bound of the error. */
const PART_MM = 60;
const PART_RAD = 0.15;
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

type Chains = readonly (readonly number[])[];

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

/** A part of a stretch with the largest distance of any point of the pusher from its nominal place, mm. */
interface Part {
  readonly piece: Pick<CoursePiece, "kind" | "from" | "to" | "centreXMm" | "centreYMm" | "angleRad">;
  readonly errorMm: number;
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

function partsOf(track: SureTrack, chains: Chains, start: Pose): readonly Part[] {
  const parts = track.stretches.flatMap((stretch) => stretchParts(stretch, chains));
  if (parts.length > 0) return parts;
  const here = { kind: "line" as const, from: start, to: start, centreXMm: 0, centreYMm: 0, angleRad: 0 };
  return [{ piece: here, errorMm: chainShift(track.startError, chains, start, false) }];
}

function stretchParts(stretch: Stretch, chains: Chains): readonly Part[] {
  const { motion, lengthMm, move, piece, arrived } = stretch;
  const drivenMm = motion.sigma === 0 ? 0 : lengthMm;
  const turnRad = Math.abs(motion.kappa) * lengthMm;
  const count = Math.max(1, Math.ceil(drivenMm / PART_MM), Math.ceil(turnRad / PART_RAD));
  const stops = Array.from({ length: count + 1 }, (_, i) => {
    const q = (lengthMm * i) / count;
    const pose = poseAlong(stretch, q);
    const error = errorAfter(stretch.error, motion, move, q);
    return { pose, shift: chainShift(error, chains, pose, stretch.isLoose), error };
  });
  const between = bulge(stretch, chains, stops.at(-1)?.error ?? stretch.error, lengthMm / count);
  const parts = stops.slice(1).map(({ pose, shift }, i): Part => {
    const before = stops[i] ?? { pose, shift };
    return {
      piece: { ...piece, from: before.pose, to: pose, angleRad: piece.angleRad / count },
      errorMm: Math.max(before.shift, shift) + between,
    };
  });
  if (arrived === null) return parts;
  // Standing at the wall, after the touch, whenever that was.
  const end = { ...piece, kind: "line" as const, from: piece.to, angleRad: 0 };
  return [...parts, { piece: end, errorMm: chainShift(arrived, chains, piece.to, false) }];
}

/**
 * Largest distance of a pusher corner from its nominal place; of every point between two corners it is less.
 * @param isLoose the heading error may be anything from none to all, as after a touch nobody knows the moment of
 */
function chainShift(error: PoseError, chains: Chains, pose: Pose, isLoose: boolean): number {
  const c = cos(pose.headingRad);
  const s = sin(pose.headingRad);
  const tilt = headingSize(error);
  let most = 0;
  for (const chain of chains) {
    for (let i = 0; i + 1 < chain.length; i += 2) {
      const px = chain[i] ?? 0;
      const py = chain[i + 1] ?? 0;
      const farMm = Math.sqrt(px * px + py * py);
      // A corner at r moves by the error of the place and by φ·(left normal of r).
      const dx = largest(reach(error, 1, 0, -(s * px + c * py)));
      const dy = largest(reach(error, 0, 1, c * px - s * py));
      const apart = Math.sqrt(dx * dx + dy * dy) + (farMm * tilt * tilt) / 2;
      const place = isLoose ? placeShift(error) + farMm * tilt : 0;
      most = Math.max(most, apart, place);
    }
  }
  return most;
}

function placeShift(error: PoseError): number {
  const x = largest(reach(error, 1, 0, 0));
  const y = largest(reach(error, 0, 1, 0));
  return Math.sqrt(x * x + y * y);
}

/** How much more than at both ends the shift can be within a part: h²/8 times a bound on its second derivative by progress. */
function bulge({ motion, move }: Stretch, chains: Chains, error: PoseError, h: number): number {
  const { sigma, kappa } = motion;
  const farMm = Math.max(0, ...chains.flat().map(Math.abs)) * 1.4143;
  const turning = Math.abs(kappa);
  const scale = largest(rangeOf(move.scale));
  const rate = largest(rangeOf(sumOf([1, move.bend], [kappa, move.scale])));
  const tilt = headingSize(error) + rate * h;
  const place = sigma === 0 ? 0 : turning * (scale + tilt) + rate;
  const corner = farMm * (turning * turning * tilt + 2 * turning * rate);
  return ((place + corner) * h * h) / 8;
}
