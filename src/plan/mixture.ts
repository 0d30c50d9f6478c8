import { closingRuns, cornerPushes } from "./closing.ts";
import { closingLanes } from "./closingLanes.ts";
import { coded, combinations, counted, type Family, listed, type Variant } from "./family.ts";
import { bows } from "./fan.ts";
import { hooks } from "./herd.ts";
import type { PushRun } from "./pushRun.ts";
import { rings } from "./rings.ts";
import type { Scene } from "./scene.ts";
import { mow } from "./toAndFro.ts";

const SEARCHES = ["hooks", "ring", "lanes", "mow"] as const;

interface Choice {
  readonly search: (typeof SEARCHES)[number];
  readonly bowsEach: number;
  readonly squareUps: boolean;
  readonly berthMm: number;
}

const NAMES: Readonly<Record<Choice["search"], string>> = {
  hooks: "hooks along the walls",
  ring: "one lap along the walls",
  lanes: "lanes to the closing wall",
  mow: "lanes to and fro",
};

/** Two patterns in one: a search along the walls or in lanes, then a fan that brings the rest in. */
export const MIXTURE: Family = {
  id: "mix",
  pattern: "Mixture",
  variants: combinations({
    search: SEARCHES,
    bowsEach: [1, 2],
    squareUps: [false, true],
    berthMm: [0, 20],
  }).map(variant),
};

function variant(choice: Choice): Variant {
  const { search, bowsEach, squareUps, berthMm } = choice;
  return {
    code: coded(search, `n${2 * bowsEach + 1}`, squareUps ? "q" : "", berthMm > 0 ? "w" : ""),
    label: listed(
      `${NAMES[search]}, then ${counted(2 * bowsEach + 1, "push", "pushes")} of a fan`,
      squareUps ? "squares up" : "",
      berthMm > 0 ? "wide berth" : "",
    ),
    params: { search, fanPushes: 2 * bowsEach + 1, squareUps, berthMm },
    longFirst: true,
    extraBerthMm: berthMm,
    runs: (scene) => [...searchRuns(scene, choice), ...fanInside(scene, choice)],
  };
}

function searchRuns(scene: Scene, { search, squareUps }: Choice): readonly PushRun[] {
  switch (search) {
    case "hooks":
      return hooks(scene, { rounds: 1, radius: 1, squareUps, back: true });
    case "ring":
      return rings(scene, { side: "x", laps: 1, radius: 0.5, squareUps });
    case "lanes":
      return [...closingLanes(scene, 0.9, squareUps), ...closingRuns(scene, 1, squareUps)];
    case "mow":
      return [mow(scene, 0.9, squareUps)];
    default:
      return search satisfies never;
  }
}

/** The bows of a fan that stay inside what was searched along the walls. */
function fanInside(scene: Scene, { bowsEach, squareUps }: Choice): readonly PushRun[] {
  // One more per side than wanted, of which the outermost is left out.
  const all = bows(scene, bowsEach + 1, squareUps);
  return [...all.slice(0, 2 * bowsEach + 1), ...cornerPushes(scene, 1)];
}
