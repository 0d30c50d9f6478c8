import { type BadFile, bad } from "./badFile.ts";

const looking = "looking-robot.json";
const unknown = "unknown-corner.json";

const WAIT = { kind: "wait", durationS: 1 };

function own(program: object[]): object {
  return { id: "mine", moves: [], program };
}

function nested(depth: number): object[] {
  return depth === 0 ? [WAIT] : [{ kind: "repeat", atMost: 2, steps: nested(depth - 1) }];
}

function block(lines: number): object {
  return { kind: "repeat", atMost: 2, steps: Array.from({ length: lines }, () => WAIT) };
}

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
    "unknown-key",
    "robot.sensors[0].airC",
    "a light that is asked for the air",
    (f) => (f.robot.sensors[0] = { preset: "light-time-of-flight", airC: 10 }),
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
  bad(
    "missing-key",
    "routines[0].program[0].when",
    "a question left out",
    (f) => (f.routines = [own([{ kind: "if", yes: [], no: [] }])]),
  ),
  bad(
    "unknown-choice",
    "routines[0].program[0].until.ask",
    "a question nobody can answer",
    (f) => (f.routines = [own([{ kind: "repeat", atMost: 3, until: { ask: "happy" }, steps: [] }])]),
  ),
  bad(
    "out-of-range",
    "routines[0].program[0].atMost",
    "an endless loop",
    (f) => (f.routines = [own([{ kind: "repeat", atMost: 1e9, steps: [] }])]),
  ),
  bad(
    "nested-too-deep",
    `routines[0].program[0]${".steps[0]".repeat(7)}.steps`,
    "nine blocks in each other",
    (f) => (f.routines = [own(nested(8))]),
  ),
  bad(
    "program-too-long",
    "routines[0].program[1].steps",
    "two blocks that are too long together",
    (f) => (f.routines = [own([block(2500), block(2500)])]),
  ),
];
