import { type BadFile, bad } from "./badFile.ts";

const fork = "five-mixed-balls.json";
const plate = "plate-robot.json";
const hinged = "swinging-arms.json";
const scoop = "big-hall.json";

export const ROBOT: readonly BadFile[] = [
  bad(
    "axle-outside-body",
    "robot.shape.axleFromRearMm",
    "an axle in front",
    (f) => (f.robot.shape.axleFromRearMm = 171),
  ),
  bad(
    "arms-meet",
    "robot.shape.armAngleDeg",
    "crossed arms",
    (f) => (f.robot.shape = { ...f.robot.shape, armAngleDeg: -60 }),
  ),
  bad(
    "arms-meet",
    "robot.shape.armAngleDeg",
    "arms as thick as the body",
    (f) => (f.robot.shape.armThicknessMm = 80),
  ),
  bad("arms-too-short", "robot.shape.armLengthMm", "arms thicker than long, turned in", (f) => {
    f.robot.shape = { ...f.robot.shape, armLengthMm: 10, armThicknessMm: 30, armAngleDeg: -30 };
  }),
  bad(
    "hinge-outside-body",
    "robot.shape.hingeAsideMm",
    "hinges beside the body",
    (f) => (f.robot.shape.hingeAsideMm = 71),
    hinged,
  ),
  bad(
    "arms-do-not-open",
    "robot.shape.openAngleDeg",
    "arms that close outward",
    (f) => (f.robot.shape.openAngleDeg = -37),
    hinged,
  ),
  bad(
    "arms-meet",
    "robot.shape.closedAngleDeg",
    "hinged arms that cross when closed",
    (f) => (f.robot.shape.closedAngleDeg = -50),
    hinged,
  ),
  bad("arms-without-hinges", "routines[0].moves[1]", "a plate that is to close", (f) => {
    const moves = [
      { kind: "wait", durationS: 1 },
      { kind: "arms", to: "closed", durationS: 1 },
    ];
    f.routines = [{ id: "own-1", moves }];
  }),
  bad("arms-without-hinges", "routines[0].program[0].steps[0].no[0]", "deep in a program", (f) => {
    const no = [{ kind: "arms", to: "open", durationS: 1 }];
    const steps = [{ kind: "if", when: { ask: "seen" }, yes: [], no }];
    f.routines = [{ id: "own-1", moves: [], program: [{ kind: "repeat", atMost: 2, steps }] }];
  }),
  bad("no-side-sensor", "routines[0].moves[0].beside.sensor", "a way beside a wall without a sensor", (f) => {
    const beside = { sensor: 2, readsMm: 120 };
    f.routines = [{ id: "own-1", moves: [{ kind: "drive", distanceMm: 300, speedMmPerS: 100, beside }] }];
  }),
  bad("no-side-sensor", "routines[0].program[0].yes[0].beside.sensor", "one that looks ahead", (f) => {
    f.robot.sensors = [{ preset: "light-time-of-flight" }];
    const way = { kind: "toWall", distanceMm: 300, overrunMm: 40, speedMmPerS: 100 };
    const yes = [{ ...way, beside: { sensor: 1, readsMm: 120 } }];
    f.routines = [{ id: "own-1", moves: [], program: [{ kind: "if", when: { ask: "seen" }, yes, no: [] }] }];
  }),
  bad(
    "scoop-too-thick",
    "robot.shape.sideThicknessMm",
    "a V of thick board",
    (f) => (f.robot.shape.sideThicknessMm = 75),
    scoop,
  ),
  bad(
    "outline-crosses-itself",
    "robot.shape.outlineMm",
    "points in the wrong order",
    (f) => {
      const outline = f.robot.shape.outlineMm;
      [outline[0], outline[12]] = [outline[12], outline[0]];
    },
    fork,
  ),
  bad(
    "outline-crosses-itself",
    "robot.ground.outlineMm",
    "a crossed ground outline",
    (f) => {
      f.robot.ground.outlineMm = [
        [-80, -75],
        [90, 75],
        [90, -75],
        [-80, 75],
      ];
    },
    fork,
  ),
  bad(
    "too-few-vertices",
    "robot.ground.outlineMm",
    "two points",
    (f) => f.robot.ground.outlineMm.splice(2),
    fork,
  ),
  bad(
    "repeated-vertex",
    "robot.shape.outlineMm[14]",
    "the first point again at the end",
    (f) => f.robot.shape.outlineMm.push([-80, -75]),
    fork,
  ),
  bad(
    "outline-too-small",
    "robot.ground.outlineMm",
    "an outline in centimetres",
    (f) =>
      (f.robot.ground.outlineMm = [
        [-8, -7],
        [9, -7],
        [9, 7],
        [-8, 7],
      ]),
    fork,
  ),
  bad("no-pusher", "robot.shape.pusherEdges", "no edge", (f) => (f.robot.shape.pusherEdges = []), fork),
  bad(
    "repeated-edge",
    "robot.shape.pusherEdges",
    "an edge twice",
    (f) => f.robot.shape.pusherEdges.push(5),
    fork,
  ),
  bad(
    "robot-wider-than-doorway",
    "robot.shape",
    "a plate wider than the doorway",
    (f) => {
      f.robot.shape.plateWidthMm = 300;
      f.robot.entry.insetMm = 0;
    },
    plate,
  ),
];
