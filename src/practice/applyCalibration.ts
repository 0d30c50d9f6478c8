import type { BallKind } from "../model/ball.ts";
import { degFromRad, degPerMFromRadPerMm, radFromDeg, radPerMmFromDegPerM } from "../model/degrees.ts";
import {
  BALL_LIMITS,
  type NumberLimits,
  RANDOM_LIMITS,
  SPREAD_LIMITS,
  SYSTEMATIC_LIMITS,
} from "../model/limits.ts";
import type { Project } from "../model/project.ts";
import type { Calibration } from "./calibrate.ts";

/** A field of the project file and what the measurements make of it. */
export interface FieldChange {
  /** As in the file: `robot.drift.systematic.turnScaleMean`. */
  readonly path: string;
  readonly from: number;
  readonly to: number;
  /** false where the value is outside what a project may hold: it is left as it was. */
  readonly allowed: boolean;
}

export interface AppliedCalibration {
  readonly project: Project;
  readonly changes: readonly FieldChange[];
}

/** Digits kept of a measured value: the files stay readable, and no measurement here is better than 1 in 10,000. */
const DIGITS = 4;

/** Notes the changes on the way; a value that is not known or not allowed stays as it was. */
class Changes {
  readonly list: FieldChange[] = [];

  take(path: string, from: number, measured: number | null | undefined, limits: NumberLimits): number {
    if (measured === null || measured === undefined) return from;
    const to = Number(measured.toPrecision(DIGITS)) + 0;
    const allowed = to >= limits.min && to <= limits.max && !(limits.above && to === limits.min);
    if (to === from) return from;
    this.list.push({ path, from, to, allowed });
    return allowed ? to : from;
  }
}

/**
 * The project with what was measured in it. Means of the systematic drift are the measured values; their standard deviations the
 * doubt that is left (standard errors). Rolling resistance and restitution go to the balls if all are of one kind; half of their
 * intervals become the spread. Nothing else changes.
 */
export function applyCalibration(project: Project, found: Calibration): AppliedCalibration {
  const changes = new Changes();
  const robot = { ...project.robot, drift: driftOf(project, found, changes) };
  const balls = ballsOf(project, found, changes);
  const spread = balls === project.balls ? project.spread : spreadOf(project, found, changes);
  return { project: { ...project, robot, balls, spread }, changes: changes.list };
}

function driftOf(project: Project, found: Calibration, changes: Changes) {
  const { systematic, random } = project.robot.drift;
  const at = "robot.drift";
  const { distanceScale, turnScale, curvatureRadPerMm: bend } = found;
  const limits = SYSTEMATIC_LIMITS;
  const share = (
    key: "distanceScaleMean" | "distanceScaleSd" | "turnScaleMean" | "turnScaleSd",
    value?: number,
  ) => changes.take(`${at}.systematic.${key}`, systematic[key], value, limits[key]);
  const curve = (key: string, from: number, value: number | undefined, limit: NumberLimits): number => {
    const degPerM = value === undefined ? undefined : degPerMFromRadPerMm(value);
    return radPerMmFromDegPerM(changes.take(`${at}.${key}`, degPerMFromRadPerMm(from), degPerM, limit));
  };
  return {
    ...project.robot.drift,
    systematic: {
      distanceScaleMean: share("distanceScaleMean", distanceScale?.value),
      distanceScaleSd: share("distanceScaleSd", distanceScale?.se),
      turnScaleMean: share("turnScaleMean", turnScale?.value),
      turnScaleSd: share("turnScaleSd", turnScale?.se),
      curvatureMeanRadPerMm: curve(
        "systematic.curvatureMeanDegPerM",
        systematic.curvatureMeanRadPerMm,
        bend?.value,
        limits.curvatureMeanDegPerM,
      ),
      curvatureSdRadPerMm: curve(
        "systematic.curvatureSdDegPerM",
        systematic.curvatureSdRadPerMm,
        bend?.se,
        limits.curvatureSdDegPerM,
      ),
    },
    random: {
      distanceSdFrac: changes.take(
        `${at}.random.distanceSdFrac`,
        random.distanceSdFrac,
        found.distanceSdFrac?.value,
        RANDOM_LIMITS.distanceSdFrac,
      ),
      // One number is measured, what a turn is off by whatever its size: the share goes to 0.
      turnSdFrac: changes.take(
        `${at}.random.turnSdFrac`,
        random.turnSdFrac,
        found.turnSdRad && 0,
        RANDOM_LIMITS.turnSdFrac,
      ),
      turnSdRad: radFromDeg(
        changes.take(
          `${at}.random.turnSdDeg`,
          degFromRad(random.turnSdRad),
          found.turnSdRad && degFromRad(found.turnSdRad.value),
          RANDOM_LIMITS.turnSdDeg,
        ),
      ),
      curvatureSdRadPerMm: curve(
        "random.curvatureSdDegPerM",
        random.curvatureSdRadPerMm,
        found.curvatureSdRadPerMm?.value,
        RANDOM_LIMITS.curvatureSdDegPerM,
      ),
    },
  };
}

function ballsOf(project: Project, found: Calibration, changes: Changes): Project["balls"] {
  const names = new Set(project.balls.map(({ kind }) => kind.name));
  if (names.size !== 1 || (!found.rollingResistance && !found.restitution)) return project.balls;
  return project.balls.map(({ kind, ...rest }, i) => {
    const taken = (key: "rollingResistance" | "restitution"): number =>
      changes.take(`balls[${i}].${key}`, kind[key], found[key]?.value, BALL_LIMITS[key]);
    const measured: BallKind = {
      ...kind,
      rollingResistance: taken("rollingResistance"),
      restitution: taken("restitution"),
    };
    return { ...rest, kind: measured };
  });
}

function spreadOf(project: Project, { rollingResistance, restitution }: Calibration, changes: Changes) {
  const { spread } = project;
  const half = (low: number, high: number): number => (high - low) / 2;
  return {
    ...spread,
    rollingResistanceFrac: changes.take(
      "spread.rollingResistanceFrac",
      spread.rollingResistanceFrac,
      rollingResistance && half(rollingResistance.low, rollingResistance.high) / rollingResistance.value,
      SPREAD_LIMITS.rollingResistanceFrac,
    ),
    restitution: changes.take(
      "spread.restitution",
      spread.restitution,
      restitution && half(restitution.low, restitution.high),
      SPREAD_LIMITS.restitution,
    ),
  };
}
