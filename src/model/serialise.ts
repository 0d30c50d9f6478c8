import type { BallGroup, BallKind } from "./ball.ts";
import { degFromRad, degPerMFromRadPerMm } from "./degrees.ts";
import { FORMAT_VERSION } from "./parse.ts";
import { BALL_PRESETS, PRESET_IDS } from "./presets.ts";
import { printJson } from "./printJson.ts";
import type { Project } from "./project.ts";
import { EMPTY_RECORD, type TeamRecord } from "./record.ts";
import type { Drift, GroundOutline, Robot, RobotShape } from "./robot.ts";
import type { Routine } from "./routine.ts";
import type { Layout } from "./rules.ts";
import { isEmptyRecord, recordForFile } from "./serialiseRecord.ts";
import { routinesForFile } from "./serialiseRoutines.ts";
import { sensorEntry } from "./serialiseSensors.ts";
import type { PointMm, Zone } from "./zone.ts";

// The order of the keys is fixed here, so that the same project gives the same text however it was put together.
const SURFACE = ["restitution", "frictionCoeff"] as const;
const RECT = ["xMm", "yMm", "widthMm", "heightMm"] as const;
const BODY = ["kind", "bodyLengthMm", "bodyWidthMm", "axleFromRearMm"] as const;
const BALL = [
  "name",
  "diameterMm",
  "massKg",
  "build",
  "rollingResistance",
  "restitution",
  "frictionCoeff",
  "floorFrictionCoeff",
] as const satisfies readonly (keyof BallKind)[];

/** The project as the text of a file; see projectForFile. */
export function serialiseProject(
  project: Project,
  routines: readonly Routine[] = [],
  record: TeamRecord = EMPTY_RECORD,
): string {
  return printJson(projectForFile(project, routines, record));
}

/**
 * The project as a file holds it: always the same for the same project, defaults written out, angles in degrees.
 * parseProject gives the project back bit for bit when its angles came from degrees (a file, or degrees.ts).
 * Balls named like a preset are written as that preset and what differs from it.
 *
 * @throws RangeError when a number is not finite: such a project cannot be written down.
 */
export function projectForFile(
  project: Project,
  routines: readonly Routine[] = [],
  record: TeamRecord = EMPTY_RECORD,
) {
  const { name, note, zone, rules, spread, settings } = project;
  return {
    formatVersion: FORMAT_VERSION,
    name,
    note,
    zone: zoneForFile(zone),
    balls: project.balls.map(groupForFile),
    rules: {
      ...pick(rules, ["timeLimitS", "delivered"]),
      ...(rules.wedgeCorners.length === 0 ? {} : { wedgeCorners: rules.wedgeCorners }),
      layout: layoutForFile(rules.layout),
    },
    robot: robotForFile(project.robot),
    spread: pick(spread, ["frictionFrac", "rollingResistanceFrac", "restitution"]),
    settings: pick(settings, ["clearanceMm", "overrunMm", "speedFracs"]),
    ...(routines.length > 0 ? { routines: routinesForFile(routines) } : {}),
    ...(isEmptyRecord(record)
      ? {}
      : { record: recordForFile(record, (own, theirs): object => projectForFile(own, theirs)) }),
  };
}

function zoneForFile({ widthMm, heightMm, walls, doorway, wedge, keepOuts }: Zone) {
  return {
    widthMm,
    heightMm,
    walls: pick(walls, SURFACE),
    doorway: pick(doorway, ["wall", "centreMm", "widthMm"]),
    wedge: pick(wedge, ["corner", "legXMm", "legYMm", "profile", "lipMm", "riseMm", "runMm"]),
    keepOuts: keepOuts.map((rect) => pick(rect, RECT)),
  };
}

function groupForFile({ kind, count, points }: BallGroup) {
  const id = PRESET_IDS.find((preset) => BALL_PRESETS[preset].name === kind.name);
  if (id === undefined) return { ...pick(kind, BALL), count, points };
  const preset = BALL_PRESETS[id];
  const changed = BALL.filter((key) => kind[key] !== preset[key]);
  return { preset: id, ...pick(kind, changed), count, points };
}

