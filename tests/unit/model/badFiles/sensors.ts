import { type BadFile, bad } from "./badFile.ts";

const looking = "looking-robot.json";
const unknown = "unknown-corner.json";

export const SENSORS: readonly BadFile[] = [
  bad(
    "empty-range",
    "robot.sensors[0].rangeMm",
    "a range that ends before it begins",
    (f) => Object.assign(f.robot.sensors[0], { nearestMm: 300, rangeMm: 200 }),
    looking,
  ),
  bad(
    "repeated-sensor",
    "robot.sensors[4]",
    "two gyros",
    (f) => f.robot.sensors.push({ preset: "rate-gyro" }),
    looking,
  ),
  bad(
    "unknown-choice",
    "robot.sensors[1].preset",
    "a sensor by another name",
    (f) => (f.robot.sensors[1].preset = "magic"),
    looking,
  ),
  bad(
    "unknown-choice",
    "robot.sensors[0].kind",
    "a kind that is not the preset's",
    (f) => (f.robot.sensors[0].kind = "gyro"),
    looking,
  ),
  bad(
    "missing-key",
    "robot.sensors[2].driftSdDegPerMin",
    "a gyro without its drift",
    (f) => (f.robot.sensors[2] = { kind: "gyro", name: "own", errorSdDeg: 1 }),
    looking,
  ),
  bad(
    "out-of-range",
    "robot.sensors[0].missFrac",
    "every echo missed",
    (f) => (f.robot.sensors[0].missFrac = 1),
    looking,
  ),
  bad(
    "unknown-choice",
    "rules.wedgeCorners[1]",
    "a corner misspelt",
    (f) => (f.rules.wedgeCorners[1] = "uper-left"),
    unknown,
  ),
  bad(
    "repeated-corner",
    "rules.wedgeCorners",
    "a corner twice",
    (f) => f.rules.wedgeCorners.push("lower-right"),
    unknown,
  ),
  bad(
    "corner-not-listed",
    "rules.wedgeCorners",
    "without the zone's own corner",
    (f) => f.rules.wedgeCorners.shift(),
    unknown,
  ),
  bad(
    "corner-impossible",
    "rules.wedgeCorners[3]",
    "a corner beside the doorway",
    (f) => f.rules.wedgeCorners.push("lower-left"),
    unknown,
  ),
];
