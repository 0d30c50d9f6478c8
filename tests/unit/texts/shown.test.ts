import { readdirSync } from "node:fs";
import { afterEach, beforeEach, describe, expect, it } from "vitest";
import { parseProjectFile } from "../../../src/model/parse.ts";
import { shownBallName, shownSensorName } from "../../../src/model/presetNames.ts";
import { BALL_PRESETS } from "../../../src/model/presets.ts";
import { SENSOR_PRESETS, USUAL_NAMES } from "../../../src/model/sensorPresets.ts";
import { serialiseProject } from "../../../src/model/serialise.ts";
import { shellTexts } from "../../../src/texts/english/shell.ts";
import { shippedTexts } from "../../../src/texts/english/shipped.ts";
import { speak } from "../../../src/texts/language.ts";
import { read, top } from "../../support/sourceCheck.ts";

const names = [
  ...Object.values(BALL_PRESETS).map((kind) => [kind.name, shownBallName(kind)]),
  ...Object.values(SENSOR_PRESETS).map((sensor) => [sensor.name, shownSensorName(sensor)]),
  ...Object.values(USUAL_NAMES).map((name) => [name, shownSensorName({ name })]),
];

const usual = read("fields/usual-zone.json");

function issuesOf(text: string): readonly string[] {
  const parsed = parseProjectFile(text);
  return parsed.ok
    ? []
    : parsed.issues.map(({ message, got, expected }) => [message, got, expected].join(" | "));
}

describe("names of presets", () => {
  it("are in English those that files hold", () => {
    expect(names.filter(([kept, shown]) => kept !== shown)).toEqual([]);
    expect(names.length).toBeGreaterThan(15);
  });
});

describe("the page before its program runs", () => {
  it("has the title and the description that the texts have", () => {
    const html = read("src/app/index.html");
    expect(html).toContain(`<title>${shellTexts.pageTitle}</title>`);
    expect(html).toContain(`content="${shellTexts.pageDescription}"`);
  });
});

describe("in German", () => {
  beforeEach(() => speak("de"));
  afterEach(() => speak("en"));

  it("presets have German names, what a team named itself keeps its own, and files stay as they are", () => {
    expect(shownBallName(BALL_PRESETS.golf)).toBe("Golfball");
    expect(shownSensorName({ name: USUAL_NAMES.back })).toBe("Tastschalter hinten");
    expect(shownBallName({ name: "Our ball" })).toBe("Our ball");
    const parsed = parseProjectFile(usual);
    expect(parsed.ok && serialiseProject(parsed.value.project)).toContain('"preset": "table-tennis"');
  });

  it("issues of a file say place, finding and remedy", () => {
    expect(issuesOf(usual.replace('"timeLimitS": 120', '"timeLimitS": -0.5'))).toEqual([
      "Die Zahl ergibt hier keinen Sinn. Erlaubt ist eine Zahl von 0 bis 3600 s (weggelassen: 120 s). | -0.5 | eine Zahl von 0 bis 3600 s (weggelassen: 120 s)",
    ]);
    expect(issuesOf(usual.replace('"wall": "bottom"', '"wall": "botom"'))).toEqual([
      'Dieses Wort ist hier nicht bekannt. Meint ihr „bottom“? | "botom" | eines von "left", "right", "bottom", "top"',
    ]);
    expect(issuesOf(usual.replace('"centreMm": 160', '"centreMm": 60'))).toContain(
      "Die Einfahrt reicht über ihre Wand hinaus, die 1200 mm lang ist; verschiebt sie oder macht sie schmaler. | von −65 mm bis 185 mm | innerhalb von 0 bis 1200 mm",
    );
    expect(issuesOf('{ "formatVersion": 1, ')).toEqual([
      "Zeile 1, Spalte 23: Ein Schlüssel fehlt. | das Ende der Datei | ein Schlüssel in geraden Anführungszeichen (kein Komma nach dem letzten Eintrag, keine Kommentare)",
    ]);
  });

  it("every shipped project has a name, a note and a robot's name of its own", () => {
    const ids = readdirSync(`${top}fields`).map((file) => file.replace(/\.json$/, ""));
    const unsaid = ids.filter((id) =>
      [shippedTexts.name(id, ""), shippedTexts.note(id, ""), shippedTexts.robot(id, "")].includes(""),
    );
    expect(ids.length).toBeGreaterThan(10);
    expect(unsaid).toEqual([]);
  });
});
