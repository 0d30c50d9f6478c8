import { type BadFile, bad } from "./badFile.ts";

const fixed = "practice-layout.json";

export const BALLS: readonly BadFile[] = [
  bad("no-balls", "balls", "an empty list", (f) => (f.balls = [])),
  bad(
    "too-many-balls",
    "balls",
    "13 balls in two groups",
    (f) =>
      (f.balls = [
        { preset: "golf", count: 6 },
        { preset: "pool", count: 7 },
      ]),
  ),
  bad("lip-too-high", "zone.wedge.lipMm", "a lip as high as the ball's centre", (f) => {
    f.zone.wedge = { ...f.zone.wedge, lipMm: 20, riseMm: 20 };
  }),
  bad("wedge-too-small", "balls[0]", "a ball too large for the wedge", (f) => {
    f.zone.wedge = { ...f.zone.wedge, legXMm: 39, legYMm: 39 };
  }),
  bad("wedge-too-small", "balls[0]", "a ball that cannot lie wholly on the wedge", (f) => {
    f.zone.wedge = { ...f.zone.wedge, legXMm: 68, legYMm: 68 };
    f.rules.delivered = "wholly";
  }),
  bad(
    "balls-do-not-fit",
    "rules.layout",
    "gaps larger than the zone",
    (f) => (f.rules.layout.spacingMm = 2000),
  ),
  bad("balls-do-not-fit", "rules.layout", "a zone forbidden all over", (f) => {
    f.rules.layout.forbidden = [{ xMm: 0, yMm: 0, widthMm: 1200, heightMm: 900 }];
  }),
  bad("balls-do-not-fit", "rules.layout", "a strip with room for two", (f) => {
    f.rules.layout.forbidden = [
      { xMm: 0, yMm: 0, widthMm: 1200, heightMm: 800 },
      { xMm: 200, yMm: 0, widthMm: 1000, heightMm: 900 },
    ];
    f.rules.layout.spacingMm = 60;
  }),
  bad(
    "positions-count",
    "rules.layout.positionsMm",
    "two places for three balls",
    (f) => f.rules.layout.positionsMm.pop(),
    fixed,
  ),
  bad(
    "ball-in-wall",
    "rules.layout.positionsMm[0]",
    "a ball in the wall",
    (f) => (f.rules.layout.positionsMm[0] = [19, 400]),
    fixed,
  ),
  bad(
    "ball-in-wall",
    "rules.layout.positionsMm[0]",
    "a ball in a keep-out",
    (f) => {
      f.zone.keepOuts = [{ xMm: 600, yMm: 400, widthMm: 60, heightMm: 60 }];
    },
    fixed,
  ),
  bad(
    "ball-on-robot",
    "rules.layout.positionsMm[0]",
    "a ball between the arms' roots",
    (f) => (f.rules.layout.positionsMm[0] = [160, 190]),
    fixed,
  ),
  bad(
    "balls-overlap",
    "rules.layout.positionsMm[1]",
    "two balls in one place",
    (f) => (f.rules.layout.positionsMm[1] = [620, 469]),
    fixed,
  ),
];
