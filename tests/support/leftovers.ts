import { allSaid, englishTopics } from "./texts.ts";

/** Stands where a text has a value, and is in no text. */
const VALUE = "\u0001";
/** Shorter pieces are in other languages' words by chance. */
const LEAST_LENGTH = 9;

/** Finds what is still English in a text of another language. */
export type FindEnglish = (text: string) => readonly string[];

/**
 * What no German text says: the English texts, cut where values stand in them, as far as they are more than one word. Call it while
 * English is spoken.
 */
export async function englishFinder(): Promise<FindEnglish> {
  const german = (await allSaid()).map((each) => each.german).join("\n");
  const pieces = new Set<string>();
  for (const topic of (await englishTopics()).values()) gather(topic, pieces);
  const telling = [...pieces].filter((piece) => !german.includes(piece));
  return (text) => telling.filter((piece) => text.includes(piece));
}

function gather(texts: unknown, pieces: Set<string>): void {
  if (typeof texts === "object" && texts !== null) {
    for (const each of Object.values(texts)) gather(each, pieces);
    return;
  }
  for (const piece of sayingOf(texts).split(VALUE)) {
    const words = piece.trim();
    if (words.length >= LEAST_LENGTH && /\p{L} \p{L}/u.test(words)) pieces.add(words);
  }
}

/** A text with marks for its values; nothing for one that wants numbers. */
function sayingOf(text: unknown): string {
  if (typeof text !== "function") return String(text);
  try {
    return String(text(...Array.from({ length: text.length }, () => VALUE)));
  } catch {
    return "";
  }
}
