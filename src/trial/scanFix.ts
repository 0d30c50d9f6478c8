import type { DistanceSensor } from "../model/sensor.ts";
import { faceDistance } from "../motion/faces.kernel.ts";
import type { Pose } from "../motion/pose.ts";
import { cos, sin } from "../num/elementary.ts";

/** One reading of a scan: where the robot believed to be turned to, rad of turn since it began, and what it read, mm. */
export interface ScanReading {
  readonly headingRad: number;
  readonly turnedRad: number;
  readonly distanceMm: number;
}

/** What a scan tells of the robot's own place: to be added to what it believes. */
export interface PlaceFix {
  readonly xMm: number;
  readonly yMm: number;
  /** Of the heading when the scan began, and what each radian turned is more than a radian. */
  readonly headingRad: number;
  readonly turnFrac: number;
}

/** What a belief may be off before the scan, as standard deviations: mm, mm, rad, and rad a radian. */
const PRIOR_SD = [25, 25, 0.04, 0.02] as const;
/** Steps for the slopes of what is expected. */
const STEP = [1, 1, 0.002, 0.002] as const;
/** A reading farther off than this in each round is of a ball, or past an edge, mm. */
const GATES_MM = [80, 50, 30, 20] as const;
/** Error of the map and of neighbouring readings that go wrong together, mm. */
const MAP_SD_MM = 12;
/** Fewer readings of walls say nothing. */
const LEAST_READINGS = 20;

/**
 * Fits the map's walls to the readings of a scan: least squares of four numbers about what was believed (Gauss–Newton, with the belief
 * as a prior; readings of balls are left out by their distance). null where too few readings are of walls.
 */
export function placeFix(
  readings: readonly ScanReading[],
  faces: Float64Array,
  sensor: DistanceSensor,
  believed: Pose,
): PlaceFix | null {
  const fix: number[] = [0, 0, 0, 0];
  for (const gateMm of GATES_MM) {
    const sums = new Normal();
    for (const reading of readings) {
      if (reading.distanceMm === Number.POSITIVE_INFINITY) continue;
      const expected = expectedMm(reading, faces, sensor, believed, fix);
      const off = reading.distanceMm - expected;
      if (!(Math.abs(off) < gateMm)) continue;
      const slopes = STEP.map((step, k) => {
        const at = (by: number): number => {
          const moved = fix.map((value, i) => (i === k ? value + by : value));
          return expectedMm(reading, faces, sensor, believed, moved);
        };
        // To both sides, so that a mirrored scan gives the mirrored fix.
        return (at(step) - at(-step)) / (2 * step);
      });
      // Past an edge a small step changes everything: no slope.
      if (slopes.every((slope, k) => Math.abs(slope * (STEP[k] ?? 1)) < gateMm)) sums.add(slopes, off);
    }
    if (sums.count < LEAST_READINGS) return null;
    sums.solve(fix);
  }
  const [xMm = 0, yMm = 0, headingRad = 0, turnFrac = 0] = fix;
  return { xMm, yMm, headingRad, turnFrac };
}

function expectedMm(
  { headingRad, turnedRad }: ScanReading,
  faces: Float64Array,
  sensor: DistanceSensor,
  believed: Pose,
  [dx = 0, dy = 0, turn = 0, frac = 0]: readonly number[],
): number {
  const heading = headingRad + turn + frac * turnedRad;
  const [c, s] = [cos(heading), sin(heading)];
  const x = believed.xMm + dx + c * sensor.alongMm - s * sensor.acrossMm;
  const y = believed.yMm + dy + s * sensor.alongMm + c * sensor.acrossMm;
  const beam = heading + sensor.headingRad;
  return faceDistance(faces, x, y, cos(beam), sin(beam), cos(sensor.beamHalfRad), sin(sensor.beamHalfRad));
}

/** Sums of the normal equations, and their solution by elimination. */
class Normal {
  count = 0;
  private readonly rows = PRIOR_SD.map(() => new Float64Array(PRIOR_SD.length + 1));

  add(slopes: readonly number[], off: number): void {
    const weight = 1 / (MAP_SD_MM * MAP_SD_MM);
    this.count++;
    for (const [i, row] of this.rows.entries()) {
      const factor = weight * (slopes[i] ?? 0);
      for (const [k, slope] of slopes.entries()) row[k] = (row[k] ?? 0) + factor * slope;
      row[slopes.length] = (row[slopes.length] ?? 0) + factor * off;
    }
  }

  /** Adds the step to `fix`, which the prior draws back to nothing. */
  solve(fix: number[]): void {
    const { rows } = this;
    const last = PRIOR_SD.length;
    for (const [i, sd] of PRIOR_SD.entries()) {
      const row = rows[i];
      if (row === undefined) continue;
      row[i] = (row[i] ?? 0) + 1 / (sd * sd);
      row[last] = (row[last] ?? 0) - (fix[i] ?? 0) / (sd * sd);
    }
    // Positive definite, thanks to the prior: no pivot is zero.
    for (const [i, pivot] of rows.entries()) {
      for (const [k, row] of rows.entries()) {
        if (k === i) continue;
        const share = (row[i] ?? 0) / (pivot[i] ?? 1);
        for (let at = i; at <= last; at++) row[at] = (row[at] ?? 0) - share * (pivot[at] ?? 0);
      }
    }
    for (const [i, row] of rows.entries()) fix[i] = (fix[i] ?? 0) + (row[last] ?? 0) / (row[i] ?? 1);
  }
}
