import { lossTexts } from "../texts/english/loss.ts";
import type { LossReason } from "../trial/outcome.ts";

/** Why a ball was lost, as the end of "ball 2 …". */
export function lossWords(reason: LossReason): string {
  return lossTexts.ended[reason];
}

/** The same as a heading for a count. */
export function lossTitle(reason: LossReason): string {
  return lossTexts.title[reason];
}
