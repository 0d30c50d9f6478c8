import { closingRuns, cornerPushes } from "./closing.ts";
import { coded, combinations, counted, type Family, listed, percent, type Variant } from "./family.ts";
import { pusherWidthMm, roundsToMiddle, type Side } from "./place.ts";
import type { PushRun } from "./pushRun.ts";
import { ringRun } from "./ring.ts";
import { bowRun } from "./routes.ts";
import type { Scene } from "./scene.ts";

interface Choice {
  readonly side: Side;
  readonly radius: number;
  readonly squareUps: boolean;
}

const LISTS = { side: ["x", "y"], radius: [0.5, 0.9], squareUps: [true, false] } as const;

/** Share of the pusher's width that two neighbouring laps are apart. */
const SPACING = 0.85;

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
  variants: combinations({ side: ["x", "y"] as const, closing: [0], squareUps: [false, true] }).map(
    loopVariant,
  ),
};

function variant(choice: Choice, inward: boolean): Variant {
  const { side, radius, squareUps } = choice;
  const way = side === "x" ? "long" : "short";
  return {
    code: coded(way, `r${percent(radius)}`, squareUps ? "q" : ""),
    label: listed(
      `${way} closing wall first`,
      radius < 0.7 ? "tight corners" : "wide corners",
      squareUps ? "squares up at each corner" : "",
    ),
    params: { firstWall: way, radiusShare: radius, squareUps },
    longFirst: true,
    extraBerthMm: 8,
    runs: (scene) => {
      const laps = roundsToMiddle(scene, SPACING * pusherWidthMm(scene));
      const all = [...rings(scene, 0, laps, choice), bowRun(scene, "x", 0)];
      return inward ? all : all.reverse();
    },
  };
}

/** Laps `from` … `to` − 1, counted from the walls inward. */
export function rings(
  scene: Scene,
  from: number,
  to: number,
  choice: Choice,
  spacing = SPACING,
): readonly PushRun[] {
  const step = spacing * pusherWidthMm(scene);
  const radiusMm = choice.radius * scene.reach.tipRadiusMm;
  return Array.from({ length: Math.max(0, to - from) }, (_, i) =>
    ringRun(scene, {
      side: choice.side,
      insetMm: (from + i) * step,
      radiusMm,
      squareUps: choice.squareUps,
    }),
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
      ...rings(scene, 0, 1, { side, radius: 0.9, squareUps }),
      ...closingRuns(scene, closing, squareUps),
      ...cornerPushes(scene, 1),
    ],
  };
}
