import type { Pose } from "../motion/pose.ts";
import type { ConvexOutline } from "../motion/surroundings.ts";
import { cos, sin } from "../num/elementary.ts";
import { cornersAt, type Face, gapTo, gapToBox, outlineFor } from "./clearance.ts";
import {
  errorAfter,
  headingRange,
  headingSize,
  type Interval,
  largest,
  type PoseError,
  rangeOf,
  reach,
  type Symbols,
} from "./poseError.ts";
import type { Stretch, TrackSetting } from "./sureTrack.ts";

/** Nominal steps between two looks at the surroundings. */
const STEP_MM = 10;
const STEP_RAD = 0.05;
/** Kept beside rounding and the tolerance of a touch, mm. */
export const SPARE_MM = 0.02;
/** A face is along the path when it leans by less, rad. */
const ALONG_RAD = 1e-6;

/**
 * What a stretch may meet, whatever the drift. free: nothing; grazing: only faces that run along a straight path; blocked:
 * something else, or nobody knows.
 *
 * @param left faces the robot is meant to drive against, or drives off: not looked at here
 */
export function freeOrGrazing(
  { around, faces }: TrackSetting,
  stretch: Stretch,
  left: readonly (Face | null)[],
): "free" | "grazing" | "blocked" {
  let result: "free" | "grazing" = "free";
  const sight = sightAlong(stretch, around.whole.radius);
  for (const { pose, error } of sight.looks) {
    const shift = largestShift(error, around.whole.radius);
    const corners = cornersAt(around.whole, pose);
    for (const face of faces) {
      if (face.box !== null || left.includes(face)) continue;
      if (keepsOff(face, outlineFor(around, face), pose, error, sight.dipMm + SPARE_MM)) continue;
      if (!runsAlong(face, stretch) && !runsSquare(face, stretch)) return "blocked";
      result = "grazing";
    }
    for (const box of around.boxes) {
      if (
        left.some((face) => face?.box === box) ||
        gapToBox(box, corners) > shift + sight.halfStepMm + SPARE_MM
      )
        continue;
      const beside = faces.some(
        (side) =>
          side.box === box &&
          gapTo(side, corners) > -SPARE_MM &&
          (runsAlong(side, stretch) || runsSquare(side, stretch)) &&
          isWithin(side, corners, shift + sight.halfStepMm),
      );
      if (!beside) return "blocked";
      result = "grazing";
    }
  }
  return result;
}

interface Sight {
  readonly looks: readonly { readonly pose: Pose; readonly error: PoseError }[];
  /** How far a corner can come below the chord between two looks, mm: R·h²/8 on a circle, and as the errors bend. */
  readonly dipMm: number;
  /** How far any corner moves from the nearer of two looks, mm. */
  readonly halfStepMm: number;
}

/** Poses along a stretch close enough that nothing is missed between two. */
function sightAlong(stretch: Stretch, radius: number): Sight {
  const { motion, lengthMm, move, piece } = stretch;
  const drivenMm = motion.sigma === 0 ? 0 : lengthMm;
  const turnRad = Math.abs(motion.kappa) * lengthMm;
  const count = Math.max(1, Math.ceil(drivenMm / STEP_MM), Math.ceil(turnRad / STEP_RAD));
  const looks = Array.from({ length: count + 1 }, (_, i) => {
    const q = (lengthMm * i) / count;
    return { pose: poseAlong(stretch, q), error: errorAfter(stretch.error, motion, move, q) };
  });
  const h = turnRad / count;
  const step = drivenMm / count;
  const fromCentre = piece.kind === "line" ? 0 : radius + drivenMm / Math.max(turnRad, 1e-9);
  const bend = motion.sigma === 0 ? 0 : largest(rangeOf(move.bend));
  return {
    looks,
    // A tenth more for the errors, which turn with the corner.
    dipMm: (1.1 * fromCentre * h * h + bend * step * step) / 8,
    halfStepMm: (step + fromCentre * h) / 2,
  };
}

