import type { TrialOutcome } from "../trial/outcome.ts";
import type { Recording } from "../trial/recording.ts";

/** open: not decided yet. */
export type BallMark = "open" | "delivered" | "lost";

/**
 * What can be said about a ball at a second of the run: delivered once it is on the wedge for good, lost once it has
 * rolled out of the doorway, otherwise open until the end.
 */
export function ballMark(
  outcome: Pick<TrialOutcome, "deliveredAtS" | "losses">,
  recording: Pick<Recording, "durationS" | "events">,
  ball: number,
  timeS: number,
): BallMark {
  const deliveredAtS = outcome.deliveredAtS[ball] ?? null;
  if (deliveredAtS !== null) return timeS >= deliveredAtS ? "delivered" : "open";
  if (timeS >= recording.durationS) return "lost";
  const gone = recording.events.some(
    (event) => event.kind === "rolled-out" && event.ball === ball && event.timeS <= timeS,
  );
  return gone ? "lost" : "open";
}
