import type { Project } from "../model/project.ts";
import type { Beside, Move } from "../model/routine.ts";
import { type DistanceSensor, type Sensor, sideOf } from "../model/sensor.ts";
import { entryPose } from "../motion/entry.ts";
import { faceDistance, facesOf } from "../motion/faces.kernel.ts";
import type { Pose } from "../motion/pose.ts";
import { Walker } from "../motion/walker.ts";
import { cos, sin } from "../num/elementary.ts";

/** Ways shorter than this are over before readings tell anything, mm. */
const SHORTEST_MM = 120;
/** Places along a way at which it is looked what the sensor should read, mm apart. */
const LOOK_EVERY_MM = 20;
/** Readings this near to one another are of the same wall, mm. */
const SAME_MM = 2;
/** Share of the way that has to be beside the wall; the rest of it is beside a gap, or something clearly nearer or farther. */
const LEAST_SHARE = 0.6;
const CLEARLY_MM = 70;
/** Room to the ends of what a sensor can read, mm: the robot may be off its line. */
const MARGIN_MM = 15;

/**
 * The same moves for a robot with a sensor that looks to a side: on ways beside a wall it keeps the distance it has there without drift.
 * The path without drift stays the same.
 *
 * @param from where the moves begin; left out: at the entry pose
 */
export function besideMoves(
  project: Project,
  moves: readonly Move[],
  from: Pose = entryPose(project.zone, project.robot),
): readonly Move[] {
  const { sensors } = project.robot;
  if (sensors.every((sensor) => sideOf(sensor) === 0)) return moves;
  const faces = facesOf(project.zone);
  const walker = new Walker(project, from);
  return moves.map((move) => {
    const start = walker.pose;
    walker.advance(move);
    if ((move.kind !== "drive" && move.kind !== "toWall") || Math.abs(move.distanceMm) < SHORTEST_MM) {
      return move;
    }
    const beside = nearestWall(sensors, faces, start, move.distanceMm);
    return beside === null ? move : { ...move, beside };
  });
}

/** The sensor that is nearest to a wall which stays beside it on a straight way, and what it reads; null where none has one. */
function nearestWall(
  sensors: readonly Sensor[],
  faces: Float64Array,
  start: Pose,
  distanceMm: number,
): Beside | null {
  let best: Beside | null = null;
  for (const [sensor, each] of sensors.entries()) {
    if (each.kind !== "distance" || sideOf(each) === 0) continue;
    const readsMm = steadyReading(each, faces, start, distanceMm);
    if (readsMm !== null && (best === null || readsMm < best.readsMm)) best = { sensor, readsMm };
  }
  return best;
}

function steadyReading(
  sensor: DistanceSensor,
  faces: Float64Array,
  { xMm, yMm, headingRad }: Pose,
  distanceMm: number,
): number | null {
  const looks = 1 + Math.ceil(Math.abs(distanceMm) / LOOK_EVERY_MM);
  const [c, s] = [cos(headingRad), sin(headingRad)];
  const [ch, sh] = [cos(sensor.beamHalfRad), sin(sensor.beamHalfRad)];
  const beam = headingRad + sensor.headingRad;
  const readings = Array.from({ length: looks }, (_, i) => {
    const ahead = sensor.alongMm + (i / (looks - 1)) * distanceMm;
    const x = xMm + c * ahead - s * sensor.acrossMm;
    const y = yMm + s * ahead + c * sensor.acrossMm;
    return faceDistance(faces, x, y, cos(beam), sin(beam), ch, sh);
  });
  const middle = [...readings].sort((a, b) => a - b)[Math.floor(looks / 2)] ?? 0;
  if (middle < sensor.nearestMm + MARGIN_MM || middle > sensor.rangeMm - MARGIN_MM) return null;
  const off = readings.map((reading) => Math.abs(reading - middle));
  const isClear = off.every((gap) => gap <= SAME_MM || gap >= CLEARLY_MM);
  const share = off.filter((gap) => gap <= SAME_MM).length / looks;
  return isClear && share >= LEAST_SHARE ? Math.round(10 * middle) / 10 : null;
}
