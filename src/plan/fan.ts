import { patternTexts } from "../texts/english/pattern.ts";
import { BOTH_FAR_WALLS, closingRuns } from "./closing.ts";
import { coded, combinations, type Family, listed, type Variant } from "./family.ts";
import type { Side } from "./place.ts";
import type { PushRun } from "./pushRun.ts";
import { bowRun } from "./routes.ts";
import type { Scene } from "./scene.ts";

interface Choice {
  readonly each: number;
  readonly closing: number;
  readonly squareUps: boolean;
}

/**
 * A fan of pushes from the far corner into the target corner: straight first, then in ever wider bows to both sides.
 * The way back is always the straight one, which is clear after the first push.
 */
export const FAN: Family = {
  id: "fan",
  get pattern() {
    return patternTexts.names.fan;
  },
  variants: combinations({
    each: [2, 3],
    closing: [0, 2],
    squareUps: [false, true],
  }).map(variant),
};

function variant(choice: Choice): Variant {
  const { each, closing, squareUps } = choice;
  const pushes = 2 * each + 1;
  return {
    code: coded(`n${pushes}`, `c${closing}`, squareUps ? "q" : ""),
    get label() {
      return listed(
        patternTexts.pushes(pushes),
        closing > 0 ? patternTexts.closings(closing) : "",
        squareUps ? patternTexts.squaresEach : "",
      );
    },
    params: { pushes, closingRuns: closing, squareUps },
    longFirst: true,
    extraBerthMm: 15,
    runs: (scene) => [...bows(scene, each, squareUps), ...closingRuns(scene, closing, squareUps)],
  };
}

/** The straight push and `each` bows to either side, from the inside out. */
export function bows(scene: Scene, each: number, squareUps: boolean): readonly PushRun[] {
  const options = { squareUps: squareUps ? BOTH_FAR_WALLS : [] };
  const sides: readonly Side[] = ["x", "y"];
  const wide = Array.from({ length: each }, (_, i) => (i + 1) / each);
  return [
    bowRun(scene, "x", 0, options),
    ...wide.flatMap((bow) => sides.map((side) => bowRun(scene, side, bow, options))),
  ];
}