function layoutForFile(layout: Layout) {
  if (layout.kind === "fixed") return { kind: layout.kind, positionsMm: layout.positions.map(pair) };
  return {
    ...pick(layout, ["kind", "wallMarginMm", "spacingMm", "wedgeMarginMm", "robotMarginMm"]),
    forbidden: layout.forbidden.map((rect) => pick(rect, RECT)),
  };
}

function robotForFile(robot: Robot) {
  return {
    ...pick(robot, ["name", "massKg"]),
    shape: shapeForFile(robot.shape),
    ground: groundForFile(robot.ground),
    climbsWedge: robot.climbsWedge,
    surface: pick(robot.surface, SURFACE),
    drive: {
      ...pick(robot.drive, [
        "gaugeMm",
        "wheelDiameterMm",
        "trackContactMm",
        "topSpeedMmPerS",
        "accelMmPerS2",
      ]),
      turnRateDegPerS: degFromRad(robot.drive.turnRateRadPerS),
      ...pick(robot.drive, ["tractionCoeff", "lateralFrictionCoeff"]),
    },
    drift: driftForFile(robot.drift),
    entry: { ...pick(robot.entry, ["alongMm", "insetMm"]), headingDeg: degFromRad(robot.entry.headingRad) },
    // Left out where there is none: files of robots without sensors stay as they were.
    ...(robot.sensors.length === 0 ? {} : { sensors: robot.sensors.map(sensorEntry) }),
  };
}

function shapeForFile(shape: RobotShape) {
  switch (shape.kind) {
    case "plate":
      return pick(shape, [...BODY, "plateWidthMm", "plateReachMm"]);
    case "arms":
      return {
        ...pick(shape, [...BODY, "armLengthMm", "armThicknessMm"]),
        armAngleDeg: degFromRad(shape.armAngleRad),
      };
    case "scoop":
      return pick(shape, [...BODY, "openingMm", "depthMm", "sideThicknessMm"]);
    case "hinged":
      return {
        ...pick(shape, [...BODY, "hingeAsideMm", "armLengthMm", "armThicknessMm"]),
        openAngleDeg: degFromRad(shape.openAngleRad),
        closedAngleDeg: degFromRad(shape.closedAngleRad),
        swingRateDegPerS: degFromRad(shape.swingRateRadPerS),
      };
    case "polygon":
      return { kind: shape.kind, outlineMm: shape.outline.map(pair), pusherEdges: shape.pusherEdges };
    default:
      return shape satisfies never;
  }
}

function groundForFile(ground: GroundOutline) {
  return ground.kind === "body"
    ? { kind: ground.kind }
    : { kind: ground.kind, outlineMm: ground.outline.map(pair) };
}

function driftForFile({ systematic, random, start }: Drift) {
  const { curvatureMeanRadPerMm, curvatureSdRadPerMm } = systematic;
  return {
    systematic: {
      ...pick(systematic, ["distanceScaleMean", "distanceScaleSd", "turnScaleMean", "turnScaleSd"]),
      curvatureMeanDegPerM: degPerMFromRadPerMm(curvatureMeanRadPerMm),
      curvatureSdDegPerM: degPerMFromRadPerMm(curvatureSdRadPerMm),
    },
    random: {
      distanceSdFrac: random.distanceSdFrac,
      turnSdFrac: random.turnSdFrac,
      turnSdDeg: degFromRad(random.turnSdRad),
      curvatureSdDegPerM: degPerMFromRadPerMm(random.curvatureSdRadPerMm),
    },
    start: { positionSdMm: start.positionSdMm, headingSdDeg: degFromRad(start.headingSdRad) },
  };
}

function pair({ xMm, yMm }: PointMm): readonly [number, number] {
  return [xMm, yMm];
}

/** These entries of an object, in this order. */
function pick<T extends object, K extends keyof T>(value: T, keys: readonly K[]): Pick<T, K> {
  return Object.fromEntries(keys.map((key) => [key, value[key]])) as Pick<T, K>;
}
