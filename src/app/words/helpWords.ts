import { helpTexts } from "../../texts/english/help.ts";
import type { StepId } from "../steps.ts";

/** Stops of the opening tour, from the example to the team's own zone; what is said there is in the notices' texts. */
export const TOUR = ["routines", "watch", "weak", "robot", "zone"] as const satisfies readonly StepId[];

/** The words of this tool, each explained in a sentence. */
export function glossary(): readonly (readonly [string, string])[] {
  const names = Object.keys(helpTexts.word) as (keyof typeof helpTexts.word)[];
  return names.map((name) => [helpTexts.word[name], helpTexts.meaning[name]]);
}

/** What comes first, before any routine. */
export function cautions(): readonly string[] {
  return Object.values(helpTexts.caution);
}
