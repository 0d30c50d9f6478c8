import { closingRuns } from "./closing.ts";
import { closingLanes } from "./closingLanes.ts";
import { coded, combinations, counted, type Family, listed, type Variant } from "./family.ts";
import { bows } from "./fan.ts";
import { hooks } from "./herd.ts";
import { pusherWidthMm, roundsToMiddle } from "./place.ts";
import type { PushRun } from "./pushRun.ts";
import { rings } from "./rings.ts";
import type { Scene } from "./scene.ts";
import { mow } from "./toAndFro.ts";

interface Choice {
  readonly first: "hooks" | "lap" | "lanes" | "mow";
  readonly inside: "rings" | "fan";
  readonly closing: number;
  readonly squareUps: boolean;
}

const FIRST_NAMES: Readonly<Record<Choice["first"], string>> = {
  hooks: "a hook along the walls on either side",
  lap: "one lap along the walls",
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
      closing: [0, 1, 2],
      squareUps: [true, false],
    }),
    ...combinations({
      first: ["lap", "lanes", "mow"] as const,
      inside: ["fan"] as const,
      closing: [0, 2],
      squareUps: [true],
    }),
  ].map(variant),
};

function variant(choice: Choice): Variant {
  const { first, inside, closing, squareUps } = choice;
  return {
    code: coded(first, inside, `c${closing}`, squareUps ? "q" : ""),
    label: listed(
      `${FIRST_NAMES[first]}, then ${inside === "rings" ? "rings farther in" : "a fan"}`,
      closing > 0 ? counted(closing, "closing wall run") : "",
      squareUps ? "squares up" : "",
    ),
    params: { first, inside, closingRuns: closing, squareUps },
    longFirst: true,
    extraBerthMm: 0,
    runs: (scene) => [
      ...firstRuns(scene, choice),
      ...insideRuns(scene, choice),
      ...closingRuns(scene, closing, squareUps),
    ],
  };
}

function firstRuns(scene: Scene, { first, squareUps }: Choice): readonly PushRun[] {
  switch (first) {
    case "hooks":
      return hooks(scene, 1, squareUps, true);
    case "lap":
      return rings(scene, 0, 1, { side: "x", radius: 0.5, squareUps });
    case "lanes":
      return closingLanes(scene, 0.9, squareUps);
    case "mow":
      return [mow(scene, 0.9, squareUps)];
    default:
      return first satisfies never;
  }
}

/** Inside what was searched along the walls: the straight push, then rings or narrow bows. */
function insideRuns(scene: Scene, { inside, squareUps }: Choice): readonly PushRun[] {
  const step = 0.85 * pusherWidthMm(scene);
  const [straight, ...narrow] = bows(scene, 3, squareUps).slice(0, 5);
  if (straight === undefined) return [];
  switch (inside) {
    case "rings": {
      const laps = roundsToMiddle(scene, step);
      return [straight, ...rings(scene, 1, Math.max(2, laps), { side: "x", radius: 0.5, squareUps })];
    }
    case "fan":
      return [straight, ...narrow];
    default:
      return inside satisfies never;
  }
}
