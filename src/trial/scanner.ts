import type { DistanceSensor } from "../model/sensor.ts";
import { ECHO_SET_FOR_C } from "../model/sensorPresets.ts";
import type { PointMm, Zone } from "../model/zone.ts";
import { faceDistance, facesOf } from "../motion/faces.kernel.ts";
import type { PathTracer } from "../motion/path.kernel.ts";
import type { Pose } from "../motion/pose.ts";
import { cos, sin } from "../num/elementary.ts";
import type { RandomStream } from "../num/stream.ts";
import { bx, by } from "./balls.kernel.ts";
import { ballDistance } from "./beam.kernel.ts";
import { move, profile, progressAt } from "./clock.kernel.ts";
import { CUT_SD } from "./drift.ts";
import { type PlaceFix, placeFix, type ScanReading } from "./scanFix.ts";
import { soundMPerS } from "./sound.ts";

/** A reading nearer than the map's walls by this much is a ball, mm: what believed and true place may be off. */
const NEARER_MM = 35;
/** The same in standard deviations of the reading. */
const NEARER_SD = 3;
/** Missed echoes that do not end a group. */
const MISSES = 2;
/** Balls further from each other than this in distance are two, in ball diameters. */
const APART = 1.5;
/** A ball is met this share of its radius before its middle on average over the echoes that count. */
const FACE = 0.93;

type Echo = ScanReading;

/**
 * The distance sensor of a robot: one reading, or a reading every 1/readsPerS while it turns. Between two steps of the
 * engine the robot is where its move says, and a rolling ball on the straight line between its places.
 */
export class Scanner {
  readonly sensor: DistanceSensor;
  private readonly faces: Float64Array;
  private readonly random: RandomStream;
  private readonly balls: number;
  private readonly radiusMm: number;
  private readonly ahead: Float64Array;
  private readonly from: Float64Array;
  private readonly pose = new Float64Array(7);
  private readonly ch: number;
  private readonly sh: number;
  /** How far a thing seems, over how far it is. */
  private readonly long: number;
  private echoes: Echo[] = [];
  private believed: Pose = { xMm: 0, yMm: 0, headingRad: 0 };
  private count = 0;
  private fromS = 0;

  constructor(sensor: DistanceSensor, zone: Zone, radii: readonly number[], random: RandomStream) {
    this.sensor = sensor;
    this.faces = facesOf(zone);
    this.random = random;
    this.balls = radii.length;
    this.radiusMm = Math.max(...radii);
    this.ahead = new Float64Array(2 * radii.length);
    this.from = new Float64Array(2 * radii.length);
    this.ch = cos(sensor.beamHalfRad);
    this.sh = sin(sensor.beamHalfRad);
    this.long = soundMPerS(ECHO_SET_FOR_C) / soundMPerS(sensor.airC);
  }

  /** One reading from a true pose (x, y, cos, sin), mm; +∞: no echo. Takes two draws, whatever it sees. */
  read(x: number, y: number, c: number, s: number): number {
    const missed = this.random.uniform() < this.sensor.missFrac;
    const luck = this.random.normalCut(CUT_SD);
    const { alongMm, acrossMm, headingRad, nearestMm, rangeMm } = this.sensor;
    const [mc, ms] = [cos(headingRad), sin(headingRad)];
    const px = x + c * alongMm - s * acrossMm;
    const py = y + s * alongMm + c * acrossMm;
    const hx = c * mc - s * ms;
    const hy = s * mc + c * ms;
    const walls = faceDistance(this.faces, px, py, hx, hy, this.ch, this.sh);
    const things = ballDistance(this.balls, this.ahead, px, py, hx, hy, this.ch, this.sh);
    const distance = Math.min(walls, things);
    if (missed || !(distance >= nearestMm && distance <= rangeMm)) return Number.POSITIVE_INFINITY;
    return Math.max(0, distance * this.long + this.sdAt(distance) * luck);
  }

  /** Before the turn is driven. */
  begin(believed: Pose): void {
    this.believed = believed;
    this.echoes = [];
    this.count = 0;
    this.fromS = 0;
  }

  stepBegins(t: number): void {
    this.fromS = t;
    for (let i = 0; i < this.balls; i++) {
      this.from[2 * i] = bx[i] ?? 0;
      this.from[2 * i + 1] = by[i] ?? 0;
    }
  }

