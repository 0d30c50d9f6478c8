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
    return this.cursor.fail("there is something after the end of the project", "the end of the file");
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
    return this.cursor.fail(
      "a value is missing or not written as JSON",
      'a number, a text in "double quotes", true, false, null, { or [',
    );
  }

  private object(path: string, depth: number): JsonValue {
    const entries = new Map<string, JsonValue>();
    this.cursor.accept("{");
    if (this.cursor.accept("}")) return entries;
    do {
      if (this.cursor.peek() !== '"') {
        this.cursor.fail(
          "a key is missing",
          'a key in "double quotes" (no comma after the last entry, no comments)',
        );
      }
      const key = this.cursor.string();
      const inside = path === "" ? key : `${path}.${key}`;
      if (!this.cursor.accept(":"))
        this.cursor.fail(`the colon after the key "${short(key)}" is missing`, ":");
      const value = this.value(inside, depth + 1);
      this.keep(entries, key, value, inside);
    } while (this.cursor.accept(","));
    if (!this.cursor.accept("}")) this.cursor.fail("a comma or the closing brace is missing", ", or }");
    return entries;
  }

  private keep(entries: Map<string, JsonValue>, key: string, value: JsonValue, path: string): void {
    if (UNSAFE_KEYS.has(key)) {
      const message = "This key has a special meaning in programs and is refused; take it out.";
      this.report("unsafe-key", path, message, `the key "${key}"`, "no such key");
    } else if (entries.has(key)) {
      const message = "This key is there twice; keep one of the two.";
      this.report("duplicate-key", path, message, `the key "${short(key)}" twice`, "each key once");
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
    if (!this.cursor.accept("]")) this.cursor.fail("a comma or the closing bracket is missing", ", or ]");
    return values;
  }

  private report(code: string, path: string, message: string, got: string, expected: string): void {
    this.issues.push({ code, path, message, got, expected });
  }

  private failTooDeep(path: string): never {
    const message = `${this.cursor.place()}: lists and objects are nested too deeply.`;
    const shortPath = path.length > 60 ? `${path.slice(0, 60)}…` : path;
    throw new SyntaxFault({
      code: "too-deep",
      path: shortPath,
      message,
      got: `more than ${MAX_DEPTH} levels`,
      expected: `at most ${MAX_DEPTH} levels`,
    });
  }
}
