import { afterEach, describe, expect, it } from "vitest";
import { readMeasurements, TEST_COLUMNS } from "../../../src/practice/measurements.ts";
import { readRuns, runHeadings, runTable } from "../../../src/practice/practiceRuns.ts";
import { lossTexts } from "../../../src/texts/english/loss.ts";
import { LANGUAGES, speak } from "../../../src/texts/language.ts";
import { allWords, meantBy, tableWord } from "../../../src/texts/tableWords.ts";
import { LOSS_REASONS } from "../../../src/trial/outcome.ts";
import { shippedProject } from "../../support/projectFiles.ts";

const TESTS = Object.keys(TEST_COLUMNS) as readonly (keyof typeof TEST_COLUMNS)[];
const project = shippedProject();
const runs = LOSS_REASONS.map((loss, i) => ({
  placement: [
    { xMm: 400 + i, yMm: 300 },
    { xMm: 600, yMm: 300.5 },
    { xMm: 500, yMm: 500 },
  ],
  ...{ home: i % 3, timeS: 61.5, loss, day: "9. April", note: "wie immer" },
}));

afterEach(() => speak("en"));

describe("a table filled in in one language", () => {
  it.each(LANGUAGES)("is read in every other: %s", async (written) => {
    await speak(written);
    const table = runTable([], runs);
    const lines = TESTS.map((name) => [
      tableWord(name),
      ...[500, 400, 1].slice(0, TEST_COLUMNS[name].length),
    ]);
    const tests = [[tableWord("test"), "x"], ...lines].map((cells) => cells.join(";")).join("\n");
    const read = readMeasurements(tests);
    if (!read.ok) throw new Error(JSON.stringify(read.issues));
    for (const language of LANGUAGES) {
      await speak(language);
      expect(readRuns(table, project)).toEqual({ ok: true, value: runs });
      expect(readMeasurements(tests)).toEqual(read);
    }
  });

  it("has headings and numbers of its language", async () => {
    await speak("de");
    expect(runHeadings(1)).toEqual([
      "Lauf",
      "Ball 1 x mm",
      "Ball 1 y mm",
      "Bälle im Ziel",
      "Sekunden",
      "Verlust",
      "Tag",
      "Notiz",
    ]);
    expect(runTable([], runs).split("\n")[1]).toMatch(
      /^1;400;300;600;300,5;.*;61,5;aus der Einfahrt gerollt;/,
    );
  });

  it("is told what is wrong in the language spoken now, with a word of any", async () => {
    await speak("de");
    const read = readMeasurements("Geradde;1000;990\nRollen;1210;0,01");
    expect(
      read.ok ? [] : read.issues.map(({ path, message, expected }) => [path, message, expected]),
    ).toEqual([
      ["Zeile 1", "So einen Versuch gibt es nicht. Meint ihr „Gerade“?", TESTS.map(tableWord).join(", ")],
      [
        "Zeile 2",
        "In Spalte 3 des Versuchs Rollen muss eine Zahl stehen.",
        "Sekunden, bis er lag: eine Zahl von 0,1 bis 600",
      ],
    ]);
    const english = readMeasurements("strait;1000;990");
    expect(english.ok ? "" : english.issues[0]?.message).toContain("straight");
  });
});

describe("the words of tables", () => {
  it("mean one thing each, and hold nothing that parts cells", () => {
    for (const meanings of [TESTS, LOSS_REASONS]) {
      const words = allWords(meanings);
      expect(new Set(words.map((word) => word.toLowerCase())).size).toBe(words.length);
      expect(words.length).toBe(LANGUAGES.length * meanings.length);
      expect(words.filter((word) => /[;,\t"]/.test(word))).toEqual([]);
    }
    expect(meantBy("nie BERÜHRT", LOSS_REASONS)).toBe("never-touched");
    expect(meantBy("Gerade", LOSS_REASONS)).toBeUndefined();
  });

  it("call a loss in German what the page calls it", async () => {
    await speak("de");
    expect(LOSS_REASONS.map(tableWord)).toEqual(LOSS_REASONS.map((reason) => lossTexts.title[reason]));
  });
});
