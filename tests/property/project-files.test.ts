import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { readJson } from "../../src/model/json.ts";
import { parseProject } from "../../src/model/parse.ts";
import { serialiseProject } from "../../src/model/serialise.ts";
import { SHIPPED, shippedText } from "../support/projectFiles.ts";

const shippedName = fc.constantFrom(...SHIPPED);

/** Values that programs and people put into files. */
const anyValue = fc.oneof(
  { weight: 4, arbitrary: fc.double() },
  { weight: 4, arbitrary: fc.integer({ min: -2000, max: 2000 }) },
  {
    weight: 2,
    arbitrary: fc.constantFrom<unknown>(
      null,
      true,
      "",
      "left",
      "polygon",
      "random",
      [],
      {},
      [[]],
      0,
      -0,
      1e308,
    ),
  },
  { weight: 1, arbitrary: fc.jsonValue({ maxDepth: 3 }) },
);

const change = fc.record({
  place: fc.nat(),
  how: fc.constantFrom("replace", "scale", "remove", "add", "repeat"),
  value: anyValue,
  factor: fc.double({ min: -3, max: 3, noNaN: true }),
  key: fc.oneof(
    fc.string(),
    fc.constantFrom("kind", "widthMm", "__proto__", "outlineMm", "toString", "length"),
  ),
});

type Change = typeof change extends fc.Arbitrary<infer T> ? T : never;
type Node = Record<string, unknown>;

/** Applies a change to one entry of a JSON tree, picked by number. */
function applyChange(root: Node, { place, how, value, factor, key }: Change): void {
  const slots: { holder: Node; key: string }[] = [];
  const visit = (holder: Node): void => {
    for (const [name, entry] of Object.entries(holder)) {
      slots.push({ holder, key: name });
      if (typeof entry === "object" && entry !== null) visit(entry as Node);
    }
  };
  visit(root);
  const slot = slots[place % slots.length];
  if (slot === undefined) return;
  const old = slot.holder[slot.key];
  if (how === "remove") delete slot.holder[slot.key];
  else if (how === "scale" && typeof old === "number") slot.holder[slot.key] = old * factor;
  else if (how === "repeat" && Array.isArray(old)) old.push(...old);
  else if (how === "add" && !Array.isArray(slot.holder))
    Object.defineProperty(slot.holder, key, { value, enumerable: true, configurable: true, writable: true });
  else slot.holder[slot.key] = value;
}

const changedFile = fc
  .tuple(shippedName, fc.array(change, { minLength: 1, maxLength: 4 }))
  .map(([name, changes]) => {
    const root = JSON.parse(shippedText(name)) as Node;
    for (const one of changes) applyChange(root, one);
    return JSON.stringify(root);
  });

const edit = fc.record({
  at: fc.nat(),
  length: fc.nat({ max: 30 }),
  text: fc.oneof(
    fc.string({ unit: "binary" }),
    fc.constantFrom('"', "{", "}", "[", "]", ",", ":", "\\", "1e999", "-", "\u0000", "NaN"),
  ),
});

const editedText = fc
  .tuple(shippedName, fc.array(edit, { minLength: 1, maxLength: 5 }))
  .map(([name, edits]) =>
    edits.reduce((text, { at, length, text: piece }) => {
      const from = at % (text.length + 1);
      return text.slice(0, from) + piece + text.slice(from + length);
    }, shippedText(name)),
  );

function expectAnswer(text: string): void {
  const parsed = parseProject(text);
  if (parsed.ok) {
    expect(parseProject(serialiseProject(parsed.value))).toEqual(parsed);
    return;
  }
  expect(parsed.issues.length).toBeGreaterThan(0);
  for (const issue of parsed.issues) {
    expect(issue.code).toMatch(/^[a-z]+(-[a-z]+)+$/);
    expect(issue.message).toMatch(/[.?]$/);
    expect(JSON.stringify(issue)).not.toMatch(/undefined|NaN mm|\[object/);
  }
}

describe("a project file", () => {
  it("with any entries changed is read or refused with issues, never thrown at", () => {
    fc.assert(fc.property(changedFile, expectAnswer), { seed: 20_418, numRuns: 1500 });
  });

  it("with any letters changed is read or refused with issues, never thrown at", () => {
    fc.assert(fc.property(editedText, expectAnswer), { seed: 7_113, numRuns: 1500 });
  });

  it("that is any text at all is refused", () => {
    fc.assert(
      fc.property(fc.oneof(fc.string({ unit: "binary", maxLength: 200 }), fc.json()), (text) => {
        expect(parseProject(text).ok).toBe(false);
      }),
      { seed: 99, numRuns: 500 },
    );
  });
});

/** Numbers that a file may hold in each of these places without contradicting anything. */
const angles = fc.record({
  headingDeg: fc.double({ min: -5, max: 5, noNaN: true }),
  armAngleDeg: fc.double({ min: 0, max: 12, noNaN: true }),
  turnRateDegPerS: fc.double({ min: 1, max: 1440, noNaN: true }),
  turnSdDeg: fc.double({ min: 0, max: 20, noNaN: true }),
  curvatureSdDegPerM: fc.double({ min: 0, max: 45, noNaN: true }),
  curvatureMeanDegPerM: fc.double({ min: -90, max: 90, noNaN: true }),
  timeLimitS: fc.double({ min: 0, max: 3600, noNaN: true }),
  massKg: fc.double({ min: 0.01, max: 100, noNaN: true }),
});

it("parse after serialise is identity, bit for bit, for any digits", () => {
  fc.assert(
    fc.property(angles, (a) => {
      const file = JSON.parse(shippedText("usual-zone.json"));
      file.robot.entry.headingDeg = a.headingDeg;
      file.robot.shape.armAngleDeg = a.armAngleDeg;
      file.robot.drive.turnRateDegPerS = a.turnRateDegPerS;
      file.robot.drift.random.turnSdDeg = a.turnSdDeg;
      file.robot.drift.random.curvatureSdDegPerM = a.curvatureSdDegPerM;
      file.robot.drift.systematic.curvatureMeanDegPerM = a.curvatureMeanDegPerM;
      file.rules.timeLimitS = a.timeLimitS;
      file.robot.massKg = a.massKg;
      const first = parseProject(JSON.stringify(file));
      expect(first.ok).toBe(true);
      if (!first.ok) return;
      const text = serialiseProject(first.value);
      const second = parseProject(text);
      expect(second).toEqual(first);
      expect(second.ok && serialiseProject(second.value)).toBe(text);
    }),
    { seed: 3_141, numRuns: 1000 },
  );
});

/** Whether the built-in reader takes a text; the extra words that ours lets through are left out of the comparison. */
function builtInTakes(text: string): boolean {
  try {
    JSON.parse(text);
    return true;
  } catch {
    return false;
  }
}

it("the reader of JSON takes exactly what the built-in one takes", () => {
  const texts = fc.oneof(
    editedText,
    fc.json({ maxDepth: 5 }),
    fc.string({ unit: fc.constantFrom(...'[]{},:"0123456789.eE+-\\ntrufals ') }),
  );
  fc.assert(
    fc.property(texts, (text) => {
      fc.pre(!/NaN|Infinity|\ufeff/.test(text));
      const { value, issues } = readJson(text);
      fc.pre(!issues.some(({ code }) => code === "too-deep"));
      expect(value !== undefined).toBe(builtInTakes(text));
    }),
    { seed: 5_050, numRuns: 2000 },
  );
});
