import type { Issue } from "./issue.ts";
import type { JsonValue } from "./json.ts";

/** Deeper nesting than any project needs (7), shallow enough for every call stack. */
const MAX_DEPTH = 32;

const UNSAFE_KEYS: ReadonlySet<string> = new Set(["__proto__", "constructor", "prototype"]);

const NUMBER = /-?(?:0|[1-9]\d*)(?:\.\d+)?(?:[eE][+-]?\d+)?/y;
const WORD = /-?[A-Za-z_$][\w$]*/y;

const WORDS: ReadonlyMap<string, JsonValue> = new Map<string, JsonValue>([
  ["true", true],
  ["false", false],
  ["null", null],
  // Not JSON, but what a program that writes files carelessly puts there: the field's own message says more than "invalid".
  ["NaN", Number.NaN],
  ["Infinity", Infinity],
  ["-Infinity", -Infinity],
]);

const ESCAPES: ReadonlyMap<string, string> = new Map([
  ['"', '"'],
  ["\\", "\\"],
  ["/", "/"],
  ["b", "\b"],
  ["f", "\f"],
  ["n", "\n"],
  ["r", "\r"],
  ["t", "\t"],
]);

/** Ends the reading; caught in json.ts, never seen outside the room. */
export class SyntaxFault extends Error {
  readonly issue: Issue;
  constructor(issue: Issue) {
    super(issue.message);
    this.issue = issue;
  }
}

/** Recursive descent over one text (RFC 8259). */
export class JsonScanner {
  readonly issues: Issue[] = [];
  private readonly text: string;
  private at = 0;

  constructor(text: string) {
    this.text = text;
  }

  document(): JsonValue {
    // A byte order mark is what some editors put first.
    if (this.text.charCodeAt(0) === 0xfeff) this.at = 1;
    const value = this.value("", 0);
    this.skipSpace();
    if (this.at < this.text.length)
      this.fail("there is something after the end of the project", "the end of the file");
    return value;
  }

  private value(path: string, depth: number): JsonValue {
    this.skipSpace();
    const char = this.text[this.at];
    if ((char === "{" || char === "[") && depth >= MAX_DEPTH) this.failTooDeep(path);
    if (char === "{") return this.object(path, depth);
    if (char === "[") return this.list(path, depth);
    if (char === '"') return this.string();
    const number = this.match(NUMBER);
    if (number !== undefined) return Number(number);
    const start = this.at;
    const known = WORDS.get(this.match(WORD) ?? "");
    if (known !== undefined) return known;
    this.at = start;
    return this.fail(
      "a value is missing or not written as JSON",
      'a number, a text in "double quotes", true, false, null, { or [',
    );
  }

  private object(path: string, depth: number): JsonValue {
    const entries = new Map<string, JsonValue>();
    this.at++;
    if (this.accept("}")) return entries;
    do {
      this.skipSpace();
      if (this.text[this.at] !== '"')
        this.fail(
          "a key is missing",
          'a key in "double quotes" (no comma after the last entry, no comments)',
        );
      const key = this.string();
      const inside = path === "" ? key : `${path}.${key}`;
      if (!this.accept(":")) this.fail(`the colon after the key "${short(key)}" is missing`, ":");
      const value = this.value(inside, depth + 1);
      this.keep(entries, key, value, inside);
    } while (this.accept(","));
    if (!this.accept("}")) this.fail("a comma or the closing brace is missing", ", or }");
    return entries;
  }

  private keep(entries: Map<string, JsonValue>, key: string, value: JsonValue, path: string): void {
    if (UNSAFE_KEYS.has(key)) {
      const message = "This key has a special meaning in programs and is refused; take it out.";
      this.issues.push({
        code: "unsafe-key",
        path,
        message,
        got: `the key "${key}"`,
        expected: "no such key",
      });
    } else if (entries.has(key)) {
      const message = "This key is there twice; keep one of the two.";
      this.issues.push({
        code: "duplicate-key",
        path,
        message,
        got: `the key "${short(key)}" twice`,
        expected: "each key once",
      });
    } else {
      entries.set(key, value);
    }
  }

  private list(path: string, depth: number): JsonValue {
    const values: JsonValue[] = [];
    this.at++;
    if (this.accept("]")) return values;
    do {
      values.push(this.value(`${path}[${values.length}]`, depth + 1));
    } while (this.accept(","));
    if (!this.accept("]")) this.fail("a comma or the closing bracket is missing", ", or ]");
    return values;
  }

  private string(): string {
    this.at++;
    let text = "";
    for (;;) {
      text += this.plainText();
      const char = this.text[this.at];
      if (char === '"') {
        this.at++;
        return text;
      }
      if (char !== "\\")
        this.fail("a text does not end on its line", 'a closing " (line breaks inside are written \\n)');
      text += this.escape();
    }
  }

  /** Up to the next quote, backslash or control character. */
  private plainText(): string {
    const start = this.at;
    for (; this.at < this.text.length; this.at++) {
      const code = this.text.charCodeAt(this.at);
      if (code < 0x20 || code === 0x22 || code === 0x5c) break;
    }
    return this.text.slice(start, this.at);
  }

  private escape(): string {
    const letter = this.text[this.at + 1] ?? "";
    const plain = ESCAPES.get(letter);
    if (plain !== undefined) {
      this.at += 2;
      return plain;
    }
    const hex = this.text.slice(this.at + 2, this.at + 6);
    if (letter !== "u" || !/^[0-9a-fA-F]{4}$/.test(hex)) {
      this.fail(
        "a backslash stands before something it cannot stand before",
        '\\" \\\\ \\/ \\b \\f \\n \\r \\t or \\u with four hex digits',
      );
    }
    this.at += 6;
    return String.fromCharCode(Number.parseInt(hex, 16));
  }

  private match(pattern: RegExp): string | undefined {
    pattern.lastIndex = this.at;
    const found = pattern.exec(this.text)?.[0];
    this.at += found?.length ?? 0;
    return found;
  }

  private accept(char: string): boolean {
    this.skipSpace();
    if (this.text[this.at] !== char) return false;
    this.at++;
    return true;
  }

  private skipSpace(): void {
    while (" \t\r\n".includes(this.text[this.at] ?? "end")) this.at++;
  }

  private fail(what: string, expected: string): never {
    const got =
      this.at < this.text.length
        ? `"${printable(this.text.slice(this.at, this.at + 12))}"`
        : "the end of the file";
    throw new SyntaxFault({
      code: "invalid-json",
      path: "",
      message: `${this.place()}: ${what}.`,
      got,
      expected,
    });
  }

  private failTooDeep(path: string): never {
    const message = `${this.place()}: lists and objects are nested too deeply.`;
    const shortPath = path.length > 60 ? `${path.slice(0, 60)}…` : path;
    throw new SyntaxFault({
      code: "too-deep",
      path: shortPath,
      message,
      got: `more than ${MAX_DEPTH} levels`,
      expected: `at most ${MAX_DEPTH} levels`,
    });
  }

  private place(): string {
    const before = this.text.slice(0, this.at).split(/\r\n|\r|\n/);
    return `Line ${before.length}, column ${(before.at(-1) ?? "").length + 1}`;
  }
}

function short(text: string): string {
  return printable(text.length > 40 ? `${text.slice(0, 40)}…` : text);
}

/** Nothing that could move a cursor or colour a terminal. */
function printable(text: string): string {
  return text.replace(/\p{Cc}+/gu, " ");
}
