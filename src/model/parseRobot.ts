import { issueTexts as t } from "../texts/english/issue.ts";
import { radFromDeg, radPerMmFromDegPerM } from "./degrees.ts";
import type { Findings } from "./findings.ts";
import {
  DRIVE_LIMITS,
  ENTRY_LIMITS,
  RANDOM_LIMITS,
  ROBOT_LIMITS,
  ROBOT_SURFACE_LIMITS,
  START_LIMITS,
  SYSTEMATIC_LIMITS,
} from "./limits.ts";
import { parseSensors } from "./parseSensors.ts";
import { parseGround, parseShape } from "./parseShape.ts";
import type { Fields } from "./reader.ts";
import type { Drift, Drive, Entry, Robot } from "./robot.ts";

export const MAX_NAME_LENGTH = 120;

export function parseRobot(fields: Fields, findings: Findings): Robot {
  const surface = fields.child("surface", "optional");
  const robot: Robot = {
    name: fields.text("name", { maxLength: MAX_NAME_LENGTH, fallback: t.unnamed.robot }),
    ...fields.numbers(ROBOT_LIMITS),
    shape: parseShape(fields.child("shape", "required"), findings),
    ground: parseGround(fields.child("ground", "optional"), findings),
    climbsWedge: fields.flag("climbsWedge", false),
    surface: surface.numbers(ROBOT_SURFACE_LIMITS),
    drive: parseDrive(fields.child("drive", "required")),
    drift: parseDrift(fields.child("drift", "optional")),
    entry: parseEntry(fields.child("entry", "optional")),
    sensors: parseSensors(fields, findings),
  };
  surface.done();
  fields.done();
  return robot;
}

function parseDrive(fields: Fields): Drive {
  const { turnRateDegPerS, ...rest } = fields.numbers(DRIVE_LIMITS);
  fields.done();
  return { ...rest, turnRateRadPerS: radFromDeg(turnRateDegPerS) };
}

function parseDrift(fields: Fields): Drift {
  const systematic = fields.child("systematic", "optional");
  const random = fields.child("random", "optional");
  const start = fields.child("start", "optional");
  const { curvatureMeanDegPerM, curvatureSdDegPerM, ...scales } = systematic.numbers(SYSTEMATIC_LIMITS);
  const noise = random.numbers(RANDOM_LIMITS);
  const { positionSdMm, headingSdDeg } = start.numbers(START_LIMITS);
  for (const part of [systematic, random, start, fields]) part.done();
  return {
    systematic: {
      ...scales,
      curvatureMeanRadPerMm: radPerMmFromDegPerM(curvatureMeanDegPerM),
      curvatureSdRadPerMm: radPerMmFromDegPerM(curvatureSdDegPerM),
    },
    random: {
      distanceSdFrac: noise.distanceSdFrac,
      turnSdFrac: noise.turnSdFrac,
      turnSdRad: radFromDeg(noise.turnSdDeg),
      curvatureSdRadPerMm: radPerMmFromDegPerM(noise.curvatureSdDegPerM),
    },
    start: { positionSdMm, headingSdRad: radFromDeg(headingSdDeg) },
  };
}

function parseEntry(fields: Fields): Entry {
  const { headingDeg, ...place } = fields.numbers(ENTRY_LIMITS);
  fields.done();
  return { ...place, headingRad: radFromDeg(headingDeg) };
}
