import { secondsWords } from "../../report/lengthWords.ts";
import { lossTexts } from "../../texts/english/loss.ts";
import { playerTexts } from "../../texts/english/player.ts";
import { listed } from "../../texts/numbers.ts";
import type { LossReason, TrialOutcome } from "../../trial/outcome.ts";

export function worked(outcome: Pick<TrialOutcome, "delivered">): boolean {
  return outcome.delivered.every(Boolean);
}

/** How the run ended, in one or two sentences. */
export function verdictWords(outcome: TrialOutcome): string {
  const total = outcome.delivered.length;
  const home = outcome.delivered.filter(Boolean).length;
  if (home === total) {
    const last = Math.max(0, ...outcome.deliveredAtS.map((timeS) => timeS ?? 0));
    return playerTexts.allDelivered(total, secondsWords(last));
  }
  return playerTexts.someDelivered(home, total, lostSentence(outcome.losses));
}

/** Balls lost for the same reason share a clause. */
function lostSentence(losses: readonly (LossReason | null)[]): string {
  const byReason = new Map<LossReason, number[]>();
  for (const [ball, reason] of losses.entries()) {
    if (reason) byReason.set(reason, [...(byReason.get(reason) ?? []), ball + 1]);
  }
  const clauses = [...byReason].map(([reason, balls]) =>
    lossTexts.clause[reason](listed(balls.map(String)), balls.length > 1),
  );
  const sentence = clauses.join("; ");
  return sentence === "" ? "" : `${sentence.charAt(0).toUpperCase()}${sentence.slice(1)}.`;
}