/** Nominal pose after progress q of a stretch. */
export function poseAlong({ piece, motion, lengthMm }: Stretch, q: number): Pose {
  const { from, to } = piece;
  if (lengthMm === 0) return from;
  const share = q / lengthMm;
  if (piece.kind === "line") {
    return {
      xMm: from.xMm + share * (to.xMm - from.xMm),
      yMm: from.yMm + share * (to.yMm - from.yMm),
      headingRad: from.headingRad,
    };
  }
  const angle = motion.kappa * q;
  const c = cos(angle);
  const s = sin(angle);
  const dx = from.xMm - piece.centreXMm;
  const dy = from.yMm - piece.centreYMm;
  return {
    xMm: piece.centreXMm + c * dx - s * dy,
    yMm: piece.centreYMm + s * dx + c * dy,
    headingRad: from.headingRad + angle,
  };
}

/** How far a corner within `radius` of the origin can be from its nominal place, mm. */
export function largestShift(error: PoseError, radius: number): number {
  const x = largest(reach(error, 1, 0, 0));
  const y = largest(reach(error, 0, 1, 0));
  return Math.sqrt(x * x + y * y) + radius * headingSize(error);
}

/**
 * Whether every corner surely stays off a face. Corner by corner, since an error of heading that brings one nearer takes another
 * away, and may go together with an error of place.
 */
function keepsOff(
  face: Face,
  outline: ConvexOutline,
  pose: Pose,
  error: PoseError,
  spareMm: number,
): boolean {
  const corners = cornersAt(outline, pose);
  const gap = gapTo(face, corners);
  // Far enough off for any corner.
  if (gap > towardFace(error, face, outline.radius) + spareMm) return true;
  const tilt = headingSize(error);
  const second = (outline.radius * tilt * tilt) / 2 + spareMm;
  for (let i = 0; i + 1 < corners.length; i += 2) {
    const x = corners[i] ?? 0;
    const y = corners[i + 1] ?? 0;
    // A corner at r moves by φ·(−r_y, r_x).
    const swing = face.ny * (x - pose.xMm) - face.nx * (y - pose.yMm);
    const nearer = reach(error, face.nx, face.ny, swing).low;
    if (face.nx * x + face.ny * y - face.offset + Math.min(0, nearer) <= second) return false;
  }
  return true;
}

/** How far any corner can be shifted toward a face. */
function towardFace(error: PoseError, face: { nx: number; ny: number }, radius: number): number {
  return Math.max(0, -reach(error, face.nx, face.ny, 0).low) + radius * headingSize(error);
}

function runsAlong(face: { nx: number; ny: number }, { piece, motion }: Stretch): boolean {
  if (piece.kind !== "line" || motion.sigma === 0) return false;
  return Math.abs(face.nx * cos(motion.headingRad) + face.ny * sin(motion.headingRad)) < ALONG_RAD;
}

/** Driving straight against the face, as near its end the robot may do by mistake: it is then held back, and turned square at the most. */
function runsSquare(face: { nx: number; ny: number }, { piece, motion }: Stretch): boolean {
  if (piece.kind !== "line" || motion.sigma === 0) return false;
  return motion.sigma * (face.nx * cos(motion.headingRad) + face.ny * sin(motion.headingRad)) < SQUARE_COS;
}

const SQUARE_COS = -1 + 1e-12;

/** Whether all corners stay within the face's ends. */
function isWithin(face: Face, corners: readonly number[], shift: number): boolean {
  for (let i = 0; i + 1 < corners.length; i += 2) {
    const along = -face.ny * (corners[i] ?? 0) + face.nx * (corners[i + 1] ?? 0);
    if (along - shift < face.from || along + shift > face.to) return false;
  }
  return true;
}

/**
 * The limits of several errors together, with all memory of where they come from gone, and with a heading that may just as well be the
 * nominal one: what is left after a contact that nobody knows the moment of.
 */
export function withoutMemory(symbols: Symbols, errors: readonly PoseError[]): PoseError {
  const fresh = (ranges: readonly Interval[], more = 0): readonly number[] => {
    const low = Math.min(...ranges.map((range) => range.low)) - more;
    const high = Math.max(...ranges.map((range) => range.high)) + more;
    return symbols.fresh((high - low) / 2, (high + low) / 2);
  };
  return {
    x: fresh(
      errors.map((error) => rangeOf(error.x, error.restMm)),
      SPARE_MM,
    ),
    y: fresh(
      errors.map((error) => rangeOf(error.y, error.restMm)),
      SPARE_MM,
    ),
    heading: fresh([{ low: 0, high: 0 }, ...errors.map(headingRange)]),
    restMm: 0,
    restRad: 0,
  };
}
