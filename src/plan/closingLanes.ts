import { patternTexts } from "../texts/english/pattern.ts";
import { farWallOf } from "./closing.ts";
import { combinations, type Family, type Variant } from "./family.ts";
import { type LaneChoice, laneVariant } from "./laneVariant.ts";
import type { PushRun } from "./pushRun.ts";
import { laneAsides, laneRun } from "./routes.ts";
import type { Scene } from "./scene.ts";

/** Parallel lanes that each end at the closing wall; then runs along the closing walls into the corner, and a square push. */
export const CLOSING_LANES: Family = {
  id: "close",
  get pattern() {
    return patternTexts.names.closing;
  },
  variants: combinations({
    longFirst: [true, false],
    spacing: [0.8],
    closing: [2, 3],
    squareUps: [false, true],
  }).map(variant),
};

function variant(choice: LaneChoice): Variant {
  return laneVariant(
    choice,
    () => patternTexts.squaresLane,
    (scene, spacing) => closingLanes(scene, spacing, choice.squareUps),
  );
}

/** Farthest lane first. */
export function closingLanes(scene: Scene, spacing: number, squareUps: boolean): readonly PushRun[] {
  return [...laneAsides(scene, "x", spacing)]
    .reverse()
    .map((aside) =>
      laneRun(scene, "x", aside, false, { retreat: "back", squareUps: squareUps ? farWallOf("x") : [] }),
    );
}
