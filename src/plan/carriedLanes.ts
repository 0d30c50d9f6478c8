import { patternTexts } from "../texts/english/pattern.ts";
import { farWallOf } from "./closing.ts";
import { coded, combinations, type Family, listed, percent, type Variant } from "./family.ts";
import type { PushRun } from "./pushRun.ts";
import { laneAsides, laneRun } from "./routes.ts";
import type { Scene } from "./scene.ts";

interface Choice {
  readonly longFirst: boolean;
  readonly spacing: number;
  readonly squareUps: boolean;
}

/** Parallel lanes from the far wall, each carried on to the wedge; back the same way, then the next one, outermost first. */
export const CARRIED_LANES: Family = {
  id: "carry",
  get pattern() {
    return patternTexts.names.carried;
  },
  variants: combinations({
    longFirst: [true, false],
    spacing: [0.75, 0.95],
    squareUps: [false, true],
  }).map(variant),
};

function variant(choice: Choice): Variant {
  const { longFirst, spacing, squareUps } = choice;
  const side = longFirst ? "long" : "short";
  return {
    code: coded(side, `s${percent(spacing)}`, squareUps ? "q" : ""),
    get label() {
      return listed(
        patternTexts.along(longFirst),
        patternTexts.apart(percent(spacing)),
        squareUps ? patternTexts.squaresEach : "",
      );
    },
    params: { side, spacingFrac: spacing, squareUps },
    longFirst,
    extraBerthMm: 0,
    dials: { spacingFrac: spacing },
    runs: (scene, { spacingFrac = spacing }) => lanes(scene, spacingFrac, squareUps),
  };
}

function lanes(scene: Scene, spacing: number, squareUps: boolean): readonly PushRun[] {
  return [...laneAsides(scene, "x", spacing)]
    .reverse()
    .map((aside) =>
      laneRun(scene, "x", aside, true, { retreat: "back", squareUps: squareUps ? farWallOf("x") : [] }),
    );
}
