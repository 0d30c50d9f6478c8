import { ballsOf, type Project } from "../model/project.ts";
import type { Beside } from "../model/routine.ts";
import { type DistanceSensor, sensorOf, sideOf } from "../model/sensor.ts";
import type { PathTracer } from "../motion/path.kernel.ts";
import { RandomStream } from "../num/stream.ts";
import { profile } from "./clock.kernel.ts";
import type { RealMotion } from "./drift.ts";
import type { TrialPlan } from "./plan.ts";
import { Scanner } from "./scanner.ts";
import { STREAMS } from "./streams.ts";
import { WallEstimate } from "./wallEstimate.ts";

/** Stretches over which the robot keeps one curvature, mm, and at most so many in a move (the tracer's pieces are limited). */
const STRETCH_MM = 25;
const MOST_STRETCHES = 40;
/** A robot that is off comes back to its line over about this length, mm. */
const BACK_OVER_MM = 160;
/** On the last of a way it only straightens up, mm: the turn that follows begins at the right heading. */
const STRAIGHTEN_MM = 100;
/** No sharper curve than this, 1/mm, and no more than this toward the line, rad: a ball in the pusher has to stay there. */
const SHARPEST_PER_MM = 1 / 700;
const STEEPEST_RAD = 0.1;

/** What a robot may be off in its heading after a few turns, by its encoders and by a gyro, rad; common practice, no source. */
const HEADING_SD_RAD = 0.045;
const GYRO_SD_RAD = 0.02;

interface Eye {
  readonly scanner: Scanner;
  readonly side: -1 | 1;
}

/** What steering beside walls has come to on the way through a trial. */
export interface GuideState {
  readonly drawn: number;
  readonly estimate: WallEstimate;
  readonly last: SteeredMove | null;
}

/** The last move that was steered, and by what: in the next one what was read still holds. */
interface SteeredMove {
  readonly move: number;
  readonly beside: Beside;
}

/**
 * Steers beside a wall by a sensor that looks at it: what "keeping its distance" in a move means. The robot reads the true distance
 * with error, estimates from its readings how far off its line it is and at what angle (wallEstimate.ts), and drives a gentle curve
 * back: κ = 2/L·(−e/L − ψ) has the offset e die out with a damping of 1/√2. Readings are taken as the balls lie when the move begins.
 */
export class SideGuide {
  private readonly eyes: ReadonlyMap<number, Eye>;
  private readonly random = new RandomStream();
  private estimate = new WallEstimate();
  private readonly pose = new Float64Array(7);
  private readonly headingSdRad: number;
  private last: SteeredMove | null = null;

  constructor(project: Project) {
    const { zone } = project;
    const { sensors } = project.robot;
    const radii = ballsOf(project).map((ball) => ball.diameterMm / 2);
    this.eyes = new Map(
      sensors.flatMap((sensor, i) => {
        const side = sideOf(sensor);
        if (side === 0 || sensor.kind !== "distance") return [];
        return [[i, { scanner: new Scanner(sensor, zone, radii, this.random), side }] as const];
      }),
    );
    this.headingSdRad = sensorOf(sensors, "gyro") === undefined ? HEADING_SD_RAD : GYRO_SD_RAD;
  }

  openTrial(seed: number, trial: number): void {
    this.random.open(seed, trial, STREAMS.beside);
    this.last = null;
  }

  keep(): GuideState {
    return { drawn: this.random.drawn, estimate: this.estimate.copy(), last: this.last };
  }

  /** Goes on from where it was earlier in the same trial. */
  takeUp({ drawn, estimate, last }: GuideState): void {
    this.random.resume(drawn);
    this.estimate = estimate.copy();
    this.last = last;
  }

