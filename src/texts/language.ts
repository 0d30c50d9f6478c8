import type { Catalogue } from "./catalogue.ts";

/** Languages spoken, by the codes of BCP 47. English is always there; the others are fetched when first spoken. */
export const LANGUAGES = ["en", "de"] as const;
export type Language = (typeof LANGUAGES)[number];

/** Each by its own name, as a choice shows it. */
export const LANGUAGE_NAMES: Readonly<Record<Language, string>> = { en: "English", de: "Deutsch" };

interface Topic {
  readonly name: keyof Catalogue;
  /** What everybody reads: the texts of the language spoken now. */
  readonly live: object;
  readonly english: object;
}

const topics: Topic[] = [];
let language: Language = "en";
/** null while English is spoken. */
let foreign: Catalogue | null = null;

/**
 * Texts about one thing. What is returned always holds the language spoken now, so a text must be asked for where it is
 * said, never kept in a constant of a module (`tests/unit/texts` finds that).
 *
 * @param name as in the catalogue
 * @param english strings, functions of values that give a string, and groups of both
 */
export function topic<T extends object>(name: keyof Catalogue, english: T): T {
  const live = { ...english };
  topics.push({ name, live, english });
  if (foreign) Object.assign(live, foreign[name]);
  return live;
}

/** The language spoken now. */
export function spokenLanguage(): Language {
  return language;
}

/**
 * Speaks another language from now on; what was already said stays as it is. Rejects, and changes nothing, when its
 * texts cannot be fetched.
 */
export async function speak(wanted: Language): Promise<void> {
  const texts: Catalogue | null = wanted === "en" ? null : await import("./german/german.ts");
  language = wanted;
  foreign = texts;
  for (const { name, live, english } of topics) Object.assign(live, texts ? texts[name] : english);
}

export function isLanguage(text: string | null): text is Language {
  return LANGUAGES.some((each) => each === text);
}

/** The first of the wished languages that is spoken here, by its main part ("de-AT" is "de"); else English. */
export function nearestLanguage(wished: readonly string[]): Language {
  return wished.map((tag) => tag.split("-")[0] ?? "").find(isLanguage) ?? "en";
}
