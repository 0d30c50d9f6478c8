import { describe, expect, it } from "vitest";
import { type JsonValue, readJson } from "../../../src/model/json.ts";

/** Maps back to plain objects, to compare with the built-in reader. */
function plain(value: JsonValue | undefined): unknown {
  if (value instanceof Map) return Object.fromEntries([...value].map(([key, entry]) => [key, plain(entry)]));
  return Array.isArray(value) ? value.map(plain) : value;
}

describe("readJson", () => {
  it.each([
    '{"a": [1, -2.5, 3e2, 4E-1, 0, -0.0], "b": {"c": true, "d": false, "e": null}, "": ""}',
    " [ ] ",
    "{ }",
    '"just a text"',
    '"\\" \\\\ \\/ \\b \\f \\n \\r \\t \\u00e9 \\ud83d\\ude00"',
    '"é 試 😀 \u007f"',
    "12345678901234567890",
    "[[[]], {}]",
    "\t\r\n17\n",
  ])("reads %s as the built-in reader does", (text) => {
    const { value, issues } = readJson(text);
    expect(issues).toEqual([]);
    expect(plain(value)).toEqual(JSON.parse(text));
  });

  it("skips a byte order mark", () => {
    expect(readJson('\ufeff{"a": 1}').value).toEqual(new Map([["a", 1]]));
  });

  it("lets numbers that JSON cannot hold through, for the field to refuse", () => {
    expect(readJson("[NaN, Infinity, -Infinity, 1e999]").value).toEqual([
      Number.NaN,
      Infinity,
      -Infinity,
      Infinity,
    ]);
  });

  it("keeps the first of two equal keys and leaves out unsafe ones", () => {
    const { value, issues } = readJson('{"a": 1, "a": 2, "__proto__": {"b": 3}}');
    expect(value).toEqual(new Map([["a", 1]]));
    expect(issues.map(({ code, path }) => [code, path])).toEqual([
      ["duplicate-key", "a"],
      ["unsafe-key", "__proto__"],
    ]);
    expect(({} as Record<string, unknown>).b).toBeUndefined();
  });

  it.each([
    ["", "Line 1, column 1: a value is missing or not written as JSON."],
    ['{"a": 1,\n "b": 2,\n}', "Line 3, column 1: a key is missing."],
    ['{"a": 1\n "b": 2}', "Line 2, column 2: a comma or the closing brace is missing."],
    ['{"a": 1,\r\n  b: 2}', "Line 2, column 3: a key is missing."],
    ['{"a" 1}', 'Line 1, column 6: the colon after the key "a" is missing.'],
    ["[1, 2", "Line 1, column 6: a comma or the closing bracket is missing."],
    ["[1, 02]", "Line 1, column 6: a comma or the closing bracket is missing."],
    ["[.5]", "Line 1, column 2: a value is missing or not written as JSON."],
    ["[+5]", "Line 1, column 2: a value is missing or not written as JSON."],
    ["[undefined]", "Line 1, column 2: a value is missing or not written as JSON."],
    ["['a']", "Line 1, column 2: a value is missing or not written as JSON."],
    ["{} {}", "Line 1, column 4: there is something after the end of the project."],
    ['{"a": 1} // note', "Line 1, column 10: there is something after the end of the project."],
    ['"a\nb"', "Line 1, column 3: a text does not end on its line."],
    ['"abc', "Line 1, column 5: a text does not end on its line."],
    ['"\\x41"', "Line 1, column 2: a backslash stands before something it cannot stand before."],
    ['"\\u12g4"', "Line 1, column 2: a backslash stands before something it cannot stand before."],
  ])("says where %j is broken", (text, message) => {
    const { value, issues } = readJson(text);
    expect(value).toBeUndefined();
    expect(issues.map((issue) => issue.message)).toEqual([message]);
    expect(() => JSON.parse(text)).toThrow(SyntaxError);
  });

  it("counts the megabyte in bytes", () => {
    const digits = (length: number) => `"${"x".repeat(length - 2)}"`;
    expect(readJson(digits(1_000_000)).issues).toEqual([]);
    expect(readJson(digits(1_000_001)).issues[0]?.code).toBe("file-too-large");
    // Two units, four bytes each: 250,000 pairs less the quotes.
    expect(readJson(`"${"😀".repeat(249_999)}"`).issues).toEqual([]);
    expect(readJson(`"${"😀".repeat(250_000)}"`).issues[0]?.code).toBe("file-too-large");
  });

  it("reads 32 levels and refuses the 33rd", () => {
    const nested = (depth: number) => "[".repeat(depth) + "]".repeat(depth);
    expect(readJson(nested(32)).issues).toEqual([]);
    expect(readJson(nested(33)).issues[0]?.message).toBe(
      "Line 1, column 33: lists and objects are nested too deeply.",
    );
  });

  it("shows nothing that could steer a terminal", () => {
    const { issues } = readJson("[\u001b[31m]");
    expect(issues[0]?.got).toBe('" [31m]"');
  });
});
