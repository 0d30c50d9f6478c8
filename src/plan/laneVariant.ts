import { patternTexts } from "../texts/english/pattern.ts";
import { closingRuns, cornerPushes } from "./closing.ts";
import { coded, listed, percent, type Variant } from "./family.ts";
import type { PushRun } from "./pushRun.ts";
import type { Scene } from "./scene.ts";

/** What patterns of lanes that end in closing wall runs may choose. */
export interface LaneChoice {
  readonly longFirst: boolean;
  /** Distance of the lanes, share of the pusher's width. */
  readonly spacing: number;
  readonly closing: number;
  readonly squareUps: boolean;
}

/**
 * Lanes, then runs along the closing walls into the corner, and a square push.
 *
 * @param squareUpWords how the label says where the robot squares up
 */
export function laneVariant(
  choice: LaneChoice,
  squareUpWords: () => string,
  lanes: (scene: Scene, spacing: number) => readonly PushRun[],
): Variant {
  const { longFirst, spacing, closing, squareUps } = choice;
  const side = longFirst ? "long" : "short";
  return {
    code: coded(side, `s${percent(spacing)}`, `c${closing}`, squareUps ? "q" : ""),
    get label() {
      return listed(
        patternTexts.along(longFirst),
        patternTexts.apart(percent(spacing)),
        patternTexts.closings(closing),
        squareUps ? squareUpWords() : "",
      );
    },
    params: { side, spacingFrac: spacing, closingRuns: closing, squareUps },
    longFirst,
    extraBerthMm: 0,
    dials: { spacingFrac: spacing },
    runs: (scene, { spacingFrac = spacing }) => [
      ...lanes(scene, spacingFrac),
      ...closingRuns(scene, closing, squareUps),
      ...cornerPushes(scene, 1),
    ],
  };
}
