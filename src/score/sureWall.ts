import type { Move } from "../model/routine.ts";
import { moveLength } from "../motion/duration.ts";
import type { ConvexOutline } from "../motion/surroundings.ts";
import { cos, sin } from "../num/elementary.ts";
import { cornersAt, type Face, outlineFor } from "./clearance.ts";
import {
  errorAfter,
  headingSize,
  largest,
  type PoseError,
  rangeOf,
  reach,
  type Symbols,
  sumOf,
} from "./poseError.ts";
import { freeOrGrazing, largestShift, SPARE_MM, withoutMemory } from "./sureFree.ts";
import type { Followed, Stretch, TrackEnd, TrackSetting } from "./sureTrack.ts";

/** A corner this near to a face lies on it, mm: the tolerance of a touch and a rounding. */
const ON_FACE_MM = 0.01;
/** A path is square to a face when its sine is smaller. */
const SQUARE_SIN = 1e-6;
/** Lever arms below this never turn the robot, mm (motion/path). */
const LEAST_LEVER_MM = 1;

/**
 * A drive to a wall: whether it is reached whatever the drift, and what is left of the error then. Flush on the face for
 * sure, heading and distance from it are exact; if it is only sure that the robot is pressed against it, both are within what
 * a crooked stop allows.
 *
 * @param behind the face it drives off, if any
 */
export function arrival(
  setting: TrackSetting,
  stretch: Stretch,
  command: Move,
  behind: Face | null,
): Followed | TrackEnd {
  const met = faceMet(setting, stretch);
  if (met === null) return "slanting-stop";
  const { motion, move, error, lengthMm } = stretch;
  const scale = rangeOf(move.scale);
  const mostMm = moveLength(command) * (1 + Math.max(0, scale.high));
  const atTouch = errorAfter(error, motion, move, lengthMm);
  const tilt = Math.max(headingSize(error), headingSize(errorAfter(error, motion, move, mostMm)));
  if (!(tilt < 1)) return "may-not-reach";
  const { nx, ny } = met.face;
  // Every millimetre driven brings the origin cos(tilt) nearer, before the touch and while the robot squares up.
  const neededMm = (lengthMm + Math.max(0, reach(error, nx, ny, 0).high)) / (1 - (tilt * tilt) / 2);
  if (neededMm + SPARE_MM > moveLength(command) * (1 + scale.low)) return "may-not-reach";
  const beside = freeOrGrazing(setting, stretch, [met.face, behind]);
  if (beside === "blocked" || !isOnFace(setting, stretch, met, atTouch)) return "may-hit";
  if (beside === "free" && squaresUp(setting, met, tilt)) {
    const arrived = flushError(met, error, atTouch, tilt);
    return { stretches: [{ ...stretch, isLoose: true, arrived }], error: arrived, leaning: met.face };
  }
  const loose = beside === "free" ? error : withoutMemory(setting.symbols, [error]);
  const arrived = pressedError(setting.symbols, met, errorAfter(loose, motion, move, lengthMm), tilt);
  return {
    stretches: [{ ...stretch, error: loose, isLoose: true, arrived }],
    error: arrived,
    leaning: met.face,
  };
}

interface Met {
  readonly face: Face;
  readonly outline: ConvexOutline;
  /** Corners of the outline on the face: ahead of the origin, and to the left of the way driven, mm. */
  readonly on: readonly { readonly aheadMm: number; readonly leftMm: number }[];
  readonly others: readonly { readonly aheadMm: number; readonly leftMm: number }[];
}

