import { patternTexts } from "../texts/english/pattern.ts";
import { closingRuns } from "./closing.ts";
import { closingLanes } from "./closingLanes.ts";
import type { Dials } from "./dial.ts";
import { coded, combinations, type Family, listed, type Variant } from "./family.ts";
import { bows } from "./fan.ts";
import { hook, RADIUS } from "./herd.ts";
import { pusherWidthMm, roundsToMiddle, type Side } from "./place.ts";
import type { PushRun } from "./pushRun.ts";
import { rings, TIGHT } from "./rings.ts";
import { bowRun } from "./routes.ts";
import type { Scene } from "./scene.ts";
import { mow } from "./toAndFro.ts";

interface Choice {
  readonly first: "hooks" | "lap" | "lanes" | "mow";
  readonly inside: "rings" | "fan";
  /** Side of the first hook. */
  readonly side: Side;
  readonly closing: number;
  readonly squareUps: boolean;
}

/** Share of the pusher's width by which rings lie inside what was swept along the walls. */
const SPACING = 0.77;
/** The same for lanes. */
const LANE_SPACING = 0.9;

/** Two patterns in one: a search along the walls or in lanes, then rings or a fan for what lies inside; closing wall runs last. */
export const MIXTURE: Family = {
  id: "mix",
  get pattern() {
    return patternTexts.names.mix;
  },
  variants: [
    ...combinations({
      first: ["hooks"] as const,
      inside: ["rings", "fan"] as const,
      side: ["x", "y"] as const,
      closing: [0, 2],
      squareUps: [true, false],
    }),
    ...combinations({
      first: ["lap", "lanes", "mow"] as const,
      inside: ["fan"] as const,
      side: ["x"] as const,
      closing: [0, 2],
      squareUps: [true],
    }),
  ].map(variant),
};

function variant(choice: Choice): Variant {
  const { first, inside, side, closing, squareUps } = choice;
  const way = side === "x" ? "long" : "short";
  return {
    code: coded(first, inside, way, `c${closing}`, squareUps ? "q" : ""),
    get label() {
      return listed(
        patternTexts.twoParts(patternTexts.first[first], inside === "rings"),
        first === "hooks" ? patternTexts.firstWall(side === "x") : "",
        closing > 0 ? patternTexts.closings(closing) : "",
        squareUps ? patternTexts.squares : "",
      );
    },
    params: { first, inside, firstWall: way, closingRuns: closing, squareUps },
    longFirst: true,
    extraBerthMm: 0,
    dials: dialsOf(choice),
    runs: (scene, dials) => [
      ...firstRuns(scene, choice, dials),
      ...insideRuns(scene, choice, dials),
      ...closingRuns(scene, closing, false),
    ],
  };
}

/** Hooks have a radius, rings inside a spacing, lanes too. */
function dialsOf({ first, inside }: Choice): Dials {
  return {
    ...(first === "hooks" ? { radiusFrac: RADIUS } : {}),
    ...(inside === "rings" ? { spacingFrac: SPACING } : {}),
    ...(first === "lanes" || first === "mow" ? { spacingFrac: LANE_SPACING } : {}),
  };
}

function firstRuns(scene: Scene, { first, side, squareUps }: Choice, dials: Dials): readonly PushRun[] {
  const { radiusFrac: radius = RADIUS, spacingFrac = LANE_SPACING } = dials;
  const straight = bowRun(scene, "x", 0);
  switch (first) {
    case "hooks":
      // Back the way it came until the straight way has been swept.
      return [
        hook(scene, side, 0, { squareUps, back: true, radius }),
        straight,
        hook(scene, side === "x" ? "y" : "x", 0, { squareUps, back: false, radius }),
      ];
    case "lap":
      return [...rings(scene, 0, 1, { side, squareUps }, TIGHT), straight];
    case "lanes":
      return [...closingLanes(scene, spacingFrac, squareUps), straight];
    case "mow":
      return [mow(scene, spacingFrac, squareUps), straight];
    default:
      return first satisfies never;
  }
}

/** Inside what was searched along the walls: rings, or the narrow bows of a fan. */
function insideRuns(scene: Scene, { inside, squareUps }: Choice, dials: Dials): readonly PushRun[] {
  switch (inside) {
    case "rings": {
      const { spacingFrac = SPACING } = dials;
      const laps = roundsToMiddle(scene, spacingFrac * pusherWidthMm(scene));
      return rings(scene, 1, Math.max(2, laps), { side: "x", squareUps }, TIGHT, spacingFrac);
    }
    case "fan":
      return bows(scene, 3, squareUps).slice(1, 5);
    default:
      return inside satisfies never;
  }
}
