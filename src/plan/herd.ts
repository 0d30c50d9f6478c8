import { patternTexts } from "../texts/english/pattern.ts";
import { BOTH_FAR_WALLS, closingRuns } from "./closing.ts";
import { coded, combinations, type Family, listed, type Variant } from "./family.ts";
import { curveMm, pusherWidthMm, roundsToMiddle, type Side } from "./place.ts";
import type { PushRun } from "./pushRun.ts";
import { bowRun, hookRun } from "./routes.ts";
import type { Scene } from "./scene.ts";

interface Choice {
  /** Rounds, counted from the walls inward: as many as reach the middle, or one less. */
  readonly rounds: "all" | "outer";
  readonly squareUps: boolean;
  readonly back: boolean;
  readonly closing: number;
}

/** Share of the pusher's width that two neighbouring rounds are apart. */
const SPACING = 0.85;
/** Radius of the corners, in tip radii: a wider one leaves more of the zone's corner out, a tighter one more of the wall after it. */
export const RADIUS = 0.6;

/**
 * Inward herding spiral: hooks along the far wall and the closing wall onto the wedge, by turns on both sides, each
 * round one pusher's width farther in, and the straight way last. It shrinks toward the target corner.
 */
export const HERD: Family = {
  id: "herd",
  get pattern() {
    return patternTexts.names.herd;
  },
  variants: combinations({
    rounds: ["all", "outer"] as const,
    squareUps: [true, false],
    back: [true, false],
    closing: [0, 2],
  }).map(variant),
};

function variant(choice: Choice): Variant {
  const { rounds, squareUps, back, closing } = choice;
  return {
    code: coded(rounds, `c${closing}`, squareUps ? "q" : "", back ? "b" : ""),
    get label() {
      return listed(
        rounds === "all" ? patternTexts.toMiddle : patternTexts.allButInner,
        back ? patternTexts.backSameWay : patternTexts.backStraight,
        closing > 0 ? patternTexts.closings(closing) : "",
        squareUps ? patternTexts.squaresHook : "",
      );
    },
    params: { rounds, squareUps, back, closingRuns: closing },
    longFirst: true,
    extraBerthMm: 8,
    dials: { spacingFrac: SPACING, radiusFrac: RADIUS },
    runs: (scene, { spacingFrac = SPACING, radiusFrac = RADIUS }) => {
      const step = spacingFrac * pusherWidthMm(scene);
      const all = roundsToMiddle(scene, step);
      const count = rounds === "all" ? all : Math.max(1, all - 1);
      const straight = bowRun(scene, "x", 0);
      const insets = Array.from({ length: count }, (_, round) => round * step);
      const around = hooks(scene, insets, { squareUps, back, radius: radiusFrac });
      // Without the way back along each hook, the straight way back has to be swept first.
      const search = back ? [...around, straight] : [straight, ...around];
      return [...search, ...closingRuns(scene, closing, squareUps)];
    },
  };
}

/** The hooks of a spiral, outermost first. */
function hooks(scene: Scene, insetsMm: readonly number[], how: HookChoice): readonly PushRun[] {
  const sides: readonly Side[] = ["x", "y"];
  return insetsMm.flatMap((insetMm) => sides.map((side) => hook(scene, side, insetMm, how)));
}

export interface HookChoice {
  readonly squareUps: boolean;
  /** Back the way it came. */
  readonly back: boolean;
  /** Of the corner, in tip radii. */
  readonly radius: number;
}

export function hook(scene: Scene, side: Side, insetMm: number, how: HookChoice): PushRun {
  const { squareUps, back, radius } = how;
  return hookRun(scene, side, insetMm, curveMm(scene, radius), {
    squareUps: squareUps ? BOTH_FAR_WALLS : [],
    retreat: back ? "back" : "off",
  });
}
