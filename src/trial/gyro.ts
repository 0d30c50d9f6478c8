import type { GyroSensor } from "../model/sensor.ts";
import { RandomStream } from "../num/stream.ts";
import { CUT_SD, type RealMotion } from "./drift.ts";
import { STREAMS } from "./streams.ts";

/** Turns shorter than this are not steered, rad, nor ways, mm: the correction would be out of all proportion. */
const SHORTEST_TURN_RAD = 1e-3;
const SHORTEST_WAY_MM = 5;
/** A correction at most doubles a turn or takes it back: nobody's control loop does more. */
const MOST_SCALE = 2;

/** What a gyro has come to on the way through a trial. */
export interface GyroState {
  readonly drawn: number;
  readonly offsetRad: number;
  readonly setAtS: number;
}

/**
 * What a heading gyro makes of a move: the robot turns, and keeps its heading on the way, until the gyro reads the heading
 * it believes in. So turn scale, turn noise and curvature are replaced by an error that each move draws anew (bounded at
 * 4 sd) and a rate, drawn once a run, times the seconds since the gyro was last set: at the start, where the heading error
 * of the start pose stays in, and whenever the robot squares up on a wall.
 */
export class GyroDrawer {
  private readonly sensor: GyroSensor;
  private readonly stream = new RandomStream();
  private rate = 0;
  /** True minus believed heading when the gyro was last set, and when that was. */
  private offsetRad = 0;
  private setAtS = 0;

  constructor(sensor: GyroSensor) {
    this.sensor = sensor;
  }

  openTrial(seed: number, trial: number, startHeadingRad: number): void {
    this.stream.open(seed, trial, STREAMS.gyro);
    this.rate = this.sensor.driftSdRadPerS * this.stream.normalCut(CUT_SD);
    this.offsetRad = startHeadingRad;
    this.setAtS = 0;
  }

  keep(): GyroState {
    return { drawn: this.stream.drawn, offsetRad: this.offsetRad, setAtS: this.setAtS };
  }

  /** Goes on from where it was earlier in the same trial. */
  takeUp({ drawn, offsetRad, setAtS }: GyroState): void {
    this.stream.resume(drawn);
    this.offsetRad = offsetRad;
    this.setAtS = setAtS;
  }

  /** The robot is square to a wall whose heading it knows. */
  set(trueRad: number, believedRad: number, atS: number): void {
    this.offsetRad = trueRad - believedRad;
    this.setAtS = atS;
  }

  /** The robot has learned that its believed heading was wrong by this much. */
  believe(byRad: number): void {
    this.offsetRad -= byRad;
  }

  /**
   * Steers one move. @param fromRad true heading before it; @param toRad believed heading it is to end with;
   * @param sigma, kappa, length the commanded motion; @param endS second at which it ends; out.scale of a way is left alone
   */
  steer(
    fromRad: number,
    toRad: number,
    sigma: number,
    kappa: number,
    length: number,
    endS: number,
    out: RealMotion,
  ): void {
    const error = this.sensor.errorSdRad * this.stream.normalCut(CUT_SD);
    const wanted = toRad + this.offsetRad + error + this.rate * (endS - this.setAtS);
    if (sigma === 0) {
      if (length < SHORTEST_TURN_RAD) return;
      out.scale = Math.min(MOST_SCALE, Math.max(0, (kappa * (wanted - fromRad)) / length));
    } else if (length * out.scale > SHORTEST_WAY_MM) {
      out.kappaExtra = (wanted - fromRad) / (length * out.scale) - kappa;
    }
  }
}
