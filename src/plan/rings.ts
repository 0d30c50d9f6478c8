import { closingRuns, cornerPushes } from "./closing.ts";
import { coded, combinations, counted, type Family, listed, percent, type Variant } from "./family.ts";
import { pusherWidthMm, type Side } from "./place.ts";
import type { PushRun } from "./pushRun.ts";
import { ringRun } from "./ring.ts";
import { bowRun } from "./routes.ts";
import type { Scene } from "./scene.ts";

interface Choice {
  readonly side: Side;
  readonly laps: number;
  readonly radius: number;
  readonly squareUps: boolean;
}

const LISTS = {
  side: ["x", "y"],
  laps: [2],
  radius: [0.5, 0.9],
  squareUps: [false, true],
} as const;

/** Laps all round, each carried onto the wedge, the first along the walls and each next one farther in; the middle last. */
export const RINGS_IN: Family = {
  id: "ringin",
  pattern: "Rings inward",
  variants: combinations(LISTS).map((choice) => variant(choice, true)),
};

/** The same from the middle out. */
export const RINGS_OUT: Family = {
  id: "ringout",
  pattern: "Rings outward",
  variants: combinations(LISTS).map((choice) => variant(choice, false)),
};

/** One lap along the walls and nothing else: the honest baseline. */
export const WALL_LOOP: Family = {
  id: "loop",
  pattern: "Wall loop only",
  variants: combinations({ side: ["x", "y"] as const, closing: [0, 2], squareUps: [false, true] }).map(
    loopVariant,
  ),
};

function variant(choice: Choice, inward: boolean): Variant {
  const { side, laps, radius, squareUps } = choice;
  const way = side === "x" ? "long" : "short";
  return {
    code: coded(way, `n${laps}`, `r${percent(radius)}`, squareUps ? "q" : ""),
    label: listed(
      counted(laps, "lap"),
      `${way} closing wall first`,
      radius < 0.7 ? "tight corners" : "wide corners",
      squareUps ? "squares up at each corner" : "",
    ),
    params: { firstWall: way, laps, radiusShare: radius, squareUps },
    longFirst: true,
    extraBerthMm: 10,
    runs: (scene) => {
      const all = [...rings(scene, choice), bowRun(scene, "x", 0)];
      return inward ? all : all.reverse();
    },
  };
}

/** Laps, outermost first. */
export function rings(scene: Scene, { side, laps, radius, squareUps }: Choice): readonly PushRun[] {
  const step = 0.85 * pusherWidthMm(scene);
  const radiusMm = radius * scene.reach.tipRadiusMm;
  return Array.from({ length: laps }, (_, lap) =>
    ringRun(scene, { side, insetMm: lap * step, radiusMm, squareUps }),
  );
}

function loopVariant(choice: {
  readonly side: Side;
  readonly closing: number;
  readonly squareUps: boolean;
}): Variant {
  const { side, closing, squareUps } = choice;
  const way = side === "x" ? "long" : "short";
  return {
    code: coded(way, `c${closing}`, squareUps ? "q" : ""),
    label: listed(
      `${way} closing wall first`,
      closing > 0 ? counted(closing, "closing wall run") : "",
      squareUps ? "squares up at each corner" : "",
    ),
    params: { firstWall: way, closingRuns: closing, squareUps },
    longFirst: true,
    extraBerthMm: 0,
    runs: (scene) => [
      ...rings(scene, { side, laps: 1, radius: 0.9, squareUps }),
      ...closingRuns(scene, closing, squareUps),
      ...cornerPushes(scene, 1),
    ],
  };
}
