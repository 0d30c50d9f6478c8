import type { CarryLimit } from "../plan/carryLimits.ts";
import { carryTexts } from "../texts/english/carry.ts";
import { speedText } from "../texts/lengths.ts";

/** Where a ball in the pusher can be lost on the way, a line for each move; one line if nowhere. */
export function carryLines(
  limits: readonly CarryLimit[],
  moves: readonly { readonly kind: string }[],
  noun: "step" | "move" = "step",
): readonly string[] {
  if (limits.length === 0) return [carryTexts.staysEverywhere];
  return [
    carryTexts.canBeLost,
    ...limits.map(({ move, why, reached, safe }) => {
      const onSpot = moves[move]?.kind === "turn";
      const speed = (value: number) =>
        onSpot ? `${Math.floor((value * 180) / Math.PI)} deg/s` : speedText(value);
      const when = why === "brakes" ? carryTexts.whenStopping : carryTexts.inTurn;
      const kept = safe > 0 ? carryTexts.keptAt(speed(safe)) : carryTexts.neverKept;
      return carryTexts.line(carryTexts.nouns[noun], move + 1, when, speed(reached), kept);
    }),
  ];
}
