import { patternTexts } from "../texts/english/pattern.ts";
import { cornerPushes } from "./closing.ts";
import { coded, combinations, type Family, listed, type Variant } from "./family.ts";
import { curveMm, pusherWidthMm, roundsToMiddle, type Side } from "./place.ts";
import type { PushRun } from "./pushRun.ts";
import { ringRun } from "./ring.ts";
import { bowRun } from "./routes.ts";
import type { Scene } from "./scene.ts";

interface Choice {
  readonly side: Side;
  readonly squareUps: boolean;
}

const LISTS = { side: ["x", "y"], squareUps: [true, false] } as const;

/** Radius of a lap's corners, in tip radii: wide for laps that follow one another, tight for one inside hooks. */
const WIDE = 0.9;
export const TIGHT = 0.5;

/** Share of the pusher's width that two neighbouring laps are apart. */
const SPACING = 0.85;

/** Laps all round, each carried onto the wedge, the first along the walls and each next one farther in; the middle last. */
export const RINGS_IN: Family = {
  id: "ringin",
  get pattern() {
    return patternTexts.names.ringin;
  },
  variants: combinations(LISTS).map((choice) => variant(choice, true)),
};

/** The same from the middle out. */
export const RINGS_OUT: Family = {
  id: "ringout",
  get pattern() {
    return patternTexts.names.ringout;
  },
  variants: combinations(LISTS).map((choice) => variant(choice, false)),
};

/** One lap along the walls and nothing else: the honest baseline. */
export const WALL_LOOP: Family = {
  id: "loop",
  get pattern() {
    return patternTexts.names.loop;
  },
  variants: combinations(LISTS).map(loopVariant),
};

function variant(choice: Choice, inward: boolean): Variant {
  const { side, squareUps } = choice;
  const way = side === "x" ? "long" : "short";
  return {
    code: coded(way, squareUps ? "q" : ""),
    get label() {
      return listed(patternTexts.firstWall(side === "x"), squareUps ? patternTexts.squaresCorner : "");
    },
    params: { firstWall: way, squareUps },
    longFirst: true,
    extraBerthMm: 8,
    dials: { spacingFrac: SPACING, radiusFrac: WIDE },
    runs: (scene, { spacingFrac = SPACING, radiusFrac = WIDE }) => {
      const laps = roundsToMiddle(scene, spacingFrac * pusherWidthMm(scene));
      const all = [...rings(scene, 0, laps, choice, radiusFrac, spacingFrac), bowRun(scene, "x", 0)];
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
  radius = WIDE,
  spacing = SPACING,
): readonly PushRun[] {
  const step = spacing * pusherWidthMm(scene);
  const radiusMm = curveMm(scene, radius);
  return Array.from({ length: Math.max(0, to - from) }, (_, i) =>
    ringRun(scene, {
      side: choice.side,
      insetMm: (from + i) * step,
      radiusMm,
      squareUps: choice.squareUps,
    }),
  );
}

function loopVariant({ side, squareUps }: Choice): Variant {
  const way = side === "x" ? "long" : "short";
  return {
    code: coded(way, squareUps ? "q" : ""),
    get label() {
      return listed(patternTexts.firstWall(side === "x"), squareUps ? patternTexts.squaresCorner : "");
    },
    params: { firstWall: way, squareUps },
    longFirst: true,
    extraBerthMm: 0,
    dials: { radiusFrac: WIDE },
    runs: (scene, { radiusFrac = WIDE }) => [
      ...rings(scene, 0, 1, { side, squareUps }, radiusFrac),
      ...cornerPushes(scene, 1),
    ],
  };
}
