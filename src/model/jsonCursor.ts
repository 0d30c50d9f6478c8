import { jsonIssueTexts as t } from "../texts/english/jsonIssue.ts";
import type { Issue } from "./issue.ts";

const WORD = /-?[A-Za-z_$][\w$]*/y;

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

/** A place in a JSON text that moves on token by token (RFC 8259); faults are thrown as SyntaxFault with line and column. */
export class JsonCursor {
  private readonly text: string;
  private at: number;

  constructor(text: string) {
    this.text = text;
    // A byte order mark is what some editors put first.
    this.at = text.charCodeAt(0) === 0xfeff ? 1 : 0;
  }

  /** The next character that is no space, "" at the end. */
  peek(): string {
    this.skipSpace();
    return this.text[this.at] ?? "";
  }

  /** The text whose opening quote stands here. */
  string(): string {
    this.at++;
    let text = "";
    for (;;) {
      text += this.plainText();
      const char = this.text[this.at];
      if (char === '"') {
        this.at++;
        return text;
      }
      if (char !== "\\") this.fail(t.openText, t.closingQuote);
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
      this.fail(t.badEscape, t.escapes('\\" \\\\ \\/ \\b \\f \\n \\r \\t', "\\u"));
    }
    this.at += 6;
    return String.fromCharCode(Number.parseInt(hex, 16));
  }

  /** The sticky pattern's match here, if it has one. */
  match(pattern: RegExp): string | undefined {
    pattern.lastIndex = this.at;
    const found = pattern.exec(this.text)?.[0];
    this.at += found?.length ?? 0;
    return found;
  }

  /** The value of the word that stands here; undefined, and no step on, when it is none of these. */
  word<T>(words: ReadonlyMap<string, T>): T | undefined {
    const start = this.at;
    const known = words.get(this.match(WORD) ?? "");
    if (known === undefined) this.at = start;
    return known;
  }

  /** Steps over the character if it comes next. */
  accept(char: string): boolean {
    this.skipSpace();
    if (this.text[this.at] !== char) return false;
    this.at++;
    return true;
  }

  private skipSpace(): void {
    while (" \t\r\n".includes(this.text[this.at] ?? "end")) this.at++;
  }

  /** Ends the reading. `what` completes "Line 3, column 5: …". */
  fail(what: string, expected: string): never {
    const got = this.at < this.text.length ? `"${printable(this.text.slice(this.at, this.at + 12))}"` : t.end;
    throw new SyntaxFault({
      code: "invalid-json",
      path: "",
      message: `${this.place()}: ${what}.`,
      got,
      expected,
    });
  }

  /** Line and column, counted from 1. */
  place(): string {
    const before = this.text.slice(0, this.at).split(/\r\n|\r|\n/);
    return t.place(before.length, (before.at(-1) ?? "").length + 1);
  }
}

/** Short and safe to print. */
export function short(text: string): string {
  return printable(text.length > 40 ? `${text.slice(0, 40)}…` : text);
}

/** Nothing that could move a cursor or colour a terminal. */
function printable(text: string): string {
  return text.replace(/\p{Cc}+/gu, " ");
}