  /**
   * Lays the path of move `index` on a tracer whose path has just been begun with no length; the move's profile is the clock's. Past
   * the first touch of a wall it is not steered any more. A wall that was seen well tells a gyro its heading, as a square-up does.
   *
   * @param sigma way of driving; @param lengthMm commanded; @param real what drift makes of the move
   * @param believedRad heading before the move; @param endS second at which it ends
   */
  lay(
    { planner, gyro }: Pick<TrialPlan, "planner" | "gyro">,
    beside: Beside,
    index: number,
    sigma: number,
    lengthMm: number,
    real: RealMotion,
    believedRad: number,
    endS: number,
  ): void {
    const length = lengthMm * real.scale;
    // A gyro keeps the tracks from bending the way.
    const strayPerMm = gyro === null ? real.kappaExtra : 0;
    const off = this.steer(planner, beside, index, sigma, strayPerMm, length, real.scale);
    if (gyro === null || off === null) return;
    planner.poseAt(length, this.pose);
    gyro.set(this.pose[4] ?? 0, believedRad + off, endS);
  }

  /** @returns true heading less the line's as the robot takes it to be at the end; null where it has not seen enough of the wall */
  private steer(
    planner: PathTracer,
    beside: Beside,
    index: number,
    sigma: number,
    strayPerMm: number,
    length: number,
    scale: number,
  ): number | null {
    const eye = this.eyes.get(beside.sensor);
    if (eye === undefined || !(length > 0)) {
      planner.extend(sigma, strayPerMm, length);
      return null;
    }
    this.begin(eye, beside, index);
    const { estimate } = this;
    const stretches = Math.min(MOST_STRETCHES, Math.ceil(length / STRETCH_MM));
    let reads = 0;
    let from = 0;
    for (let i = 1; i <= stretches && !planner.touched; i++) {
      const to = (length * i) / stretches;
      const curve = steering(sigma, estimate.offsetMm, estimate.headingRad, length - from);
      planner.extend(sigma, curve + strayPerMm, to);
      estimate.advance(sigma, curve, to - from);
      reads = this.look(eye.scanner, planner, scale, reads, to);
      from = to;
    }
    planner.extend(sigma, strayPerMm, length);
    return estimate.isSure && !planner.touched ? estimate.headingRad : null;
  }

  private begin({ scanner, side }: Eye, beside: Beside, move: number): void {
    const { last } = this;
    const goesOn = last !== null && last.move === move - 1 && isSame(last.beside, beside);
    if (!goesOn) this.estimate.open(side, scanner.sensor.alongMm, beside.readsMm, this.headingSdRad);
    this.last = { move, beside };
  }

  /** Takes the readings that fall due before progress `to`; returns how many there were by then. */
  private look(scanner: Scanner, planner: PathTracer, scale: number, from: number, to: number): number {
    const { readsPerS } = scanner.sensor;
    let reads = from;
    for (; ; reads++) {
      const at = reads / readsPerS;
      const q = profile.distanceAt(at) * scale;
      if (at > profile.durationS || q >= to) return reads;
      planner.poseAt(q, this.pose);
      const [x = 0, y = 0, c = 1, s = 0] = this.pose;
      this.estimate.read(scanner.read(x, y, c, s), errorSd(scanner.sensor, this.estimate.readsMm));
    }
  }
}

function steering(sigma: number, offsetMm: number, headingRad: number, leftMm: number): number {
  const isLast = leftMm <= STRAIGHTEN_MM;
  const toward = isLast ? 0 : (-sigma * offsetMm) / BACK_OVER_MM;
  const wanted = Math.min(STEEPEST_RAD, Math.max(-STEEPEST_RAD, toward));
  const curve = (2 / (isLast ? STRAIGHTEN_MM : BACK_OVER_MM)) * (wanted - headingRad);
  return Math.min(SHARPEST_PER_MM, Math.max(-SHARPEST_PER_MM, curve));
}

function isSame(one: Beside, other: Beside): boolean {
  return one.sensor === other.sensor && one.readsMm === other.readsMm;
}

function errorSd({ noiseSdMm, noiseSdFrac }: DistanceSensor, distanceMm: number): number {
  const share = noiseSdFrac * distanceMm;
  return Math.sqrt(noiseSdMm * noiseSdMm + share * share);
}
