import { type BadFile, bad } from "./badFile.ts";

const fork = "five-mixed-balls.json";
const fixed = "practice-layout.json";

export const FIELDS: readonly BadFile[] = [
  bad("missing-key", "zone", "no zone", (f) => delete f.zone),
  bad("missing-key", "zone.wedge.legXMm", "no leg", (f) => delete f.zone.wedge.legXMm),
  bad("missing-key", "balls", "no balls", (f) => delete f.balls),
  bad("missing-key", "robot.shape.kind", "no kind", (f) => delete f.robot.shape.kind),
  bad(
    "missing-key",
    "balls[0].name",
    "neither preset nor name",
    (f) => (f.balls[0] = { diameterMm: 40, massKg: 0.01, build: "solid" }),
  ),
  bad("wrong-type", "zone.widthMm", "a number in quotes", (f) => (f.zone.widthMm = "1200")),
  bad("wrong-type", "zone.wedge", "a list for an object", (f) => (f.zone.wedge = [])),
  bad("wrong-type", "zone.keepOuts", "an object for a list", (f) => (f.zone.keepOuts = {})),
  bad("wrong-type", "zone.keepOuts[0]", "null for a rectangle", (f) => (f.zone.keepOuts = [null])),
  bad("wrong-type", "robot.climbsWedge", "a word for true", (f) => (f.robot.climbsWedge = "yes")),
  bad("wrong-type", "name", "a number for a name", (f) => (f.name = 7)),
  bad("wrong-type", "rules.delivered", "a flag for a word", (f) => (f.rules.delivered = true)),
  bad(
    "wrong-type",
    "rules.layout.positionsMm[1]",
    "three coordinates",
    (f) => f.rules.layout.positionsMm[1].push(0),
    fixed,
  ),
  bad(
    "wrong-type",
    "robot.shape.outlineMm[2]",
    "a point as an object",
    (f) => (f.robot.shape.outlineMm[2] = { x: 1, y: 2 }),
    fork,
  ),
  bad("out-of-range", "zone.widthMm", "a zone in metres", (f) => (f.zone.widthMm = 1.2)),
  bad("out-of-range", "zone.heightMm", "a zone of a kilometre", (f) => (f.zone.heightMm = 1e6)),
  bad("out-of-range", "balls[0].massKg", "a ball without mass", (f) => (f.balls[0].massKg = 0)),
  bad(
    "out-of-range",
    "robot.shape.armAngleDeg",
    "radians beyond sense",
    (f) => (f.robot.shape.armAngleDeg = 100),
  ),
  bad(
    "out-of-range",
    "robot.shape.pusherEdges[0]",
    "an edge that is not there",
    (f) => (f.robot.shape.pusherEdges = [14]),
    fork,
  ),
  bad(
    "out-of-range",
    "robot.shape.outlineMm[0][1]",
    "a point far away",
    (f) => (f.robot.shape.outlineMm[0][1] = 1e7),
    fork,
  ),
  bad("not-whole", "balls[0].count", "half a ball", (f) => (f.balls[0].count = 1.5)),
  bad("text-too-long", "name", "a novel", (f) => (f.name = "x".repeat(121))),
  bad("bad-text", "robot.name", "a terminal's escape code", (f) => (f.robot.name = "\u001b[31mred")),
  bad("bad-text", "name", "a line break in a name", (f) => (f.name = "a\nb")),
  bad(
    "unknown-choice",
    "zone.wedge.corner",
    "a corner turned round",
    (f) => (f.zone.wedge.corner = "right-upper"),
  ),
  bad("unknown-choice", "balls[0].preset", "a preset nobody knows", (f) => (f.balls[0].preset = "cannon")),
  bad("unknown-key", "zone.widthMM", "a slip in a key", (f) => (f.zone.widthMM = 5)),
  bad(
    "unknown-key",
    "robot.shape.plateWidthMm",
    "a plate's key on arms",
    (f) => (f.robot.shape.plateWidthMm = 5),
  ),
  bad(
    "unknown-key",
    "rules.layout.forbidden",
    "regions in a fixed layout",
    (f) => (f.rules.layout.forbidden = []),
    fixed,
  ),
  bad("too-many-entries", "zone.keepOuts", "17 keep-outs", (f) => (f.zone.keepOuts = Array(17).fill(0))),
  bad(
    "too-many-entries",
    "robot.shape.outlineMm",
    "65 points",
    (f) => (f.robot.shape.outlineMm = Array(65).fill([0, 0])),
    fork,
  ),
  bad("empty-list", "settings.speedFracs", "no speed", (f) => (f.settings.speedFracs = [])),
  bad("repeated-value", "settings.speedFracs", "a speed twice", (f) => (f.settings.speedFracs = [0.5, 0.5])),
  bad(
    "opposite-signs",
    "routines[0].moves[0].overrunMm",
    "an overrun backward after a way forward",
    (file) => {
      file.routines = [
        { id: "a", moves: [{ kind: "toWall", distanceMm: 300, overrunMm: -20, speedMmPerS: 100 }] },
      ];
    },
  ),
];
