import { issueTexts } from "../texts/english/issue.ts";
import { jsonIssueTexts as t } from "../texts/english/jsonIssue.ts";
import type { Issue } from "./issue.ts";
import { SyntaxFault } from "./jsonCursor.ts";
import { JsonScanner } from "./jsonScanner.ts";

/**
 * JSON as data: objects are maps, so that no key can reach a prototype. Read with an own reader because the
 * built-in one drops repeated keys silently and words its errors differently in every engine.
 */
export type JsonValue = null | boolean | number | string | readonly JsonValue[] | JsonObject;
export type JsonObject = ReadonlyMap<string, JsonValue>;

/** Larger files are refused before they are read: the largest sensible project has some 20 kB. */
export const MAX_FILE_BYTES = 1_000_000;

export interface JsonDocument {
  /** undefined when the text is not JSON. */
  readonly value: JsonValue | undefined;
  readonly issues: readonly Issue[];
}

/**
 * Reads a JSON text. Issues: file-too-large, invalid-json (line and column, counted from 1), too-deep: nothing is returned;
 * duplicate-key, unsafe-key: reported, the entry is left out. `NaN`, `Infinity` and numbers beyond the range of a double
 * come back as such for the caller to refuse by name.
 */
export function readJson(text: string): JsonDocument {
  if (byteLengthExceeds(text, MAX_FILE_BYTES)) {
    return { value: undefined, issues: [tooLarge(text)] };
  }
  const scanner = new JsonScanner(text);
  try {
    return { value: scanner.document(), issues: scanner.issues };
  } catch (fault) {
    if (!(fault instanceof SyntaxFault)) throw fault;
    return { value: undefined, issues: [...scanner.issues, fault.issue] };
  }
}

/** Whether the UTF-8 form of the text has more than `limit` bytes. */
function byteLengthExceeds(text: string, limit: number): boolean {
  if (text.length > limit) return true;
  if (text.length * 3 <= limit) return false;
  let bytes = 0;
  for (let i = 0; i < text.length; i++) {
    const unit = text.charCodeAt(i);
    // A surrogate pair is two units and four bytes.
    bytes += unit < 0x80 ? 1 : unit < 0x800 || (unit >= 0xd800 && unit < 0xe000) ? 2 : 3;
  }
  return bytes > limit;
}

function tooLarge(text: string): Issue {
  return {
    code: "file-too-large",
    path: "",
    message: t.tooLarge,
    got: issueTexts.characters(text.length),
    expected: issueTexts.atMost("1 MB"),
  };
}
