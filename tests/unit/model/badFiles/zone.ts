import { type BadFile, bad } from "./badFile.ts";

export const ZONE: readonly BadFile[] = [
  bad(
    "wedge-too-large",
    "zone.wedge.legXMm",
    "a leg longer than the zone",
    (f) => (f.zone.wedge.legXMm = 1201),
  ),
  bad(
    "wedge-profile",
    "zone.wedge.riseMm",
    "a flat mark with a rise",
    (f) => (f.zone.wedge = { ...f.zone.wedge, profile: "flat", lipMm: 0 }),
  ),
  bad(
    "wedge-profile",
    "zone.wedge.lipMm",
    "a flat mark with a lip",
    (f) => (f.zone.wedge = { ...f.zone.wedge, profile: "flat", riseMm: 0 }),
  ),
  bad("wedge-profile", "zone.wedge.riseMm", "a tray that rises", (f) => (f.zone.wedge.profile = "tray")),
  bad(
    "wedge-profile",
    "zone.wedge.riseMm",
    "a ramp that does not rise",
    (f) => (f.zone.wedge = { ...f.zone.wedge, profile: "ramp", riseMm: 1 }),
  ),
  bad("wedge-profile", "zone.wedge.riseMm", "a shelf that falls", (f) => (f.zone.wedge.riseMm = 0.5)),
  bad("wedge-profile", "zone.wedge.runMm", "a shelf that jumps", (f) => (f.zone.wedge.runMm = 0)),
  bad(
    "wedge-profile",
    "zone.wedge.runMm",
    "a shelf that never gets level",
    (f) => (f.zone.wedge.runMm = 213),
  ),
  bad(
    "doorway-outside-wall",
    "zone.doorway.centreMm",
    "a doorway around the corner",
    (f) => (f.zone.doorway.centreMm = 124),
  ),
  bad(
    "doorway-on-wedge",
    "zone.doorway.centreMm",
    "a doorway above the wedge",
    (f) => (f.zone.doorway = { wall: "top", centreMm: 790, widthMm: 250 }),
  ),
  bad(
    "keep-out-outside",
    "zone.keepOuts[0]",
    "a block in the wall",
    (f) => (f.zone.keepOuts = [{ xMm: 500, yMm: 850, widthMm: 60, heightMm: 60 }]),
  ),
  bad(
    "keep-out-on-wedge",
    "zone.keepOuts[0]",
    "a block on the wedge",
    (f) => (f.zone.keepOuts = [{ xMm: 1000, yMm: 700, widthMm: 60, heightMm: 60 }]),
  ),
  bad(
    "keep-out-in-doorway",
    "zone.keepOuts[0]",
    "a block in the doorway",
    (f) => (f.zone.keepOuts = [{ xMm: 280, yMm: 0, widthMm: 60, heightMm: 60 }]),
  ),
  bad(
    "keep-out-on-entry",
    "zone.keepOuts[0]",
    "a block under the robot",
    (f) => (f.zone.keepOuts = [{ xMm: 100, yMm: 60, widthMm: 60, heightMm: 60 }]),
  ),
  bad("robot-wider-than-doorway", "robot.shape", "a wide robot in the doorway", (f) => {
    f.zone.doorway.widthMm = 181;
    f.robot.entry.insetMm = 0;
  }),
  bad(
    "entry-in-wall",
    "robot.entry",
    "a robot in the doorpost",
    (f) => (f.robot.entry = { alongMm: 80, insetMm: 0, headingDeg: 0 }),
  ),
  bad("entry-in-wall", "robot.entry", "a robot through the far wall", (f) => (f.robot.entry.insetMm = 800)),
  bad(
    "entry-on-wedge",
    "robot.entry",
    "a robot on the wedge",
    (f) => (f.robot.entry = { alongMm: 780, insetMm: 740, headingDeg: 180 }),
  ),
  bad(
    "robot-cannot-turn",
    "robot.shape",
    "a block that leaves corridors only",
    (f) => (f.zone.keepOuts = [{ xMm: 300, yMm: 300, widthMm: 600, heightMm: 300 }]),
  ),
];
