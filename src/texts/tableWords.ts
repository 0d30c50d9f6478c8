import { type Language, spokenLanguage } from "./language.ts";

/**
 * Words of tables that are read again: of all languages at once, so that a table filled in in one is understood in every
 * other, and by the command. A word holds no comma or semicolon, which part the cells.
 */
const WORDS = {
  test: { en: "test", de: "Versuch" },
  straight: { en: "straight", de: "Gerade" },
  turn: { en: "turn", de: "Drehung" },
  "square-right": { en: "square-right", de: "Quadrat-rechts" },
  "square-left": { en: "square-left", de: "Quadrat-links" },
  roll: { en: "roll", de: "Rollen" },
  push: { en: "push", de: "Schieben" },
  rebound: { en: "rebound", de: "Rückprall" },
  run: { en: "run", de: "Lauf" },
  loss: { en: "loss", de: "Verlust" },
  day: { en: "day", de: "Tag" },
  "rolled-out": { en: "rolled-out", de: "aus der Einfahrt gerollt" },
  "out-of-time": { en: "out-of-time", de: "Zeit abgelaufen" },
  "left-wedge": { en: "left-wedge", de: "wieder vom Keil gerollt" },
  jammed: { en: "jammed", de: "an einer Wand geklemmt" },
  "left-pusher": { en: "left-pusher", de: "vom Schieber gerutscht" },
  "never-touched": { en: "never-touched", de: "nie berührt" },
} as const satisfies Readonly<Record<string, Readonly<Record<Language, string>>>>;

/** What a word means, whatever the language: the same in JSON. */
export type TableWord = keyof typeof WORDS;

/** As a table written now has it. */
export function tableWord(meaning: TableWord): string {
  return WORDS[meaning][spokenLanguage()];
}

/** Which of these is meant by a cell, in whichever language, capital or not; undefined for none. */
export function meantBy<W extends TableWord>(cell: string, meanings: readonly W[]): W | undefined {
  const typed = cell.toLowerCase();
  return meanings.find((each) => allWords([each]).some((word) => word.toLowerCase() === typed));
}

/** All words for these, of every language, those of the language spoken now first. */
export function allWords(meanings: readonly TableWord[]): readonly string[] {
  const others = meanings.flatMap((each) => Object.values(WORDS[each]));
  return [...new Set([...meanings.map(tableWord), ...others])];
}
