import { closingRuns } from "./closing.ts";
import { closingLanes } from "./closingLanes.ts";
import { coded, combinations, counted, type Family, listed, type Variant } from "./family.ts";
import { bows } from "./fan.ts";
import { hook } from "./herd.ts";
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

const FIRST_NAMES: Readonly<Record<Choice["first"], string>> = {
  hooks: "hooks along the walls",
  lap: "a lap along the walls",
  lanes: "lanes to the closing wall",
  mow: "lanes to and fro",
};

/** Two patterns in one: a search along the walls or in lanes, then rings or a fan for what lies inside; closing wall runs last. */
export const MIXTURE: Family = {
  id: "mix",
  pattern: "Mixture",
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
    label: listed(
      `${FIRST_NAMES[first]}, then ${inside === "rings" ? "rings farther in" : "a fan"}`,
      first === "hooks" ? `${way} closing wall first` : "",
      closing > 0 ? counted(closing, "closing wall run") : "",
      squareUps ? "squares up" : "",
    ),
    params: { first, inside, firstWall: way, closingRuns: closing, squareUps },
    longFirst: true,
    extraBerthMm: 0,
    runs: (scene) => [
      ...firstRuns(scene, choice),
      ...insideRuns(scene, choice),
      ...closingRuns(scene, closing, false),
    ],
  };
}

function firstRuns(scene: Scene, { first, side, squareUps }: Choice): readonly PushRun[] {
  const straight = bowRun(scene, "x", 0);
  switch (first) {
    case "hooks":
      // Back the way it came until the straight way has been swept.
      return [
        hook(scene, side, 0, squareUps, true),
        straight,
        hook(scene, side === "x" ? "y" : "x", 0, squareUps, false),
      ];
    case "lap":
      return [...rings(scene, 0, 1, { side, squareUps }, TIGHT), straight];
    case "lanes":
      return [...closingLanes(scene, 0.9, squareUps), straight];
    case "mow":
      return [mow(scene, 0.9, squareUps), straight];
    default:
      return first satisfies never;
  }
}

/** Inside what was searched along the walls: rings, or the narrow bows of a fan. */
function insideRuns(scene: Scene, { inside, squareUps }: Choice): readonly PushRun[] {
  switch (inside) {
    case "rings": {
      const laps = roundsToMiddle(scene, SPACING * pusherWidthMm(scene));
      return rings(scene, 1, Math.max(2, laps), { side: "x", squareUps }, TIGHT, SPACING);
    }
    case "fan":
      return bows(scene, 3, squareUps).slice(1, 5);
    default:
      return inside satisfies never;
  }
}
