import { issueTexts as t } from "../texts/english/issue.ts";
import type { Findings } from "./findings.ts";
import { describe, noun } from "./findings.ts";
import type { JsonObject, JsonValue } from "./json.ts";
import type { LimitTable, NumberLimits } from "./limits.ts";
import { allowed, numberOf } from "./readNumber.ts";
import { nearestWord } from "./suggest.ts";

const EMPTY: JsonObject = new Map();

interface TextLimits {
  readonly maxLength: number;
  readonly fallback?: string;
  /** Line breaks are allowed. */
  readonly lines?: boolean;
}

/**
 * Reads the entries of one object of a file. Every fault goes to the findings with its path, and a stand-in value is
 * returned, so that reading goes on and all faults are found at once. Call `done` last: it reports keys nobody asked for.
 */
export class Fields {
  readonly path: string;
  private readonly entries: JsonObject;
  private readonly findings: Findings;
  private readonly asked = new Set<string>();

  constructor(entries: JsonObject, path: string, findings: Findings) {
    this.entries = entries;
    this.path = path;
    this.findings = findings;
  }

  pathOf(key: string): string {
    return this.path === "" ? key : `${this.path}.${key}`;
  }

  has(key: string): boolean {
    return this.entries.has(key);
  }

  number(key: string, limits: NumberLimits): number {
    const value = this.take(key, limits.fallback === undefined ? allowed(limits) : undefined);
    if (value === undefined) return limits.fallback ?? limits.min;
    return numberOf(value, this.pathOf(key), limits, this.findings);
  }

  /** One number for each row of the table. */
  numbers<T extends LimitTable>(table: T): Readonly<Record<keyof T & string, number>> {
    const read = Object.entries(table).map(([key, limits]) => [key, this.number(key, limits)]);
    return Object.fromEntries(read) as Record<keyof T & string, number>;
  }

  flag(key: string, fallback: boolean): boolean {
    const value = this.take(key);
    if (value === undefined || typeof value === "boolean") return value ?? fallback;
    this.wrongType(key, value, t.aFlag + t.leftOut(String(fallback)));
    return fallback;
  }

  text(key: string, limits: TextLimits): string {
    const expected = t.aText(limits.maxLength);
    const value = this.take(key, limits.fallback === undefined ? expected : undefined);
    if (value === undefined) return limits.fallback ?? "";
    if (typeof value !== "string") this.wrongType(key, value, expected);
    else if (value.length > limits.maxLength) {
      this.report("text-too-long", key, t.textTooLong, t.characters(value.length), expected);
    } else if (/\p{Cc}/u.test(limits.lines ? value.replaceAll("\n", "") : value)) {
      this.report("bad-text", key, t.badText, t.controls, expected);
    } else return value;
    return limits.fallback ?? "";
  }

  /** One of a few words. */
  choice<T extends string>(key: string, words: readonly T[], fallback?: T): T | undefined {
    const leftOut = fallback === undefined ? "" : t.leftOut(`"${fallback}"`);
    const expected = t.oneOf(words.map((word) => `"${word}"`).join(", ")) + leftOut;
    const value = this.take(key, fallback === undefined ? expected : undefined);
    if (value === undefined) return fallback;
    const found = words.find((word) => word === value);
    if (found !== undefined) return found;
    if (typeof value !== "string") this.wrongType(key, value, expected);
    else {
      const near = nearestWord(value, words);
      const hint = near === undefined ? t.chooseOne : t.didYouMean(near);
      this.report("unknown-choice", key, t.unknownWord(hint), describe(value), expected);
    }
    return fallback;
  }

  /** The object under a key; when it is missing or no object, an object whose reading reports nothing more. */
  child(key: string, presence: "required" | "optional"): Fields {
    const value = this.take(key, presence === "required" ? t.anObject : undefined);
    if (value === undefined) {
      return new Fields(
        EMPTY,
        this.pathOf(key),
        presence === "required" ? this.findings.muted() : this.findings,
      );
    }
    return fieldsOf(value, this.pathOf(key), this.findings);
  }

  /** The list under a key, empty when it is missing or no list. */
  list(key: string, limits: { readonly max: number; readonly required?: boolean }): readonly JsonValue[] {
    const expected = t.aList(limits.max);
    const value = this.take(key, limits.required ? expected : undefined);
    if (value === undefined) return [];
    if (!Array.isArray(value)) {
      this.wrongType(key, value, expected);
      return [];
    }
    if (value.length <= limits.max) return value;
    this.report("too-many-entries", key, t.listTooLong, t.entries(value.length), expected);
    return [];
  }

  done(): void {
    for (const key of this.entries.keys()) {
      if (this.asked.has(key)) continue;
      const near = nearestWord(
        key,
        [...this.asked].filter((name) => !this.entries.has(name)),
      );
      const hint = near === undefined ? t.takeOut : t.didYouMean(near);
      const expected = t.onlyKeys([...this.asked].join(", "));
      this.report("unknown-key", key, t.unknownKey(hint), t.theKey(describe(key)), expected);
    }
  }

  /** The value under a key; reports a missing key when `expected` says what must be there. */
  private take(key: string, expected?: string): JsonValue | undefined {
    this.asked.add(key);
    const value = this.entries.get(key);
    if (value === undefined && expected !== undefined) {
      this.report("missing-key", key, t.missingKey(key), t.nothing, expected);
    }
    return value;
  }

  private wrongType(key: string, value: JsonValue, expected: string): void {
    const message = t.wrongType(noun(value), expected);
    this.report("wrong-type", key, message, describe(value), expected);
  }

  private report(code: string, key: string, message: string, got: string, expected: string): void {
    this.findings.add({ code, path: this.pathOf(key), message, got, expected });
  }
}

/** The entries of an object, for values that are in lists. */
export function fieldsOf(value: JsonValue, path: string, findings: Findings): Fields {
  if (value instanceof Map) return new Fields(value, path, findings);
  const expected = t.anObject;
  const message = t.wrongType(noun(value), expected);
  findings.add({ code: "wrong-type", path, message, got: describe(value), expected });
  return new Fields(EMPTY, path, findings.muted());
}