  /** Readings that fell into the step just done. `sign`: which way the robot turns. */
  stepEnded(planner: PathTracer, t: number, sign: number): void {
    const stepS = t - this.fromS;
    for (;;) {
      const at = this.count / this.sensor.readsPerS;
      if (at > t || stepS <= 0) break;
      this.count++;
      const back = (t - at) / stepS;
      for (let k = 0; k < 2 * this.balls; k++) {
        const now = (k % 2 === 0 ? bx[k >> 1] : by[k >> 1]) ?? 0;
        this.ahead[k] = ((this.from[k] ?? 0) - now) * back;
      }
      if (move.count > 0) planner.poseAt(progressAt(at), this.pose);
      const [x = 0, y = 0, c = 1, s = 0] = this.pose;
      const distanceMm = this.read(x, y, c, s);
      const turnedRad = sign * profile.distanceAt(at);
      this.echoes.push({ headingRad: this.believed.headingRad + turnedRad, turnedRad, distanceMm });
    }
    this.ahead.fill(0);
  }

  /** Puts the belief right by the walls that were read; null where they say nothing. Before the balls are asked for. */
  fix(): PlaceFix | null {
    const { believed } = this;
    const fix = placeFix(this.echoes, this.faces, this.sensor, believed);
    if (fix === null) return null;
    this.believed = { ...believed, xMm: believed.xMm + fix.xMm, yMm: believed.yMm + fix.yMm };
    this.echoes = this.echoes.map((echo) => ({
      ...echo,
      headingRad: echo.headingRad + fix.headingRad + fix.turnFrac * echo.turnedRad,
    }));
    return fix;
  }

  /** The balls made out, where the robot believes them to be. */
  finish(): PointMm[] {
    const found: PointMm[] = [];
    let group: Echo[] = [];
    let misses = 0;
    const close = () => {
      if (group.length >= 2) found.push(this.placeOf(group));
      group = [];
    };
    for (const echo of this.echoes) {
      if (!this.isBall(echo)) {
        if (++misses > MISSES) close();
        continue;
      }
      misses = 0;
      const last = group[group.length - 1];
      if (last !== undefined && Math.abs(last.distanceMm - echo.distanceMm) > 2 * APART * this.radiusMm)
        close();
      group.push(echo);
    }
    close();
    return merged(found, this.radiusMm);
  }

  /** Nearer than the walls of the map are from where the robot believes it is. */
  private isBall({ headingRad, distanceMm }: Echo): boolean {
    if (distanceMm === Number.POSITIVE_INFINITY) return false;
    const { x, y, c, s } = this.eye(headingRad);
    const walls = faceDistance(this.faces, x, y, c, s, this.ch, this.sh);
    return distanceMm < walls - NEARER_MM - NEARER_SD * this.sdAt(distanceMm);
  }

  /** In the middle of the bearings, behind the readings of the middle half. */
  private placeOf(group: readonly Echo[]): PointMm {
    const first = group[0]?.headingRad ?? 0;
    const last = group[group.length - 1]?.headingRad ?? first;
    const quarter = Math.floor(group.length / 4);
    const middle = group.slice(quarter, group.length - quarter);
    const mean = middle.reduce((sum, echo) => sum + echo.distanceMm, 0) / middle.length;
    const { x, y, c, s } = this.eye((first + last) / 2);
    const far = mean + FACE * this.radiusMm;
    return { xMm: x + far * c, yMm: y + far * s };
  }

  /** Place and direction of the sensor for a believed heading. */
  private eye(robotRad: number): { x: number; y: number; c: number; s: number } {
    const { alongMm, acrossMm, headingRad } = this.sensor;
    const [c, s] = [cos(robotRad), sin(robotRad)];
    const { xMm, yMm } = this.believed;
    return {
      x: xMm + c * alongMm - s * acrossMm,
      y: yMm + s * alongMm + c * acrossMm,
      c: cos(robotRad + headingRad),
      s: sin(robotRad + headingRad),
    };
  }

  private sdAt(distance: number): number {
    const { noiseSdMm, noiseSdFrac } = this.sensor;
    const share = noiseSdFrac * distance;
    return Math.sqrt(noiseSdMm * noiseSdMm + share * share);
  }
}

/** A ball at the seam of a full turn, or seen twice, counts once. */
function merged(points: readonly PointMm[], radiusMm: number): PointMm[] {
  const kept: PointMm[] = [];
  for (const point of points) {
    const near = kept.some((other) => {
      const [dx, dy] = [point.xMm - other.xMm, point.yMm - other.yMm];
      return dx * dx + dy * dy < radiusMm * radiusMm * 4;
    });
    if (!near) kept.push(point);
  }
  return kept;
}
