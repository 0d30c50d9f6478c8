import { readdirSync } from "node:fs";
import * as germanTopics from "../../src/texts/german/german.ts";
import { top } from "./sourceCheck.ts";

const german: ReadonlyMap<string, object> = new Map(Object.entries(germanTopics));

/** One text of one language: a string, or what a function says to sample values. */
export interface Said {
  /** "topic.group.key" */
  readonly name: string;
  /** Without values in it. */
  readonly isFixed: boolean;
  readonly english: string;
  readonly german: string;
}

/** The English topics by name, as their files give them while English is spoken. */
export async function englishTopics(): Promise<Map<string, object>> {
  const found = new Map<string, object>();
  for (const file of readdirSync(`${top}src/texts/english`)) {
    const name = file.replace(/\.ts$/, "");
    const module: Record<string, object> = await import(`../../src/texts/english/${name}.ts`);
    const texts = module[`${name}Texts`];
    if (texts) found.set(name, texts);
  }
  return found;
}

/** Every text of both languages beside each other; functions are called with three sets of values. */
export async function allSaid(): Promise<readonly Said[]> {
  const said: Said[] = [];
  for (const [topic, english] of await englishTopics()) {
    walk(topic, english, german.get(topic), said);
  }
  return said;
}

function walk(name: string, english: unknown, other: unknown, said: Said[]): void {
  if (typeof english === "object" && english !== null) {
    for (const [key, value] of Object.entries(english)) {
      walk(`${name}.${key}`, value, (other as Record<string, unknown> | undefined)?.[key], said);
    }
  } else if (typeof english === "function" && typeof other === "function") {
    // A text that wants words, not numbers, throws at a number.
    const say = (speaker: (...values: unknown[]) => unknown, values: readonly unknown[]): string => {
      try {
        return String(speaker(...values));
      } catch {
        return String(speaker(...values.map(String)));
      }
    };
    for (const values of samples(Math.max(english.length, other.length))) {
      const each = { english: say(english as never, values), german: say(other as never, values) };
      said.push({ name, isFixed: false, ...each });
    }
  } else said.push({ name, isFixed: true, english: String(english ?? ""), german: String(other ?? "") });
}

/** Values that pass for numbers and for words alike: "1" is one, "2" and "7" are more. */
function samples(count: number): readonly (readonly unknown[])[] {
  return [1, 2, 7].map((value) => Array.from({ length: count }, (_, i) => (i === 0 ? value : value + i)));
}
