import { issueTexts } from "../texts/english/issue.ts";
import { jsonIssueTexts as t } from "../texts/english/jsonIssue.ts";
import type { Issue } from "./issue.ts";
import type { JsonValue } from "./json.ts";
import { JsonCursor, SyntaxFault, short } from "./jsonCursor.ts";

/** Deeper nesting than any project needs (7), shallow enough for every call stack. */
const MAX_DEPTH = 32;

const UNSAFE_KEYS: ReadonlySet<string> = new Set(["__proto__", "constructor", "prototype"]);

const NUMBER = /-?(?:0|[1-9]\d*)(?:\.\d+)?(?:[eE][+-]?\d+)?/y;

const WORDS: ReadonlyMap<string, JsonValue> = new Map<string, JsonValue>([
  ["true", true],
  ["false", false],
  ["null", null],
  // Not JSON, but what a program that writes files carelessly puts there: the field's own message says more than "invalid".
  ["NaN", Number.NaN],
  ["Infinity", Infinity],
  ["-Infinity", -Infinity],
]);

/** Recursive descent over one text (RFC 8259). */
export class JsonScanner {
  readonly issues: Issue[] = [];
  private readonly cursor: JsonCursor;

  constructor(text: string) {
    this.cursor = new JsonCursor(text);
  }

  document(): JsonValue {
    const value = this.value("", 0);
    if (this.cursor.peek() === "") return value;
    return this.cursor.fail(t.afterEnd, t.end);
  }

  private value(path: string, depth: number): JsonValue {
    const char = this.cursor.peek();
    if ((char === "{" || char === "[") && depth >= MAX_DEPTH) this.failTooDeep(path);
    if (char === "{") return this.object(path, depth);
    if (char === "[") return this.list(path, depth);
    if (char === '"') return this.cursor.string();
    const number = this.cursor.match(NUMBER);
    if (number !== undefined) return Number(number);
    const known = this.cursor.word(WORDS);
    if (known !== undefined) return known;
    return this.cursor.fail(t.noValue, t.aValue(t.or(["true", "false", "null", "{"].join(", "), "[")));
  }

  private object(path: string, depth: number): JsonValue {
    const entries = new Map<string, JsonValue>();
    this.cursor.accept("{");
    if (this.cursor.accept("}")) return entries;
    do {
      if (this.cursor.peek() !== '"') this.cursor.fail(t.noKey, t.aKey);
      const key = this.cursor.string();
      const inside = path === "" ? key : `${path}.${key}`;
      if (!this.cursor.accept(":")) this.cursor.fail(t.noColon(short(key)), ":");
      const value = this.value(inside, depth + 1);
      this.keep(entries, key, value, inside);
    } while (this.cursor.accept(","));
    if (!this.cursor.accept("}")) this.cursor.fail(t.noBrace, t.or(",", "}"));
    return entries;
  }

  private keep(entries: Map<string, JsonValue>, key: string, value: JsonValue, path: string): void {
    if (UNSAFE_KEYS.has(key)) {
      this.report("unsafe-key", path, t.unsafeKey, t.theKey(key), t.noSuchKey);
    } else if (entries.has(key)) {
      this.report("duplicate-key", path, t.twice, t.theKeyTwice(short(key)), t.onceEach);
    } else {
      entries.set(key, value);
    }
  }

  private list(path: string, depth: number): JsonValue {
    const values: JsonValue[] = [];
    this.cursor.accept("[");
    if (this.cursor.accept("]")) return values;
    do {
      values.push(this.value(`${path}[${values.length}]`, depth + 1));
    } while (this.cursor.accept(","));
    if (!this.cursor.accept("]")) this.cursor.fail(t.noBracket, t.or(",", "]"));
    return values;
  }

  private report(code: string, path: string, message: string, got: string, expected: string): void {
    this.issues.push({ code, path, message, got, expected });
  }

  private failTooDeep(path: string): never {
    const message = `${this.cursor.place()}: ${t.tooDeep}.`;
    const shortPath = path.length > 60 ? `${path.slice(0, 60)}…` : path;
    throw new SyntaxFault({
      code: "too-deep",
      path: shortPath,
      message,
      got: t.moreLevels(MAX_DEPTH),
      expected: issueTexts.atMost(issueTexts.levels(MAX_DEPTH)),
    });
  }
}
