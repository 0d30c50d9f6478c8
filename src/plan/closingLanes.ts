import { closingRuns, cornerPushes, farWallOf } from "./closing.ts";
import { coded, combinations, counted, type Family, listed, percent, type Variant } from "./family.ts";
import type { PushRun } from "./pushRun.ts";
import { laneAsides, laneRun } from "./routes.ts";
import type { Scene } from "./scene.ts";

interface Choice {
  readonly longFirst: boolean;
  readonly spacing: number;
  readonly closing: number;
  readonly squareUps: boolean;
}

/** Parallel lanes that each end at the closing wall; then runs along the closing walls into the corner, and a square push. */
export const CLOSING_LANES: Family = {
  id: "close",
  pattern: "Lanes to the closing wall",
  variants: combinations({
    longFirst: [true, false],
    spacing: [0.8],
    closing: [2, 3],
    squareUps: [false, true],
  }).map(variant),
};

function variant(choice: Choice): Variant {
  const { longFirst, spacing, closing, squareUps } = choice;
  const side = longFirst ? "long" : "short";
  return {
    code: coded(side, `s${percent(spacing)}`, `c${closing}`, squareUps ? "q" : ""),
    label: listed(
      `along the ${side} side`,
      `${percent(spacing)} % of the pusher apart`,
      counted(closing, "closing wall run"),
      squareUps ? "squares up before each lane" : "",
    ),
    params: { side, spacingFrac: spacing, closingRuns: closing, squareUps },
    longFirst,
    extraBerthMm: 0,
    runs: (scene) => [
      ...closingLanes(scene, spacing, squareUps),
      ...closingRuns(scene, closing, squareUps),
      ...cornerPushes(scene, 1),
    ],
  };
}

/** Farthest lane first. */
export function closingLanes(scene: Scene, spacing: number, squareUps: boolean): readonly PushRun[] {
  return [...laneAsides(scene, "x", spacing)]
    .reverse()
    .map((aside) =>
      laneRun(scene, "x", aside, false, { retreat: "back", squareUps: squareUps ? farWallOf("x") : [] }),
    );
}
