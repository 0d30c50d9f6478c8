import { BOTH_FAR_WALLS } from "./closing.ts";
import { coded, combinations, counted, type Family, listed, percent, type Variant } from "./family.ts";
import { pusherWidthMm, type Side } from "./place.ts";
import type { PushRun } from "./pushRun.ts";
import { bowRun, hookRun } from "./routes.ts";
import type { Scene } from "./scene.ts";

interface Choice {
  readonly rounds: number;
  readonly radius: number;
  readonly squareUps: boolean;
  readonly back: boolean;
  readonly berthMm: number;
}

/**
 * Inward herding spiral: hooks along the far wall and the closing wall onto the wedge, by turns on both sides, each
 * round one pusher's width farther in. It shrinks toward the target corner, and everything inside is herded along.
 */
export const HERD: Family = {
  id: "herd",
  pattern: "Inward herding spiral",
  variants: combinations({
    rounds: [2, 3],
    radius: [0.6, 1],
    squareUps: [false, true],
    back: [false, true],
    berthMm: [10],
  }).map(variant),
};

function variant(choice: Choice): Variant {
  const { rounds, radius, squareUps, back, berthMm } = choice;
  return {
    code: coded(`n${rounds}`, `r${percent(radius)}`, squareUps ? "q" : "", back ? "b" : ""),
    label: listed(
      counted(rounds, "round"),
      radius < 1 ? "tight corners" : "wide corners",
      squareUps ? "squares up before each hook" : "",
      back ? "goes back the way it came" : "",
    ),
    params: { rounds, radiusShare: radius, squareUps, back, berthMm },
    longFirst: true,
    extraBerthMm: berthMm,
    runs: (scene) => [...hooks(scene, choice), bowRun(scene, "x", 0)],
  };
}

/** The hooks of a spiral, outermost first. */
export function hooks(
  scene: Scene,
  { rounds, radius, squareUps, back }: Omit<Choice, "berthMm">,
): readonly PushRun[] {
  const step = 0.85 * pusherWidthMm(scene);
  const sides: readonly Side[] = ["x", "y"];
  return Array.from({ length: rounds }, (_, round) => round * step).flatMap((insetMm) =>
    sides.map((side) =>
      hookRun(scene, side, insetMm, radius * scene.reach.tipRadiusMm, {
        squareUps: squareUps ? BOTH_FAR_WALLS : [],
        retreat: back ? "back" : "off",
      }),
    ),
  );
}
