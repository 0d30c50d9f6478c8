import { type BadFile, bad, raw, replaced } from "./badFile.ts";

export const TEXT: readonly BadFile[] = [
  raw("file-too-large", "", "more than 1 MB", `${" ".repeat(1_000_000)}{}`),
  raw("file-too-large", "", "more than 1 MB of long characters", `{"name": "${"試".repeat(400_000)}"}`),
  raw("invalid-json", "", "no text", ""),
  raw("invalid-json", "", "a comma too many", replaced('"keepOuts": []', '"keepOuts": [],')),
  raw("too-deep", `a${"[0]".repeat(19)}[0…`, "lists within lists", `{"a": ${"[".repeat(5000)}`),
  raw(
    "unsafe-key",
    "zone.__proto__",
    "__proto__",
    replaced('"widthMm": 1200', '"__proto__": {}, "widthMm": 1200'),
  ),
  raw("unsafe-key", "constructor", "constructor", replaced('"name"', '"constructor": 1, "name"')),
  raw("unsafe-key", "robot.drive.prototype", "prototype", replaced('"gaugeMm"', '"prototype": 1, "gaugeMm"')),
  raw(
    "duplicate-key",
    "zone.widthMm",
    "a key twice",
    replaced('"widthMm": 1200', '"widthMm": 1200, "widthMm": 900'),
  ),
  raw("not-finite", "rules.timeLimitS", "1e999", replaced('"timeLimitS": 120', '"timeLimitS": 1e999')),
  raw("not-finite", "rules.timeLimitS", "NaN", replaced('"timeLimitS": 120', '"timeLimitS": NaN')),
  raw(
    "not-finite",
    "rules.timeLimitS",
    "-Infinity",
    replaced('"timeLimitS": 120', '"timeLimitS": -Infinity'),
  ),
  raw("wrong-type", "", "a list", "[1, 2]"),
  raw("wrong-type", "", "null", "null"),
  raw("missing-key", "formatVersion", "an empty object", "{}"),
  bad("newer-format", "formatVersion", "a later version", (f) => (f.formatVersion = 2)),
  bad("unknown-format", "formatVersion", "version 0", (f) => (f.formatVersion = 0)),
  bad("unknown-format", "formatVersion", "a version in quotes", (f) => (f.formatVersion = "1")),
];
