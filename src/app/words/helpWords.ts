import { helpTexts } from "../../texts/english/help.ts";

/** The words of this tool, each explained in a sentence. */
export function glossary(): readonly (readonly [string, string])[] {
  const names = Object.keys(helpTexts.word) as (keyof typeof helpTexts.word)[];
  return names.map((name) => [helpTexts.word[name], helpTexts.meaning[name]]);
}

/** What comes first, before any routine. */
export function cautions(): readonly string[] {
  return Object.values(helpTexts.caution);
}
