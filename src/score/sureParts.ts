import type { CoursePiece } from "../motion/course.ts";
import type { Pose } from "../motion/pose.ts";
import { cos, sin } from "../num/elementary.ts";
import { errorAfter, headingSize, largest, type PoseError, rangeOf, reach, sumOf } from "./poseError.ts";
import { poseAlong } from "./sureFree.ts";
import type { Stretch, SureTrack } from "./sureTrack.ts";

/** Longest parts of a stretch that share one bound of the error. */
const PART_MM = 60;
const PART_RAD = 0.15;
/** Flat polylines in the robot's frame. */
export type Chains = readonly (readonly number[])[];

/** A part of a stretch with the largest distance of any point of the pusher from its nominal place, mm. */
export interface Part {
  readonly piece: Pick<CoursePiece, "kind" | "from" | "to" | "centreXMm" | "centreYMm" | "angleRad">;
  readonly errorMm: number;
}

/** The nominal path in parts, each with the largest error of any point of the pusher along it. */
export function partsOf(track: SureTrack, chains: Chains, start: Pose): readonly Part[] {
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