/** The one face that the nominal path ends flush on, driving square against it; null if there is none such. */
function faceMet({ around, faces }: TrackSetting, { piece, motion }: Stretch): Met | null {
  if (piece.kind !== "line") return null;
  const dx = motion.sigma * cos(motion.headingRad);
  const dy = motion.sigma * sin(motion.headingRad);
  for (const face of faces) {
    if (Math.abs(face.nx * dy - face.ny * dx) > SQUARE_SIN || face.nx * dx + face.ny * dy > 0) continue;
    const outline = outlineFor(around, face);
    const flat = cornersAt(outline, piece.to);
    const on: Met["on"][number][] = [];
    const others: Met["on"][number][] = [];
    let along = true;
    for (let i = 0; i < outline.count; i++) {
      const x = flat[2 * i] ?? 0;
      const y = flat[2 * i + 1] ?? 0;
      const corner = {
        aheadMm: motion.sigma * (outline.x[i] ?? 0),
        leftMm: motion.sigma * (outline.y[i] ?? 0),
      };
      const isOn = Math.abs(face.nx * x + face.ny * y - face.offset) < ON_FACE_MM;
      (isOn ? on : others).push(corner);
      const t = -face.ny * x + face.nx * y;
      if (isOn && (t < face.from || t > face.to)) along = false;
    }
    if (on.length >= 2 && along) return { face, outline, on, others };
  }
  return null;
}

/** Whether the corners that touch stay within the face's ends. */
function isOnFace(
  setting: TrackSetting,
  { piece }: Stretch,
  { face, outline }: Met,
  error: PoseError,
): boolean {
  if (face.box === null) return true;
  const shift = largestShift(error, setting.around.whole.radius);
  const flat = cornersAt(outline, piece.to);
  for (let i = 0; i + 1 < flat.length; i += 2) {
    const t = -face.ny * (flat[i] ?? 0) + face.nx * (flat[i + 1] ?? 0);
    if (t - shift < face.from || t + shift > face.to) return false;
  }
  return true;
}

/**
 * Whether the robot turns flush from every heading within ± tilt: the corners of its front touch first, on both sides of the
 * origin, with a lever long enough for its drive (motion/path).
 */
function squaresUp({ project }: TrackSetting, { on, others }: Met, tilt: number): boolean {
  const { lateralFrictionCoeff, trackContactMm, tractionCoeff } = project.robot.drive;
  const lever = Math.max(LEAST_LEVER_MM, (lateralFrictionCoeff * trackContactMm) / (4 * tractionCoeff));
  const tan = sin(tilt) / cos(tilt);
  return [1, -1].every((side) => {
    const mine = on.filter((corner) => side * corner.leftMm > 0);
    const outermost = mine.reduce<Met["on"][number] | null>(
      (best, corner) => (best === null || side * corner.leftMm > side * best.leftMm ? corner : best),
      null,
    );
    if (outermost === null) return false;
    const arm = side * outermost.leftMm;
    if (arm * (1 - (tilt * tilt) / 2) - Math.abs(outermost.aheadMm) * tilt < lever) return false;
    return others.every((corner) => outermost.aheadMm - corner.aheadMm > (side * corner.leftMm - arm) * tan);
  });
}

/** Left when flush: the error along the wall. It grows while the robot squares up, at most with the tilt. */
function flushError({ face, on }: Met, start: PoseError, atTouch: PoseError, tilt: number): PoseError {
  const { nx, ny } = face;
  const along = sumOf([-ny, atTouch.x], [nx, atTouch.y]);
  const widest = Math.max(...on.map((corner) => Math.abs(corner.leftMm)));
  // The touch comes earlier or later than nominally, and turning flush takes up to widest·tilt more.
  const moreMm = largest(reach(start, nx, ny, 0)) + 2 * widest * tilt;
  return {
    x: sumOf([-ny, along]),
    y: sumOf([nx, along]),
    heading: [0],
    restMm: atTouch.restMm + moreMm * tilt + SPARE_MM,
    restRad: 1e-9,
  };
}

/** Left when pressed against the face somehow: a tilt no larger than before, and the origin as far from the face as that makes it. */
function pressedError(symbols: Symbols, { face, outline }: Met, atTouch: PoseError, tilt: number): PoseError {
  const { nx, ny } = face;
  const along = reach(atTouch, -ny, nx, 0);
  const half = (along.high - along.low) / 2 + 2 * outline.radius * tilt * tilt + SPARE_MM;
  const t = symbols.fresh(half, (along.high + along.low) / 2);
  const n = symbols.fresh(outline.radius * (tilt + tilt * tilt) + SPARE_MM);
  return {
    x: sumOf([-ny, t], [nx, n]),
    y: sumOf([nx, t], [ny, n]),
    heading: symbols.fresh(tilt),
    restMm: 0,
    restRad: 0,
  };
}
