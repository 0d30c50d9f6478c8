import type { CarryLimit } from "../plan/carryLimits.ts";

/** Where a ball in the pusher can be lost on the way, a line for each move; one line if nowhere. */
export function carryLines(
  limits: readonly CarryLimit[],
  moves: readonly { readonly kind: string }[],
  noun: "step" | "move" = "step",
): readonly string[] {
  if (limits.length === 0)
    return ["A ball in the pusher stays there in every turn and whenever the robot stops."];
  return [
    "A ball in the pusher can be lost:",
    ...limits.map(({ move, why, reached, safe }) => {
      const onSpot = moves[move]?.kind === "turn";
      const speed = (value: number) =>
        onSpot ? `${Math.floor((value * 180) / Math.PI)} deg/s` : `${Math.floor(value)} mm/s`;
      const when = why === "brakes" ? "when it stops" : "in the turn";
      const kept = safe > 0 ? `kept at ${speed(safe)} or less` : "this pusher keeps none in a turn";
      return `  ${noun} ${move + 1}, ${when}: reaches ${speed(reached)}, ${kept}`;
    }),
  ];
}
